import type { z } from 'zod';
import { error, type Finding } from '../base/findings';
import { nearest } from '../base/suggest';
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
  undefined: 'nothing',
  null: 'nothing',
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
      return [
        value === undefined
          ? missing(path, knownKeys(path))
          : wrongKind(path, value, KINDS[issue.expected] ?? issue.expected),
      ];
    case 'invalid_format':
      // Only numbers with a unit of their own have a format.
      return [wrongKind(path, value, 'a number')];
    case 'invalid_union':
      return [value === undefined ? missing(path) : unionTrouble(issue, value)].flat();
    case 'too_small':
      return [
        error(
          'too-few',
          pathText(path),
          `${pathText(path)} needs at least ${issue.minimum} entries`,
          'add one, or leave the block out',
          { allowed: `at least ${issue.minimum}` },
        ),
      ];
    case 'too_big':
      return [
        error(
          'too-many',
          pathText(path),
          `${pathText(path)} may have at most ${issue.maximum} entries`,
          'split the job',
          { allowed: `at most ${issue.maximum}` },
        ),
      ];
    default:
      return [
        error(
          'bad-value',
          pathText(path),
          `${pathText(path)}: ${issue.message}`,
          'see the job file reference in the README',
          { got: show(value) },
        ),
      ];
  }
}

/** A union fails with one list of complaints per choice: where a block was given, the complaints about the block are the ones that help. */
function unionTrouble(issue: z.core.$ZodIssueInvalidUnion, value: unknown): Finding[] {
  if (isBlock(value)) {
    const inner = issue.errors.find((issues) =>
      issues.every((found) => found.path.length > 0 || found.code === 'unrecognized_keys'),
    );
    if (inner)
      return inner.flatMap((found) =>
        explain({ ...found, path: [...issue.path, ...found.path] }, inside(value, found.path)),
      );
  }
  return [wrongKind(issue.path, value, choices(issue))];
}

/** What a union takes: `a number, or text with its unit, or a block with from, to`. */
function choices(issue: z.core.$ZodIssueInvalidUnion): string {
  const kinds = issue.errors.flatMap((issues) =>
    issues.flatMap((found) => (found.code === 'invalid_type' && found.path.length === 0 ? [found.expected] : [])),
  );
  const words: Readonly<Record<string, string>> = {
    ...KINDS,
    string: kinds.includes('number') ? 'text with its unit' : 'a name',
    object: `a block with ${knownKeys(issue.path).join(', ')}`,
  };
  return kinds.map((kind) => words[kind] ?? kind).join(', or ');
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
  return error(
    'unknown-key',
    at,
    `there is no “${shorten(key)}” ${path.length > 0 ? `in ${pathText(path)}` : 'in a job'}`,
    near ? `did you mean “${near}”?` : 'remove it',
    {
      got: shorten(key),
      allowed: known.join(', '),
    },
  );
}

function badValue(path: Path, value: unknown, allowed: readonly string[]): Finding {
  if (value === undefined) return missing(path);
  const near = typeof value === 'string' ? nearest(value, allowed) : null;
  return error(
    'bad-value',
    pathText(path),
    `${pathText(path)} cannot be ${show(value)}`,
    near ? `did you mean “${near}”?` : `write ${allowed.join(' or ')}`,
    {
      got: show(value),
      allowed: allowed.join(', '),
    },
  );
}

function missing(path: Path, within: readonly string[] = []): Finding {
  return error(
    'missing',
    pathText(path),
    `${pathText(path)} is missing`,
    within.length > 0 ? `add it, with ${within.join(', ')}; the starters show how` : 'add it; the starters show how',
  );
}

function wrongKind(path: Path, value: unknown, wanted: string): Finding {
  const where = path.length > 0 ? pathText(path) : 'the job';
  return error(
    'wrong-kind',
    pathText(path),
    `${where} should be ${wanted}, not ${show(value)}`,
    hintForKind(path, value, wanted),
    { got: show(value), allowed: wanted },
  );
}

function hintForKind(path: Path, value: unknown, wanted: string): string {
  if (wanted === KINDS.string && (typeof value === 'number' || typeof value === 'boolean'))
    return `put it in quotes: "${value}"`;
  if (wanted === KINDS.number && typeof value === 'string') return 'write the number alone, without unit or quotes';
  if (wanted === KINDS.object) return `write it as a block with ${knownKeys(path).join(', ')}`;
  return 'see the job file reference in the README';
}
