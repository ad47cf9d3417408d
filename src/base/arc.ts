import type { Vertex } from './drawing';

/** A circular arc between two corners: centre, radius (mm), start angle and signed sweep (radians, positive counter-clockwise). */
export interface ArcSpan {
  readonly centreX: number;
  readonly centreY: number;
  readonly radius: number;
  readonly start: number;
  readonly sweep: number;
}

/** Bulge of an arc of included angle `sweep` (radians, signed, |sweep| < 2π): tan(sweep/4). Inverse: {@link sweepFromBulge}. */
export function bulgeFromSweep(sweep: number): number {
  return Math.tan(sweep / 4);
}

/** Included angle of an arc, radians, signed like its bulge. Inverse: {@link bulgeFromSweep}. */
export function sweepFromBulge(bulge: number): number {
  return 4 * Math.atan(bulge);
}

/** Radius of the arc over a chord (mm): c·(1 + b²)/(4·|b|); Infinity where it is straight. */
export function radiusFromBulge(chord: number, bulge: number): number {
  return (chord * (1 + bulge ** 2)) / (4 * Math.abs(bulge));
}

/** Height of an arc over its chord (mm), signed like its bulge: b·c/2. */
export function sagittaFromBulge(chord: number, bulge: number): number {
  return (bulge * chord) / 2;
}

/** The arc from one corner of a loop to the next; null where the bulge is 0 and the side is straight. */
export function arcBetween(from: Vertex, to: Pick<Vertex, 'x' | 'y'>): ArcSpan | null {
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

/** The sides of a closed loop, each corner with the next. */
export function sidesOf(vertices: readonly Vertex[]): (readonly [Vertex, Vertex])[] {
  return vertices.map((vertex, index) => [vertex, vertices[(index + 1) % vertices.length] ?? vertex] as const);
}
