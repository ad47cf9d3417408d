import { expect } from 'vitest';

/** In an expected value: a number this near, to half of the last of `digits` decimal places. */
export function near(value: number, digits = 9): unknown {
  return expect.closeTo(value, digits) as unknown;
}
