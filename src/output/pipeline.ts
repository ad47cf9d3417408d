import { layOutBlock, type FinishingBlock } from '../drawing/aids';
import { hasErrors, type Finding } from '../base/findings';
import { once } from '../base/once';
import { planHeld, type FormGiven } from '../design/came-out';
import type { TrialEffect } from '../design/bend/trial-fit';
import type { BendPlan, Hold } from '../design/bend/bend-plan';
import type { FixtureLayout } from '../design/fixture/fixture';
import type { Job } from '../job/job';
import { layOutJoints } from '../design/joints';
import { checkWood } from '../design/wood/check';
import { woodLoads } from '../design/wood/loads';
import type { Joints } from '../design/joints/joints';
import type { BuiltPlan, Plan } from './plan/plan';
import { tablesIn, type Tables } from '../tables/tables';
import { planBlock, toPartialPlan, toPlan } from './plan/to-plan';

/** A job whose form can be built: the plan to print, and the stages' own results for drawing it. */
export interface Buildable {
  readonly buildable: true;
  readonly job: Job;
  readonly bend: BendPlan;
  readonly layout: FixtureLayout;
  /** How the clamps hold the form. */
  readonly hold: Hold;
  /** How the boards find one another, as the job's tool cuts them. */
  readonly joints: Joints;
  /** The finishing block; null where the job asks for none. */
  readonly block: FinishingBlock | null;
  readonly plan: BuiltPlan;
  /** Doubts and notes. */
  readonly findings: readonly Finding[];
}

/** A job that cannot be built: the findings say why, the plan goes as far as its errors leave it a meaning. */
export interface Refused {
  readonly buildable: false;
  readonly job: Job;
  readonly plan: Plan;
  readonly findings: readonly Finding[];
}

export type Planned = Buildable | Refused;

/** job → bend → form → fixture → joints, and the finishing block: the numbers, without drawings. `job` must come from `parseJob`, which found `earlier`. */
export function planJob(job: Job, all: Tables, earlier: readonly Finding[] = [], given: FormGiven = {}): Planned {
  const tables = tablesIn(all, job.units);
  const { bend, bends, layout, hold, effect, findings: heldFindings } = planHeld(job, tables, given);
  const soFar = [...earlier, ...heldFindings];
  if (!bend || !bends) return refuse({ job, bend, effect }, soFar);
  const block = layOutBlock(bend, job, tables);
  if (!layout || !hold || hasErrors(soFar))
    return refuse({ job, bend, effect, layout, block: block.value }, [...soFar, ...block.findings]);
  const joints = layOutJoints(layout, bend, job, tables);
  const wood = woodLoads({ bend, layout, hold }, job, tables);
  const strained = checkWood(wood, { spine: layout.spine.thickness, length: bend.length }, tables.rules);
  const findings = [...soFar, ...joints.findings, ...strained, ...block.findings];
  const stages = {
    job,
    bend,
    effect,
    layout,
    hold,
    wood,
    joints: joints.value,
    block: block.value && planBlock(block.value),
    findings,
  };
  if (hasErrors(findings)) return { buildable: false, job, plan: toPlan(stages), findings };
  const plan = once(() => toPlan(stages));
  // Of most forms that are tried for a panel nobody asks for the plan.
  return {
    ...stages,
    buildable: true,
    block: block.value,
    get plan() {
      return plan();
    },
  };
}

interface SoFar {
  readonly job: Job;
  readonly bend: BendPlan | null;
  readonly effect: TrialEffect | null;
  readonly layout?: FixtureLayout | null;
  readonly block?: FinishingBlock | null;
}

function refuse({ job, bend, effect, layout = null, block = null }: SoFar, findings: readonly Finding[]): Refused {
  return {
    buildable: false,
    job,
    plan: toPartialPlan({ job, bend, effect, layout, block: block && planBlock(block), findings }),
    findings,
  };
}
