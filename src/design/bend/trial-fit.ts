import type { FinishedPart, Strip } from '../../job/job';
import type { Ends } from '../../base/ends';

/** A strip with the factor on the flow curve that reproduces it alone. */
export interface FittedStrip extends Strip {
  /** Where among the job's trials. */
  readonly index: number;
  readonly factor: number;
}

/** A finished part against what was reckoned for it: mm, radians. */
export interface FittedPart extends FinishedPart {
  readonly index: number;
  /** Radius of the form it was bent on, at its place. */
  readonly form: number;
  /** The factor that reproduces it alone; null where its angle is put down to the legs. */
  readonly factor: number | null;
  /** What should have come out by the sums as they were before any part. */
  readonly reckoned: { readonly radius: number; readonly angle: number | null };
  /** Inside radius that came out, measured or by the fit. */
  readonly cameOut: number;
  /** Wrap that brings the wanted angle on the same form; null where no angle was measured. */
  readonly again: number | null;
  /** What the measurements may be off by: the radius, and the angle where one was measured. */
  readonly sure: { readonly radius: number; readonly angle: number | null };
}

/** Trial strips and finished parts against the sheet's flow curve. */
export interface TrialFit {
  readonly strips: readonly FittedStrip[];
  readonly parts: readonly FittedPart[];
  /** The factor that serves all of them best: least squares on the curvature left. */
  readonly factor: number;
  /** The least and the greatest of their own factors. */
  readonly spread: { readonly low: number; readonly high: number };
  /** Turn the legs keep at either end beyond what the sums say, as parts showed; 0 without. */
  readonly legsKeep: Ends;
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
