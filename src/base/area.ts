import { sidesOf, sweepFromBulge } from './arc';
import type { Vertex } from './drawing';

/** Below this sweep, radians, θ − sin θ loses digits to cancellation and its series is exact to the last one. */
const FLAT = 0.02;

/** Signed area of a closed loop, mm², positive counter-clockwise: the polygon of its corners plus the segment under each arc, exact. */
export function loopArea(vertices: readonly Vertex[]): number {
  return sidesOf(vertices).reduce((sum, [from, to]) => {
    const chord = Math.hypot(to.x - from.x, to.y - from.y);
    return sum + (from.x * to.y - to.x * from.y) / 2 + segmentArea(chord, sweepFromBulge(from.bulge));
  }, 0);
}

/** Signed area between an arc and its chord, mm²: r²·(θ − sin θ)/2 with r = c/(2·sin(θ/2)). */
function segmentArea(chord: number, sweep: number): number {
  if (sweep === 0) return 0;
  const excess = Math.abs(sweep) < FLAT ? (sweep ** 3 / 6) * (1 - (sweep ** 2 / 20) * (1 - sweep ** 2 / 42)) : sweep - Math.sin(sweep);
  return (chord ** 2 * excess) / (8 * Math.sin(sweep / 2) ** 2);
}
