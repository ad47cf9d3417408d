import type * as z from 'zod/mini';
import type { Finding } from '../base/findings';
import { finding } from '../findings/finding';
import { nearest } from '../base/suggest';
import type { Block } from './fields/field';
import { knownKeys } from './fields/look';
import { pathText, type Path } from './path';
import { shorten, show } from './show';

/** What a kind of value is called in the shop rather than in a program. */
const KINDS: Readonly<Record<string, string>> = {
  string: 'text',
  number: 'a number',
  boolean: 'yes or no',
  object: 'a block of keys',
  array: 'a list',
  tuple: 'a list',
  record: 'a block of keys',
  undefined: 'nothing',
  null: 'nothing',
};

/** One complaint of the schema of `root` as findings in shop words; `value` is what stands at the complaint's path. */
export function explain(issue: z.core.$ZodIssue, value: unknown, root: Block): Finding[] {
  const path = issue.path;
  switch (issue.code) {
    case 'unrecognized_keys':
      return issue.keys.map((key) =>
        PART_OF_NUMBER.test(key) ? decimalComma(path, key, value) : unknownKey(path, key, root),
      );
    case 'invalid_value':
      return [badValue(path, value, issue.values.map(String))];
    case 'invalid_type':
      return [
        value === undefined
          ? missing(path, knownKeys(path, root))
          : wrongKind(path, value, KINDS[issue.expected] ?? issue.expected),
      ];
    case 'invalid_format':
      // Only numbers with a unit of their own have a format.
      return [wrongKind(path, value, 'a number')];
    case 'invalid_union':
      return [value === undefined ? missing(path) : unionTrouble(issue, value, root)].flat();
    case 'too_small':
      return [finding('too-few', pathText(path), { least: Number(issue.minimum) })];
    case 'too_big':
      return [finding('too-many', pathText(path), { most: Number(issue.maximum) })];
    default:
      return [finding('bad-value', pathText(path), { got: show(value), near: null, allowed: [] })];
  }
}

/** A union fails with one list of complaints per choice: where a block was given, the complaints about the block are the ones that help. */
function unionTrouble(issue: z.core.$ZodIssueInvalidUnion, value: unknown, root: Block): Finding[] {
  if (isBlock(value)) {
    const [inner] = issue.errors
      .filter((issues) => issues.every((found) => found.path.length > 0 || found.code === 'unrecognized_keys'))
      .sort((a, b) => foreign(a) - foreign(b) || a.length - b.length);
    if (inner)
      return inner.flatMap((found) =>
        explain({ ...found, path: [...issue.path, ...found.path] }, inside(value, found.path), root),
      );
  }
  return [wrongKind(issue.path, value, choices(issue, root))];
}

/** How many keys a choice of a union does not know: the choice that was meant knows most of them. */
function foreign(issues: readonly z.core.$ZodIssue[]): number {
  return issues.filter(({ code, path }) => code === 'unrecognized_keys' && path.length === 0).length;
}

/** What a union takes: `a number, or text with its unit, or a block with from, to`. */
function choices(issue: z.core.$ZodIssueInvalidUnion, root: Block): string {
  const kinds = issue.errors.flatMap((issues) =>
    issues.flatMap((found) => (found.code === 'invalid_type' && found.path.length === 0 ? [found.expected] : [])),
  );
  const words: Readonly<Record<string, string>> = {
    ...KINDS,
    string: kinds.includes('number') ? 'text with its unit' : 'a name',
    object: `a block with ${knownKeys(issue.path, root).join(', ')}`,
  };
  return kinds.map((kind) => words[kind] ?? kind).join(', or ');
}

function inside(value: unknown, path: Path): unknown {
  return path.reduce<unknown>((held, step) => (isBlock(held) ? held[String(step)] : undefined), value);
}

function isBlock(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** What stands after the comma of `{ thickness: 1,5 mm }`: YAML takes it for a key. */
const PART_OF_NUMBER = /^\d+\s*(?:mm|cm|m|in|"|°)?$/u;

function decimalComma(path: Path, key: string, block: unknown): Finding {
  const whole = isBlock(block)
    ? Object.entries(block).filter(([, value]) => typeof value === 'number' && Number.isInteger(value))
    : [];
  const [only] = whole;
  const meant = whole.length === 1 && only ? `${only[0]}: ${String(only[1])}.${key}` : null;
  return finding('decimal-comma', pathText([...path, key]), { key: shorten(key), meant });
}

function unknownKey(path: Path, key: string, root: Block): Finding {
  const known = knownKeys(path, root);
  const at = pathText([...path, key]);
  // A key of the other kind of entry.
  if (known.includes(key)) return finding('strip-or-part', at, { key });
  if (key === 'corners' && path.length === 0 && known.includes('outline')) return finding('corners-as-drawn', at);
  const near = nearest(key, known);
  return finding('unknown-key', at, { key: shorten(key), within: pathText(path), near, known });
}

function badValue(path: Path, value: unknown, allowed: readonly string[]): Finding {
  if (value === undefined) return missing(path);
  const near = typeof value === 'string' ? nearestWord(value, allowed) : null;
  return finding('bad-value', pathText(path), { got: show(value), near, allowed });
}

/** `inches` begins as `in` does. */
function nearestWord(word: string, allowed: readonly string[]): string | null {
  return nearest(word, allowed) ?? allowed.find((each) => word.toLowerCase().startsWith(each.toLowerCase())) ?? null;
}

function missing(path: Path, within: readonly string[] = []): Finding {
  return finding('missing', pathText(path), { holds: within });
}

function wrongKind(path: Path, value: unknown, wanted: string): Finding {
  return finding('wrong-kind', pathText(path), {
    got: show(value),
    wanted,
    mend: mendFor(value, wanted),
    keys: knownKeys(path),
  });
}

/** What to do about a value of the wrong kind. */
function mendFor(value: unknown, wanted: string): 'comma' | 'quote' | 'bare number' | 'block' | 'look up' {
  if (typeof value === 'string' && /^\s*[+-]?\d+,\d+\s*°?\s*$/u.test(value)) return 'comma';
  if (wanted === KINDS.string && (typeof value === 'number' || typeof value === 'boolean')) return 'quote';
  if (wanted === KINDS.number && typeof value === 'string') return 'bare number';
  return wanted === KINDS.object ? 'block' : 'look up';
}
