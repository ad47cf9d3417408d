import type * as z from 'zod/mini';
import type { Path } from '../path';
import type { Range, Reader } from '../reader';
import type { Setting } from '../setting';

/** What a value is, which decides how it is written, read, shown and printed. */
export type QuantityName =
  | 'structure'
  | 'text'
  | 'choice'
  | 'row'
  | 'yes-no'
  | 'colour'
  | 'length'
  | 'thickness'
  | 'angle'
  | 'force'
  | 'ratio'
  | 'count';

/** One of the values a field may have, and what it is called at the bench. */
export interface Choice {
  readonly value: string;
  readonly text: string;
}

/** What is known of a quantity without reading a value of it. */
export interface Kind {
  readonly name: QuantityName;
  /** Kinds of plain data it may be written as. */
  readonly shapes: readonly z.ZodMiniType[];
  /** How it is written, for the schema: `A number in the job’s unit, or text with its own`. Empty where it goes without saying. */
  readonly writing: string;
  /** Values it may be chosen from; null where it is typed. */
  readonly choices: ((setting: Setting) => readonly Choice[]) | null;
  /** Least and most: lengths mm, angles degrees, forces N; null where nothing bounds it. */
  readonly bounds: ((setting: Setting) => Range) | null;
}

/** A kind of value with the way to read one. */
export interface Quantity<Value> extends Kind {
  /** Stands for a required value that is missing or wrong, which the job’s findings then say. */
  readonly none: Value;
  /** The value at a path; undefined where there is none, or one that is wrong (the reader then has a finding). */
  readonly read: (reader: Reader, path: Path) => Value | undefined;
  /** A value as words, in the setting’s unit. */
  readonly print: (value: Value, setting: Setting) => string;
}
