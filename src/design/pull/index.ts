import { hasErrors, type Staged } from '../../base/findings';
import { afresh, type Memory } from '../../base/memory';
import { finding } from '../../findings/finding';
import type { Job } from '../../job/job';
import type { Tables } from '../../tables/tables';
import { bendSheet } from '../bend';
import { reckonedFrom, type BendPlan, type BentSheet } from '../bend/bend-plan';
import type { DepthAlong } from '../bend/depth-along';
import type { TrialFit } from '../bend/trial-fit';
import { checkPull } from './check';
import { likelyBearing } from './plan-hold';
import { settle } from './settle';
import { chooseWay, type TooLimp, type Way } from './way';

/** What is known of a bend beside its job: what its trials show, as in {@link bendSheet}; how deep its held leg is along it where that is not the same everywhere; and what was reckoned for others. */
export interface KnownOfBend {
  readonly known?: Staged<TrialFit> | undefined;
  readonly heldAlong?: DepthAlong | undefined;
  readonly memory?: Memory | undefined;
}

/**
 * Job → what bending asks of the form and of the hands, the held leg bearing as it will on the shallowest foot until the clamps are known. Null where the bend
 * cannot exist or cannot be pulled; the findings say why.
 */
export function planBend(
  job: Job,
  tables: Tables,
  { known, heldAlong, memory = afresh }: KnownOfBend = {},
): Staged<BendPlan | null> {
  const made = bendSheet(job, tables, known);
  const bent = made.value && heldAlong ? { ...made, value: { ...made.value, heldAlong } } : made;
  if (!bent.value || hasErrors(bent.findings)) return { value: null, findings: bent.findings };
  const { value: sheet } = bent;
  const { way, bearing } = memory('pull', reckonedFrom(sheet, job), () => pulled(sheet, job, tables));
  if ('limp' in way) {
    const limp = finding('too-limp', 'bend.legs.free', { lever: job.bend.legs.free, longest: way.limp });
    return { value: null, findings: [...bent.findings, limp] };
  }
  const bend = settle(sheet, way, bearing);
  return { value: bend, findings: [...bent.findings, ...checkPull(bend, way, job, tables.rules)] };
}

/** The way it is pulled, and how far behind the tangent line the held leg bears then, mm; 0 where it cannot be pulled. */
function pulled(sheet: BentSheet, job: Job, tables: Tables): { readonly way: Way | TooLimp; readonly bearing: number } {
  const way = chooseWay(sheet, job, tables);
  return { way, bearing: 'limp' in way ? 0 : likelyBearing(settle(sheet, way, 0), job, tables) };
}
