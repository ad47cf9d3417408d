/** A place or direction in space, mm. */
export type Place3 = readonly [number, number, number];

/** a + share·b. */
export function plus(a: Place3, b: Place3, share = 1): Place3 {
  return [a[0] + share * b[0], a[1] + share * b[1], a[2] + share * b[2]];
}

/** a − b. */
export function minus(a: Place3, b: Place3): Place3 {
  return [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
}

export function scaled(a: Place3, share: number): Place3 {
  return [share * a[0], share * a[1], share * a[2]];
}

export function dot3(a: Place3, b: Place3): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

export function cross3(a: Place3, b: Place3): Place3 {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

export function length3(a: Place3): number {
  return Math.sqrt(a[0] * a[0] + a[1] * a[1] + a[2] * a[2]);
}

export function apart3(a: Place3, b: Place3): number {
  return length3(minus(a, b));
}

/** The direction with length 1. Valid for any vector but the zero vector. */
export function unit3(a: Place3): Place3 {
  return scaled(a, 1 / length3(a));
}

/**
 * A rigid motion or change of frame: where the three unit vectors and the origin go. The unit vectors' images stay square to one another;
 * left-handed frames are allowed, so that a bend seen from the sheet's other face needs no case of its own.
 */
export interface Motion {
  readonly x: Place3;
  readonly y: Place3;
  readonly z: Place3;
  readonly at: Place3;
}

export const stay: Motion = { x: [1, 0, 0], y: [0, 1, 0], z: [0, 0, 1], at: [0, 0, 0] };

/** Where a direction goes. */
export function turnedBy({ x, y, z }: Motion, way: Place3): Place3 {
  // By index: taking a list apart by pattern goes through an iterator until the engine has warmed to it.
  const a = way[0];
  const b = way[1];
  const c = way[2];
  return [a * x[0] + b * y[0] + c * z[0], a * x[1] + b * y[1] + c * z[1], a * x[2] + b * y[2] + c * z[2]];
}

/** Where a place goes. */
export function movedBy({ x, y, z, at }: Motion, place: Place3): Place3 {
  const a = place[0];
  const b = place[1];
  const c = place[2];
  return [
    a * x[0] + b * y[0] + c * z[0] + at[0],
    a * x[1] + b * y[1] + c * z[1] + at[1],
    a * x[2] + b * y[2] + c * z[2] + at[2],
  ];
}

/** First `second`, then `first`: movedBy(after(first, second), p) = movedBy(first, movedBy(second, p)). */
export function after(first: Motion, second: Motion): Motion {
  return {
    x: turnedBy(first, second.x),
    y: turnedBy(first, second.y),
    z: turnedBy(first, second.z),
    at: movedBy(first, second.at),
  };
}

/** The way back. */
export function back({ x, y, z, at }: Motion): Motion {
  const turned: Motion = { x: [x[0], y[0], z[0]], y: [x[1], y[1], z[1]], z: [x[2], y[2], z[2]], at: [0, 0, 0] };
  return { ...turned, at: scaled(turnedBy(turned, at), -1) };
}

/** A turn by `angle` radians about the line through `through` along the unit vector `axis`, by the right-hand rule. */
export function turnAbout(through: Place3, axis: Place3, angle: number): Motion {
  const [cosine, sine] = [Math.cos(angle), Math.sin(angle)];
  const turned = (v: Place3): Place3 =>
    plus(plus(scaled(v, cosine), cross3(axis, v), sine), axis, dot3(axis, v) * (1 - cosine));
  return {
    x: turned([1, 0, 0]),
    y: turned([0, 1, 0]),
    z: turned([0, 0, 1]),
    at: minus(through, turned(through)),
  };
}

/** +1 for a motion that can be carried out, −1 for one that mirrors. */
export function sideOf({ x, y, z }: Motion): number {
  return Math.sign(dot3(cross3(x, y), z));
}
