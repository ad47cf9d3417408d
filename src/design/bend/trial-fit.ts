import type { Trial } from '../../job/job';
import type { Ends } from '../../base/ends';

/** A strip with the factor on the flow curve that reproduces it alone. */
export interface FittedStrip extends Trial {
  readonly factor: number;
}

/** Trial strips against the sheet's flow curve. */
export interface TrialFit {
  readonly strips: readonly FittedStrip[];
  /** The factor that serves all strips best: least squares on the curvature left. */
  readonly factor: number;
  /** The least and the greatest of the strips' own factors. */
  readonly spread: { readonly low: number; readonly high: number };
}

/** The bend at one factor: inside radii square to the centre line, mm; the chosen wrap, radians. */
export interface BendAtFactor {
  readonly form: Ends;
  readonly finished: Ends;
  readonly wrap: number;
}

/** What the strips change: the bend by the tables alone, and at either end of their spread. Null where no such bend exists. */
export interface TrialEffect {
  readonly tables: BendAtFactor | null;
  readonly low: BendAtFactor | null;
  readonly high: BendAtFactor | null;
}
