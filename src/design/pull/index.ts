import { hasErrors, type Staged } from '../../base/findings';
import { finding } from '../../findings/finding';
import type { Job } from '../../job/job';
import type { Tables } from '../../tables/tables';
import { bendSheet } from '../bend';
import type { BendPlan } from '../bend/bend-plan';
import type { TrialFit } from '../bend/trial-fit';
import { checkPull } from './check';
import { likelyBearing } from './plan-hold';
import { settle } from './settle';
import { chooseWay } from './way';

/**
 * Job → what bending asks of the form and of the hands, the held leg bearing as it will on the shallowest foot until the clamps are known; `known` as in
 * {@link bendSheet}. Null where the bend cannot exist or cannot be pulled; the findings say why.
 */
export function planBend(job: Job, tables: Tables, known?: Staged<TrialFit>): Staged<BendPlan | null> {
  const bent = bendSheet(job, tables, known);
  if (!bent.value || hasErrors(bent.findings)) return { value: null, findings: bent.findings };
  const way = chooseWay(bent.value, job, tables);
  if ('limp' in way) {
    const limp = finding('too-limp', 'bend.legs.free', { lever: job.bend.legs.free, longest: way.limp });
    return { value: null, findings: [...bent.findings, limp] };
  }
  const flat = settle(bent.value, way, 0);
  const bend = settle(bent.value, way, likelyBearing(flat, job, tables));
  return { value: bend, findings: [...bent.findings, ...checkPull(bend, way, job, tables.rules)] };
}
