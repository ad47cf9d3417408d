import { sweepFromBulge } from './arc';
import type { Vertex } from './drawing';

/**
 * A side of a loop as a curve of one curvature: straight at 0, an arc to the left above, to the right below. Where it starts, which
 * way it heads there (unit vector), curvature in 1/mm, length in mm. Reckoned from its start, never from a centre, so that the
 * flattest arcs keep all their digits: with Y from the start, u the heading, n left of it and κ the curvature, the points of the
 * whole circle are those with κ·|Y|²/2 = n·Y.
 */
export interface Side {
  readonly x: number;
  readonly y: number;
  readonly headingX: number;
  readonly headingY: number;
  readonly curvature: number;
  readonly length: number;
}

/** An arc flatter than this bulge is straight: over a metre it stands 5e-13 mm high. */
const STRAIGHT = 1e-15;
/** An arc of a radius below this, mm, is a point. */
const POINT = 1e-9;

export interface Place {
  readonly x: number;
  readonly y: number;
}

/** The side from one corner to the next; the two must not be the same place. */
export function sideBetween(from: Vertex, to: Place): Side {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const { x, y } = from;
  const bulge = Math.abs(from.bulge) < STRAIGHT ? 0 : from.bulge;
  const chord = Math.hypot(dx, dy);
  const half = sweepFromBulge(bulge) / 2;
  const [cosine, sine] = [Math.cos(half) / chord, Math.sin(half) / chord];
  return {
    x,
    y,
    headingX: dx * cosine + dy * sine,
    headingY: dy * cosine - dx * sine,
    curvature: (4 * bulge) / (chord * (1 + bulge ** 2)),
    length: bulge === 0 ? chord : chord * (1 + bulge ** 2) * (Math.atan(bulge) / bulge),
  };
}

/** The included angle of a side, radians, positive counter-clockwise. */
export function sweepOf(side: Side): number {
  return side.curvature * side.length;
}

/** The same curve, starting a share (0…1) of the way along; 1 starts where the side ends. */
export function startingAt(side: Side, share: number): Side {
  const along = share * side.length;
  const half = (side.curvature * along) / 2;
  const [cosine, sine] = [Math.cos(half), Math.sin(half)];
  const chord = half === 0 ? along : (along * sine) / half;
  const [chordX, chordY] = turned(side, cosine, sine);
  const [headingX, headingY] = turned(side, Math.cos(2 * half), Math.sin(2 * half));
  return {
    ...side,
    x: side.x + chord * chordX,
    y: side.y + chord * chordY,
    headingX,
    headingY,
    length: side.length - along,
  };
}

function turned({ headingX, headingY }: Side, cosine: number, sine: number): readonly [number, number] {
  return [headingX * cosine - headingY * sine, headingY * cosine + headingX * sine];
}

/** The parallel side `right` mm to the right of it (left below 0), of the same sweep; null where no radius is left. */
export function movedRight(side: Side, right: number): Side | null {
  const stretch = 1 + side.curvature * right;
  if (!(stretch > POINT * Math.abs(side.curvature))) return null;
  return {
    ...side,
    x: side.x + right * side.headingY,
    y: side.y - right * side.headingX,
    curvature: side.curvature / stretch,
    length: side.length * stretch,
  };
}

/** How far ahead of a side's start a place lies, and how far to its left, mm. */
function seenFrom(side: Side, place: Place): { readonly ahead: number; readonly left: number } {
  const [dx, dy] = [place.x - side.x, place.y - side.y];
  return { ahead: dx * side.headingX + dy * side.headingY, left: dy * side.headingX - dx * side.headingY };
}

/** The share of the way along at which a side passes closest to a place: 0…1 on it, outside that on the rest of its line or circle. */
export function shareAt(side: Side, place: Place): number {
  const { curvature, length } = side;
  const { ahead, left } = seenFrom(side, place);
  if (curvature === 0) return ahead / length;
  const sweep = Math.abs(sweepOf(side));
  const turn = Math.sign(curvature) * Math.atan2(curvature * ahead, 1 - curvature * left);
  // Before or after the arc, whichever end is nearer.
  return (turn < sweep / 2 - Math.PI ? turn + 2 * Math.PI : turn) / sweep;
}

/** The distance from a place to a side, mm, its ends included. */
export function distanceTo(side: Side, place: Place): number {
  const share = shareAt(side, place);
  if (share >= 0 && share <= 1) return distanceToWhole(side, place);
  const end = startingAt(side, 1);
  return Math.min(Math.hypot(place.x - side.x, place.y - side.y), Math.hypot(place.x - end.x, place.y - end.y));
}

/** To the whole line or circle: (|Y − n/κ|² − 1/κ²)/(|Y − n/κ| + 1/|κ|), times |κ| above and below. */
function distanceToWhole(side: Side, place: Place): number {
  const { ahead, left } = seenFrom(side, place);
  const [across, along] = [1 - side.curvature * left, side.curvature * ahead];
  return Math.abs(side.curvature * (ahead ** 2 + left ** 2) - 2 * left) / (1 + Math.hypot(across, along));
}

/**
 * Where the whole lines or circles of two sides cross: none, one or two places; none where they are one and the same. Of the two
 * equations κ·|Y|²/2 = n·Y the flatter one's, less its share of the other's, is that of the line through both crossings.
 */
export function crossings(a: Side, b: Side): Place[] {
  const [round, flat] = Math.abs(a.curvature) >= Math.abs(b.curvature) ? [a, b] : [b, a];
  const ratio = round.curvature === 0 ? 0 : flat.curvature / round.curvature;
  const [dx, dy] = [flat.x - round.x, flat.y - round.y];
  // The line m·Y = c, Y from the start of the rounder one.
  const [mx, my] = [
    flat.curvature * dx - flat.headingY + ratio * round.headingY,
    flat.curvature * dy + flat.headingX - ratio * round.headingX,
  ];
  const c = (flat.curvature * (dx ** 2 + dy ** 2)) / 2 + flat.headingX * dy - flat.headingY * dx;
  const size = Math.hypot(mx, my);
  const [nearX, nearY] = [(mx * c) / size ** 2, (my * c) / size ** 2];
  const [alongX, alongY] = [-my / size, mx / size];
  const halfLinear = -(round.headingX * alongY - round.headingY * alongX) / 2;
  const constant =
    (round.curvature * (nearX ** 2 + nearY ** 2)) / 2 - (round.headingX * nearY - round.headingY * nearX);
  return rootsOf(round.curvature / 2, halfLinear, constant).map((t) => ({
    x: round.x + nearX + t * alongX,
    y: round.y + nearY + t * alongY,
  }));
}

/** The real roots of a·t² + 2h·t + c, without loss of digits where a is small. */
function rootsOf(a: number, h: number, c: number): number[] {
  const q = -(h + (h < 0 ? -1 : 1) * Math.sqrt(h ** 2 - a * c));
  return [c / q, q / a].filter(Number.isFinite);
}
