import type { Vertex } from '../../base/drawing';
import type { Finding } from '../../base/findings';
import { finding } from '../../findings/finding';
import { flattenLoop } from '../../base/flatten';
import type { Point } from '../../base/polygon';
import { cross, less } from './plane';

/** Flattening before the look for crossings, mm. */
const STRAY = 0.02;

/** Where an outline crosses itself, the first place found; null where it does not. */
export function selfCrossing(outline: readonly Vertex[]): Point | null {
  const points = flattenLoop(outline, STRAY);
  const sides = points.map((from, index) => [from, points[(index + 1) % points.length] ?? from] as const);
  const order = sides.map((_, index) => index).sort((a, b) => lowX(sides[a]) - lowX(sides[b]));
  for (const [rank, i] of order.entries()) {
    const side = sides[i];
    if (!side) continue;
    const reach = Math.max(side[0][0], side[1][0]);
    for (const j of order.slice(rank + 1)) {
      const other = sides[j];
      if (!other || lowX(other) > reach) break;
      const apart = Math.abs(i - j);
      if (apart === 1 || apart === sides.length - 1) continue;
      if (areCrossing(side, other)) return side[0];
    }
  }
  return null;
}

/** A straight side, from its start to its end. */
export type Side = readonly [Point, Point];

function lowX(side: Side | undefined): number {
  return side ? Math.min(side[0][0], side[1][0]) : Infinity;
}

/** Whether two sides cross, touching not counted. */
export function areCrossing([a, b]: Side, [c, d]: Side): boolean {
  const of = (p: Point, q: Point, r: Point): number => cross(less(q, p), less(r, p));
  return of(a, b, c) * of(a, b, d) < 0 && of(c, d, a) * of(c, d, b) < 0;
}

/** The flat must not lie over itself. */
export function checkOutline(outline: readonly Vertex[]): Finding[] {
  const at = selfCrossing(outline);
  if (!at) return [];
  return [finding('flat-overlaps-itself', 'bends', { at })];
}
