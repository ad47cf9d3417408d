import { curvatureRadius, type Cone } from '../../base/cone';

/** What a flat side of a mesh strays from the arc it stands for at most, mm. */
export const MESH_CHORD_ERROR = 0.002;

/** Chords that the outside of a sheet bent on a cone is made of, `wrap` round (radians): so many that they stray by no more than those of other curves. */
export function chordsRound({ radiusA, radiusB, halfAngle }: Cone, thickness: number, wrap: number): number {
  const outer = curvatureRadius(Math.max(radiusA, radiusB), halfAngle) + thickness;
  return Math.max(1, Math.ceil(wrap / (2 * Math.acos(Math.max(0, 1 - MESH_CHORD_ERROR / outer)))));
}
