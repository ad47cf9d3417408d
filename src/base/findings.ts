/**
 * A finding is what the program says about a job: a mistake, a doubt or a remark. It is data: a code and the values it speaks of.
 * `findings/finding.ts` makes one, checked against the catalogue; `findings/say.ts` words it in the reader's unit.
 *
 * - `error`: the job is wrong or impossible; nothing is written.
 * - `warning`: doubtful but buildable.
 * - `note`: worth knowing.
 */
export interface Finding {
  /** Stable, lower-case words joined by hyphens, e.g. `unknown-metal`; declared once in `findings/catalogue`. */
  readonly code: string;
  readonly level: Level;
  /** Where in the job, e.g. `bend.radius.from` or `offcuts[1].width`; empty for the job as a whole. */
  readonly path: string;
  /** What it speaks of, by name: mm, radians, N, MPa, counts, names; the catalogue says which is which. */
  readonly values: Readonly<Record<string, Value>>;
  /** Line in the job's text, counted from 1, where the text is known. */
  readonly line?: number;
  /** Names of the bends of a panel that it speaks of; absent where it speaks of the whole. */
  readonly bends?: readonly string[];
}

export type Level = 'error' | 'warning' | 'note';

/** A value of a finding, as data. */
export type Value =
  | number
  | string
  | null
  | readonly string[]
  | readonly [number, number]
  | Placed
  | readonly Placed[]
  | Measure
  | readonly Box[];

/** A named thing with a length of its own or a place: `S1`, 4 mm. */
export interface Placed {
  readonly name: string;
  readonly mm: number | null;
}

/** A number that brings its kind along, for findings about any field: 200 N, 38 mm, 5. */
export interface Measure {
  readonly of: 'given' | 'bound' | 'force' | 'degrees' | 'number';
  readonly value: number;
}

/** A shape of a drawing: what it is called, length by width, and its lower left corner; mm. */
export interface Box {
  readonly name: string;
  readonly size: readonly [number, number];
  readonly at: readonly [number, number];
}

/** A finding in words. */
export interface Words {
  readonly message: string;
  /** What to change. */
  readonly hint: string;
  /** What was found, for mistakes in a value. */
  readonly got?: string;
  /** What would do. */
  readonly allowed?: string;
}

/** Whether any finding forbids building the job. */
export function hasErrors(findings: readonly { readonly level: Level }[]): boolean {
  return findings.some(({ level }) => level === 'error');
}

/** What a stage gives back: its value, or null where errors left nothing to give, and what it found. */
export interface Staged<Value> {
  readonly value: Value;
  readonly findings: readonly Finding[];
}
