import * as z from 'zod/mini';
import { once } from '../../base/once';
import { described, type Field, type Words } from '../fields/field';
import type { Path } from '../path';
import { isBlock, type Range, type Reader } from '../reader';

/** A value that no single quantity is: how it may be written, and how it is read. */
interface Written<Value> {
  readonly shape: z.ZodMiniType;
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
    shape: once(() => about(shape, `${words.help}. ${writing}`)),
    read,
  };
}

/** The same shape with what is said of it there. */
export function about<Shape extends z.ZodMiniType>(shape: Shape, description: string): Shape {
  return described(z.clone(shape), description);
}

/** A length as it may be written. */
export const lengthShape = z.union([z.number(), z.string()]);

/** One length for all, or one by name: `38`, or `{ long: 30 mm, top: 36 mm }`. */
export function lengthByName(reader: Reader, path: Path, range: Range): number | Readonly<Record<string, number>> {
  const value = reader.at(path);
  if (!isBlock(value)) return reader.length(path, range) ?? NaN;
  return Object.fromEntries(Object.keys(value).map((key) => [key, reader.length([...path, key], range) ?? NaN]));
}
