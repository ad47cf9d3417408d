import type { Vertex } from './drawing';

/**
 * Circular arcs as a chord and a bulge = tan(included angle/4), positive counter-clockwise. Lengths mm, angles radians.
 * Source: the DXF owner's reference (bulge, group 42); r = c(1 + b²)/(4|b|) and sagitta b·c/2 follow from tan's half-angle laws.
 */

/** Along an arc of less than this sweep, radians, the share of the chord is the share of the arc to the last digit. */
const STRAIGHT = 1e-8;

/** A circular arc between two corners: centre, radius (mm), start angle and signed sweep (radians, positive counter-clockwise). */
export interface ArcSpan {
  readonly centreX: number;
  readonly centreY: number;
  readonly radius: number;
  readonly start: number;
  readonly sweep: number;
}

type Place = Pick<Vertex, 'x' | 'y'>;

/** Bulge of an arc of included angle `sweep` (radians, signed, |sweep| < 2π): tan(sweep/4). Inverse: {@link sweepFromBulge}. */
export function bulgeFromSweep(sweep: number): number {
  return Math.tan(sweep / 4);
}

/** Included angle of an arc, radians, signed like its bulge. Inverse: {@link bulgeFromSweep}. */
export function sweepFromBulge(bulge: number): number {
  return 4 * Math.atan(bulge);
}

/** Radius of the arc over a chord (mm): c·(1 + b²)/(4·|b|); Infinity where it is straight. Inverse: {@link bulgeFromRadius}. */
export function radiusFromBulge(chord: number, bulge: number): number {
  return (chord * (1 + bulge ** 2)) / (4 * Math.abs(bulge));
}

/** Bulge (0…1) of the shorter counter-clockwise arc of a radius over a chord (mm); NaN where the chord is longer than the diameter. Inverse: {@link radiusFromBulge}. */
export function bulgeFromRadius(chord: number, radius: number): number {
  // (2r − √(4r² − c²))/c, turned over so that flat arcs lose no digits.
  return chord / (2 * radius + Math.sqrt((2 * radius - chord) * (2 * radius + chord)));
}

/** Height of an arc over its chord (mm), signed like its bulge: b·c/2. Inverse: {@link bulgeFromSagitta}. */
export function sagittaFromBulge(chord: number, bulge: number): number {
  return (bulge * chord) / 2;
}

/** Bulge of the arc that stands `sagitta` over its chord (mm), signed like it: 2s/c. Inverse: {@link sagittaFromBulge}. */
export function bulgeFromSagitta(chord: number, sagitta: number): number {
  return (2 * sagitta) / chord;
}

/** The arc from one corner of a loop to the next; null where the bulge is 0 and the side is straight. */
export function arcBetween(from: Vertex, to: Place): ArcSpan | null {
  if (from.bulge === 0) return null;
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  // From the chord's middle to the centre: square to the chord, to the left of it by (1 − b²)/(4b) of its length.
  const aside = (1 - from.bulge ** 2) / (4 * from.bulge);
  const [centreX, centreY] = [(from.x + to.x) / 2 - dy * aside, (from.y + to.y) / 2 + dx * aside];
  return {
    centreX,
    centreY,
    radius: radiusFromBulge(Math.hypot(dx, dy), from.bulge),
    start: Math.atan2(from.y - centreY, from.x - centreX),
    sweep: sweepFromBulge(from.bulge),
  };
}

/**
 * The point a share (0…1) of the way from one corner to the next, along the arc or the straight side, mm.
 * Reckoned from the chord, not the centre, so that the flattest arcs keep all their digits.
 */
export function pointOnSide(from: Vertex, to: Place, share: number): readonly [number, number] {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const sweep = sweepFromBulge(from.bulge);
  const ratio = Math.abs(sweep) < STRAIGHT ? share : Math.sin((share * sweep) / 2) / Math.sin(sweep / 2);
  const turn = ((share - 1) * sweep) / 2;
  const [cosine, sine] = [ratio * Math.cos(turn), ratio * Math.sin(turn)];
  return [from.x + dx * cosine - dy * sine, from.y + dx * sine + dy * cosine];
}

/** The sides of a closed loop, each corner with the next. */
export function sidesOf(vertices: readonly Vertex[]): (readonly [Vertex, Vertex])[] {
  return vertices.map((vertex, index) => [vertex, vertices[(index + 1) % vertices.length] ?? vertex] as const);
}
