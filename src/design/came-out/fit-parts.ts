import { angleFromWrap, wrapFromAngle } from '../../base/cone';
import { toRadians } from '../../base/angle';
import { hasErrors, type Finding, type Staged } from '../../base/findings';
import { rootBetween } from '../../base/solve';
import type { Ends } from '../../base/ends';
import type { FinishedPart, Trial } from '../../job/job';
import { checkFit, MOST_FACTOR } from '../bend/trial-findings';
import { factorOf, fitTrials, leastSquares, measuredOn, type Measured } from '../bend/trial';
import type { FittedPart, TrialFit } from '../bend/trial-fit';
import { finishedInside, finishedWrapOf, formAt, midOn, sectionAt, shareLeft, type Before, type Bent } from './before';
import { checkMeasured, checkOff, checkPartFactor } from './part-findings';

/** A part as bent, with what was measured as the sums take it. */
interface Read {
  readonly part: FinishedPart;
  readonly index: number;
  readonly form: number;
  readonly bent: Bent;
  /** Curvature left by its radius, 1/mm; null where that was not measured. */
  readonly left: number | null;
  /** Finished wrap by its angle, radians; null likewise. */
  readonly turned: number | null;
}

/**
 * The factor on the sheet's flow curve that strips and finished parts show together, and what the legs keep beyond the sums. A radius
 * tells how the sheet springs back; the angle then tells what the legs kept. Where no strip and no radius was measured, an angle stands for
 * both and is put down to springback. Null where a measurement is refused; the findings say why.
 */
export function fitParts(trials: readonly Trial[], before: Before): Staged<TrialFit | null> {
  const parts = trials.flatMap((trial, index) => ('part' in trial ? [{ part: trial.part, index }] : []));
  const refused = parts.flatMap(({ part, index }) => checkMeasured(part, index, before));
  if (hasErrors(refused)) return { value: null, findings: refused };
  const read = parts.map(({ part, index }) => readPart(part, index, before));
  const strips = before.bend.trials?.strips ?? [];
  const byAngle = strips.length === 0 && read.every(({ left }) => left === null);
  const own = read.map((one) => ownFactor(one, byAngle, before));
  const wrong = read.flatMap(({ index }, place) => checkPartFactor(own[place] ?? null, index));
  if (hasErrors(wrong)) return { value: null, findings: [...refused, ...wrong] };
  const factors = [...strips.map(({ factor }) => factor), ...own.flatMap((factor) => factor ?? [])];
  const { factor, spread } = byAngle ? middleOf(factors) : leastOf(read, factors, before);
  const offs = read.map((one) => offBy(one, factor, before));
  const fit: TrialFit = {
    strips,
    parts: read.map((one, place) => describe(one, own[place] ?? null, factor, before)),
    factor,
    spread,
    legsKeep: keptAt(read, offs, before),
  };
  const doubts = read.flatMap(({ index }, place) => checkOff(offs[place] ?? null, index, before.rules));
  return { value: fit, findings: [...stripDoubts(trials, before), ...refused, ...doubts, ...checkFit(fit)] };
}

/** What was doubtful of the strips each for itself. */
function stripDoubts(trials: readonly Trial[], { bend }: Before): Finding[] {
  return fitTrials(trials, bend.metal, bend.section.thickness).findings.filter(({ path }) => path !== 'trials');
}

function readPart(part: FinishedPart, index: number, before: Before): Read {
  const { finished, form: cone, section } = before.bend;
  const form = part.form ?? formAt(before, part.at);
  const mid = midOn(form, cone.halfAngle, section.thickness);
  return {
    part,
    index,
    form,
    bent: { at: part.at, mid, wrap: part.wrap ?? before.bend.wrap.chosen },
    left: part.radius === null ? null : 1 / midOn(part.radius, finished.halfAngle, section.thickness),
    turned: part.angle === null ? null : wrapFromAngle(part.angle, finished.halfAngle),
  };
}

