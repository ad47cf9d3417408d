import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boundsOf, boundsOfPoints } from '../../src/base/bounds';
import type { Drawing, Vertex } from '../../src/base/drawing';
import { InternalError } from '../../src/base/errors';
import { anyLoop, samplePoints } from '../helpers/loops';
import { cases } from '../helpers/cases';

const loop = (vertices: readonly Vertex[]): Drawing => ({ shapes: [{ kind: 'loop', operation: 'outline', vertices }] });

describe('the box round a drawing', () => {
  it.each<[string, Drawing, readonly number[]]>([
    [
      'half disc',
      loop([
        { x: -50, y: 0, bulge: 0 },
        { x: 50, y: 0, bulge: 1 },
      ]),
      [-50, 0, 50, 50],
    ],
    [
      'half disc hanging down',
      loop([
        { x: -50, y: 0, bulge: 1 },
        { x: 50, y: 0, bulge: 0 },
      ]),
      [-50, -50, 50, 0],
    ],
    [
      'lens of two quarter arcs of R 10: bulges of .414214 stand r(1 − cos 45°) over the chord',
      loop([
        { x: 0, y: 0, bulge: Math.tan(Math.PI / 8) },
        { x: 10 * Math.SQRT2, y: 0, bulge: Math.tan(Math.PI / 8) },
      ]),
      [0, 5 * Math.SQRT2 - 10, 10 * Math.SQRT2, 10 - 5 * Math.SQRT2],
    ],
    [
      'three quarters of a circle of R 10',
      loop([
        { x: 10, y: 0, bulge: Math.tan((3 * Math.PI) / 8) },
        { x: 0, y: -10, bulge: 0 },
      ]),
      [-10, -10, 10, 10],
    ],
    ['circle', { shapes: [{ kind: 'circle', operation: 'hole', x: 3, y: 4, radius: 2 }] }, [1, 2, 5, 6]],
    ['mark', { shapes: [{ kind: 'line', operation: 'mark', from: [4, -1], to: [-2, 7] }] }, [-2, -1, 4, 7]],
  ])('%s', (_, drawing, expected) => {
    const { minX, minY, maxX, maxY } = boundsOf(drawing);
    for (const [index, value] of [minX, minY, maxX, maxY].entries())
      expect(value).toBeCloseTo(expected[index] ?? NaN, 12);
  });

  it('holds every point of every arc and touches one on each side (points found by halving arcs)', () => {
    fc.assert(
      fc.property(anyLoop, (vertices) => {
        const bounds = boundsOf(loop(vertices));
        const points = samplePoints(vertices, 10);
        const sampled = boundsOfPoints(points);
        const size = Math.max(bounds.maxX - bounds.minX, bounds.maxY - bounds.minY);
        // 1024 pieces of at most 320°: a point lies within r(1 − cos(0.16°)) of the furthest one, r at most half the size.
        const reach = size * 2e-6;
        for (const outside of [
          sampled.minX - bounds.minX,
          sampled.minY - bounds.minY,
          bounds.maxX - sampled.maxX,
          bounds.maxY - sampled.maxY,
        ]) {
          expect(outside).toBeGreaterThan(-1e-9 * size);
          expect(outside).toBeLessThan(reach);
        }
      }),
      { numRuns: cases(200) },
    );
  });

  it('keeps its digits where an arc is all but straight', () => {
    for (const bulge of [1e-6, -1e-9, 1e-14, 5e-324]) {
      const { minX, minY, maxX, maxY } = boundsOf(
        loop([
          { x: 0, y: 0, bulge },
          { x: 1000, y: 700, bulge: 0 },
          { x: 0, y: 700, bulge: 0 },
        ]),
      );
      expect([minX, minY, maxX, maxY].map((value) => Math.round(value * 1e9) / 1e9)).toEqual([0, 0, 1000, 700]);
    }
  });

  it('goes round the strokes a label is engraved by', () => {
    expect(
      boundsOf({
        shapes: [
          {
            kind: 'stroke',
            operation: 'label',
            points: [
              [3, 9],
              [-4, 2],
              [5, -6],
            ],
          },
        ],
      }),
    ).toEqual({ minX: -4, minY: -6, maxX: 5, maxY: 9 });
  });

  it('leaves texts out, and cannot be taken of nothing', () => {
    const label = {
      kind: 'text',
      operation: 'label',
      x: 900,
      y: 900,
      height: 5,
      angle: 0,
      anchor: 'start',
      text: 'far',
    } as const;
    expect(boundsOf({ shapes: [label, { kind: 'circle', operation: 'hole', x: 0, y: 0, radius: 1 }] })).toEqual({
      minX: -1,
      minY: -1,
      maxX: 1,
      maxY: 1,
    });
    expect(() => boundsOf({ shapes: [label] })).toThrow(InternalError);
  });
});
