/** Radians in one degree. */
export const DEGREE = Math.PI / 180;

/** Radians to degrees. */
export function toDegrees(radians: number): number {
  return radians / DEGREE;
}

/** Degrees to radians. */
export function toRadians(degrees: number): number {
  return degrees * DEGREE;
}
