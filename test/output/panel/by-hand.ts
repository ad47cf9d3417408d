import { at } from '../../../src/base/at';

/**
 * Bending from printed numbers alone: a turn about each bend's centre line as school geometry gives it. Nothing of the panel's own folding is used.
 */

export type Flat = readonly [number, number];
export type Space = readonly [number, number, number];

/** A bend as it is printed: mm on the flat, degrees. */
export interface PrintedBend {
  readonly name: string;
  readonly turn: 'up' | 'down';
  readonly angle: number;
  readonly baseLine: readonly [Flat, Flat];
  readonly legLine: readonly [Flat, Flat];
  readonly finished: { readonly from: number; readonly to: number };
}

export const INCH = 25.4;

/** Along a line from its first place, and to its side (toward `positive`), mm. */
export function seenFrom([[x, y], [u, v]]: readonly [Flat, Flat], [px, py]: Flat, side: number): Flat {
  const length = Math.hypot(u - x, v - y);
  const [ax, ay] = [(u - x) / length, (v - y) / length];
  return [(px - x) * ax + (py - y) * ay, side * ((py - y) * ax - (px - x) * ay)];
}

/** A place of the leg, in the middle of the sheet, once its bend is made; the base in z = 0, marked face up. */
export function bent(bend: PrintedBend, thickness: number, flat: Flat): Space {
  const [from, to] = bend.baseLine;
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const side = Math.sign(seenFrom(bend.baseLine, at(bend.legLine, 0), 1)[1]);
  const [s, d] = seenFrom(bend.legLine, flat, side);
  // In the bend's frame: x along the base line, y to the leg, z to the inside. The leg's flat is laid on the base line, then turned about the centre line.
  const slope = Math.asin((bend.finished.to - bend.finished.from) / length);
  const angle = (bend.angle * Math.PI) / 180;
  const wrap = 2 * Math.asin(Math.sin(angle / 2) / Math.cos(slope));
  // Square to the inside surface the centre line is R/cos β away.
  const height = thickness / 2 + bend.finished.from / Math.cos(slope);
  const axis: Space = [Math.cos(slope), 0, Math.sin(slope)];
  const turned = about(axis, wrap, [s, d, -height]);
  const [x, y, z] = [turned[0], turned[1], turned[2] + height];
  const along: Flat = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  const out: Flat = [-side * along[1], side * along[0]];
  return [from[0] + x * along[0] + y * out[0], from[1] + x * along[1] + y * out[1], bend.turn === 'up' ? z : -z];
}

/** Rodrigues' turn; the leg rises from +y toward +z. */
function about([a, b, c]: Space, angle: number, [x, y, z]: Space): Space {
  const [cosine, sine] = [Math.cos(angle), Math.sin(angle)];
  const dot = (a * x + b * y + c * z) * (1 - cosine);
  return [
    x * cosine + (b * z - c * y) * sine + a * dot,
    y * cosine + (c * x - a * z) * sine + b * dot,
    z * cosine + (a * y - b * x) * sine + c * dot,
  ];
}

export function apart(p: Space, q: Space): number {
  return Math.hypot(p[0] - q[0], p[1] - q[1], p[2] - q[2]);
}

export function minus(p: Space, q: Space): Space {
  return [p[0] - q[0], p[1] - q[1], p[2] - q[2]];
}

/** Whether a leg stands square to the base: the part of its normal that is not in the base's plane. */
export function lean(bend: PrintedBend, thickness: number): number {
  const [p, q] = [bent(bend, thickness, bend.legLine[0]), bent(bend, thickness, bend.legLine[1])];
  const side = bent(bend, thickness, [
    2 * bend.legLine[0][0] - bend.baseLine[0][0],
    2 * bend.legLine[0][1] - bend.baseLine[0][1],
  ]);
  const [e, f] = [minus(q, p), minus(side, p)];
  const normal: Space = [e[1] * f[2] - e[2] * f[1], e[2] * f[0] - e[0] * f[2], e[0] * f[1] - e[1] * f[0]];
  return normal[2] / Math.hypot(...normal);
}

/** Of the places of the outline on a leg's rim, `wide` mm beyond its leg line, the one nearest the corner at the flat's place `corner`. */
export function rimCorner(
  bend: PrintedBend,
  outline: readonly Flat[],
  { wide, corner, within }: { readonly wide: number; readonly corner: Flat; readonly within: number },
): Flat {
  const side = Math.sign(seenFrom(bend.baseLine, bend.legLine[0], 1)[1]);
  const away = ([x, y]: Flat): number => Math.hypot(x - corner[0], y - corner[1]);
  const toward = away(bend.baseLine[0]) < away(bend.baseLine[1]) ? 1 : -1;
  const rim = outline
    .map((flat) => ({ flat, seen: seenFrom(bend.legLine, flat, side) }))
    .filter(({ seen }) => Math.abs(seen[1] - wide) < within)
    .sort((a, b) => toward * (a.seen[0] - b.seen[0]));
  return at(rim, 0).flat;
}
