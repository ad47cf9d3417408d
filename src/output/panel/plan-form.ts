import { memory } from '../../base/memory';
import type { FormGiven } from '../../design/came-out';
import type { Job } from '../../job/job';
import type { Tables } from '../../tables/tables';
import { planJob, type Planned } from '../pipeline';

/** Works out the form of one bend of a panel. */
export type PlanForm = (job: Job, given: Omit<FormGiven, 'memory'>) => Planned;

/** Works out forms of one panel: what several of them ask alike, down to whole forms, is worked out once. */
export function formPlanner(tables: Tables): PlanForm {
  const reckoned = memory();
  return (job, given) => {
    const plan = (): Planned => planJob(job, tables, [], { ...given, memory: reckoned });
    const { guests = [], layout, heldAlong } = given;
    return guests.length > 0 || layout ? plan() : reckoned('form', [job, heldAlong], plan);
  };
}
