import { layOutBlock, type FinishingBlock } from '../drawing/aids';
import { hasErrors, type Finding } from '../base/findings';
import { planBend } from '../design/bend';
import type { BendPlan } from '../design/bend/bend-plan';
import { layOutFixture } from '../design/fixture';
import type { FixtureLayout } from '../design/fixture/fixture';
import type { Job } from '../job/job';
import { layOutJoints } from '../design/joints';
import type { Joints } from '../design/joints/joints';
import type { Plan, PlanBlock } from './plan/plan';
import { tablesIn, type Tables } from '../tables/tables';
import { toPlan } from './plan/to-plan';

/** A job worked out: the plan to print, and the stages' own results for drawing it. */
export interface Planned {
  readonly job: Job;
  readonly bend: BendPlan | null;
  readonly layout: FixtureLayout | null;
  /** How the boards find one another, as the job's tool cuts them. */
  readonly joints: Joints | null;
  /** The finishing block; null where the job asks for none. */
  readonly block: FinishingBlock | null;
  readonly plan: Plan;
  readonly findings: readonly Finding[];
}

/** job → bend → form → fixture → joints, and the finishing block: the numbers, without drawings. Errors are findings in the plan; `job` must come from `parseJob`. */
export function planJob(job: Job, all: Tables, earlier: readonly Finding[] = []): Planned {
  const tables = tablesIn(all, job.units);
  const bend = planBend(job, tables);
  const layout =
    bend.value && !hasErrors(bend.findings) ? layOutFixture(bend.value, job, tables) : { value: null, findings: [] };
  const joints =
    bend.value && layout.value && !hasErrors(layout.findings)
      ? layOutJoints(layout.value, bend.value, job, tables)
      : { value: null, findings: [] };
  const block =
    bend.value && !hasErrors(bend.findings) ? layOutBlock(bend.value, job, tables) : { value: null, findings: [] };
  const findings = [...earlier, ...bend.findings, ...layout.findings, ...joints.findings, ...block.findings];
  return {
    job,
    bend: bend.value,
    layout: layout.value,
    joints: joints.value,
    block: block.value,
    findings,
    plan: toPlan(job, bend.value, layout.value, joints.value, findings, block.value && planBlock(block.value)),
  };
}

/** Without what only its drawings need. */
function planBlock({ from, to, legs, holes, layers }: FinishingBlock): PlanBlock {
  return { from, to, legs, holes, layers };
}
