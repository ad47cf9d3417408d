import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loopArea } from '../../src/base/area';
import type { Drawing, Shape } from '../../src/base/drawing';
import { inCorner, moveDrawing, scaleDrawing } from '../../src/base/transform';
import { anyLoop, samplePoints } from '../helpers/loops';

const length = fc.double({ min: -2000, max: 2000, noNaN: true });
const moves = fc.record({
  dx: length,
  dy: length,
  angle: fc.oneof(
    fc.double({ min: -10, max: 10, noNaN: true }),
    fc.constantFrom(0, 1, 2, 3, -1, 5).map((quarters) => (quarters * Math.PI) / 2),
  ),
});

const circle = { kind: 'circle', operation: 'hole', x: 10, y: 0, radius: 3 } as const;
const line = { kind: 'line', operation: 'mark', from: [0, 0], to: [10, 0] } as const;
const text = {
  kind: 'text',
  operation: 'label',
  x: 10,
  y: 5,
  height: 4,
  angle: 0.25,
  anchor: 'end',
  text: 'S1',
} as const;
const stroke = {
  kind: 'stroke',
  operation: 'label',
  points: [
    [0, 0],
    [10, 0],
    [10, 5],
  ],
} as const;

describe('a drawing moved', () => {
  it('a quarter turn is exact: x to y, y to −x, then the shift', () => {
    const { shapes } = moveDrawing({ shapes: [circle, line, text, stroke] }, { dx: 100, dy: 50, angle: Math.PI / 2 });
    expect(shapes).toEqual([
      { ...circle, x: 100, y: 60 },
      { ...line, from: [100, 50], to: [100, 60] },
      { ...text, x: 95, y: 60, angle: 0.25 + Math.PI / 2 },
      {
        ...stroke,
        points: [
          [100, 50],
          [100, 60],
          [95, 60],
        ],
      },
    ]);
  });

  it.each([
    [-1, [5, -10]],
    [2, [-10, -5]],
    [3, [5, -10]],
    [5, [-5, 10]],
    [-6, [-10, -5]],
  ] as const)('%s quarter turns are exact', (quarters, [x, y]) => {
    const [turned] = moveDrawing({ shapes: [text] }, { dx: 0, dy: 0, angle: (quarters * Math.PI) / 2 }).shapes;
    expect(turned).toMatchObject({ x, y });
  });

  it('into the corner: nothing left of or below the origin', () => {
    const loop = {
      kind: 'loop',
      operation: 'outline',
      vertices: [
        { x: -4, y: 7, bulge: 0 },
        { x: 6, y: 7, bulge: 0.5 },
        { x: 6, y: 27, bulge: 0 },
      ],
    } as const;
    const [moved, hole] = inCorner({ shapes: [loop, { ...circle, x: 0, y: 20 }] }).shapes;
    // The side from (6, 7) to (6, 27), with a bulge of ½, stands out to the right; the circle lies within.
    expect(moved).toMatchObject({
      vertices: [
        { x: 0, y: 0 },
        { x: 10, y: 0, bulge: 0.5 },
        { x: 10, y: 20 },
      ],
    });
    expect(hole).toMatchObject({ x: 4, y: 13, radius: 3 });
  });

  it('scaled: places, radii and heights of text; bulges and angles stay', () => {
    const loop = {
      kind: 'loop',
      operation: 'outline',
      vertices: [
        { x: -4, y: 7, bulge: 0.5 },
        { x: 6, y: 8, bulge: 0 },
      ],
    } as const;
    expect(scaleDrawing({ shapes: [loop, { ...circle, y: 2 }, { ...line, from: [1, 2] }, stroke, text] }, 10)).toEqual({
      shapes: [
        {
          ...loop,
          vertices: [
            { x: -40, y: 70, bulge: 0.5 },
            { x: 60, y: 80, bulge: 0 },
          ],
        },
        { ...circle, x: 100, y: 20, radius: 30 },
        { ...line, from: [10, 20], to: [100, 0] },
        {
          ...stroke,
          points: [
            [0, 0],
            [100, 0],
            [100, 50],
          ],
        },
        { ...text, x: 100, y: 50, height: 40 },
      ],
    });
  });

  it('keeps areas and bulges, and moves every point of an arc as a body', () => {
    fc.assert(
      fc.property(anyLoop, moves, (vertices, move) => {
        const [moved] = moveDrawing({ shapes: [{ kind: 'loop', operation: 'groove', vertices }] }, move).shapes;
        if (moved?.kind !== 'loop') throw new Error('no loop');
        expect(moved.operation).toBe('groove');
        expect(moved.vertices.map(({ bulge }) => bulge)).toEqual(vertices.map(({ bulge }) => bulge));
        const area = loopArea(vertices);
        expect(Math.abs(loopArea(moved.vertices) - area)).toBeLessThan(1e-6 * Math.max(1, Math.abs(area)));
        const [before, after] = [samplePoints(vertices, 3), samplePoints(moved.vertices, 3)];
        for (const [index, [x, y]] of before.entries()) {
          const [movedX = NaN, movedY = NaN] = after[index] ?? [];
          expect(Math.abs(movedX - (x * Math.cos(move.angle) - y * Math.sin(move.angle) + move.dx))).toBeLessThan(1e-8);
          expect(Math.abs(movedY - (x * Math.sin(move.angle) + y * Math.cos(move.angle) + move.dy))).toBeLessThan(1e-8);
        }
      }),
    );
  });

  it('back again is where it was', () => {
    fc.assert(
      fc.property(moves, ({ dx, dy, angle }) => {
        const there: Drawing = moveDrawing({ shapes: [circle, line, text] }, { dx, dy, angle });
        const back = moveDrawing(moveDrawing(there, { dx: -dx, dy: -dy, angle: 0 }), { dx: 0, dy: 0, angle: -angle });
        const numbers = (shapes: readonly Shape[]): number[] =>
          shapes.flatMap((shape) =>
            Object.values(shape)
              .flat()
              .filter((value) => typeof value === 'number'),
          );
        const [found, wanted] = [numbers(back.shapes), numbers([circle, line, text])];
        expect(found).toHaveLength(wanted.length);
        for (const [index, value] of wanted.entries())
          expect(Math.abs((found[index] ?? NaN) - value)).toBeLessThan(1e-9);
      }),
    );
  });
});
