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
}

/**
 * The free stretch between take-off and nose of a sheet bent to `curvature` (1/mm) at the take-off: M_g = F·arm,
 * F·sin Θ = W_c(m_f) − W_c(M_g), gap = ∫ dm/√(F² − (W_c − W_c(M_g))²) from M_g to m_f. Null where the stretch would turn more than
 * `most` (radians, below a quarter turn). Shared plan “The pull and the hold”, How the leg is pulled.
 */
export function grippedLeg(
  curve: BendingCurve,
  curvature: number,
  { gap, arm }: Grip,
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
  if (stretchFrom(least).length < gap) return null;
  const parameter = rootBetween((from) => stretchFrom(from).length - gap, least, end, CLOSE);
  const { moment, force, complementary, released } = stretchFrom(parameter);
  const loaded = Math.asin((whole - complementary) / force);
  return { moment, parameter, force, loaded, stays: end <= 1 ? 0 : loaded - released / curve.stiffness };
}
