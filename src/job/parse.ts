import { hasErrors, type Finding } from '../base/findings';
import type { Tables } from '../tables/tables';
import { explain } from './explain';
import type { Job } from './job';
import { readJob } from './read';
import { jobFileSchema } from './schema';
import { readSource, type Source } from './source';
import type { Path } from './path';

/** A job file read: the job, or null where errors were found, and everything found, in the order of the file. */
export interface ParsedJob {
  readonly job: Job | null;
  readonly findings: readonly Finding[];
}

/** Job file text (YAML or JSON) → job. All mistakes are reported at once, each with its line. Never throws on any text. */
export function parseJob(text: string, tables: Tables): ParsedJob {
  const { source, findings } = readSource(text);
  if (!source) return { job: null, findings };
  const shape = jobFileSchema.safeParse(source.data);
  const complaints = shape.success ? [] : shape.error.issues.flatMap((issue) => explain(issue, valueAt(source.data, issue.path)));
  const read = readJob(source.data, tables);
  const all = withLines([...complaints, ...read.findings], source);
  return { job: hasErrors(all) ? null : read.job, findings: all };
}

function valueAt(data: unknown, path: Path): unknown {
  return path.reduce<unknown>((held, step) => (typeof held === 'object' && held !== null ? (held as Record<PropertyKey, unknown>)[step] : undefined), data);
}

function withLines(findings: readonly Finding[], source: Source): Finding[] {
  return findings
    .map((finding): Finding => {
      const line = source.lineOf(stepsOf(finding.path));
      return line === undefined ? finding : { ...finding, line };
    })
    .sort((a, b) => (a.line ?? 0) - (b.line ?? 0));
}

/** The steps of a printed path; inverse of `pathText` for keys without dots and brackets. */
function stepsOf(text: string): Path {
  return [...text.matchAll(/\[(\d+)\]|([^.[\]]+)/gu)].map((match) => (match[1] === undefined ? (match[2] ?? '') : Number(match[1])));
}

