import { rootBetween } from '../../base/solve';
import { parameterAt, type BendingCurve, type CurvePoint } from '../bend/curve';
import type { PulledLeg } from './leg';
import { momentNodes } from './moment-nodes';
import { lengthOf } from './pulled-leg';

/** A leg gripped by a yoke a little past the take-off, the yoke pulled square to itself. */
export interface GrippedLeg extends PulledLeg {
  /** Moment the yoke takes at its nose, N·mm per mm. */
  readonly moment: number;
  /** Parameter of the bending curve there. */
  readonly parameter: number;
}

/** Roots are sought to this share: far finer than any hand. */
const CLOSE = 1e-11;

/** How a leg is gripped: mm along the leg from the take-off to the yoke's nose, and from there to the hands. */
export interface Grip {
  readonly gap: number;
  readonly arm: number;
  /** What the curve's parameter at the nose is thought to be near, where that is known: found the sooner. */
  readonly near?: number | undefined;
}

/**
 * The free stretch between take-off and nose of a sheet bent to `curvature` (1/mm) at the take-off: M_g = F·arm,
 * F·sin Θ = W_c(m_f) − W_c(M_g), gap = ∫ dm/√(F² − (W_c − W_c(M_g))²) from M_g to m_f. Null where the stretch would turn more than
 * `most` (radians, below a quarter turn). Shared plan “The pull and the hold”, How the leg is pulled.
 */
export function grippedLeg(
  curve: BendingCurve,
  curvature: number,
  { gap, arm, near }: Grip,
  most: number,
): GrippedLeg | null {
  const end = parameterAt(curve, curvature);
  const whole = curve.at(end).complementary;
  const stretchFrom = (parameter: number) => {
    const { moment, complementary } = curve.at(parameter);
    const force = moment / arm;
    return { moment, force, complementary, ...lengthOf(momentNodes(curve, parameter, end), force, complementary) };
  };
  // The less the nose carries, the more the stretch turns and the longer it is.
  const turnsMost = ({ moment, complementary }: CurvePoint): number =>
    (whole - complementary) * arm - moment * Math.sin(most);
  const least = rootBetween((parameter) => turnsMost(curve.at(parameter)), 0, end, CLOSE);
  const longer = (from: number): number => stretchFrom(from).length - gap;
  const found = near === undefined ? null : rootNear(longer, Math.max(near, least), end);
  if (found === null && longer(least) < 0) return null;
  const parameter = found ?? rootBetween(longer, least, end, CLOSE);
  const { moment, force, complementary, released } = stretchFrom(parameter);
  const loaded = Math.asin((whole - complementary) / force);
  return { moment, parameter, force, loaded, stays: end <= 1 ? 0 : loaded - released / curve.stiffness };
}

const SECANTS = 8;
/** First step away from where a root is thought to be, as a share. */
const ASIDE = 1e-3;

/** The root of a smooth function near a place, below `most`, by secants; null where they do not find it. */
function rootNear(f: (x: number) => number, near: number, most: number): number | null {
  let [before, place] = [Math.min(near * (1 - ASIDE), most), Math.min(near, most)];
  let [wasOff, off] = [f(before), f(place)];
  for (let step = 0; step < SECANTS; step++) {
    const next = place - (off * (place - before)) / (off - wasOff);
    if (!(next > 0 && next < most)) return null;
    if (Math.abs(next - place) <= CLOSE * next) return next;
    [before, wasOff] = [place, off];
    [place, off] = [next, f(next)];
  }
  return null;
}
