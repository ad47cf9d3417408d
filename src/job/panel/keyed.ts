import * as z from 'zod';
import { once } from '../../base/once';
import type { Field, Words } from '../fields/field';
import type { Path } from '../path';
import { isBlock, type Range, type Reader } from '../reader';

/** A value that no single quantity is: how it may be written, and how it is read. */
interface Written<Value> {
  readonly shape: z.ZodType;
  readonly writing: string;
  readonly required: boolean;
  /** What holds where it is left out, as words; empty where it must be there. */
  readonly without: string;
  readonly read: (reader: Reader, path: Path) => Value;
}

/** Describes such a field. */
export function written<Value>(
  words: Words,
  { shape, writing, required, without, read }: Written<Value>,
): Field<Value> {
  return {
    node: 'field',
    ...words,
    kind: { name: 'structure', shapes: [shape], writing, choices: null, bounds: null },
    required,
    unlessSaid: required ? null : () => without,
    standard: null,
    shape: once(() => shape.meta({ description: `${words.help}. ${writing}` })),
    read,
  };
}

/** A length as it may be written. */
export const lengthShape = z.union([z.number(), z.string()]);

/** One length for all, or one by name: `38`, or `{ long: 30 mm, top: 36 mm }`. */
export function lengthByName(reader: Reader, path: Path, range: Range): number | Readonly<Record<string, number>> {
  const value = reader.at(path);
  if (!isBlock(value)) return reader.length(path, range) ?? NaN;
  return Object.fromEntries(Object.keys(value).map((key) => [key, reader.length([...path, key], range) ?? NaN]));
}
