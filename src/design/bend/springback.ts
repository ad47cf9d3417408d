import { rootBetween } from '../../base/solve';
import { bendingCurve, parameterAt, type BendingCurve } from './curve';
import { elasticRadius, type Section } from './section';

/**
 * Mid-surface radius, mm, that is left after the sheet is let go from mid-surface radius `formed` (mm, > 0);
 * Infinity where nothing set. 1/ρ_finished = 1/ρ_form − 12·m(ρ_form)/(E′t³). Inverse: {@link formRadiusFor}.
 */
export function finishedRadius(section: Section, formed: number): number {
  if (formed >= elasticRadius(section)) return Infinity;
  const curve = bendingCurve(section);
  const curvature = curvatureLeft(curve, parameterAt(curve, 1 / formed));
  return curvature > 0 ? 1 / curvature : Infinity;
}

/**
 * Mid-surface radius of the form, mm, that springs back to mid-surface radius `finished` (mm, > 0; Infinity gives
 * the largest radius at which nothing sets). Inverse: {@link finishedRadius}.
 */
export function formRadiusFor(section: Section, finished: number): number {
  const wanted = 1 / finished;
  if (wanted === 0) return elasticRadius(section);
  const curve = bendingCurve(section);
  let high = 2;
  while (curvatureLeft(curve, high) < wanted) high *= 2;
  return 1 / curve.at(rootBetween((parameter) => curvatureLeft(curve, parameter) - wanted, high / 2, high)).curvature;
}

/** Curvature left, 1/mm, after release from the state at a parameter of the curve. */
function curvatureLeft(curve: BendingCurve, parameter: number): number {
  if (parameter <= 1) return 0;
  const { curvature, moment } = curve.at(parameter);
  return Math.max(0, curvature - moment / curve.stiffness);
}
