import type { Point } from '../../base/polygon';
import { ROUNDING } from '../../base/tolerance';

/** A line from end A to end B across a flat leg. */
export type Across = readonly [Point, Point];

/** What lies between two lines across a leg, or beyond one, or short of one. */
export interface Stretch {
  readonly from: Across | null;
  readonly to: Across | null;
}

/** Nearer than this to a line is on it, mm². */
const ON = 1e-6;

/** How far beyond the line, times its length: positive on its left, outward. */
function beyondBy([[ax, ay], [bx, by]]: Across, [x, y]: Point): number {
  return (bx - ax) * (y - ay) - (by - ay) * (x - ax);
}

export function isBeyond(line: Across, point: Point): boolean {
  return beyondBy(line, point) > 0;
}

/** Whether an edge lies along the line. */
export function isAlong(line: Across, from: Point, to: Point): boolean {
  return Math.abs(beyondBy(line, from)) < ON && Math.abs(beyondBy(line, to)) < ON;
}

/** What of a polygon lies in the stretch; its lines cross the polygon's sides once each. Empty where nothing does. */
export function cutAlong(polygon: readonly Point[], { from, to }: Stretch): Point[] {
  const beyond = from ? cut(polygon, (point) => beyondBy(from, point)) : [...polygon];
  return to ? cut(beyond, (point) => -beyondBy(to, point)) : beyond;
}

/** What of a straight line lies in the stretch; null where nothing does. */
export function segmentAlong(ends: Across, { from, to }: Stretch): Across | null {
  let [low, high] = [0, 1];
  for (const side of [
    ...(from ? [(point: Point): number => beyondBy(from, point)] : []),
    ...(to ? [(point: Point): number => -beyondBy(to, point)] : []),
  ]) {
    const [a, b] = [side(ends[0]), side(ends[1])];
    if (a < 0 && b < 0) return null;
    if (a < 0) low = Math.max(low, a / (a - b));
    else if (b < 0) high = Math.min(high, a / (a - b));
  }
  return high - low > ROUNDING ? [between(ends[0], ends[1], low), between(ends[0], ends[1], high)] : null;
}

/** Keeps what has a positive side (Sutherland and Hodgman's clip by one line). */
function cut(polygon: readonly Point[], side: (point: Point) => number): Point[] {
  return polygon.flatMap((point, index) => {
    const next = polygon[(index + 1) % polygon.length] ?? point;
    const [here, there] = [side(point), side(next)];
    const kept = here >= 0 ? [point] : [];
    return here > 0 !== there > 0 && here !== 0 && there !== 0
      ? [...kept, between(point, next, here / (here - there))]
      : kept;
  });
}

function between([ax, ay]: Point, [bx, by]: Point, share: number): Point {
  return [ax + share * (bx - ax), ay + share * (by - ay)];
}
