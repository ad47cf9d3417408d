import { hasErrors, type Staged } from '../../base/findings';
import { finding } from '../../findings/finding';
import type { Job } from '../../job/job';
import type { Tables } from '../../tables/tables';
import { bendSheet } from '../bend';
import type { BendPlan } from '../bend/bend-plan';
import type { DepthAlong } from '../bend/depth-along';
import type { TrialFit } from '../bend/trial-fit';
import { checkPull } from './check';
import { likelyBearing } from './plan-hold';
import { settle } from './settle';
import { chooseWay } from './way';

/** What is known of a bend beside its job: what its trials show, as in {@link bendSheet}, and how deep its held leg is along it where that is not the same everywhere. */
export interface KnownOfBend {
  readonly known?: Staged<TrialFit> | undefined;
  readonly heldAlong?: DepthAlong | undefined;
}

/**
 * Job → what bending asks of the form and of the hands, the held leg bearing as it will on the shallowest foot until the clamps are known. Null where the bend
 * cannot exist or cannot be pulled; the findings say why.
 */
export function planBend(job: Job, tables: Tables, { known, heldAlong }: KnownOfBend = {}): Staged<BendPlan | null> {
  const made = bendSheet(job, tables, known);
  const bent = made.value && heldAlong ? { ...made, value: { ...made.value, heldAlong } } : made;
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
