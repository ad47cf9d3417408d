import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  bulgeFromRadius,
  bulgeFromSagitta,
  bulgeFromSweep,
  pointOnSide,
  radiusFromBulge,
  sagittaFromBulge,
  sweepFromBulge,
} from '../../src/base/arc';
import { samplePoints } from '../helpers/loops';

const chords = fc.double({ min: 0.1, max: 3000, noNaN: true });
const bulges = fc.double({ min: 1e-6, max: 1, noNaN: true });

describe('bulges and what else an arc is known by', () => {
  it('turn into each other and back', () => {
    fc.assert(
      fc.property(chords, bulges, (chord, bulge) => {
        expect(bulgeFromSweep(sweepFromBulge(bulge)) / bulge).toBeCloseTo(1, 12);
        expect(bulgeFromSagitta(chord, sagittaFromBulge(chord, bulge)) / bulge).toBeCloseTo(1, 12);
        // Near a half circle the radius hardly depends on the bulge: half the digits are all there is.
        expect(bulgeFromRadius(chord, Math.max(chord / 2, radiusFromBulge(chord, bulge))) / bulge).toBeCloseTo(1, 6);
      }),
    );
  });

  it('a chord of 80 in a circle of R 50 stands 20 over (3-4-5 triangle: 50 − 30), and one longer than the diameter has none', () => {
    const bulge = bulgeFromRadius(80, 50);
    expect(sagittaFromBulge(80, bulge)).toBeCloseTo(20, 12);
    expect(bulge).toBeCloseTo(0.5, 12);
    expect(bulgeFromRadius(100, 50)).toBe(1);
    expect(bulgeFromRadius(100.1, 50)).toBeNaN();
  });

  it('points on a side are those found by halving the arc', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -6, max: 6, noNaN: true }),
        chords,
        fc.double({ min: -4, max: 4, noNaN: true }),
        (bulge, chord, angle) => {
          const [from, to] = [
            { x: 7, y: -3, bulge },
            { x: 7 + chord * Math.cos(angle), y: -3 + chord * Math.sin(angle), bulge: 0 },
          ];
          // The loop's way back is straight and adds only its own corner, the last.
          const points = samplePoints([from, to], 3).slice(0, -1);
          for (const [index, [x, y]] of points.entries()) {
            const [foundX, foundY] = pointOnSide(from, to, index / points.length);
            expect(Math.hypot(foundX - x, foundY - y)).toBeLessThan(1e-11 * chord * (1 + Math.abs(bulge)) + 1e-11);
          }
          const [endX, endY] = pointOnSide(from, to, 1);
          expect(Math.hypot(endX - to.x, endY - to.y)).toBeLessThan(1e-9);
        },
      ),
    );
  });
});
