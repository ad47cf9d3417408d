import { bulgeFromSweep } from '../../base/arc';
import type { Vertex } from '../../base/drawing';
import type { Place } from '../../base/side';
import { endOf, headingAt, pointAt, startOf, type BezierCurve, type Curve, type EllipseCurve } from './curve';
import { fitPoints } from './fit-points';
import { ROUNDING } from '../../base/tolerance';

/** Of the tolerance, what the points that stand for a curve may stray from it; the rest is for the arcs through them. */
const SAMPLING_SHARE = 0.05;
/** Of the tolerance, how far from round an ellipse may be and still be a circle. */
const ROUND_SHARE = 0.1;
/** A bend sharper than this, radians, between two curves is a corner that no arc may run across: 1°. */
const CORNER = Math.PI / 180;
/** Shorter curves than this, mm, are slips of the pen. */
const NOTHING = 1e-6;
/** No curve is looked at in more points than this. */
const MOST_POINTS = 4000;

type Free = EllipseCurve | BezierCurve;

/**
 * Curves that follow one another → corners with bulges, the last place included, nowhere further than `tolerance` mm from the curves.
 * Lines and circular arcs stay exactly as they are; the rest is covered by the longest arcs that keep to it.
 */
export function fitCurves(curves: readonly Curve[], tolerance: number): Vertex[] {
  const vertices: Vertex[] = [];
  let run: Free[] = [];
  const flush = (): void => {
    if (run.length > 0) vertices.push(...fitRun(run, tolerance));
    run = [];
  };
  const kept = curves.filter((curve) => !isNothing(curve));
  for (const curve of kept) {
    const exact = exactly(curve, tolerance);
    const before = run.at(-1);
    if (exact || (before && curve.kind !== 'side' && isCorner(before, curve))) flush();
    if (exact) vertices.push(...exact);
    else if (curve.kind !== 'side') run.push(curve);
  }
  flush();
  const last = kept.at(-1);
  return last ? [...vertices, { ...endOf(last), bulge: 0 }] : [];
}

function isNothing(curve: Curve): boolean {
  switch (curve.kind) {
    case 'side':
      return Math.hypot(curve.to.x - curve.from.x, curve.to.y - curve.from.y) < NOTHING;
    case 'ellipse':
      return (
        Math.max(Math.hypot(curve.u.x, curve.u.y), Math.hypot(curve.v.x, curve.v.y)) * Math.abs(curve.sweep) < NOTHING
      );
    case 'bezier':
      return curve.points.every(({ x, y }) => Math.hypot(x - startOf(curve).x, y - startOf(curve).y) < NOTHING);
  }
}

/** A line or a circular arc as corners without its end, arcs of more than half a turn in halves; null for other curves. */
function exactly(curve: Curve, tolerance: number): Vertex[] | null {
  if (curve.kind === 'side') return [{ ...curve.from, bulge: curve.bulge }];
  if (curve.kind === 'bezier') return straight(curve);
  const { u, v, sweep } = curve;
  const [a, b] = [Math.hypot(u.x, u.y), Math.hypot(v.x, v.y)];
  const isRound =
    Math.abs(a - b) <= ROUND_SHARE * tolerance &&
    Math.abs(u.x * v.x + u.y * v.y) <= ROUND_SHARE * tolerance * Math.max(a, b);
  if (!isRound) return null;
  const pieces = Math.abs(sweep) > Math.PI + ROUNDING ? 2 : 1;
  const bulge = bulgeFromSweep(sweep / pieces) * Math.sign(u.x * v.y - u.y * v.x);
  return Array.from({ length: pieces }, (_, index) => ({ ...pointAt(curve, index / pieces), bulge }));
}

/** A Bézier curve whose points lie in order on one line is that line. */
function straight(curve: BezierCurve): Vertex[] | null {
  const [from, to] = [startOf(curve), endOf(curve)];
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const length = Math.hypot(dx, dy);
  let reached = -NOTHING;
  for (const { x, y } of curve.points) {
    const along = ((x - from.x) * dx + (y - from.y) * dy) / length;
    const aside = ((x - from.x) * dy - (y - from.y) * dx) / length;
    if (!(Math.abs(aside) < NOTHING && along >= reached - NOTHING)) return null;
    reached = along;
  }
  return [{ ...from, bulge: 0 }];
}

function isCorner(before: Free, after: Free): boolean {
  const difference = headingAt(after, 'start') - headingAt(before, 'end');
  return Math.abs(Math.atan2(Math.sin(difference), Math.cos(difference))) > CORNER;
}

function fitRun(run: readonly Free[], tolerance: number): Vertex[] {
  const stray = SAMPLING_SHARE * tolerance;
  const points = run.flatMap((curve) => {
    const count = samples(curve, stray);
    return Array.from({ length: count }, (_, index) => pointAt(curve, index / count));
  });
  const last = run.at(-1);
  return last ? fitPoints([...points, endOf(last)], tolerance - 2 * stray) : [];
}

/** How many chords stray from a curve by no more than `stray`: by its second differences (Filip, Magedson & Markot 1986; from memory). */
function samples(curve: Free, stray: number): number {
  if (curve.kind === 'ellipse') {
    const radius = Math.max(Math.hypot(curve.u.x, curve.u.y), Math.hypot(curve.v.x, curve.v.y));
    return bounded(Math.abs(curve.sweep) * Math.sqrt(radius / (8 * stray)));
  }
  const { points } = curve;
  const degree = points.length - 1;
  const bend = Math.max(
    0,
    ...points
      .slice(2)
      .map((point, index) => secondDifference(points[index] ?? point, points[index + 1] ?? point, point)),
  );
  const weights = points.map(({ weight }) => weight);
  const uneven = Math.max(...weights) / Math.min(...weights);
  return bounded(uneven * Math.sqrt((degree * (degree - 1) * bend) / (8 * stray)));
}

function secondDifference(a: Place, b: Place, c: Place): number {
  return Math.hypot(a.x - 2 * b.x + c.x, a.y - 2 * b.y + c.y);
}

function bounded(count: number): number {
  return Math.min(MOST_POINTS, Math.max(8, Math.ceil(count)));
}
