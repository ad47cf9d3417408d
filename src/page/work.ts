import type { Finding } from '../base/findings';
import { labelOf } from '../job/fields/label';
import { sayFindings, type SaidFinding } from '../findings/say';
import type { Job } from '../job/job';
import { parseJob } from '../job/parse';
import type { Part } from '../drawing/parts/part';
import { drawPieces } from '../output/pieces';
import { planJob, type Buildable } from '../output/pipeline';
import { loadTables } from '../tables/bundled';
import { countedOf, entryIn, type Counted } from './counted';
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
  /** What went wrong in the program itself; empty where nothing did. */
  readonly fault: string;
}

/**
 * Draft → job → plan → drawings, by the same code as the command line. Trials that are not whole, or wrong in themselves, do not count: what is
 * wrong with them is said, the form stays.
 */
export function work(draft: Draft): Worked {
  const first = workOut(countedOf(draft));
  const wrong = first.findings.filter(({ level, path }) => level === 'error' && entryIn(path) !== null);
  if (first.form !== null || wrong.length === 0) return first;
  const rest = workOut(countedOf(draft, new Set(wrong.flatMap(({ path }) => entryIn(path) ?? []))));
  return rest.form === null ? first : { ...rest, findings: [...wrong, ...rest.findings] };
}

function workOut({ draft, asTyped }: Counted): Worked {
  const text = jobFileFrom(draft);
  try {
    return { text, fault: '', ...worked(text, asTyped) };
  } catch (problem) {
    return { text, fault: faultText(problem), findings: [], form: null };
  }
}

/** A fault of the program in words that ask for it to be told. */
export function faultText(problem: unknown): string {
  const what = problem instanceof Error ? problem.message : String(problem);
  return `This is a fault in bendbuck, not in your job (${what}). Please report it with the job file.`;
}

function worked(text: string, asTyped: Counted['asTyped']): Pick<Worked, 'findings' | 'form'> {
  const { job, findings, units } = parseJob(text, tables);
  // The page's reader knows a field by its label.
  const say = (found: readonly Finding[]): SaidFinding[] =>
    sayFindings(
      found.map((one) => ({ ...one, path: asTyped(one.path) })),
      { units, field: labelOf },
    );
  if (!job) return { findings: say(findings), form: null };
  const planned = planJob(job, tables, findings);
  const said = say(planned.findings);
  if (!planned.buildable) return { findings: said, form: null };
  const { bend, layout } = planned;
  return { findings: said, form: { job, planned, bend, layout, parts: drawPieces(planned, tables) } };
}
