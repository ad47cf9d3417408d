import { pointOnSide, sweepFromBulge } from '../../base/arc';
import type { Vertex } from '../../base/drawing';
import { bulgeOf } from '../../base/outline';
import type { Point } from '../../base/polygon';
import { distance, pointOf } from '../flat/plane';

/** The hole that a corner's cut ends in. */
export interface RootHole {
  readonly at: Point;
  readonly diameter: number;
}

/** A run of sides that starts within the hole, from where it leaves it; null where it never does. */
export function beyondHole(run: readonly Vertex[], { at, diameter }: RootHole): Vertex[] | null {
  const radius = diameter / 2;
  const leaves = run.findIndex((vertex) => distance(pointOf(vertex), at) > radius);
  if (leaves < 0) return null;
  const [before, after] = [run[leaves - 1], run[leaves]];
  if (!before || !after) return [...run];
  let [low, high] = [0, 1];
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (distance(pointOnSide(before, after, middle), at) > radius) high = middle;
    else low = middle;
  }
  const [x, y] = pointOnSide(before, after, high);
  return [{ x, y, bulge: bulgeOf(sweepFromBulge(before.bulge) * (1 - high)) }, ...run.slice(leaves)];
}

/** Bulge of the hole's edge from one place on it to another, clockwise: the metal is outside. */
export function holeBulge({ at }: RootHole, from: Point, to: Point): number {
  const angle = ([x, y]: Point): number => Math.atan2(y - at[1], x - at[0]);
  const turn = (angle(from) - angle(to)) % (2 * Math.PI);
  return -bulgeOf(turn < 0 ? turn + 2 * Math.PI : turn);
}
