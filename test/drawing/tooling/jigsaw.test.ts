import { describe, expect, it } from 'vitest';
import type { Line, Loop } from '../../../src/base/drawing';
import { flattenLoop } from '../../../src/base/flatten';
import { hatchNarrowWaste } from '../../../src/drawing/boards/hatch';
import { reliefCuts } from '../../../src/drawing/tooling/relief-cuts';
import { inWood, loopsUnder, type Ring } from '../../helpers/as-cut';
import { boardsOf, piecesOf } from '../../helpers/laid-out';
import { planStarter, tables } from '../../helpers/starters';

const cut = { with: 'jigsaw', turn: 20, gap: 8, border: 10, colours: {} } as const;

/** A half-disc of this radius. */
function halfDisc(radius: number): Loop {
  return {
    kind: 'loop',
    operation: 'outline',
    vertices: [
      { x: -radius, y: 0, bulge: 0 },
      { x: radius, y: 0, bulge: 1 },
    ],
  };
}

describe('relief cuts', () => {
  it('stand square to an arc the blade cannot follow, in the waste, short of the line; and on no other', () => {
    expect(reliefCuts([halfDisc(20)], cut, tables.tools)).toEqual([]);
    const cuts = reliefCuts([halfDisc(15)], cut, tables.tools);
    // Half of 2π·15 mm in pieces of at most 12 mm: 4 pieces, 3 cuts between them.
    expect(cuts.length).toBe(3);
    for (const { from, to } of cuts) {
      expect(Math.hypot(...from)).toBeCloseTo(15.5, 9);
      expect(Math.hypot(...to)).toBeCloseTo(19, 9);
      expect(from[0] * to[1] - from[1] * to[0]).toBeCloseTo(0, 9);
    }
  });

  it('run into an inside corner, between its two sides, whichever way round the outline runs', () => {
    const corners = [
      [0, 0],
      [60, 0],
      [60, 60],
      [40, 60],
      [40, 20],
      [0, 20],
    ].map(([x = 0, y = 0]) => ({ x, y, bulge: 0 }));
    for (const vertices of [corners, [...corners].reverse()]) {
      const cuts = reliefCuts([{ kind: 'loop', operation: 'outline', vertices }], cut, tables.tools);
      expect(cuts.length).toBe(1);
      const [{ from, to }] = cuts as [Line];
      expect(from[0]).toBeCloseTo(40 - 0.5 * Math.SQRT1_2, 9);
      expect(from[1]).toBeCloseTo(20 + 0.5 * Math.SQRT1_2, 9);
      expect(Math.atan2(to[1] - from[1], to[0] - from[0])).toBeCloseTo((3 * Math.PI) / 4, 9);
    }
  });

  it('are drawn on a small form’s stations and keep clear of the next part on the board', () => {
    const planned = planStarter('tapered-curve', (text) => `${text}\ncut: { turn: 60 }\n`);
    const stations = piecesOf(planned).filter(({ kind }) => kind === 'station');
    for (const { drawing } of stations) {
      const [{ vertices }] = loopsUnder(drawing, 'outline') as [Loop];
      const ring: Ring = flattenLoop(vertices, 1e-3);
      const outside = drawing.shapes.filter(
        (shape): shape is Line =>
          shape.kind === 'line' &&
          !isInside(ring, shape.to) &&
          !isInside(ring, shape.from) &&
          Math.hypot(...shape.to) > planned.plan.stations[0]!.radius + 0.6,
      );
      expect(outside.length).toBeGreaterThanOrEqual(5);
      for (const { to } of outside)
        expect(Math.min(...ring.map(([x, y]) => Math.hypot(x - to[0], y - to[1])))).toBeLessThanOrEqual(
          cut.gap / 2 + 0.01,
        );
    }
  });
});

describe('hatching', () => {
  const planned = planStarter('thick-steel');
  const parts = piecesOf(planned);
  const boards = boardsOf(planned);

  it('stands in the waste between two parts that are near each other, on no part, and nowhere else', () => {
    let strokes = 0;
    for (const board of boards) {
      const hatched = hatchNarrowWaste(board, parts, 16, 4);
      expect(hatched.drawing.shapes.slice(0, board.drawing.shapes.length)).toEqual(board.drawing.shapes);
      const added = hatched.drawing.shapes.slice(board.drawing.shapes.length);
      const rings = loopsUnder(board.drawing, 'outline').map(({ vertices }): Ring => flattenLoop(vertices, 1e-2));
      for (const line of added as Line[]) {
        const middle = [(line.from[0] + line.to[0]) / 2, (line.from[1] + line.to[1]) / 2] as const;
        expect(
          rings.some((ring) => isInside(ring, middle)),
          'a stroke on a part',
        ).toBe(false);
        const near = rings.filter((ring) => distanceTo(ring, middle) < 8.2);
        expect(near.length, 'a stroke that is not between two parts').toBeGreaterThanOrEqual(2);
        strokes++;
      }
    }
    expect(strokes).toBeGreaterThan(10);
  });

  it('is left out where there is nothing narrow', () => {
    for (const board of boards) expect(hatchNarrowWaste(board, parts, 1, 4)).toEqual(board);
  });
});

function isInside(ring: Ring, [x, y]: readonly [number, number]): boolean {
  return inWood([ring], 'x', y).some(([low, high]) => low < x && x < high);
}

function distanceTo(ring: Ring, [x, y]: readonly [number, number]): number {
  return Math.min(
    ...ring.map(([ax, ay], index) => {
      const [bx, by] = ring[(index + 1) % ring.length] ?? [ax, ay];
      const [dx, dy] = [bx - ax, by - ay];
      const share = Math.max(0, Math.min(1, ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy)));
      return Math.hypot(x - ax - share * dx, y - ay - share * dy);
    }),
  );
}
