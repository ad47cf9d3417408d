import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { InternalError } from '../../src/base/errors';
import { fixed } from '../../src/output/number';

describe('numbers as they leave the program', () => {
  it.each([
    [0, 6, '0'],
    [-0, 6, '0'],
    [-4e-7, 6, '0'],
    [1e-7, 6, '0'],
    [1 / 3, 6, '0.333333'],
    [-12.5, 6, '-12.5'],
    [100, 6, '100'],
    [1200.1, 2, '1200.1'],
    [1e11, 5, '100000000000'],
    [10, 0, '10'],
    [Math.tan(Math.PI / 8), 12, '0.414213562373'],
  ])('%d with %i decimals is %s', (value, decimals, text) => {
    expect(fixed(value, decimals)).toBe(text);
  });

  it('are plain decimals, within half of the last one', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e6, max: 1e6, noNaN: true }),
        fc.integer({ min: 0, max: 9 }),
        (value, decimals) => {
          const text = fixed(value, decimals);
          expect(text).toMatch(/^-?(?:0|[1-9]\d*)(?:\.\d*[1-9])?$/u);
          expect(text).not.toBe('-0');
          expect(Math.abs(Number(text) - value)).toBeLessThanOrEqual(0.5 * 10 ** -decimals + 1e-9);
        },
      ),
    );
  });

  it.each([NaN, Infinity, -Infinity, 1e13, -1e21])('refuse %d', (value) => {
    expect(() => fixed(value, 6)).toThrow(InternalError);
  });
});
