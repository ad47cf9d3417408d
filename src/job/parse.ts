import { hasErrors, type Finding } from '../base/findings';
import { finding } from '../findings/finding';
import type { LengthUnit } from '../base/units';
import type { Tables } from '../tables/tables';
import { explain } from './explain';
import type { Job } from './job';
import { readJob } from './read';
import type { Block } from './fields/field';
import { jobFields } from './fields/index';
import { assemblyFields, readAssembly, type AssemblyJob } from './panel/assembly';
import { panelFields, tracedFields } from './panel/fields';
import { readPanelJob, readTracedJob, type PanelJob } from './panel/read';
import { withoutRuns } from './runs-of-old';
import { readSource, type Source } from './source';
import { pathFromText, type Path } from './path';

/** A job file read: the job, or null where errors were found, and everything found, in the order of the file. */
export interface Parsed<Read> {
  /** Of the file, whether or not it can be read whole: what is said of it is said in this unit. */
  readonly units: LengthUnit;
  readonly job: Read | null;
  readonly findings: readonly Finding[];
  /** Later findings with the lines of this file's text that their paths stand on. */
  readonly locate: (findings: readonly Finding[]) => Finding[];
}

export type ParsedJob = Parsed<Job>;

/** A job file of either kind. */
export type ParsedFile = ({ readonly kind: 'bend' } & Parsed<Job>) | ({ readonly kind: 'panel' } & Parsed<PanelJob>);

/** Job file text (YAML or JSON) → job of one bend. All mistakes are reported at once, each with its line. Never throws on any text. */
export function parseJob(text: string, tables: Tables): ParsedJob {
  const { source, findings } = readSource(text);
  return source ? parseBend(source, tables) : unreadable(findings);
}

/** Job file text → job of one bend, or of a panel where it has a `base` or an `outline`. As {@link parseJob}. */
export function parseFile(text: string, tables: Tables): ParsedFile {
  const { source, findings } = readSource(text);
  if (!source) return { kind: 'bend', ...unreadable(findings) };
  const has = (key: string): boolean => valueAt(source.data, [key]) !== undefined;
  if (has('base'))
    return {
      kind: 'panel',
      ...parseWith(source, { fields: panelFields, tables, read: (data) => readPanelJob(data, tables) }),
    };
  if (has('outline'))
    return {
      kind: 'panel',
      ...parseWith(source, { fields: tracedFields, tables, read: (data) => readTracedJob(data, tables) }),
    };
  return { kind: 'bend', ...parseBend(source, tables) };
}

/** Job file text → an assembly of panels; null where it names no `panels`, and is a job. */
export function parseAssembly(text: string, tables: Tables): Parsed<AssemblyJob> | null {
  // Most files are jobs, which are to be read once.
  if (!text.includes('panels')) return null;
  const { source } = readSource(text);
  if (!source || valueAt(source.data, ['panels']) === undefined) return null;
  return parseWith(source, { fields: assemblyFields, tables, read: (data) => readAssembly(data, tables) });
}

function parseBend(source: Source, tables: Tables): ParsedJob {
  return parseWith(source, { fields: jobFields, tables, read: (data) => readJob(data, tables) });
}

function unreadable(findings: readonly Finding[]): Parsed<never> {
  return { units: 'mm', job: null, findings, locate: (later) => [...later] };
}

interface Rules<Read> {
  readonly fields: Block;
  readonly tables: Tables;
  readonly read: (data: unknown) => { readonly job: Read; readonly findings: readonly Finding[] };
}

function parseWith<Read extends { readonly units: LengthUnit }>(source: Source, rules: Rules<Read>): Parsed<Read> {
  const locate = (later: readonly Finding[]): Finding[] => withLines(later, source);
  const { data, findings: ofOld } = withoutRuns(source.data, rules.tables);
  const shape = rules.fields.shape().safeParse(data);
  const complaints = shape.success
    ? []
    : shape.error.issues.flatMap((issue) => explain(issue, valueAt(data, issue.path), rules.fields));
  const read = rules.read(data);
  const all = locate([...ofOld, ...complaints, ...read.findings]).sort((a, b) => (a.line ?? 0) - (b.line ?? 0));
  return { units: read.job.units, job: hasErrors(all) ? null : read.job, findings: firstFew(all), locate };
}

/** More mistakes than this are no longer read one by one. */
const MOST = 100;

function firstFew(findings: readonly Finding[]): readonly Finding[] {
  if (findings.length <= MOST) return findings;
  const rest = findings.length - MOST;
  return [...findings.slice(0, MOST), finding('more-mistakes', '', { rest })];
}

function valueAt(data: unknown, path: Path): unknown {
  return path.reduce<unknown>(
    (held, step) =>
      typeof held === 'object' && held !== null ? (held as Record<PropertyKey, unknown>)[step] : undefined,
    data,
  );
}

function withLines(findings: readonly Finding[], source: Source): Finding[] {
  return findings.map((finding): Finding => {
    const line =
      finding.path === '' || finding.line !== undefined ? undefined : source.lineOf(pathFromText(finding.path));
    return line === undefined ? finding : { ...finding, line };
  });
}
