import { sidesOf, sweepFromBulge } from './arc';
import type { Vertex } from './drawing';

/** Below this sweep, radians, θ − sin θ loses digits to cancellation; the series is exact to the last one. */
const FLAT = 0.02;

/** Signed area of a closed loop, mm², positive counter-clockwise: the polygon of its corners plus the segment under each arc, exact. */
export function loopArea(vertices: readonly Vertex[]): number {
  return sidesOf(vertices).reduce((sum, [from, to]) => {
    const chord = Math.hypot(to.x - from.x, to.y - from.y);
    return sum + (from.x * to.y - to.x * from.y) / 2 + segmentArea(chord, sweepFromBulge(from.bulge));
  }, 0);
}

/** Signed area between an arc and its chord, mm²: r²·(θ − sin θ)/2 with r = c/(2·sin(θ/2)); flat arcs by its series c²·θ/12·(1 + θ²/30 + θ⁴/840 + …). */
function segmentArea(chord: number, sweep: number): number {
  if (Math.abs(sweep) < FLAT) return (chord ** 2 * sweep * (1 + sweep ** 2 / 30 + sweep ** 4 / 840)) / 12;
  return (chord ** 2 * (sweep - Math.sin(sweep))) / (8 * Math.sin(sweep / 2) ** 2);
}
