import { at } from '../../base/at';
import { arcBetween } from '../../base/arc';
import type { Place } from '../../base/side';
import { determinant, keepsCircles, mapDirection, mapPlace, type Affine } from './affine';
import { ROUNDING } from '../../base/tolerance';

/**
 * The curves a drawing is read as, before they become lines and arcs. Each kind stays of its kind under any straight-line map, so a
 * drawing can be scaled, even unevenly, with nothing lost, and is fitted once at its true size.
 */
export type Curve = SideCurve | EllipseCurve | BezierCurve;

/** A straight side, or an arc by its bulge as in `base/drawing.ts`. */
export interface SideCurve {
  readonly kind: 'side';
  readonly from: Place;
  readonly to: Place;
  readonly bulge: number;
}

/** Part of an ellipse: centre + u·cos θ + v·sin θ, θ from `start` through `sweep` radians (signed, |sweep| ≤ 2π). */
export interface EllipseCurve {
  readonly kind: 'ellipse';
  readonly centre: Place;
  readonly u: Place;
  readonly v: Place;
  readonly start: number;
  readonly sweep: number;
}

/** A Bézier curve of any degree, rational where weights differ. */
export interface BezierCurve {
  readonly kind: 'bezier';
  readonly points: readonly WeightedPlace[];
}

export interface WeightedPlace extends Place {
  readonly weight: number;
}

/** A straight side. */
export function lineCurve(from: Place, to: Place): SideCurve {
  return { kind: 'side', from, to, bulge: 0 };
}

/** Part of a circle; angles in radians, counter-clockwise in the axes of the drawing. */
export function circleCurve(centre: Place, radius: number, start = 0, sweep = 2 * Math.PI): EllipseCurve {
  return { kind: 'ellipse', centre, u: { x: radius, y: 0 }, v: { x: 0, y: radius }, start, sweep };
}

/** A Bézier curve through plain control points. */
export function bezierCurve(points: readonly Place[]): BezierCurve {
  return { kind: 'bezier', points: points.map(({ x, y }) => ({ x, y, weight: 1 })) };
}

/** The curve moved by a straight-line map. */
export function mapCurve(map: Affine, curve: Curve): Curve {
  switch (curve.kind) {
    case 'bezier':
      return {
        kind: 'bezier',
        points: curve.points.map((point) => ({ ...mapPlace(map, point), weight: point.weight })),
      };
    case 'ellipse':
      return {
        ...curve,
        centre: mapPlace(map, curve.centre),
        u: mapDirection(map, curve.u),
        v: mapDirection(map, curve.v),
      };
    case 'side':
      return mapSide(map, curve);
  }
}

function mapSide(map: Affine, side: SideCurve): Curve {
  const arc = keepsCircles(map) ? null : arcBetween({ ...side.from, bulge: side.bulge }, side.to);
  if (arc) return mapCurve(map, circleCurve({ x: arc.centreX, y: arc.centreY }, arc.radius, arc.start, arc.sweep));
  const bulge = determinant(map) < 0 ? -side.bulge : side.bulge;
  return { kind: 'side', from: mapPlace(map, side.from), to: mapPlace(map, side.to), bulge };
}

/** Where a curve starts. */
export function startOf(curve: Curve): Place {
  return curve.kind === 'side' ? curve.from : pointAt(curve, 0);
}

/** Where a curve ends. */
export function endOf(curve: Curve): Place {
  return curve.kind === 'side' ? curve.to : pointAt(curve, 1);
}

/** The point at parameter `t` (0…1) of a curve that is no side. */
export function pointAt(curve: EllipseCurve | BezierCurve, t: number): Place {
  return curve.kind === 'ellipse' ? ellipsePoint(curve, curve.start + t * curve.sweep) : bezierPoint(curve.points, t);
}

function ellipsePoint({ centre, u, v }: EllipseCurve, angle: number): Place {
  const [cosine, sine] = [Math.cos(angle), Math.sin(angle)];
  return { x: centre.x + u.x * cosine + v.x * sine, y: centre.y + u.y * cosine + v.y * sine };
}

/** De Casteljau's scheme in homogeneous coordinates (Farin, Curves and Surfaces for CAGD, ch. 4 and 13; from memory). */
function bezierPoint(points: readonly WeightedPlace[], t: number): Place {
  const x = points.map((point) => point.x * point.weight);
  const y = points.map((point) => point.y * point.weight);
  const w = points.map((point) => point.weight);
  for (let left = points.length - 1; left > 0; left--) {
    for (const row of [x, y, w]) for (let i = 0; i < left; i++) row[i] = (1 - t) * at(row, i) + t * at(row, i + 1);
  }
  const weight = at(w, 0);
  return { x: at(x, 0) / weight, y: at(y, 0) / weight };
}

/** The way a curve that is no side heads at its start or end, radians from x towards y. */
export function headingAt(curve: EllipseCurve | BezierCurve, end: 'start' | 'end'): number {
  if (curve.kind === 'ellipse') return ellipseHeading(curve, end === 'start' ? curve.start : curve.start + curve.sweep);
  const points = end === 'start' ? curve.points : [...curve.points].reverse();
  const first = at(points, 0);
  const next = points.find(({ x, y }) => Math.hypot(x - first.x, y - first.y) > ROUNDING) ?? first;
  return end === 'start'
    ? Math.atan2(next.y - first.y, next.x - first.x)
    : Math.atan2(first.y - next.y, first.x - next.x);
}

function ellipseHeading({ u, v, sweep }: EllipseCurve, angle: number): number {
  const [cosine, sine] = [Math.sign(sweep) * Math.cos(angle), Math.sign(sweep) * Math.sin(angle)];
  return Math.atan2(v.y * cosine - u.y * sine, v.x * cosine - u.x * sine);
}

/** How far from the origin a curve can reach at most, mm; NaN or Infinity where its numbers are none. */
export function reachOf(curve: Curve): number {
  const size = ({ x, y }: Place): number => Math.hypot(x, y);
  switch (curve.kind) {
    case 'bezier':
      return Math.max(...curve.points.map(size));
    case 'ellipse':
      return size(curve.centre) + size(curve.u) + size(curve.v) + 0 * (curve.start + curve.sweep);
    case 'side':
      return Math.max(size(curve.from), size(curve.to)) + 0 * curve.bulge;
  }
}

/** The same curve run from its end to its start. */
export function reversed(curve: Curve): Curve {
  switch (curve.kind) {
    case 'bezier':
      return { kind: 'bezier', points: [...curve.points].reverse() };
    case 'ellipse':
      return { ...curve, start: curve.start + curve.sweep, sweep: -curve.sweep };
    case 'side':
      return { kind: 'side', from: curve.to, to: curve.from, bulge: -curve.bulge };
  }
}
