import { arcBetween, sidesOf } from './arc';
import type { Vertex } from './drawing';

/** Signed area of a closed loop, mm², positive counter-clockwise: the polygon of its corners plus the segment under each arc, exact. */
export function loopArea(vertices: readonly Vertex[]): number {
  return sidesOf(vertices).reduce((sum, [from, to]) => {
    const arc = arcBetween(from, to);
    const segment = arc ? (arc.radius ** 2 * (arc.sweep - Math.sin(arc.sweep))) / 2 : 0;
    return sum + (from.x * to.y - to.x * from.y) / 2 + segment;
  }, 0);
}
