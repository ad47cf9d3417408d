import type { Finding } from '../base/findings';
import { finding } from '../findings/finding';
import type { Tables } from '../tables/tables';
import { isBlock, Reader } from './reader';

/** The key by which a job of one bend once said which edges share its form. */
const OLD = 'runs';

/** Plain data without what only older jobs say, and what is to be said of that: nothing where it is not there. */
export function withoutRuns(
  data: unknown,
  tables: Tables,
): { readonly data: unknown; readonly findings: readonly Finding[] } {
  if (!isBlock(data) || !Object.hasOwn(data, OLD)) return { data, findings: [] };
  const { [OLD]: _, ...rest } = data;
  return { data: rest, findings: [runsGone(new Reader(data, tables))] };
}

const ANY = { min: -Infinity, max: Infinity };

/** An edge of the old job, as a bend of a panel: its radii where it begins and ends, mm. */
interface Edge {
  readonly name: string;
  readonly length: number;
  readonly from: number;
  readonly to: number;
}

/** What takes the place of the runs, out of the job's own numbers: its first two edges on one base. */
function runsGone(reader: Reader): Finding {
  const length = (...path: readonly (string | number)[]): number => reader.length(path, ANY) ?? NaN;
  const angle = reader.angle(['bend', 'angle'], ANY) ?? NaN;
  const both = length('bend', 'radius');
  const radius = Number.isNaN(both)
    ? { from: length('bend', 'radius', 'from'), to: length('bend', 'radius', 'to') }
    : { from: both, to: both };
  const whole = length('bend', 'length');
  const [held, free] = [length('bend', 'legs', 'held'), length('bend', 'legs', 'free')];
  const radiusAt = (x: number): number => radius.from + ((radius.to - radius.from) * x) / whole;
  const written = reader.at([OLD]);
  const edges = (Array.isArray(written) ? written : []).map((_, index): Edge => {
    const [from, to] = [length(OLD, index, 'from'), length(OLD, index, 'to')];
    const name = reader.text([OLD, index, 'name']) ?? '';
    return { name, length: to - from, from: radiusAt(from), to: radiusAt(to) };
  });
  const [first, second] = edges.filter(isWhole);
  if (!first || !(angle > 0) || !(held > 0) || !(free > 0)) return finding('runs-gone', OLD, noWords);
  return finding('runs-gone', OLD, {
    ...namesOf(first.name, second?.name ?? ''),
    angle,
    ...{ length: first.length, depth: second?.length ?? Math.max(held, free), leg: Math.min(held, free) },
    ...{ from: first.from, to: first.to, otherFrom: second?.from ?? null, otherTo: second?.to ?? null },
    radii: reader.text(['bend', 'radiusOf']) === 'form' ? 'form' : 'finished',
  });
}

const noWords = {
  ...{ one: null, back: null, other: null, top: null, angle: null, length: null, depth: null, leg: null },
  ...{ from: null, to: null, otherFrom: null, otherTo: null },
  radii: 'finished',
} as const;

function isWhole({ length, from, to }: Edge): boolean {
  return length > 0 && from > 0 && to > 0;
}

/** The four edges of the base, as they may stand in a job file: the first two runs' own names where an edge may be called so. */
function namesOf(first: string, second: string): Readonly<Record<'one' | 'back' | 'other' | 'top', string>> {
  const taken = new Set<string>();
  const choose = (...wanted: readonly string[]): string => {
    const name = wanted.find((each) => each !== '' && !each.includes('.') && !taken.has(each)) ?? '';
    taken.add(name);
    return inYaml(name);
  };
  const one = choose(first.trim(), 'long');
  const other = choose(second.trim(), 'short', 'across');
  return { one, other, back: choose('back', 'back edge', 'far edge'), top: choose('top', 'top edge', 'far side') };
}

/** Words that YAML, or a reader of an older one, takes for something else. */
const NOT_TEXT = /^(?:true|false|null|yes|no|on|off|y|n)$/iu;

function inYaml(name: string): string {
  return /^[\p{L}][\p{L}\p{N} -]*$/u.test(name) && !NOT_TEXT.test(name) ? name : JSON.stringify(name);
}
