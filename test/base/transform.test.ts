import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loopArea } from '../../src/base/area';
import type { Drawing, Shape } from '../../src/base/drawing';
import { moveDrawing } from '../../src/base/transform';
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
