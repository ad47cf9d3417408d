import { DEGREE } from '../../base/angle';
import type { Loop, Shape } from '../../base/drawing';
import { flattenLoop } from '../../base/flatten';
import type { LengthUnit } from '../../base/units';
import { labelLength } from '../parts/lengths';
import { bulgeOf, corner, outline } from '../../base/outline';
import { stackFirst } from './room';

/** Longest chord of a gauge's arc, mm: what a hand holds steady. */
const LONGEST_CHORD = 160;
/** The inside gauge shows at least this much arc, so that its curve can be seen; the legs fall away from it. */
const LEAST_ARC = 60 * DEGREE;
const MOST_ARC = 150 * DEGREE;
/** The outside gauge stops short of the tangent lines, beyond which the legs would lift it. */
const OUTSIDE_SHARE = 0.9;
/** Depth of card behind the arc, and half its width at least: something to hold, mm. */
const GRIP = 50;
const HALF_GRIP = 25;
/** Card round the arc of an outside gauge, and clear of the legs, mm. */
const RIM = 12;
const CLEAR = 2;
const LETTERS = 5;

export interface GaugedRadius {
  /** Radius of the edge, square to the centre line, mm. */
  readonly radius: number;
  /** Finished wrap about the centre line, radians. */
  readonly wrap: number;
  readonly end: 'A' | 'B';
  readonly units: LengthUnit;
}

/**
 * A convex gauge for the inside of the finished bend, 1:1, the arc's centre at the origin and its middle straight up. It is held
 * square to the centre line; below the arc it stays between the legs.
 */
export function drawInsideGauge(gauged: GaugedRadius): Shape[] {
  const { radius, wrap } = gauged;
  const arc = chordLimited(radius, Math.min(MOST_ARC, Math.max(LEAST_ARC, wrap)));
  const [half, foot] = [radius * Math.sin(arc / 2), radius * Math.cos(arc / 2)];
  const base = foot - GRIP;
  const betweenLegs = (radius - CLEAR - base * Math.cos(wrap / 2)) / Math.sin(wrap / 2);
  const wide = Math.max(half, Math.min(HALF_GRIP, betweenLegs));
  const edge = outline([
    corner([-wide, base]),
    corner([wide, base]),
    corner([half, foot], bulgeOf(arc)),
    corner([-half, foot]),
  ]);
  return [edge, ...gaugeLabels(edge, 'INSIDE', gauged)];
}

/**
 * A concave gauge for the outside of the finished bend, 1:1, the arc's centre at the origin and its middle straight up. It is
 * held square to the centre line, over the bend, and touches nothing beyond the tangent lines.
 */
export function drawOutsideGauge(gauged: GaugedRadius): Shape[] {
  const { radius, wrap } = gauged;
  const arc = chordLimited(radius, Math.min(MOST_ARC, OUTSIDE_SHARE * wrap));
  const [sine, cosine] = [Math.sin(arc / 2), Math.cos(arc / 2)];
  const narrow = (radius + RIM) * sine < HALF_GRIP;
  const rim = narrow ? Math.max(RIM, (radius + CLEAR) / cosine - radius) : RIM;
  const [out, up] = [(radius + rim) * sine, (radius + rim) * cosine];
  const wide = Math.max(out, HALF_GRIP);
  const top = radius + GRIP;
  const step = wide > out;
  const edge = outline([
    corner([radius * sine, radius * cosine]),
    corner([out, up]),
    ...(step ? [corner([wide, up])] : []),
    corner([wide, top]),
    corner([-wide, top]),
    ...(step ? [corner([-wide, up])] : []),
    corner([-out, up]),
    corner([-radius * sine, radius * cosine], bulgeOf(-arc)),
  ]);
  return [edge, ...gaugeLabels(edge, 'OUTSIDE', gauged)];
}

function chordLimited(radius: number, arc: number): number {
  return Math.min(arc, 2 * Math.asin(Math.min(1, LONGEST_CHORD / (2 * radius))));
}

function gaugeLabels(edge: Loop, side: string, { radius, end, units }: GaugedRadius): Shape[] {
  const size = `R ${labelLength(radius, units)}`;
  const full = [`END ${end}`, size, `${side} OF BEND`, 'HOLD SQUARE TO', 'THE CENTRE LINE'];
  return stackFirst(
    flattenLoop(edge.vertices, 0.05),
    [full, [`END ${end}`, size, side], [end, ...size.split(' '), side]],
    LETTERS,
  );
}
