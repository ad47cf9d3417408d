import type { z } from 'zod';
import { error, type Finding } from '../base/findings';
import { nearest } from '../base/suggest';
import { knownKeys } from './schema';
import { pathText, type Path } from './path';

/** What a kind of value is called in the shop rather than in a program. */
const KINDS: Readonly<Record<string, string>> = {
  string: 'text',
  number: 'a number',
  boolean: 'yes or no',
  object: 'a block of keys',
  array: 'a list',
  undefined: 'nothing',
  null: 'nothing',
  nan: 'not a number',
};

/** One complaint of the schema as findings in shop words; `value` is what stands at the complaint's path. */
export function explain(issue: z.core.$ZodIssue, value: unknown): Finding[] {
  const path = issue.path;
  switch (issue.code) {
    case 'unrecognized_keys':
      return issue.keys.map((key) => unknownKey(path, key));
    case 'invalid_value':
      return [badValue(path, value, issue.values.map(String))];
    case 'invalid_type':
      return [value === undefined ? missing(path) : wrongKind(path, value, kindName(issue.expected))];
    case 'invalid_union':
      return [value === undefined ? missing(path) : unionTrouble(issue, value)].flat();
    case 'too_small':
      return [error('too-few', pathText(path), `${pathText(path)} needs at least ${issue.minimum} entries`, 'add one, or leave the block out', { allowed: `at least ${issue.minimum}` })];
    case 'too_big':
      return [error('too-many', pathText(path), `${pathText(path)} may have at most ${issue.maximum} entries`, 'split the job', { allowed: `at most ${issue.maximum}` })];
    default:
      return [error('bad-value', pathText(path), `${pathText(path)}: ${issue.message}`, 'see the job file reference in the README', { got: show(value) })];
  }
}

/** A union fails with one list of complaints per choice: where a block was given, the complaints about the block are the ones that help. */
function unionTrouble(issue: z.core.$ZodIssueInvalidUnion, value: unknown): Finding[] {
  if (isBlock(value)) {
    const inner = issue.errors.find((issues) => issues.every((found) => found.path.length > 0 || found.code === 'unrecognized_keys'));
    if (inner) return inner.flatMap((found) => explain({ ...found, path: [...issue.path, ...found.path] }, inside(value, found.path)));
  }
  return [wrongKind(issue.path, value, 'a number, or text such as 38 mm or 1-1/2 in')];
}

function inside(value: unknown, path: Path): unknown {
  return path.reduce<unknown>((held, step) => (isBlock(held) ? held[String(step)] : undefined), value);
}

function isBlock(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function unknownKey(path: Path, key: string): Finding {
  const known = knownKeys(path);
  const near = nearest(key, known);
  const at = pathText([...path, key]);
  return error('unknown-key', at, `there is no “${shorten(key)}” ${path.length > 0 ? `in ${pathText(path)}` : 'in a job'}`, near ? `did you mean “${near}”?` : 'remove it', {
    got: shorten(key),
    allowed: known.join(', '),
  });
}

function badValue(path: Path, value: unknown, allowed: readonly string[]): Finding {
  if (value === undefined) return missing(path);
  const near = typeof value === 'string' ? nearest(value, allowed) : null;
  return error('bad-value', pathText(path), `${pathText(path)} cannot be ${show(value)}`, near ? `did you mean “${near}”?` : `write ${allowed.join(' or ')}`, {
    got: show(value),
    allowed: allowed.join(', '),
  });
}

function missing(path: Path): Finding {
  return error('missing', pathText(path), `${pathText(path)} is missing`, 'add it; the starters show how');
}

function wrongKind(path: Path, value: unknown, wanted: string): Finding {
  const where = path.length > 0 ? pathText(path) : 'the job';
  return error('wrong-kind', pathText(path), `${where} should be ${wanted}, not ${show(value)}`, 'see the job file reference in the README', { got: show(value), allowed: wanted });
}

function kindName(kind: string): string {
  return KINDS[kind] ?? kind;
}

/** A value as the maker wrote it, short enough for a message. */
export function show(value: unknown): string {
  if (typeof value === 'string') return `“${shorten(value)}”`;
  if (typeof value === 'number') return Number.isNaN(value) ? 'not a number' : String(value);
  if (typeof value === 'boolean') return String(value);
  if (value === null || value === undefined) return 'nothing';
  return Array.isArray(value) ? 'a list' : 'a block of keys';
}

/** At most 60 characters, control characters shown as �. */
export function shorten(text: string): string {
  const plain = text.replaceAll(/[\p{Cc}\p{Cs}\p{Zl}\p{Zp}]/gu, '\uFFFD');
  return plain.length > 60 ? `${plain.slice(0, 57)}…` : plain;
}
