import { arcBetween } from '../../base/arc';
import type { Vertex } from '../../base/drawing';
import type { Place } from '../../base/side';

/** Flatter arcs than this bulge are looked at as lines. */
const FLAT = 1e-7;

/**
 * Points in a row → the fewest lines and arcs a greedy look finds, each from one of the points to a later one and within `tolerance` mm of
 * all between, passing them in order. Gives the corners without the last place. An arc is never more than half a turn.
 */
export function fitPoints(points: readonly Place[], tolerance: number): Vertex[] {
  const vertices: Vertex[] = [];
  for (let from = 0; from < points.length - 1;) {
    const { to, bulge } = longestFrom(points, from, tolerance);
    const start = points[from];
    if (start) vertices.push({ x: start.x, y: start.y, bulge });
    from = to;
  }
  return vertices;
}

/** Doubles the reach while an arc fits, then halves the doubt. */
function longestFrom(
  points: readonly Place[],
  from: number,
  tolerance: number,
): { readonly to: number; readonly bulge: number } {
  const last = points.length - 1;
  let [good, bulge, bad] = [from + 1, 0, last + 1];
  for (let step = 2; good < last; step *= 2) {
    const to = Math.min(last, from + step);
    const fitted = arcOver(points, from, to, tolerance);
    if (fitted === null) {
      bad = to;
      break;
    }
    [good, bulge] = [to, fitted];
  }
  while (bad - good > 1) {
    const to = (good + bad) >> 1;
    const fitted = arcOver(points, from, to, tolerance);
    if (fitted === null) bad = to;
    else [good, bulge] = [to, fitted];
  }
  return { to: good, bulge };
}

/** Bulge of the arc (0: line) from one point to another that keeps to all between; null where there is none. */
function arcOver(points: readonly Place[], from: number, to: number, tolerance: number): number | null {
  const [a, m, b] = [points[from], points[(from + to) >> 1], points[to]];
  if (!a || !m || !b) return null;
  const between = points.slice(from + 1, to);
  if (keepsToLine(a, b, between, tolerance / 10)) return 0;
  const bulge = bulgeThrough(a, m, b);
  if (Math.abs(bulge) > 1 || !Number.isFinite(bulge)) return null;
  if (Math.abs(bulge) < FLAT) return keepsToLine(a, b, between, tolerance) ? 0 : null;
  return keepsToArc({ ...a, bulge }, b, between, tolerance) ? bulge : null;
}

/** Bulge of the arc from a through m to b: the chords turn by half its sweep on the way (inscribed angle). */
function bulgeThrough(a: Place, m: Place, b: Place): number {
  const [ux, uy, vx, vy] = [m.x - a.x, m.y - a.y, b.x - m.x, b.y - m.y];
  return Math.tan(Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy) / 2);
}

function keepsToLine(a: Place, b: Place, between: readonly Place[], tolerance: number): boolean {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const length = Math.hypot(dx, dy);
  let reached = 0;
  return between.every(({ x, y }) => {
    const along = ((x - a.x) * dx + (y - a.y) * dy) / length;
    const aside = ((x - a.x) * dy - (y - a.y) * dx) / length;
    const keeps = Math.abs(aside) <= tolerance && along >= reached - tolerance && along <= length + tolerance;
    reached = Math.max(reached, along);
    return keeps;
  });
}

function keepsToArc(a: Vertex, b: Place, between: readonly Place[], tolerance: number): boolean {
  const arc = arcBetween(a, b);
  if (!arc) return false;
  const slack = tolerance / arc.radius;
  const way = Math.sign(arc.sweep);
  let reached = 0;
  return between.every(({ x, y }) => {
    const [dx, dy] = [x - arc.centreX, y - arc.centreY];
    const turned = way * (Math.atan2(dy, dx) - arc.start);
    const angle = turned - 2 * Math.PI * Math.floor((turned + slack) / (2 * Math.PI));
    const keeps =
      Math.abs(Math.hypot(dx, dy) - arc.radius) <= tolerance &&
      angle >= reached - slack &&
      angle <= Math.abs(arc.sweep) + slack;
    reached = Math.max(reached, angle);
    return keeps;
  });
}
