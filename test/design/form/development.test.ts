import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coneThrough } from '../../../src/base/cone';
import { toBent, toFlat, toSpace, type ParallelSurface } from '../../../src/design/form/development';

const surfaces = fc
  .record({
    from: fc.double({ min: 15, max: 200, noNaN: true }),
    growth: fc.double({ min: -0.35, max: 0.35, noNaN: true }),
    length: fc.double({ min: 80, max: 900, noNaN: true }),
    offset: fc.double({ min: 0, max: 2, noNaN: true }),
    wrap: fc.double({ min: 0.2, max: 2.9, noNaN: true }),
  })
  .filter(({ from, growth, length }) => from + growth * length > 10)
  .map(({ from, growth, length, offset, wrap }): { surface: ParallelSurface; wrap: number } => ({
    surface: { cone: coneThrough(from, from + growth * length, length), offset },
    wrap,
  }));

type Space = readonly [number, number, number];
const distance = (a: readonly number[], b: readonly number[]): number =>
  Math.hypot(...a.map((value, index) => value - (b[index] ?? 0)));

/**
 * Lays a strip mesh of the bent surface flat, triangle by triangle, from edge lengths alone: the outside truth for the
 * closed development. Two rows of points, at both ends of the rulings.
 */
function unrollMesh(
  surface: ParallelSurface,
  wrap: number,
  strips: number,
): { a: [number, number]; b: [number, number] } {
  const length = surface.cone.length;
  const point = (x: number, index: number): Space => toSpace(surface, { x, wrap: (wrap * index) / strips });
  let a: [number, number] = [0, 0];
  let b: [number, number] = [length, 0];
  for (let index = 0; index < strips; index++) {
    const [a0, b0, a1, b1] = [point(0, index), point(length, index), point(0, index + 1), point(length, index + 1)];
    const nextA = apex(a, b, distance(a0, a1), distance(b0, a1));
    const nextB = apex(nextA, b, distance(a1, b1), distance(b0, b1));
    [a, b] = [nextA, nextB];
  }
  return { a, b };
}

/** The corner of a triangle on the left of p→q at given distances from p and q. */
function apex(p: [number, number], q: [number, number], fromP: number, fromQ: number): [number, number] {
  const base = distance(p, q);
  const along = (fromP ** 2 - fromQ ** 2 + base ** 2) / (2 * base);
  const aside = Math.sqrt(Math.max(0, fromP ** 2 - along ** 2));
  const [ux, uy] = [(q[0] - p[0]) / base, (q[1] - p[1]) / base];
  return [p[0] + along * ux - aside * uy, p[1] + along * uy + aside * ux];
}

describe('development', () => {
  it('agrees with an unrolled fine mesh of the cone within 1e-6 of its size', () => {
    fc.assert(
      fc.property(surfaces, ({ surface, wrap }) => {
        const mesh = unrollMesh(surface, wrap, 800);
        const size = distance(toFlat(surface, { x: surface.cone.length, wrap }), [0, 0]);
        expect(distance(mesh.a, toFlat(surface, { x: 0, wrap })) / size).toBeLessThan(1e-6);
        expect(distance(mesh.b, toFlat(surface, { x: surface.cone.length, wrap })) / size).toBeLessThan(1e-6);
      }),
      { numRuns: 60 },
    );
  });

  it('goes there and back', () => {
    fc.assert(
      fc.property(
        surfaces,
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        ({ surface, wrap }, along, round) => {
          const place = { x: along * surface.cone.length, wrap: round * wrap };
          const back = toBent(surface, toFlat(surface, place));
          expect(back.x).toBeCloseTo(place.x, 8);
          expect(back.wrap).toBeCloseTo(place.wrap, 9);
        },
      ),
    );
  });

  it('passes into the cylinder’s rectangle as the taper vanishes', () => {
    for (const growth of [0, 1e-13, 1e-10, 1e-7, -1e-7, -1e-10]) {
      const surface = { cone: coneThrough(50, 50 + growth * 400, 400), offset: 0.8 };
      const [x, y] = toFlat(surface, { x: 300, wrap: 1.5 });
      expect(Math.abs(x - 300)).toBeLessThan(1e-3 * (Math.abs(growth) * 1e7 + 1e-6));
      expect(Math.abs(y - 1.5 * 50.8)).toBeLessThan(1e-3 * (Math.abs(growth) * 1e7 + 1e-6));
      const back = toBent(surface, [x, y]);
      expect(back.x).toBeCloseTo(300, 6);
      expect(back.wrap).toBeCloseTo(1.5, 6);
    }
  });

  it('keeps the slant distance of the design: (R_A + K·t·cos β)/sin β + x from the apex', () => {
    const cone = coneThrough(35, 60, 620);
    const surface = { cone, offset: 0.8 };
    const apexX = -(35 + 0.8 * Math.cos(cone.halfAngle)) / Math.sin(cone.halfAngle);
    for (const x of [0, 200, 620]) {
      const flat = toFlat(surface, { x, wrap: 1.3 });
      expect(Math.hypot(flat[0] - apexX, flat[1])).toBeCloseTo(x - apexX, 8);
      expect(Math.atan2(flat[1], flat[0] - apexX)).toBeCloseTo(1.3 * Math.sin(cone.halfAngle), 10);
    }
  });
});
