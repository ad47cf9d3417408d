import { pointOnSide, sidesOf, sweepFromBulge } from '../../base/arc';
import type { Vertex } from '../../base/drawing';
import { flattenLoop } from '../../base/flatten';
import { bulgeOf } from '../../base/outline';
import { isInside, type Point } from '../../base/polygon';
import { crossings, shareAt, sideBetween } from '../../base/side';
import { add, cross, direction, distance, dot, less, pointOf } from '../flat/plane';
import { CHORD_STRAY, ROUNDING } from '../../base/tolerance';

/** A loop cut in two along a straight line. */
export interface SplitLoop {
  /** Where the line enters and leaves, in the order it was given. */
  readonly from: Point;
  readonly to: Point;
  /** Counter-clockwise, each with the cut as one of its sides. */
  readonly left: readonly Vertex[];
  readonly right: readonly Vertex[];
}

interface Crossing {
  readonly side: number;
  readonly share: number;
  readonly at: Point;
  /** Along the line. */
  readonly along: number;
}

/** Corners of the loop nearer to the line than this, mm, are on it. */
const ON = 1e-7;

/**
 * Cuts a counter-clockwise loop along the line through two places, from edge to edge on both sides of their middle. Null where the middle is not inside the
 * loop, or the line only grazes it.
 */
export function splitLoop(loop: readonly Vertex[], [a, b]: readonly [Point, Point]): SplitLoop | null {
  const middle: Point = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
  if (!(distance(a, b) > 0) || !isInside(middle, flattenLoop(loop, CHORD_STRAY))) return null;
  const way = direction(a, b);
  const found = lineCrossings(loop, middle, way).sort((p, q) => p.along - q.along);
  const before = found.filter(({ along }) => along < 0).at(-1);
  const after = found.find(({ along }) => along > 0);
  if (!before || !after) return null;
  // Walking from where the line leaves round to where it enters keeps the line's left on the left.
  const left = walk(loop, after, before);
  const right = walk(loop, before, after);
  return { from: before.at, to: after.at, left, right };
}

function lineCrossings(loop: readonly Vertex[], origin: Point, way: Point): Crossing[] {
  return sidesOf(loop).flatMap(([from, to], side): Crossing[] => {
    if (distance(pointOf(from), pointOf(to)) === 0) return [];
    const off = (place: Point): number => cross(way, less(place, origin));
    if (from.bulge === 0) {
      const [p, q] = [off(pointOf(from)), off(pointOf(to))];
      // A corner on the line belongs to the side that starts there.
      if (Math.abs(p) < ON)
        return [{ side, share: 0, at: pointOf(from), along: dot(less(pointOf(from), origin), way) }];
      if (Math.abs(q) < ON || p * q > 0) return [];
      return [at(from, to, { side, share: p / (p - q), origin, way })];
    }
    const own = sideBetween(from, to);
    const line = sideBetween({ x: origin[0], y: origin[1], bulge: 0 }, place(add(origin, way)));
    const hits = crossings(own, line).map((hit) => shareAt(own, hit));
    return hits
      .filter((share) => share > -ROUNDING && share < 1 - ROUNDING)
      .map((share) => at(from, to, { side, share: Math.max(0, share), origin, way }));
  });
}

function place([x, y]: Point): Vertex {
  return { x, y, bulge: 0 };
}

function at(
  from: Vertex,
  to: Vertex,
  { side, share, origin, way }: { side: number; share: number; origin: Point; way: Point },
): Crossing {
  const spot = pointOnSide(from, to, share);
  return { side, share, at: spot, along: dot(less(spot, origin), way) };
}

/** Along the loop from one crossing to another, closed by the straight cut. */
function walk(loop: readonly Vertex[], start: Crossing, end: Crossing): Vertex[] {
  const count = loop.length;
  const rest = (vertex: Vertex, from: number, to: number): number =>
    bulgeOf(sweepFromBulge(vertex.bulge) * (to - from));
  const first = loop[start.side];
  const last = loop[end.side];
  if (!first || !last) return [];
  if (start.side === end.side && end.share > start.share) {
    return [
      { x: start.at[0], y: start.at[1], bulge: rest(first, start.share, end.share) },
      { x: end.at[0], y: end.at[1], bulge: 0 },
    ];
  }
  const between: Vertex[] = [];
  for (let step = 1; step <= count; step++) {
    const index = (start.side + step) % count;
    const vertex = loop[index];
    if (!vertex) break;
    if (index === end.side) {
      if (end.share > 0) between.push({ ...vertex, bulge: rest(vertex, 0, end.share) });
      break;
    }
    between.push(vertex);
  }
  return [
    { x: start.at[0], y: start.at[1], bulge: rest(first, start.share, 1) },
    ...between,
    { x: end.at[0], y: end.at[1], bulge: 0 },
  ];
}
