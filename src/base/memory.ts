/**
 * Keeps what was worked out, by what it was worked out from: plain data, compared by value. `what` names the working out, so that two of them never answer for
 * one another.
 */
export type Memory = <Value>(what: string, from: unknown, work: () => Value) => Value;

/** Keeps nothing. */
export const afresh: Memory = (_what, _from, work) => work();

/** A memory of its own, which lasts as long as whoever asked for it. What it gives back is shared by all who ask: nobody may change it. */
export function memory(): Memory {
  const known = new Map<string, { readonly value: unknown }>();
  return <Value>(what: string, from: unknown, work: () => Value): Value => {
    const key = `${what} ${JSON.stringify(from)}`;
    const before = known.get(key);
    // One name stands for one working out, and so for one type of value.
    if (before) return before.value as Value;
    const value = work();
    known.set(key, { value });
    return value;
  };
}
