import { DEGREE, toDegrees } from '../../base/angle';
import { error, note, warning, type Finding } from '../../base/findings';
import type { Trial } from '../../job/job';
import type { BendPlan } from './bend-plan';
import { midRadius } from './shape';
import type { TrialFit } from './trial-fit';

/** A strip at least this many thicknesses wide bends as the sheet does, in plane strain (design section 3). */
export const LEAST_WIDTH_RATIO = 8;
/** Beyond this factor, or below one over it, the strip is not of the sheet the job names, or was measured wrong (design section 3). */
const MOST_FACTOR = 2;
/** Springback that a protractor read to half a degree still tells within an eighth, radians (common practice). */
const READABLE = 4 * DEGREE;
/** Strips of one sheet further apart than this share of their fitted factor tell no more than the tables (common practice). */
const MOST_SPREAD = 0.25;
/** A disc this many times tighter or wider than every radius of the form strains the sheet too differently (common practice). */
const MOST_DISC_RATIO = 2;

const degrees = (radians: number): string => `${Number(toDegrees(radians).toFixed(2))}°`;
const at = (index: number, key: string): string => `trials[${index}].${key}`;

/** What forbids or shakes a strip's measurements before any sum is done. */
export function checkStrip({ bent, left, width }: Trial, index: number, thickness: number): Finding[] {
  const strip = `strip ${index + 1}`;
  const findings: Finding[] = [];
  const narrowest = LEAST_WIDTH_RATIO * thickness;
  if (width !== null && width < narrowest * (1 - 1e-9)) {
    findings.push(
      error(
        'strip-too-narrow',
        at(index, 'width'),
        `${strip} is ${width.toFixed(1)} mm wide, ${(width / thickness).toFixed(1)} times its thickness: it curls across its width and springs back unlike the sheet`,
        'bend a wider strip',
        {
          got: `${width.toFixed(1)} mm`,
          allowed: `at least ${narrowest.toFixed(1)} mm (${LEAST_WIDTH_RATIO} times the thickness)`,
        },
      ),
    );
  }
  if (left >= bent) {
    findings.push(
      error(
        'no-springback',
        at(index, 'left'),
        `${strip} cannot keep ${degrees(left)} of ${degrees(bent)}: every sheet springs back`,
        'measure both as degrees turned from flat, the first while it is held on the disc',
        {
          got: degrees(left),
          allowed: `less than ${degrees(bent)}`,
        },
      ),
    );
  } else if (left <= 0) {
    findings.push(
      error(
        'strip-came-back-flat',
        at(index, 'left'),
        `${strip} came back flat: it shows only that this disc is too large to set the sheet`,
        'bend it round a smaller disc',
        { got: degrees(left), allowed: 'more than 0°' },
      ),
    );
  } else if (bent - left < READABLE) {
    findings.push(
      warning(
        'little-springback',
        at(index, 'left'),
        `${strip} sprang back only ${degrees(bent - left)}: half a degree of misreading changes its factor by ${(100 * (0.5 / toDegrees(bent - left))).toFixed(0)} %`,
        'bend it further, or round a larger disc, and measure with a long-armed protractor',
      ),
    );
  }
  return findings;
}

/** Refuses a strip that says the sheet is another one. */
export function checkFactor(trial: Trial, index: number, factor: number): Finding[] {
  if (factor >= 1 / MOST_FACTOR && factor <= MOST_FACTOR) return [];
  return [
    error(
      'trial-contradicts-sheet',
      `trials[${index}]`,
      `strip ${index + 1} (${degrees(trial.bent)} round ${trial.radius.toFixed(1)} mm, ${degrees(trial.left)} left) makes the sheet ${Number(factor.toPrecision(2))} times as strong as the tables have it; beyond ${1 / MOST_FACTOR} to ${MOST_FACTOR} times it is another sheet, or a slip`,
      'check the metal, its temper and thickness, the disc’s radius, and that both angles are turned from flat; else leave this strip out',
      { got: `factor ${factor.toPrecision(3)}`, allowed: `${1 / MOST_FACTOR} to ${MOST_FACTOR}` },
    ),
  ];
}

/** What all strips together leave in doubt. */
export function checkFit({ strips, factor, spread }: TrialFit): Finding[] {
  if (strips.length === 1) {
    return [
      note(
        'one-strip',
        'trials',
        'one strip says nothing of how far the sheet and your measuring vary',
        'bend two more, from elsewhere on the sheet',
      ),
    ];
  }
  if (spread.high - spread.low <= MOST_SPREAD * factor) return [];
  return [
    warning(
      'strips-disagree',
      'trials',
      `the strips’ factors lie between ${spread.low.toFixed(2)} and ${spread.high.toFixed(2)}: too far apart to rely on`,
      'bend and measure them again, all cut the same way of the grain; leave out the one that went wrong',
    ),
  ];
}

/** Strips bent round discs unlike the form. */
export function checkDiscs({ form, section, length }: BendPlan, { strips }: TrialFit): Finding[] {
  const ends = [midRadius(form, section, 0), midRadius(form, section, length)];
  const [low, high] = [Math.min(...ends) / MOST_DISC_RATIO, Math.max(...ends) * MOST_DISC_RATIO];
  return strips.flatMap(({ radius }, index) => {
    const mid = radius + section.thickness / 2;
    if (mid >= low && mid <= high) return [];
    return [
      warning(
        'disc-unlike-form',
        at(index, 'radius'),
        `strip ${index + 1} was bent round ${radius.toFixed(1)} mm, far from the form’s ${Math.min(...ends).toFixed(1)} to ${Math.max(...ends).toFixed(1)} mm: the sheet hardens differently there`,
        `bend one round a disc between ${low.toFixed(0)} and ${high.toFixed(0)} mm`,
      ),
    ];
  });
}
