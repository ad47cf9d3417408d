import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { minimumBetween } from '../../src/base/minimum';

describe('minimum between two places', () => {
  it('is the vertex of a parabola, or the nearer end where that lies outside', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -20, max: 20, noNaN: true }),
        fc.double({ min: 0.01, max: 100, noNaN: true }),
        (vertex, steep) => {
          expect(minimumBetween((x) => steep * (x - vertex) ** 2, -7, 9)).toBeCloseTo(
            Math.min(9, Math.max(-7, vertex)),
            6,
          );
        },
      ),
    );
  });

  it('is the lowest of several hollows, at an edge too', () => {
    // x⁴ − 2x² + x/10 has hollows near ±1, the left one lower.
    const two = (x: number): number => x ** 4 - 2 * x ** 2 + x / 10;
    const place = minimumBetween(two, -3, 3);
    expect(place).toBeLessThan(0);
    expect(4 * place ** 3 - 4 * place + 0.1).toBeCloseTo(0, 5);
    expect(minimumBetween(two, 0, 3)).toBeGreaterThan(0.9);
    expect(minimumBetween((x) => x, 2, 5)).toBe(2);
    expect(minimumBetween((x) => -x, 2, 5)).toBe(5);
    expect(minimumBetween((x) => Math.abs(x), 4, 4)).toBe(4);
  });

  it('is nowhere above either end', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -5, max: 5, noNaN: true }), { minLength: 4, maxLength: 4 }),
        ([a = 0, b = 0, c = 0, d = 0]) => {
          const wavy = (x: number): number => a * Math.sin(3 * x) + b * Math.cos(11 * x) + c * x + d * x * x;
          const least = wavy(minimumBetween(wavy, -1, 2));
          expect(least).toBeLessThanOrEqual(Math.min(wavy(-1), wavy(2)));
        },
      ),
    );
  });
});
