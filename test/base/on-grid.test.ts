import { describe, expect, it } from 'vitest';
import { at } from '../../src/base/at';
import { loopOnGrid, onGrid } from '../../src/base/on-grid';

/** A loop of short arcs round a circle of 33 mm, its places off by so much here and there, as another engine's sines would have them. */
function arcs(off: number): { x: number; y: number; bulge: number }[] {
  return Array.from({ length: 90 }, (_, index) => {
    const turn = (index * Math.PI) / 45 + 0.1;
    const wrong = index % 3 === 0 ? off : -off;
    return { x: 33 * Math.cos(turn) + wrong, y: 33 * Math.sin(turn) - wrong, bulge: Math.tan(Math.PI / 180) + wrong };
  });
}

describe('a drawing on the grid', () => {
  it('is the same, arcs too, where its places differ by less than rounding comes to', () => {
    expect(loopOnGrid(arcs(1e-12))).toEqual(loopOnGrid(arcs(0)));
  });

  it('strays from what it was by no more than the grid: places, and the height of its arcs', () => {
    const [was, is] = [arcs(0), loopOnGrid(arcs(0))];
    const height = (loop: typeof was, index: number): number => {
      const [from, to] = [at(loop, index), at(loop, (index + 1) % loop.length)];
      return (from.bulge * Math.hypot(to.x - from.x, to.y - from.y)) / 2;
    };
    for (const index of was.keys()) {
      expect(Math.abs(at(is, index).x - at(was, index).x)).toBeLessThan(0.51e-6);
      expect(Math.abs(at(is, index).y - at(was, index).y)).toBeLessThan(0.51e-6);
      expect(Math.abs(height(is, index) - height(was, index))).toBeLessThan(0.6e-6);
    }
  });

  it('leaves straight sides straight, and a side of no length too', () => {
    const half = { x: 10.0000001, y: 0, bulge: 1 };
    const found = loopOnGrid([
      { x: 0.0000001, y: 0, bulge: 0 },
      half,
      { x: 10, y: 8, bulge: 0.3 },
      { x: 10.0000002, y: 8, bulge: 0 },
    ]);
    expect(found.map(({ bulge }) => bulge)).toEqual([0, expect.closeTo(1, 6), 0, 0]);
    expect(found.map(({ x }) => x)).toEqual([0, 10, 10, 10]);
  });

  it('takes loops, strokes and text by their places', () => {
    const text = {
      kind: 'text',
      operation: 'label',
      height: 4.00000012,
      angle: 0.3,
      anchor: 'end',
      text: 'S1',
    } as const;
    expect(
      onGrid({
        shapes: [
          { kind: 'loop', operation: 'outline', vertices: [{ x: 3.0000004, y: -1.0000004, bulge: 0 }] },
          {
            kind: 'stroke',
            operation: 'label',
            points: [
              [1.0000004, 2],
              [4, 5.0000004],
            ],
          },
          { ...text, x: 7.0000004, y: 8.0000004 },
        ],
      }).shapes,
    ).toEqual([
      { kind: 'loop', operation: 'outline', vertices: [{ x: 3, y: -1, bulge: 0 }] },
      {
        kind: 'stroke',
        operation: 'label',
        points: [
          [1, 2],
          [4, 5],
        ],
      },
      { ...text, x: 7, y: 8 },
    ]);
  });

  it('keeps what straight lines, circles and letters are, but for their places', () => {
    const drawing = onGrid({
      shapes: [
        { kind: 'line', operation: 'mark', from: [0.1234567891, 0], to: [1, 2.00000049] },
        { kind: 'circle', operation: 'hole', x: 1.0000004, y: -2, radius: 1.23456789 },
      ],
    });
    expect(drawing.shapes).toEqual([
      { kind: 'line', operation: 'mark', from: [expect.closeTo(0.123457, 12), 0], to: [1, expect.closeTo(2, 12)] },
      { kind: 'circle', operation: 'hole', x: 1, y: -2, radius: 1.23456789 },
    ]);
  });
});
