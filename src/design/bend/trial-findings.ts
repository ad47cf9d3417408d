import { DEGREE } from '../../base/angle';
import { insideRadius, midRadius, midRadiusAt } from '../../base/cone';
import type { Finding } from '../../base/findings';
import { finding } from '../../findings/finding';
import type { Strip } from '../../job/job';
import type { BentSheet } from './bend-plan';
import type { TrialFit } from './trial-fit';
import { ROUNDING } from '../../base/tolerance';

/** A strip at least this many thicknesses wide bends as the sheet does, in plane strain (design section 3). */
export const LEAST_WIDTH_RATIO = 8;
/** Beyond this factor, or below one over it, the strip is not of the sheet the job names, or was measured wrong (design section 3). */
export const MOST_FACTOR = 2;
/** Springback that a protractor read to half a degree still tells within an eighth, radians (common practice). */
const READABLE = 4 * DEGREE;
/** What a protractor is misread by, radians (common practice). */
const MISREADING = 0.5 * DEGREE;
/** Strips of one sheet further apart than this share of their fitted factor tell no more than the tables (common practice). */
const MOST_SPREAD = 0.25;
/** A disc this many times tighter or wider than every radius of the form strains the sheet too differently (common practice). */
const MOST_DISC_RATIO = 2;

const at = (index: number, key: string): string => `trials[${index}].${key}`;

/** What forbids or shakes a strip's measurements before any sum is done. */
export function checkStrip({ bent, left, width }: Strip, index: number, thickness: number): Finding[] {
  const strip = index + 1;
  const findings: Finding[] = [];
  const narrowest = LEAST_WIDTH_RATIO * thickness;
  if (width !== null && width < narrowest * (1 - ROUNDING)) {
    findings.push(
      finding('strip-too-narrow', at(index, 'width'), {
        strip,
        width,
        times: width / thickness,
        least: narrowest,
        leastTimes: LEAST_WIDTH_RATIO,
      }),
    );
  }
  if (left >= bent) {
    findings.push(finding('no-springback', at(index, 'left'), { strip, left, bent }));
  } else if (left <= 0) {
    findings.push(finding('strip-came-back-flat', at(index, 'left'), { strip, left }));
  } else if (bent - left < READABLE) {
    findings.push(
      finding('little-springback', at(index, 'left'), {
        strip,
        springback: bent - left,
        change: MISREADING / (bent - left),
      }),
    );
  }
  return findings;
}

/** Refuses a strip that says the sheet is another one. */
export function checkFactor(trial: Strip, index: number, factor: number): Finding[] {
  if (factor >= 1 / MOST_FACTOR && factor <= MOST_FACTOR) return [];
  return [
    finding('trial-contradicts-sheet', `trials[${index}]`, {
      strip: index + 1,
      radius: trial.radius,
      bent: trial.bent,
      left: trial.left,
      factor,
      least: 1 / MOST_FACTOR,
      most: MOST_FACTOR,
    }),
  ];
}

/** What all trials together leave in doubt. */
export function checkFit({ strips, parts, factor, spread }: TrialFit): Finding[] {
  if (strips.length === 1 && parts.length === 0) {
    return [finding('one-strip', 'trials')];
  }
  if (spread.high - spread.low <= MOST_SPREAD * factor) return [];
  return [finding('strips-disagree', 'trials', { low: spread.low, high: spread.high })];
}

/** Strips bent round discs unlike the form. */
export function checkDiscs({ form, section, length }: BentSheet, { strips }: TrialFit): Finding[] {
  const ends = [midRadiusAt(form, section.thickness, 0), midRadiusAt(form, section.thickness, length)];
  const [low, high] = [Math.min(...ends) / MOST_DISC_RATIO, Math.max(...ends) * MOST_DISC_RATIO];
  return strips.flatMap(({ radius, index }) => {
    const mid = midRadius(radius, section.thickness);
    if (mid >= low && mid <= high) return [];
    return [
      finding('disc-unlike-form', at(index, 'radius'), {
        strip: index + 1,
        radius,
        formLeast: Math.min(...ends),
        formMost: Math.max(...ends),
        discLeast: insideRadius(low, section.thickness),
        discMost: insideRadius(high, section.thickness),
      }),
    ];
  });
}
