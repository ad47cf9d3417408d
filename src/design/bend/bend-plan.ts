import type { Cone } from '../../base/cone';
import type { Ends } from '../../base/ends';
import type { Job, Run } from '../../job/job';
import type { Metal } from '../../tables/schema';
import type { Section } from './section';
import type { TrialEffect, TrialFit } from './trial-fit';

/** What bending asks of the form: mm, radians, N, MPa. Everything later is laid out from this. */
export interface BendPlan {
  readonly metal: Metal;
  readonly section: Section;
  /** Factor on the flow curve from trial strips; 1 without. */
  readonly factor: number;
  /** The strips the factor comes from, and what they change; null without. */
  readonly trials: (TrialFit & { readonly effect: TrialEffect }) | null;
  /** Between the legs' planes, radians from flat. */
  readonly angle: number;
  readonly length: number;
  readonly legs: Job['bend']['legs'];
  /** Inside surface of the part after release, and of the form. */
  readonly finished: Cone;
  readonly form: Cone;
  /** Finished wrap about the centre line, radians. */
  readonly finishedWrap: number;
  readonly wrap: Ends & { readonly chosen: number };
  readonly twist: Ends;
  readonly neutral: number;
  readonly allowance: Ends;
  /** From each end's tangent lines to where the legs' outside planes meet. */
  readonly setback: Ends;
  readonly fan: number;
  readonly strain: Ends;
  readonly runs: readonly LoadedRun[];
  readonly pull: Pull;
}

/** A run with the whole moment that bends it, N·mm. */
export interface LoadedRun extends Run {
  readonly moment: number;
}

/** The hand's side of the effort, for the governing run; N, mm. */
export interface Pull {
  readonly moment: number;
  readonly leverNeeded: number;
  readonly leverage: number;
  readonly lever: number;
  readonly handForce: number;
}
