import { parseJob } from '../../src/job/parse';
import type { Job } from '../../src/job/job';
import { tables } from './starters';

/** What a job says otherwise than the plain one of {@link jobOf}. */
export interface Changes {
  readonly sheet?: object;
  readonly bend?: object;
  readonly more?: object;
}

/** A job in mm: 1 mm steel bent square round 60 mm over 400, legs of 60 and 200, boards of 18. */
export function jobOf({ sheet = {}, bend = {}, more = {} }: Changes): Job {
  const { job, findings } = parseJob(
    JSON.stringify({
      title: 'x',
      units: 'mm',
      sheet: { material: 'steel-cold-rolled-cs', thickness: 1, ...sheet },
      bend: { angle: 90, length: 400, radius: 60, legs: { held: 60, free: 200 }, ...bend },
      board: { stock: 'mdf-18' },
      ...more,
    }),
    tables,
  );
  if (!job) throw new Error(findings.map(({ code }) => code).join());
  return job;
}
