import { rootBetween } from '../../base/solve';
import { momentPerWidth } from './moment';
import { elasticRadius, type Section } from './section';

/**
 * Mid-surface radius, mm, that is left after the sheet is let go from mid-surface radius `formed` (mm, > 0);
 * Infinity where nothing set. 1/ρ_finished = 1/ρ_form − 12·m(ρ_form)/(E′t³). Inverse: {@link formRadiusFor}.
 */
export function finishedRadius(section: Section, formed: number): number {
  const curvature = finishedCurvature(section, formed);
  return curvature > 0 ? 1 / curvature : Infinity;
}

/**
 * Mid-surface radius of the form, mm, that springs back to mid-surface radius `finished` (mm, > 0; Infinity gives
 * the largest radius at which nothing sets). Inverse: {@link finishedRadius}.
 */
export function formRadiusFor(section: Section, finished: number): number {
  const elastic = 1 / elasticRadius(section);
  const wanted = 1 / finished;
  if (wanted === 0) return 1 / elastic;
  let tight = elastic + wanted;
  while (finishedCurvature(section, 1 / tight) < wanted) tight *= 2;
  return 1 / rootBetween((curvature) => finishedCurvature(section, 1 / curvature) - wanted, elastic, tight);
}

/** Curvature left, 1/mm, after release from mid-surface radius `formed`. */
function finishedCurvature(section: Section, formed: number): number {
  if (formed >= elasticRadius(section)) return 0;
  const release = (12 * momentPerWidth(section, formed)) / (section.planeModulus * section.thickness ** 3);
  return Math.max(0, 1 / formed - release);
}