/** The factor that reproduces a part alone; beyond what any sheet of the name has where none does, null where the part says nothing of it. */
function ownFactor({ bent, left, turned }: Read, byAngle: boolean, before: Before): number | null {
  const { metal, section } = before.bend;
  if (left !== null) return factorOf({ mid: bent.mid, left }, metal, section.thickness);
  if (!byAngle || turned === null) return null;
  const misfit = (factor: number): number => finishedWrapOf(before, bent, factor) - turned;
  const [low, high] = [0.9 / MOST_FACTOR, 1.1 * MOST_FACTOR];
  if (misfit(low) * misfit(high) < 0) return rootBetween(misfit, low, high, 1e-12);
  return Math.abs(misfit(low)) < Math.abs(misfit(high)) ? low : high;
}

function middleOf(factors: readonly number[]): Pick<TrialFit, 'factor' | 'spread'> {
  return {
    factor: factors.reduce((sum, factor) => sum + factor, 0) / factors.length,
    spread: { low: Math.min(...factors), high: Math.max(...factors) },
  };
}

/** The least squares of strips and radii together. */
function leastOf(
  read: readonly Read[],
  factors: readonly number[],
  { bend }: Before,
): Pick<TrialFit, 'factor' | 'spread'> {
  const { thickness } = bend.section;
  const strips = (bend.trials?.strips ?? []).map((strip) => measuredOn(strip, thickness));
  const radii = read.flatMap(({ bent, left }): Measured[] => (left === null ? [] : [{ mid: bent.mid, left }]));
  return leastSquares([...strips, ...radii], factors, bend.metal, thickness);
}

/** How much further a part came out than the sums say at a factor, as a turn of its legs, radians; null where its angle was not measured. */
function offBy({ bent, turned }: Read, factor: number, before: Before): number | null {
  if (turned === null) return null;
  return (turned - finishedWrapOf(before, bent, factor)) * Math.cos(before.bend.finished.halfAngle);
}

/** What the legs keep beyond the sums: at either end the mean of the parts measured nearer to it, of all where none was. */
function keptAt(read: readonly Read[], offs: readonly (number | null)[], { bend }: Before): Ends {
  const known = read.flatMap(({ part: { at } }, place) => {
    const off = offs[place] ?? null;
    return off === null ? [] : [{ at, off }];
  });
  const mean = (near: (at: number) => boolean): number => {
    const nearer = known.filter(({ at }) => near(at));
    const those = nearer.length > 0 ? nearer : known;
    return those.length === 0 ? 0 : those.reduce((sum, { off }) => sum + off, 0) / those.length;
  };
  return { A: mean((at) => at <= bend.length / 2), B: mean((at) => at >= bend.length / 2) };
}

function describe(read: Read, own: number | null, factor: number, before: Before): FittedPart {
  const { part, index, form, bent, left, turned } = read;
  const { bend, rules } = before;
  const share = left === null ? shareLeft(sectionAt(before, factor), bent.mid) : bent.mid * left;
  const cameOut = part.radius ?? finishedInside(before, bent.mid / share);
  const angleOff = toRadians(Math.hypot(rules.angleMisread, share * rules.takeOffMisread));
  const radiusOff = part.radius === null ? angleOff / bent.wrap / share : rules.radiusMisread;
  const { halfAngle } = bend.finished;
  return {
    ...part,
    index,
    form,
    factor: own,
    reckoned: {
      radius: finishedInside(before, bent.mid / shareLeft(bend.section, bent.mid)),
      angle: turned === null ? null : angleFromWrap(finishedWrapOf(before, bent, bend.factor), halfAngle),
    },
    cameOut,
    again: turned === null ? null : bent.wrap + (bend.finishedWrap - turned) / share,
    sure: { radius: radiusOff * cameOut, angle: turned === null ? null : angleOff },
  };
}
