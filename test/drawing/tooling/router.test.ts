import { describe, expect, it } from 'vitest';
import { loopArea } from '../../../src/base/area';
import { flattenLoop } from '../../../src/base/flatten';
import type { Loop, Vertex } from '../../../src/base/drawing';
import { placeBridges } from '../../../src/drawing/tooling/bridges';
import { operationRows } from '../../../src/drawing/tooling/operations';
import { relieveCorners } from '../../../src/drawing/tooling/relieve-corners';
import { writeOperations } from '../../../src/output/operations';
import { loopsUnder } from '../../helpers/as-cut';
import { cutWith } from '../../helpers/for-tool';
import { piecesOf } from '../../helpers/laid-out';
import { planStarter, starters, tables } from '../../helpers/starters';

const loop = (operation: 'outline' | 'hole', points: readonly (readonly [number, number])[]): Loop => ({
  kind: 'loop',
  operation,
  vertices: points.map(([x, y]): Vertex => ({ x, y, bulge: 0 })),
});
const ell = [
  [0, 0],
  [60, 0],
  [60, 60],
  [40, 60],
  [40, 20],
  [0, 20],
] as const;

describe('corners a round bit cannot cut', () => {
  it('inside corner of an outline: the bit’s circle through the corner, by hand for a square one', () => {
    const radius = 3;
    const { vertices } = relieveCorners(loop('outline', ell), radius);
    // Only the corner at (40, 20) is an inside one. Its round begins and ends √2·r along either side and is half a circle about
    // (40 − r/√2, 20 + r/√2).
    expect(vertices.length).toBe(ell.length + 1);
    const from = vertices.findIndex(({ bulge }) => bulge !== 0);
    const [start, end] = [vertices[from], vertices[from + 1]] as [Vertex, Vertex];
    expect(start).toMatchObject({
      x: 40,
      y: expect.closeTo(20 + Math.SQRT2 * radius, 9) as number,
      bulge: expect.closeTo(-1, 9) as number,
    });
    expect(end).toMatchObject({ x: expect.closeTo(40 - Math.SQRT2 * radius, 9) as number, y: 20 });
    // Half a disc goes, but for the triangle of it that was open already.
    expect(loopArea(vertices)).toBeCloseTo(60 * 60 - 40 * 40 - ((Math.PI * radius ** 2) / 2 - radius ** 2), 9);
    expect(Math.min(...flattenLoop(vertices, 1e-4).map(([x, y]) => Math.hypot(x - 40, y - 20)))).toBeLessThan(0.03);
  });

  it('all corners of a rectangular hole, either way round, and none of an outline’s outer corners', () => {
    const square = [
      [0, 0],
      [30, 0],
      [30, 30],
      [0, 30],
    ] as const;
    for (const points of [square, [...square].reverse()]) {
      expect(
        relieveCorners(loop('hole', points), 3).vertices.filter(({ bulge }) => Math.abs(Math.abs(bulge) - 1) < 1e-9)
          .length,
      ).toBe(4);
      expect(Math.abs(loopArea(relieveCorners(loop('hole', points), 3).vertices))).toBeCloseTo(
        900 + 4 * ((Math.PI * 9) / 2 - 9),
        9,
      );
      expect(relieveCorners(loop('outline', points), 3)).toEqual(loop('outline', points));
    }
  });

  it('leaves sides too short for it', () => {
    expect(
      relieveCorners(
        loop('hole', [
          [0, 0],
          [6, 0],
          [6, 6],
          [0, 6],
        ]),
        3,
      ),
    ).toEqual(
      loop('hole', [
        [0, 0],
        [6, 0],
        [6, 6],
        [0, 6],
      ]),
    );
  });
});

