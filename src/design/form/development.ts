import { radiusAt, type Cone } from '../../base/cone';
import type { Point } from '../../base/polygon';
import { ROUNDING } from '../../base/tolerance';

/** A surface parallel to a cone's inside surface, `offset` mm outside it (square to the surface). */
export interface ParallelSurface {
  readonly cone: Cone;
  readonly offset: number;
}

/** A place on the bent surface: `x` mm along the ruling from end A, `wrap` radians about the centre line from the held tangent. */
export interface BentPlace {
  readonly x: number;
  readonly wrap: number;
}

/** Radius of the surface square to the centre line at end A, mm: R_A + offset·cos β. */
export function startRadius(surface: ParallelSurface): number {
  return surface.cone.radiusA + surface.offset * Math.cos(surface.cone.halfAngle);
}

/**
 * Where a place of the bent surface lies on the flat blank, mm: the held tangent line along +x from A, the free leg toward +y.
 * An annular sector about the cone's apex, written so that it passes into the cylinder's rectangle as β → 0.
 * Design section 2, "Development"; derivation in DEVELOPERS.md. Inverse: {@link toBent}.
 */
export function toFlat(surface: ParallelSurface, place: BentPlace): Point {
  const turn = place.wrap * Math.sin(surface.cone.halfAngle);
  const arc = startRadius(surface) * place.wrap;
  const half = turn / 2;
  return [place.x * Math.cos(turn) - arc * Math.sin(half) * sinc(half), place.x * Math.sin(turn) + arc * sinc(turn)];
}

/** Where a point of the flat blank lies on the bent surface. Valid between the two tangent lines. Inverse: {@link toFlat}. */
export function toBent(surface: ParallelSurface, [x, y]: Point): BentPlace {
  const start = startRadius(surface);
  const sine = Math.sin(surface.cone.halfAngle);
  const k = sine / start;
  const along = Math.hypot(1 + k * x, k * y);
  const turn = Math.atan2(k * y, 1 + k * x);
  return {
    x: (2 * x + k * (x * x + y * y)) / (1 + along),
    wrap: Math.abs(turn) < ROUNDING ? y / (start * (1 + k * x)) : turn / sine,
  };
}

/** The place in space, mm: [along the centre line, toward the free side, up], centre line through A at the origin, bench side down. */
export function toSpace(surface: ParallelSurface, place: BentPlace): readonly [number, number, number] {
  const { cone, offset } = surface;
  const radius = radiusAt(cone, place.x) + offset * Math.cos(cone.halfAngle);
  return [
    place.x * Math.cos(cone.halfAngle) - offset * Math.sin(cone.halfAngle),
    radius * Math.sin(place.wrap),
    -radius * Math.cos(place.wrap),
  ];
}

/** sin(x)/x, 1 at 0. */
function sinc(x: number): number {
  return Math.abs(x) < 1e-8 ? 1 : Math.sin(x) / x;
}
