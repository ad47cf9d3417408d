import { midRadius } from '../../base/cone';
import { minimumBetween } from '../../base/minimum';
import { rootBetween } from '../../base/solve';
import { hasErrors, type Staged } from '../../base/findings';
import type { Strip, Trial } from '../../job/job';
import { elasticRadius, sectionOf, type Section, type SheetMetal } from './section';
import { finishedRadius } from './springback';
import { checkFactor, checkFit, checkStrip } from './trial-findings';
import type { FittedStrip, TrialFit } from './trial-fit';

/** Sheet bent to a mid-surface radius, and the curvature that was left of it by measure: mm, 1/mm. */
export interface Measured {
  readonly mid: number;
  readonly left: number;
}

/**
 * The factor on the sheet's flow curve (1 by the tables) that its trial strips show; finished parts are not looked at. `thickness` in mm,
 * > 0. Null without strips, and where a strip is refused: the findings say why. Design section 3, “Trial strip”; derivation in
 * DEVELOPERS.md, “Trial strips”.
 */
export function fitTrials(trials: readonly Trial[], sheet: SheetMetal, thickness: number): Staged<TrialFit | null> {
  const strips: FittedStrip[] = [];
  const findings = trials.flatMap((trial, index) => {
    if ('part' in trial) return [];
    const doubts = checkStrip(trial, index, thickness);
    if (hasErrors(doubts)) return doubts;
    const factor = factorOf(measuredOn(trial, thickness), sheet, thickness);
    strips.push({ ...trial, index, factor });
    return [...doubts, ...checkFactor(trial, index, factor)];
  });
  if (strips.length === 0 || hasErrors(findings)) return { value: null, findings };
  const measured = strips.map((strip) => measuredOn(strip, thickness));
  const factors = strips.map(({ factor }) => factor);
  const fit = { strips, parts: [], ...leastSquares(measured, factors, sheet, thickness), legsKeep: { A: 0, B: 0 } };
  return { value: fit, findings: [...findings, ...checkFit(fit)] };
}

/** A strip's mid-surface arc does not change: ρ_left = ρ_bent·(bent/left). */
export function measuredOn({ radius, bent, left }: Strip, thickness: number): Measured {
  const mid = midRadius(radius, thickness);
  return { mid, left: left / bent / mid };
}

/** The factor between the least and the greatest of the `factors` of each alone that leaves the least sum of squared misfits. */
export function leastSquares(
  measured: readonly Measured[],
  factors: readonly number[],
  sheet: SheetMetal,
  thickness: number,
): Pick<TrialFit, 'factor' | 'spread'> {
  const spread = { low: Math.min(...factors), high: Math.max(...factors) };
  const misfit = (factor: number): number =>
    measured.reduce((sum, one) => sum + misfitOf(one, sectionOf(sheet, thickness, factor)) ** 2, 0);
  return {
    spread,
    factor: spread.low === spread.high ? spread.low : minimumBetween(misfit, spread.low, spread.high),
  };
}

/**
 * The factor at which sheet bent so springs back as it did: 0 < `left` < 1/`mid`. The curvature left falls steadily from the form's own at
 * factor 0 to none at the factor where the sheet would not yield at all, so there is just one; one too small to matter stands for those
 * below a millionth of the latter.
 */
export function factorOf(measured: Measured, sheet: SheetMetal, thickness: number): number {
  // A hair over, so that rounding leaves no bend at all there.
  const nothingSets = ((1 + 1e-12) * elasticRadius(sectionOf(sheet, thickness, 1))) / measured.mid;
  const misfit = (factor: number): number => misfitOf(measured, sectionOf(sheet, thickness, factor));
  const least = 1e-6 * nothingSets;
  return misfit(least) <= 0 ? least : rootBetween(misfit, least, nothingSets);
}

/** Curvature left by the sums less curvature left by measure, 1/mm. */
function misfitOf({ mid, left }: Measured, section: Section): number {
  return 1 / finishedRadius(section, mid) - left;
}
