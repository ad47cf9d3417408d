import { at } from '../../base/at';
import type { Vertex } from '../../base/drawing';
import type { LegPiece } from '../bend/bend-plan';

type Place = Pick<Vertex, 'x' | 'y'>;

/** A bend as it comes off the form, in a slice square to the rulings: mm, radians. */
export interface Unloaded {
  /** Between the legs' planes, radians from flat. */
  readonly angle: number;
  /** Mid-surface radius left where the sheet lay on the form. */
  readonly radius: number;
  /** Pieces of the free leg from the take-off on, and of the held leg from the held tangent line back. */
  readonly free: readonly LegPiece[];
  readonly held: readonly LegPiece[];
}

/** What came out against one round bend between the same legs: mm. */
export interface FinishedShape {
  /** Mid-surface from the held leg's far plane to the free leg's: held leg along −x, the ideal bend from (0, 0) up. */
  readonly line: readonly Place[];
  /** Greatest distance from the ideal bend and its legs. */
  readonly departure: number;
  /** Greatest distance of the free leg from a straightedge laid on it from {@link BOW_FROM} past the take-off to the hands. */
  readonly bow: number;
  /** How far ahead of the ideal bend's tangent line, toward the held edge, the sheet's own bend starts. */
  readonly early: number;
}

/** Where the leg's bow is looked at from, mm past the take-off: nearer it is the round of the bend. */
export const BOW_FROM = 30;
/** The arc is laid out in this many pieces, a point at each. */
const ARC_PIECES = 48;
/** Legs turned back on themselves cannot be made to coincide by a shift along one of them: least sine a shift is reckoned with. */
const LEAST_SINE = 0.1;

/**
 * Lays out arc and tails by their residual curvature and shifts them along the held leg until both far planes coincide with those of one
 * arc of the same radius through the whole angle. Shared plan “The pull and the hold”, The tail.
 */
export function finishedShape({ angle, radius, free, held }: Unloaded): FinishedShape {
  const turnOf = (pieces: readonly LegPiece[]): number => pieces.reduce((sum, { stays }) => sum + stays, 0);
  const arc = (angle - turnOf(free) - turnOf(held)) / ARC_PIECES;
  const arcPieces = Array.from({ length: ARC_PIECES }, () => ({ length: radius * arc, stays: arc }));
  const places = layOut([...[...held].reverse(), ...arcPieces, ...free]);
  const shift = shiftFor(at(places, -1), angle, radius);
  const line = places.map(({ x, y }) => ({ x: x + shift, y }));
  const takeOff = held.length + ARC_PIECES;
  return {
    line,
    departure: Math.max(...line.map((place) => Math.abs(offIdeal(place, angle, radius)))),
    bow: bowOf(line.slice(takeOff), free),
    early: -at(line, held.length).x,
  };
}

/** Corners of a chain of arcs from the origin along x: each piece a length and the turn it keeps. */
function layOut(pieces: readonly Pick<LegPiece, 'length' | 'stays'>[]): Place[] {
  let [x, y, heading] = [0, 0, 0];
  const places = [{ x, y }];
  for (const { length, stays } of pieces) {
    const half = stays / 2;
    const chord = half === 0 ? length : (length * Math.sin(half)) / half;
    x += chord * Math.cos(heading + half);
    y += chord * Math.sin(heading + half);
    heading += stays;
    places.push({ x, y });
  }
  return places;
}

/** How far along x a shape ending at `end` is to go for its far leg to lie in the ideal one's plane. */
function shiftFor(end: Place, angle: number, radius: number): number {
  const sine = angle > Math.PI / 2 ? Math.max(Math.sin(angle), LEAST_SINE) : Math.sin(angle);
  return offFarPlane(end, angle, radius) / sine;
}

/** Signed distance from the ideal free leg's plane, positive on the inside of the bend. */
function offFarPlane({ x, y }: Place, angle: number, radius: number): number {
  return (y - radius * (1 - Math.cos(angle))) * Math.cos(angle) - (x - radius * Math.sin(angle)) * Math.sin(angle);
}

/** Signed distance from the ideal bend and its legs. */
function offIdeal(place: Place, angle: number, radius: number): number {
  const around = Math.atan2(place.x, radius - place.y);
  const turned = around < -Math.PI / 2 ? around + 2 * Math.PI : around;
  if (turned <= 0) return place.y;
  if (turned >= angle) return offFarPlane(place, angle, radius);
  return radius - Math.hypot(place.x, radius - place.y);
}

/** Greatest distance of a leg from the straight line between the place BOW_FROM along it and its end; `line` starts at the take-off. */
function bowOf(line: readonly Place[], free: readonly LegPiece[]): number {
  const end = at(line, -1);
  let along = 0;
  let start: Place | null = null;
  let bow = 0;
  for (let index = 0; index < free.length; index++) {
    const { length } = at(free, index);
    const place = at(line, index + 1);
    along += length;
    if (along < BOW_FROM) continue;
    start ??= between(place, at(line, index), length === 0 ? 0 : (along - BOW_FROM) / length);
    bow = Math.max(bow, distanceFromLine(place, start, end));
  }
  return bow;
}

function between(a: Place, b: Place, share: number): Place {
  return { x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share };
}

function distanceFromLine(place: Place, start: Place, end: Place): number {
  const length = Math.hypot(end.x - start.x, end.y - start.y);
  if (length === 0) return 0;
  return Math.abs((end.x - start.x) * (place.y - start.y) - (end.y - start.y) * (place.x - start.x)) / length;
}
