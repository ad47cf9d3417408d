import fc from 'fast-check';
import type { Vertex } from '../../src/base/drawing';

const place = fc.double({ min: -500, max: 500, noNaN: true });

/** Any closed loops of 2 to 7 corners at least 1 mm apart, arcs of any sweep up to 320°, crossing themselves or not. */
export const anyLoop: fc.Arbitrary<Vertex[]> = fc
  .array(
    fc.record({ x: place, y: place, bulge: fc.oneof(fc.constant(0), fc.double({ min: -5.6, max: 5.6, noNaN: true })) }),
    { minLength: 2, maxLength: 7 },
  )
  .filter((vertices) =>
    vertices.every(
      ({ x, y }, index) =>
        Math.hypot(x - (vertices.at(index - 1)?.x ?? NaN), y - (vertices.at(index - 1)?.y ?? NaN)) > 1,
    ),
  );

/**
 * Points along a loop, found by halving: an arc of bulge b is two of bulge tan(atan(b)/2) that meet b·c/2 beside the middle of its chord,
 * on its right where b is positive. Only the definition of a bulge is used, no centre and no angle.
 */
export function samplePoints(vertices: readonly Vertex[], depth = 9): [number, number][] {
  return vertices.flatMap((from, index) => halve(from, vertices[(index + 1) % vertices.length] ?? from, depth));
}

function halve(from: Vertex, to: Pick<Vertex, 'x' | 'y'>, depth: number): [number, number][] {
  if (depth === 0 || from.bulge === 0) return [[from.x, from.y]];
  const half = {
    x: (from.x + to.x) / 2 + ((to.y - from.y) * from.bulge) / 2,
    y: (from.y + to.y) / 2 - ((to.x - from.x) * from.bulge) / 2,
    bulge: Math.tan(Math.atan(from.bulge) / 2),
  };
  return [...halve({ ...from, bulge: half.bulge }, half, depth - 1), ...halve(half, to, depth - 1)];
}
