/**
 * The right circular cone that a bend's inside surface lies on (a cylinder where both radii are equal).
 * Lengths in mm, angles in radians. Derived in DEVELOPERS.md, "Geometry".
 */
export interface Cone {
  /** Inside radius at end A, square to the centre line, mm. */
  readonly radiusA: number;
  /** Inside radius at end B, square to the centre line, mm. */
  readonly radiusB: number;
  /** Length along the tangent line, mm. */
  readonly length: number;
  /** Half-angle β, radians: positive when the radius grows toward B, zero for a cylinder. */
  readonly halfAngle: number;
}

/**
 * The cone through two inside radii a tangent-line length apart.
 * Valid for |radiusB − radiusA| < length; beyond that no cone exists and a RangeError is thrown.
 */
export function coneThrough(radiusA: number, radiusB: number, length: number): Cone {
  const sine = (radiusB - radiusA) / length;
  if (!(Math.abs(sine) < 1)) {
    throw new RangeError(
      `no cone grows by ${radiusB - radiusA} mm over ${length} mm; the growth must be less than the length`,
    );
  }
  return { radiusA, radiusB, length, halfAngle: Math.asin(sine) };
}

/**
 * The cone whose radii of curvature square to the ruling (R/cos β) are given, mm.
 * Since R = curvature·cos β at both ends, tan β = (curvatureB − curvatureA)/length: always defined.
 */
export function coneFromCurvatures(curvatureA: number, curvatureB: number, length: number): Cone {
  const halfAngle = Math.atan((curvatureB - curvatureA) / length);
  const cosine = Math.cos(halfAngle);
  return { radiusA: curvatureA * cosine, radiusB: curvatureB * cosine, length, halfAngle };
}

/** Inside radius square to the centre line at `x` along the tangent line from A, mm. */
export function radiusAt(cone: Cone, x: number): number {
  return cone.radiusA + x * Math.sin(cone.halfAngle);
}

/** Inside radius square to the centre line at `s` along the centre line from A, mm. */
export function radiusAtCentre(cone: Cone, s: number): number {
  return cone.radiusA + s * Math.tan(cone.halfAngle);
}

/** Radius of curvature of the inside surface square to the ruling at `x`, mm: R/cos β. */
export function curvatureRadiusAt(cone: Cone, x: number): number {
  return curvatureRadius(radiusAt(cone, x), cone.halfAngle);
}

/** Radius of curvature square to the ruling, mm: R/cos β, of a radius square to the centre line on a cone of that half-angle. */
export function curvatureRadius(radius: number, halfAngle: number): number {
  return radius / Math.cos(halfAngle);
}

/** Mid-surface radius of curvature ρ = R/cos β + t/2, mm, at `x` along the tangent line, of a sheet `thickness` thick on the cone. */
export function midRadiusAt(cone: Cone, thickness: number, x: number): number {
  return midRadius(curvatureRadiusAt(cone, x), thickness);
}

/** Mid-surface radius of a sheet `thickness` thick that lies on an inside radius of curvature, mm. Inverse: {@link insideRadius}. */
export function midRadius(inside: number, thickness: number): number {
  return inside + thickness / 2;
}

/** Inside radius of curvature of a sheet by its mid-surface radius, mm. Inverse: {@link midRadius}. */
export function insideRadius(mid: number, thickness: number): number {
  return mid - thickness / 2;
}

/** Position along the centre line of the point `x` along the tangent line, mm. Inverse: {@link tangentFromCentre}. */
export function centreFromTangent(cone: Cone, x: number): number {
  return x * Math.cos(cone.halfAngle);
}

/** Position along the tangent line of the point `s` along the centre line, mm. Inverse: {@link centreFromTangent}. */
export function tangentFromCentre(cone: Cone, s: number): number {
  return s / Math.cos(cone.halfAngle);
}

/** Length of the centre line from end A to end B, mm. */
export function centreLength(cone: Cone): number {
  return centreFromTangent(cone, cone.length);
}

/**
 * Angle between the two legs' planes, radians (0…π), when the sheet is wrapped by `wrap` about the centre line.
 * cos δ = 1 − (1 − cos ψ)·cos²β. Inverse: {@link wrapFromAngle}.
 */
export function angleFromWrap(wrap: number, halfAngle: number): number {
  // Half-angle form of the same law, sin(δ/2) = sin(ψ/2)·cos β: no cancellation at small angles.
  return 2 * Math.asin(clampUnit(Math.sin(wrap / 2) * Math.cos(halfAngle)));
}

/**
 * Wrap about the centre line, radians, that turns the legs' planes by `angle`.
 * NaN where the cone is too steep to reach that angle (sin(δ/2) > cos β). Inverse: {@link angleFromWrap}.
 */
export function wrapFromAngle(angle: number, halfAngle: number): number {
  return 2 * Math.asin(Math.sin(angle / 2) / Math.cos(halfAngle));
}

function clampUnit(value: number): number {
  return Math.max(-1, Math.min(1, value));
}