describe('a router’s drawings', () => {
  for (const name of starters) {
    it(`${name}: closed outlines, circles and engraved strokes only; grooves as deep and wide as the plan says`, () => {
      const planned = planStarter(name, cutWith('router'));
      const parts = piecesOf(planned);
      const { cut } = planned.plan;
      if (cut?.with !== 'router') throw new Error('not routed');
      for (const { drawing } of parts)
        for (const { kind, operation } of drawing.shapes)
          expect(kind === 'stroke' ? operation === 'label' : kind === 'loop' || kind === 'circle').toBe(true);
      const grooves = loopsUnder(parts[0]!.drawing, 'groove');
      expect(grooves.length).toBe(planned.plan.stations.length);
      for (const [index, station] of planned.plan.stations.entries()) {
        const groove = cut.grooves[index];
        expect(groove?.holds).toBe(station.name);
        if (groove?.open === null) expect(groove.high - groove.low).toBeCloseTo(station.thickness + cut.fit, 9);
        const outline = loopsUnder(parts.find(({ id }) => id === station.name)!.drawing, 'outline')[0]!;
        // The half-disc, and as much more as the groove is deep.
        expect(loopArea(outline.vertices)).toBeCloseTo(
          (Math.PI * station.radius ** 2) / 2 + 2 * station.radius * cut.grooveDepth,
          4,
        );
      }
    });
  }

  it('bridges stand on straight sides, two at least, in the bit’s path outside the part', () => {
    const planned = planStarter('tapered-curve', cutWith('router'));
    for (const { id, drawing } of piecesOf(planned)) {
      const outline = loopsUnder(drawing, 'outline')[0]!;
      const bridges = placeBridges(outline, tables.tools);
      expect(bridges.length, id).toBeGreaterThanOrEqual(2);
      // Of a station: on the straight edge that stands in the groove, never on the round one.
      if (id.startsWith('S')) for (const { y } of bridges) expect(y).toBeCloseTo(-6, 6);
      const boxes = loopsUnder(drawing, 'mark');
      expect(boxes.length).toBe(bridges.length);
      for (const box of boxes) {
        expect(Math.abs(loopArea(box.vertices))).toBeCloseTo(tables.tools.bridgeLength * tables.tools.bit, 9);
        const corners = flattenLoop(outline.vertices, 1e-3);
        // Its inner side lies on the line; the two outer corners, and its middle, in the waste.
        const [, p, q, r] = box.vertices as [Vertex, Vertex, Vertex, Vertex];
        for (const { x, y } of [p, q, { x: (p.x + r.x) / 2, y: (p.y + r.y) / 2 }])
          expect(inside(corners, x, y), `${id}: a bridge’s box lies in the part`).toBe(false);
      }
    }
  });

  it('operations say tool and depth, part by part, inside before outside; as CSV and as data', () => {
    const planned = planStarter('tapered-curve', cutWith('router'));
    const rows = operationRows(piecesOf(planned), planned, tables.tools);
    const spine = rows.filter(({ part }) => part === 'spine').map(({ operation }) => operation);
    expect([...new Set(spine)]).toEqual(['label', 'countersink', 'groove', 'hole', 'outline', 'bridge']);
    expect(rows).toContainEqual(
      expect.objectContaining({ part: 'spine', operation: 'groove', count: 4, depth: 6, tool: 'straight bit 6 mm' }),
    );
    expect(rows).toContainEqual(
      expect.objectContaining({
        part: 'spine',
        operation: 'hole',
        size: 4.5,
        count: 10,
        depth: 18,
        tool: 'drill 4.5 mm',
      }),
    );
    // Heads of the backing station's screws enter from the drawn face, those of the stations' from the other.
    expect(rows.filter(({ operation }) => operation === 'countersink').map(({ count, tool }) => [count, tool])).toEqual(
      [
        [2, 'countersink'],
        [8, 'countersink, by hand'],
      ],
    );
    expect(rows).toContainEqual(
      expect.objectContaining({ part: 'spine', operation: 'hole', size: 38, tool: 'straight bit 6 mm' }),
    );
    const [csv, json] = writeOperations(rows, { sizes: 'mm', places: 'mm' });
    const lines = String(csv?.content).trimEnd().split('\r\n');
    expect(lines.length).toBe(rows.length + 1);
    expect(lines[0]).toBe('part,operation,count,size mm,depth mm,tool,note,x mm,y mm');
    expect((JSON.parse(String(json?.content)) as { operations: unknown[] }).operations.length).toBe(rows.length);
    const byHand = planStarter('tapered-curve');
    expect(operationRows(piecesOf(byHand), byHand, tables.tools)).toEqual([]);
  });

  it('operations of an inch job are in inches', () => {
    const planned = planStarter('plain-curve-inch', cutWith('router'));
    const [csv, json] = writeOperations(operationRows(piecesOf(planned), planned, tables.tools), {
      sizes: 'in',
      places: 'in',
    });
    const text = `${String(csv?.content)}\n${String(json?.content)}`;
    expect(text).toContain('part,operation,count,size in,depth in,tool,note,x in,y in\r\n');
    expect(text).toContain('"unit": "in"');
    expect(text).not.toMatch(/\bmm\b/u);
    // A drawing in mm is found by its own numbers, and says so.
    const [inMm] = writeOperations(operationRows(piecesOf(planned), planned, tables.tools), {
      sizes: 'in',
      places: 'mm',
    });
    expect(String(inMm?.content).split('\r\n')[0]).toBe('part,operation,count,size in,depth in,tool,note,x mm,y mm');
    // The spine's outline is cut through its board.
    const { thickness } = planned.plan.spine;
    expect(text).toMatch(new RegExp(`^spine,outline,1,,${Number((thickness / 25.4).toFixed(5))},`, 'mu'));
  });
});

/** Even–odd rule. */
function inside(ring: readonly (readonly [number, number])[], x: number, y: number): boolean {
  return (
    ring.filter(([ax, ay], index) => {
      const [bx, by] = ring[(index + 1) % ring.length] ?? [ax, ay];
      return ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax) - 1e-9;
    }).length %
      2 ===
    1
  );
}
