import { layOutBlock, type FinishingBlock } from '../drawing/aids';
import { hasErrors, type Finding } from '../base/findings';
import { planBend } from '../design/bend';
import type { BendPlan } from '../design/bend/bend-plan';
import { layOutFixture } from '../design/fixture';
import type { FixtureLayout } from '../design/fixture/fixture';
import type { Job } from '../job/job';
import { layOutJoints } from '../design/joints';
import type { Joints } from '../design/joints/joints';
import type { BuiltPlan, Plan, PlanBlock } from './plan/plan';
import { tablesIn, type Tables } from '../tables/tables';
import { toPartialPlan, toPlan } from './plan/to-plan';

/** A job whose form can be built: the plan to print, and the stages' own results for drawing it. */
export interface Buildable {
  readonly buildable: true;
  readonly job: Job;
  readonly bend: BendPlan;
  readonly layout: FixtureLayout;
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
export function planJob(job: Job, all: Tables, earlier: readonly Finding[] = []): Planned {
  const tables = tablesIn(all, job.units);
  const { value: bend, findings: bendFindings } = planBend(job, tables);
  const soFar = [...earlier, ...bendFindings];
  if (!bend || hasErrors(soFar)) return refuse({ job, bend }, soFar);
  const { value: layout, findings: layoutFindings } = layOutFixture(bend, job, tables);
  const block = layOutBlock(bend, job, tables);
  if (!layout || hasErrors(layoutFindings))
    return refuse({ job, bend, layout, block: block.value }, [...soFar, ...layoutFindings, ...block.findings]);
  const joints = layOutJoints(layout, bend, job, tables);
  const findings = [...soFar, ...layoutFindings, ...joints.findings, ...block.findings];
  const stages = { job, bend, layout, joints: joints.value, block: block.value && planBlock(block.value), findings };
  if (hasErrors(findings)) return { buildable: false, job, plan: toPlan(stages), findings };
  return { ...stages, buildable: true, block: block.value, plan: toPlan(stages) };
}

interface SoFar {
  readonly job: Job;
  readonly bend: BendPlan | null;
  readonly layout?: FixtureLayout | null;
  readonly block?: FinishingBlock | null;
}

function refuse({ job, bend, layout = null, block = null }: SoFar, findings: readonly Finding[]): Refused {
  return {
    buildable: false,
    job,
    plan: toPartialPlan({ job, bend, layout, block: block && planBlock(block), findings }),
    findings,
  };
}

/** Without what only its drawings need. */
function planBlock({ from, to, legs, holes, layers }: FinishingBlock): PlanBlock {
  return { from, to, legs, holes, layers };
}
