import { midRadius } from '../../base/cone';
import { minimumBetween } from '../../base/minimum';
import { rootBetween } from '../../base/solve';
import { hasErrors, type Staged } from '../../base/findings';
import type { Trial } from '../../job/job';
import { elasticRadius, sectionOf, type Section, type SheetMetal } from './section';
import { finishedRadius } from './springback';
import { checkFactor, checkFit, checkStrip } from './trial-findings';
import type { FittedStrip, TrialFit } from './trial-fit';

/**
 * The factor on the sheet's flow curve (1 by the tables) that its trial strips show. `thickness` in mm, > 0. Null without strips, and
 * where a strip is refused: the findings say why. Design section 3, “Trial strip”; derivation in DEVELOPERS.md, “Trial strips”.
 */
export function fitTrials(trials: readonly Trial[], sheet: SheetMetal, thickness: number): Staged<TrialFit | null> {
  const strips: FittedStrip[] = [];
  const findings = trials.flatMap((trial, index) => {
    const doubts = checkStrip(trial, index, thickness);
    if (hasErrors(doubts)) return doubts;
    const factor = factorOf(trial, sheet, thickness);
    strips.push({ ...trial, factor });
    return [...doubts, ...checkFactor(trial, index, factor)];
  });
  if (trials.length === 0 || hasErrors(findings)) return { value: null, findings };
  const factors = strips.map(({ factor }) => factor);
  const spread = { low: Math.min(...factors), high: Math.max(...factors) };
  const misfit = (factor: number): number =>
    strips.reduce((sum, strip) => sum + misfitOf(strip, sheet, thickness, factor) ** 2, 0);
  const fit = {
    strips,
    spread,
    factor: spread.low === spread.high ? spread.low : minimumBetween(misfit, spread.low, spread.high),
  };
  return { value: fit, findings: [...findings, ...checkFit(fit)] };
}

/**
 * The factor at which a strip bent round this disc springs back as it did: 0 < `left` < `bent`. The curvature left falls steadily from the
 * disc's own at factor 0 to none at the factor where the strip would not yield at all, so there is just one; one too small to
 * matter stands for those below a millionth of the latter.
 */
function factorOf(trial: Trial, sheet: SheetMetal, thickness: number): number {
  // A hair over, so that rounding leaves no bend at all there.
  const nothingSets =
    ((1 + 1e-12) * elasticRadius(sectionOf(sheet, thickness, 1))) / midRadius(trial.radius, thickness);
  const misfit = (factor: number): number => misfitOf(trial, sheet, thickness, factor);
  const least = 1e-6 * nothingSets;
  return misfit(least) <= 0 ? least : rootBetween(misfit, least, nothingSets);
}

/** Curvature left by the sums less curvature left by measure, 1/mm; the mid-surface's arc does not change: ρ_left = ρ_bent·(bent/left). */
function misfitOf({ radius, bent, left }: Trial, sheet: SheetMetal, thickness: number, factor: number): number {
  const mid = midRadius(radius, thickness);
  return curvatureLeft(sectionOf(sheet, thickness, factor), mid) - left / bent / mid;
}

function curvatureLeft(section: Section, formed: number): number {
  return 1 / finishedRadius(section, formed);
}
