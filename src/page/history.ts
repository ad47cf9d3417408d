/** Past and future of a value that a person edits: one step back for each stretch of typing in one place. */
export interface History<Value> {
  readonly past: readonly Value[];
  readonly present: Value;
  readonly future: readonly Value[];
  /** The place the last change was made in; a further change there joins it. */
  readonly place: string | null;
}

/** Steps that can be taken back. */
const LONGEST = 200;

export function begin<Value>(present: Value): History<Value> {
  return { past: [], present, future: [], place: null };
}

/** A change made at `place`. */
export function edit<Value>(history: History<Value>, present: Value, place: string): History<Value> {
  if (history.place === place && history.past.length > 0) return { ...history, present, future: [] };
  return { past: [...history.past, history.present].slice(-LONGEST), present, future: [], place };
}

/** The typing in one place is over; the next change begins a step of its own. */
export function settle<Value>(history: History<Value>): History<Value> {
  return history.place === null ? history : { ...history, place: null };
}

export function undo<Value>({ past, present, future }: History<Value>): History<Value> {
  const before = past.at(-1);
  return before === undefined
    ? { past, present, future, place: null }
    : { past: past.slice(0, -1), present: before, future: [present, ...future], place: null };
}

export function redo<Value>({ past, present, future }: History<Value>): History<Value> {
  const [next, ...later] = future;
  return next === undefined
    ? { past, present, future, place: null }
    : { past: [...past, present], present: next, future: later, place: null };
}
