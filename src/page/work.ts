import type { Finding } from '../base/findings';
import { labelOf } from '../job/fields/label';
import { sayFindings, type SaidFinding } from '../findings/say';
import type { Job } from '../job/job';
import { parseJob } from '../job/parse';
import type { Part } from '../drawing/parts/part';
import { drawPieces } from '../output/pieces';
import { planJob, type Buildable } from '../output/pipeline';
import { loadTables } from '../tables/bundled';
import { jobFileFrom, type Draft } from './draft';

export const tables = loadTables();

/** A form that can be built: everything the page shows of it. */
export interface Form {
  readonly job: Job;
  readonly planned: Buildable;
  readonly bend: Buildable['bend'];
  readonly layout: Buildable['layout'];
  readonly parts: readonly Part[];
}

/** What became of a draft. */
export interface Worked {
  readonly text: string;
  readonly findings: readonly SaidFinding[];
  /** Null where an error stands in the way. */
  readonly form: Form | null;
}

/** Draft → job → plan → drawings, by the same code as the command line. */
export function work(draft: Draft): Worked {
  const text = jobFileFrom(draft);
  const { job, findings, units } = parseJob(text, tables);
  // The page's reader knows a field by its label.
  const say = (found: readonly Finding[]): SaidFinding[] => sayFindings(found, { units, field: labelOf });
  if (!job) return { text, findings: say(findings), form: null };
  const planned = planJob(job, tables, findings);
  const said = say(planned.findings);
  if (!planned.buildable) return { text, findings: said, form: null };
  const { bend, layout } = planned;
  return { text, findings: said, form: { job, planned, bend, layout, parts: drawPieces(planned, tables) } };
}
