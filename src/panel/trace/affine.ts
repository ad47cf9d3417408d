import type { Place } from '../../base/side';

/** A straight-line map of the plane: x′ = a·x + c·y + e, y′ = b·x + d·y + f (the order SVG writes a matrix in). */
export interface Affine {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
  readonly e: number;
  readonly f: number;
}

/** Leaves everything where it is. */
export const IDENTITY: Affine = { a: 1, b: 0, c: 0, d: 1, e: 0, f: 0 };

/** Relative difference below which two stretches, or a right angle, are taken as rounding in the file. */
const SAME = 1e-9;

/** First `inner`, then `outer`. */
export function compose(outer: Affine, inner: Affine): Affine {
  return {
    a: outer.a * inner.a + outer.c * inner.b,
    b: outer.b * inner.a + outer.d * inner.b,
    c: outer.a * inner.c + outer.c * inner.d,
    d: outer.b * inner.c + outer.d * inner.d,
    e: outer.a * inner.e + outer.c * inner.f + outer.e,
    f: outer.b * inner.e + outer.d * inner.f + outer.f,
  };
}

/** A move by x, y. */
export function moveBy(x: number, y: number): Affine {
  return { ...IDENTITY, e: x, f: y };
}

/** A stretch along each axis from the origin; negative mirrors. */
export function stretch(x: number, y: number): Affine {
  return { ...IDENTITY, a: x, d: y };
}

/** A turn by `angle` radians from x towards y about the origin. */
export function turn(angle: number): Affine {
  const [cosine, sine] = [Math.cos(angle), Math.sin(angle)];
  return { a: cosine, b: sine, c: -sine, d: cosine, e: 0, f: 0 };
}

/** Where a place goes. */
export function mapPlace(map: Affine, { x, y }: Place): Place {
  return { x: map.a * x + map.c * y + map.e, y: map.b * x + map.d * y + map.f };
}

/** Where a direction goes: the map without its shift. */
export function mapDirection(map: Affine, { x, y }: Place): Place {
  return { x: map.a * x + map.c * y, y: map.b * x + map.d * y };
}

/** By how much an area grows; negative where the map mirrors. */
export function determinant({ a, b, c, d }: Affine): number {
  return a * d - b * c;
}

/** Whether circles stay circles: both axes stretched alike and still square to each other. */
export function keepsCircles({ a, b, c, d }: Affine): boolean {
  const [first, second] = [a * a + b * b, c * c + d * d];
  return Math.abs(first - second) <= SAME * (first + second) && Math.abs(a * c + b * d) <= SAME * (first + second);
}
