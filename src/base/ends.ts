/** An end of a bend, form or spine, as it is printed: A, where places along it are counted from, or B. */
export type End = 'A' | 'B';

/** A value at either end. */
export type Ends<Value = number> = Readonly<Record<End, Value>>;

/** What holds at either end. */
export function atEnds<Value>(of: (end: End) => Value): Ends<Value> {
  return { A: of('A'), B: of('B') };
}
