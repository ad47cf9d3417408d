import { InternalError } from './errors';

const STEP_LIMIT = 200;

/**
 * The root of a continuous function between two points where its signs differ, to the last bits of a double
 * (interval narrower than `relativeTolerance` of the root). Regula falsi with the Illinois weight, halving
 * the interval whenever a step does not.
 * Source: Dowell & Jarratt, "A modified regula falsi method for computing the root of an equation", BIT 11 (1971).
 */
export function rootBetween(f: (x: number) => number, low: number, high: number, relativeTolerance = 4e-16): number {
  let a = low;
  let b = high;
  let fa = f(a);
  let fb = f(b);
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (!(fa * fb < 0)) throw new InternalError(`no sign change between ${low} (${fa}) and ${high} (${fb})`);
  for (let step = 0; step < STEP_LIMIT; step++) {
    const width = Math.abs(b - a);
    if (width <= relativeTolerance * Math.max(Math.abs(a), Math.abs(b))) break;
    const secant = b - (fb * (b - a)) / (fb - fa);
    const middle = a + (b - a) / 2;
    const inside = (secant - a) * (secant - b) < 0;
    const next = inside && step % 3 !== 2 ? secant : middle;
    if (next === a || next === b) break;
    const fNext = f(next);
    if (fNext === 0) return next;
    if (fNext * fb < 0) {
      a = b;
      fa = fb;
    } else {
      fa /= 2;
    }
    b = next;
    fb = fNext;
  }
  return b;
}
