import type { Vertex } from '../../base/drawing';
import type { Point } from '../../base/polygon';
import { ROUNDING } from '../../base/tolerance';

/** Steps and directions on the flat, mm. */
export function add([x, y]: Point, [dx, dy]: Point, share = 1): Point {
  return [x + share * dx, y + share * dy];
}

export function less([x, y]: Point, [a, b]: Point): Point {
  return [x - a, y - b];
}

export function dot([x, y]: Point, [a, b]: Point): number {
  return x * a + y * b;
}

/** Positive where the second direction lies to the left of the first. */
export function cross([x, y]: Point, [a, b]: Point): number {
  return x * b - y * a;
}

export function distance(a: Point, b: Point): number {
  return Math.hypot(b[0] - a[0], b[1] - a[1]);
}

/** The direction from one place to another, length 1; the places must differ. */
export function direction(from: Point, to: Point): Point {
  const length = distance(from, to);
  return [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
}

/** A direction turned a quarter turn to the left. */
export function leftOf([x, y]: Point): Point {
  return [-y, x];
}

/** A direction turned by `angle` radians counter-clockwise. */
export function turned([x, y]: Point, angle: number): Point {
  const [cosine, sine] = [Math.cos(angle), Math.sin(angle)];
  return [x * cosine - y * sine, x * sine + y * cosine];
}

/** A straight line: a place on it and its direction, length 1. */
export interface Ray {
  readonly at: Point;
  readonly along: Point;
}

/** Where two lines meet; null where they are parallel. */
export function meeting(a: Ray, b: Ray): Point | null {
  const sine = cross(a.along, b.along);
  if (Math.abs(sine) < 1e-12) return null;
  return add(a.at, a.along, cross(less(b.at, a.at), b.along) / sine);
}

export const pointOf = ({ x, y }: Vertex): Point => [x, y];

/** The bulge of the arc from one place over a middle place to another: through all three where the middle lies square over the chord's middle. */
export function bulgeOver(from: Point, middle: Point, to: Point): number {
  const chord = distance(from, to);
  if (chord === 0) return 0;
  const bulge = (-2 * cross(direction(from, to), less(middle, from))) / chord;
  return Math.abs(bulge) < ROUNDING ? 0 : bulge;
}

/** A loop without corners that stand on the one before, mm apart at least. */
export function withoutRepeats(loop: readonly Vertex[], apart = ROUNDING): Vertex[] {
  const near = (a: Vertex, b: Vertex): boolean => Math.hypot(a.x - b.x, a.y - b.y) < apart;
  return loop.filter((vertex, index) => {
    const next = loop[(index + 1) % loop.length];
    return !next || !near(vertex, next);
  });
}
