import { loopArea } from '../../base/area';
import { sidesOf } from '../../base/arc';
import type { Loop, Vertex } from '../../base/drawing';

/** Turns smaller than this, radians, leave nothing a bit could not reach. */
const STRAIGHT = 1e-3;

/**
 * Corners a round bit cannot cut square, rounded out so that a square one fits into them: inside corners of an outline, and of a hole
 * or groove all corners that stick out of it. The bit's circle runs through the corner, its middle on the corner's bisector. Corners
 * on arcs, and those with a side too short for it, are left. `radius` of the bit, mm.
 */
export function relieveCorners(loop: Loop, radius: number): Loop {
  if (loop.operation !== 'outline' && loop.operation !== 'hole') return loop;
  const ccw = loopArea(loop.vertices) > 0 ? 1 : -1;
  // Where the loop's inside is wood, a corner that turns against the loop's own way is an inside corner; where it is cut out, one that turns with it.
  const inside = loop.operation === 'outline' ? -ccw : ccw;
  return {
    ...loop,
    vertices: sidesOf(loop.vertices).flatMap(([at, next], index) =>
      corner([loop.vertices.at(index - 1) ?? at, at, next], inside, radius),
    ),
  };
}

/** The corner's own vertex, or the two ends of the round that takes its place. */
function corner([before, at, next]: readonly [Vertex, Vertex, Vertex], inside: number, radius: number): Vertex[] {
  if (before.bulge !== 0 || at.bulge !== 0) return [at];
  const [u, v] = [unit(at, before), unit(at, next)];
  const turn = Math.atan2(-u.x * v.y + u.y * v.x, -u.x * v.x - u.y * v.y);
  if (turn * inside < STRAIGHT) return [at];
  // Between the two sides, half the angle of the corner; the circle meets each side again where its chord from the corner ends.
  const half = (Math.PI - Math.abs(turn)) / 2;
  const chord = 2 * radius * Math.cos(half);
  if (chord >= u.length / 2 || chord >= v.length / 2 || chord <= 0) return [at];
  // The round goes the corner's own way, through all of the circle but the 4·half on the open side: tan of a quarter of 2π − 4·half.
  const bulge = Math.sign(turn) / Math.tan(half);
  return [
    { x: at.x + u.x * chord, y: at.y + u.y * chord, bulge },
    { x: at.x + v.x * chord, y: at.y + v.y * chord, bulge: 0 },
  ];
}

function unit(from: Vertex, to: Vertex): { x: number; y: number; length: number } {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  return { x: (to.x - from.x) / length, y: (to.y - from.y) / length, length };
}
