import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loopArea } from '../../src/base/area';
import { anyLoop, samplePoints } from '../helpers/loops';
import { cases } from '../helpers/cases';

const polygonArea = (points: readonly (readonly [number, number])[]): number =>
  points.reduce((sum, [x, y], index) => {
    const [nextX, nextY] = points[(index + 1) % points.length] ?? [NaN, NaN];
    return sum + (x * nextY - nextX * y) / 2;
  }, 0);

describe('area of a loop', () => {
  it.each([
    [
      'circle of two halves, R 20: πr²',
      [
        { x: -20, y: 0, bulge: 1 },
        { x: 20, y: 0, bulge: 1 },
      ],
      400 * Math.PI,
    ],
    [
      'the same clockwise',
      [
        { x: -20, y: 0, bulge: -1 },
        { x: 20, y: 0, bulge: -1 },
      ],
      -400 * Math.PI,
    ],
    [
      'slot 30 between centres, R 5: 30·10 + π·25',
      [
        { x: 0, y: -5, bulge: 0 },
        { x: 30, y: -5, bulge: 1 },
        { x: 30, y: 5, bulge: 0 },
        { x: 0, y: 5, bulge: 1 },
      ],
      300 + 25 * Math.PI,
    ],
    [
      'three quarters of a disc, R 10, and the triangle to its chord: ¾πr² + r²/2',
      [
        { x: 10, y: 0, bulge: Math.tan((3 * Math.PI) / 8) },
        { x: 0, y: -10, bulge: 0 },
      ],
      75 * Math.PI + 50,
    ],
  ])('%s', (_, vertices, area) => {
    expect(loopArea(vertices)).toBeCloseTo(area, 10);
  });

  it('is that of a polygon of points found by halving the arcs', () => {
    fc.assert(
      fc.property(anyLoop, (vertices) => {
        const points = samplePoints(vertices, 10);
        const reach = Math.max(...points.map(([x, y]) => Math.hypot(x, y)));
        // Each of 1024 chords of an arc of at most 320° leaves out r²θ³/12; seven arcs at most.
        expect(Math.abs(loopArea(vertices) - polygonArea(points))).toBeLessThan(1e-4 * reach ** 2);
      }),
      { numRuns: cases(200) },
    );
  });

  it('of all but straight arcs is the segment ⅔·chord·sagitta, no digit lost', () => {
    for (const bulge of [1e-3, 1e-5, 1e-8, 1e-12, 1e-300]) {
      const segment = loopArea([
        { x: 0, y: 0, bulge },
        { x: 600, y: 0, bulge: 0 },
      ]);
      expect(segment / ((2 / 3) * 600 * ((bulge * 600) / 2))).toBeCloseTo(1, 5);
    }
    // The two formulas meet without a step where the one takes over from the other (sweep 0.02).
    const at = (sweep: number): number =>
      loopArea([
        { x: 0, y: 0, bulge: Math.tan(sweep / 4) },
        { x: 1, y: 0, bulge: 0 },
      ]) / sweep;
    expect(at(0.02 - 1e-9) / at(0.02 + 1e-9)).toBeCloseTo(1, 9);
  });
});
