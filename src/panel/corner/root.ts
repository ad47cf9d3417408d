import { at } from '../../base/at';
import { pointOnSide, sweepFromBulge } from '../../base/arc';
import type { Vertex } from '../../base/drawing';
import { bulgeOf } from '../../base/outline';
import type { Point } from '../../base/polygon';
import { distanceTo, shareAt, sideBetween } from '../../base/side';
import { distance, pointOf } from '../flat/plane';

/** The hole that a corner's cut ends in. */
export interface RootHole {
  readonly at: Point;
  readonly diameter: number;
}

/**
 * A run of sides from where it leaves the hole for good: what lies nearer to the corner is left whole. The run as it is where it never meets the hole; null
 * where it ends within it.
 */
export function beyondHole(run: readonly Vertex[], { at: [x, y], diameter }: RootHole): Vertex[] | null {
  const [radius, centre] = [diameter / 2, { x, y }];
  const isOut = (place: Point): boolean => distance(place, [x, y]) > radius;
  const last = run.at(-1);
  if (!last || !isOut(pointOf(last))) return null;
  const sides = run.slice(1).map((to, index) => [at(run, index), to] as const);
  const leaves = sides.findLastIndex(([from, to]) => distanceTo(sideBetween(from, to), centre) <= radius);
  const side = sides[leaves];
  if (!side) return [...run];
  let [low, high] = [Math.max(0, Math.min(1, shareAt(sideBetween(...side), centre))), 1];
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (isOut(pointOnSide(...side, middle))) high = middle;
    else low = middle;
  }
  const [outX, outY] = pointOnSide(...side, high);
  const bulge = bulgeOf(sweepFromBulge(side[0].bulge) * (1 - high));
  return [{ x: outX, y: outY, bulge }, ...run.slice(leaves + 1)];
}

/** Bulge of the hole's edge from one place on it to another, clockwise: the metal is outside. */
export function holeBulge({ at: centre }: RootHole, from: Point, to: Point): number {
  const angle = ([x, y]: Point): number => Math.atan2(y - centre[1], x - centre[0]);
  const turn = (angle(from) - angle(to)) % (2 * Math.PI);
  return -bulgeOf(turn < 0 ? turn + 2 * Math.PI : turn);
}
