import type { BendPlan } from '../../design/bend/bend-plan';
import type { FixtureLayout } from '../../design/fixture/fixture';
import type { Job } from '../../job/job';
import type { Joints } from '../../design/joints/joints';
import type { Part } from '../../drawing/parts/part';
import type { SaidFinding } from '../../findings/say';
import type { BuiltPlan } from '../plan/plan';
import type { LaidOut } from '../../drawing/boards/laid-out';
import type { Board, Screw } from '../../tables/schema';
import type { Tables } from '../../tables/tables';
import type { Measures } from './measures';

/** Everything a section of the sheet may speak of. */
export interface Shop {
  readonly job: Job;
  readonly bend: BendPlan;
  readonly layout: FixtureLayout;
  readonly joints: Joints;
  readonly plan: BuiltPlan;
  /** In the sheet's units. */
  readonly findings: readonly SaidFinding[];
  readonly parts: readonly Part[];
  readonly boards: readonly LaidOut[];
  readonly tables: Tables;
  readonly say: Measures;
  /** What is cut; a laser's form is stacked from several of each. */
  readonly board: { readonly spine: Board; readonly stations: Board; readonly backing: Board };
  /** The one screw size of the form. */
  readonly screw: Screw;
  /** Whether the bend is one of a panel, whose blank and order of work are the panel's own. */
  readonly ofPanel: boolean;
}
