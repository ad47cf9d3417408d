import { parameterAt, type BendingCurve } from '../bend/curve';
import { momentNodes, overMoment } from './moment-nodes';

/**
 * What a leg does that is held by a moment falling steadily to nothing along it, turning little: per mm of that length. Shared plan
 * “The pull and the hold”, The tail.
 */
export interface TailPerLength {
  /** Moment where it starts, N·mm per mm. */
  readonly moment: number;
  /** λ = W_c/m: turn while loaded, rad/mm. */
  readonly loaded: number;
  /** τ = λ − m/(2·EI′): turn that stays, rad/mm; 0 where nothing yields. */
  readonly stays: number;
}

/** The tail of a strip bent to `curvature` (1/mm, > 0) where the moment starts to fall. */
export function tailPerLength(curve: BendingCurve, curvature: number): TailPerLength {
  const parameter = parameterAt(curve, curvature);
  const { moment, complementary } = curve.at(parameter);
  const loaded = complementary / moment;
  return {
    moment,
    loaded,
    stays: parameter <= 1 ? 0 : loaded - moment / (2 * curve.stiffness),
  };
}

/**
 * c̄ = ∫₀¹ κ(m·(1 − u))·u du, 1/mm, of a tail starting at `curvature`: times its length squared, how far its start lifts off the tangent at
 * its end, mm.
 */
export function liftPerSquare(curve: BendingCurve, curvature: number): number {
  const parameter = parameterAt(curve, curvature);
  const { moment, complementary } = curve.at(parameter);
  const first = overMoment(momentNodes(curve, 0, parameter), (point) => point.curvature * point.moment);
  return complementary / moment - first / moment ** 2;
}
