import { wrapFromAngle } from '../../base/cone';
import type { Ends } from '../../base/ends';
import type { Point } from '../../base/polygon';
import type { Measured } from './built-up';
import { add, cross, direction, distance, leftOf, meeting } from './plane';
import { ROUNDING } from '../../base/tolerance';
import { at as itemAt } from '../../base/at';

/** What sets a bend's base line back from the edge it was given on. */
export interface EdgeBend {
  readonly angle: number;
  /** Finished inside radius where the edge starts and ends, at the bend's own ends. */
  readonly radius: Ends;
  /** How far the bend stays short of the base line's ends, mm. */
  readonly inset: Ends;
}

/** The base as far as its tangent lines: corner i starts edge i. */
export interface BaseLines {
  readonly corners: readonly Point[];
}

const LOOPS = 60;
/** Two rounds that differ by less, mm, are the same. */
const SETTLED = 1e-12;

/**
 * The base lines' polygon of a base whose corners are where planes meet. A base line lies `R·tan(ψ/2)` inside the meeting line, square to itself, at
 * each of its ends (outside: and `t·tan(δ/2)`, square to the meeting line). What the taper is depends on how long the base line comes out, so it is
 * gone round until it settles. Null where it does not, or where nothing is left.
 */
export function baseLines(
  polygon: readonly Point[],
  bends: readonly (EdgeBend | null)[],
  { measured, thickness }: { readonly measured: Measured; readonly thickness: number },
): BaseLines | null {
  let corners = polygon;
  if (measured === 'flat') return { corners };
  for (let loop = 0; loop < LOOPS; loop++) {
    const backs = bends.map((bend, index) => {
      if (!bend) return { A: 0, B: 0 };
      const length = distance(at(corners, index), at(corners, index + 1));
      return setBacks(bend, length, measured === 'outside' ? thickness : 0);
    });
    const next = polygon.map((_, index) => cornerAt(polygon, index, backs));
    if (!next.every((corner): corner is Point => corner !== null && corner.every(Number.isFinite))) return null;
    const moved = Math.max(...next.map((corner, index) => distance(corner, at(corners, index))));
    corners = next;
    if (moved < SETTLED) return keepsItsWay(polygon, corners) ? { corners } : null;
  }
  return null;
}

/** From the meeting line to the base line's ends, square to the meeting line, mm. */
export function setBacks({ angle, radius, inset }: EdgeBend, length: number, outside: number): Ends {
  const sine = (radius.B - radius.A) / (length - inset.A - inset.B);
  const halfAngle = Math.asin(sine);
  const wrap = wrapFromAngle(angle, halfAngle);
  const slant = Math.cos(Math.atan(sine * Math.tan(wrap / 2)));
  const back = (r: number): number => r * Math.tan(wrap / 2) * slant + outside * Math.tan(angle / 2);
  return { A: back(radius.A - inset.A * sine), B: back(radius.B + inset.B * sine) };
}

function cornerAt(polygon: readonly Point[], index: number, backs: readonly Ends[]): Point | null {
  const [before, here, next] = [at(polygon, index - 1), at(polygon, index), at(polygon, index + 1)];
  const [inDirection, outDirection] = [direction(before, here), direction(here, next)];
  const coming = itemAt(backs, index - 1).B;
  const going = itemAt(backs, index).A;
  if (Math.abs(cross(inDirection, outDirection)) < ROUNDING)
    return Math.abs(coming - going) < ROUNDING ? add(here, leftOf(outDirection), going) : null;
  return meeting(
    { at: add(here, leftOf(inDirection), coming), along: inDirection },
    { at: add(here, leftOf(outDirection), going), along: outDirection },
  );
}

/** No edge has turned round. */
function keepsItsWay(polygon: readonly Point[], corners: readonly Point[]): boolean {
  return polygon.every((_, index) => {
    const [was, is] = [
      direction(at(polygon, index), at(polygon, index + 1)),
      direction(at(corners, index), at(corners, index + 1)),
    ];
    return was[0] * is[0] + was[1] * is[1] > 0;
  });
}

function at(points: readonly Point[], index: number): Point {
  return points[(index + points.length) % points.length] ?? [NaN, NaN];
}
