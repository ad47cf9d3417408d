/** A point or direction in space, mm: x along the tangent line from end A, y ahead of the spine's front face, z up from the sheet's inside face. */
export type Point3 = readonly [number, number, number];

export function subtract(a: Point3, b: Point3): Point3 {
  return [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
}

/** a + share·b. */
export function addScaled(a: Point3, b: Point3, share: number): Point3 {
  return [a[0] + share * b[0], a[1] + share * b[1], a[2] + share * b[2]];
}

export function dot(a: Point3, b: Point3): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

export function cross(a: Point3, b: Point3): Point3 {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

/** The direction with length 1. Valid for any vector but the zero vector. */
export function unit(a: Point3): Point3 {
  const length = Math.hypot(...a);
  return [a[0] / length, a[1] / length, a[2] / length];
}

export function centreOf(points: readonly Point3[]): Point3 {
  return points.reduce<Point3>((sum, point) => addScaled(sum, point, 1 / points.length), [0, 0, 0]);
}

/** The direction square to a flat polygon (Newell's sums), by the right-hand rule about its corners. */
export function normalOf(outline: readonly Point3[]): Point3 {
  const sum = outline.reduce<Point3>(
    (total, from, index) => {
      const to = outline[(index + 1) % outline.length] ?? from;
      return addScaled(total, cross(from, to), 1);
    },
    [0, 0, 0],
  );
  return unit(sum);
}

/** A rigid motion of points. */
export type Motion = (point: Point3) => Point3;

/** A point carried by motions, the first first. */
export function carryAll(motions: readonly Motion[], point: Point3): Point3 {
  return motions.reduce((moved, motion) => motion(moved), point);
}

/** A direction as a rigid motion turns it. */
export function turnedBy(motion: Motion, direction: Point3): Point3 {
  return subtract(motion(direction), motion([0, 0, 0]));
}

/** A point turned about an axis of length 1 through `from`, radians, by the right-hand rule (Rodrigues). */
export function turnAbout(
  point: Point3,
  { from, axis, turn }: { readonly from: Point3; readonly axis: Point3; readonly turn: number },
): Point3 {
  const arm = subtract(point, from);
  const [sine, cosine] = [Math.sin(turn), Math.cos(turn)];
  const along = dot(axis, arm) * (1 - cosine);
  const turned = addScaled(addScaled([0, 0, 0], arm, cosine), cross(axis, arm), sine);
  return addScaled(addScaled(from, turned, 1), axis, along);
}
