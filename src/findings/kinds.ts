import type { Box, Measure, Placed } from '../base/findings';

/** The kinds of value a finding may hold: what the data is, by how it is said. Lengths in mm, angles in radians, forces in N, stresses in MPa. */
export interface Quantities {
  /** Of wood, places, spans: 41.3 mm, 1-5/8 in. */
  length: number;
  /** Of kerfs, fits, sheet thicknesses: 0.15 mm, 0.0059 in. */
  fine: number;
  /** As the maker wrote it, with digits enough to tell it from its neighbours. */
  given: number;
  /** An end of a range, as a round number: 2 mm, 0.079 in. */
  bound: number;
  /** Length by width of a board: 600 × 400 mm. */
  size: readonly [number, number];
  /** 95.3°. */
  angle: number;
  /** As read from a protractor: 84.25°. */
  reading: number;
  force: number;
  stress: number;
  /** Times something: 1.25. */
  ratio: number;
  /** A share, 0.05, said as 5 %. */
  percent: number;
  /** A plain number as it is. */
  number: number;
  /** Whole things: the words are given the number itself, for singular and plural. */
  count: number;
  /** A name or a word, said as it is. */
  text: string;
  /** S1, S2 and S3. */
  names: readonly string[];
  /** “a”, “b” or “c”. */
  choices: readonly string[];
  /** The whole of a list to choose from: a, b, c. */
  list: readonly string[];
  /** A thing and where it is, or how large: screw of S1 at 12 mm. */
  place: Placed;
  /** Things and their sizes: S1 (4 mm) and S2 (5 mm). */
  sized: readonly Placed[];
  /** A place by its two distances: (100 mm, 50.1 mm). */
  point: readonly [number, number];
  /** Shapes of a drawing, counted: 1: 400 × 300 mm at (0 mm, 0 mm), path “rim”; 2: … */
  boxes: readonly Box[];
  /** A value of any field, of the kind it brings along. */
  measure: Measure;
  /** Another field of the job, by its path: said as the reader knows it. */
  field: string;
}

export type Quantity = keyof Quantities;

/** A quantity; one that may be null; or one of a few words, for the words to choose by. */
export type Kind = Quantity | `${Quantity}?` | readonly string[];

export type Kinds = Readonly<Record<string, Kind>>;

/** The data of a kind. */
export type ValueOf<K extends Kind> = K extends readonly (infer Choice)[]
  ? Choice
  : K extends Quantity
    ? Quantities[K]
    : K extends `${infer Q extends Quantity}?`
      ? Quantities[Q] | null
      : never;

/** What the words are given for a kind: text in the reader's unit, a count as its number, a choice as itself. */
export type SaidOf<K extends Kind> = K extends readonly (infer Choice)[]
  ? Choice
  : K extends 'count'
    ? number
    : K extends 'count?'
      ? number | null
      : K extends `${string}?`
        ? string | null
        : string;

export type ValuesOf<K extends Kinds> = { readonly [Name in keyof K]: ValueOf<K[Name]> };
export type SaidValues<K extends Kinds> = { readonly [Name in keyof K]: SaidOf<K[Name]> };
