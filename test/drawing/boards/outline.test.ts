import { describe, expect, it } from 'vitest';
import type { Vertex } from '../../../src/base/drawing';
import { at } from '../../../src/base/at';
import { roomOf } from '../../../src/drawing/boards/outline';
import type { Point } from '../../../src/drawing/boards/convex';

/** The layer of a mitred corner's block: two of its sides have a corner in their middle where they turn by some 0.001, over 0.0001 mm. */
const layer: readonly Vertex[] = (
  [
    [-33.707967691662404, 71.8516, 0.4220592567333504],
    [-33.80953144541136, 71.7472863448227, 0],
    [-32.43600767590753, 20.340522854504734, 0.0002426659913581603],
    [-32.43600499401461, 20.340424271524572, 0],
    [-31.012545599610426, -31.066339218793384, 0.39954328880292045],
    [-30.913286880019644, -31.16510089054416, 0],
    [20.417205383857553, -32.32859725734724, 0.00016390575046865643],
    [20.417271978538732, -32.32859874499188, 0],
    [71.74776424241593, -33.45842486566477, 0.42067412923118025],
    [71.8516, -33.35684946811189, 0],
    [71.8516, 71.75, 0.41421356237309503],
    [71.75, 71.8516, 0],
  ] as const
).map(([x, y, bulge]) => ({ x, y, bulge }));

/** How far a place lies to the left of each side, mm. */
const depths = (polygon: readonly Point[], { x, y }: Point): number[] =>
  polygon.map((from, index) => {
    const to = at(polygon, (index + 1) % polygon.length);
    const [dx, dy] = [to.x - from.x, to.y - from.y];
    return (dx * (y - from.y) - dy * (x - from.x)) / Math.hypot(dx, dy);
  });

describe('the room a part takes up', () => {
  it('holds the part by the clearance even where a side is as short as the rounding of an offset', () => {
    const pieces = roomOf(
      { id: 'layer', drawing: { shapes: [{ kind: 'loop', operation: 'outline', vertices: layer }] } },
      2,
    );
    expect(pieces).toHaveLength(1);
    const piece = at(pieces, 0);
    for (const corner of layer) expect(Math.min(...depths(piece, corner))).toBeGreaterThanOrEqual(2);
    for (const corner of piece) expect(Math.min(...depths(piece, corner))).toBeGreaterThan(-1e-9);
  });
});
