import { DEGREE } from '../../base/angle';
import { MM_PER_INCH, type LengthUnit } from '../../base/units';
import { curvatureRadiusAt, midRadius } from '../../base/cone';
import { bendAllowance } from './allowance';
import type { BendPlan } from './bend-plan';
import { finishedRadius } from './springback';
import { LEAST_WIDTH_RATIO } from './trial-findings';
import { ROUNDING } from '../../base/tolerance';

/** What a shop rounds to, and what it holds and pulls a strip by, enough to lay a protractor to (common practice), mm. */
const SHOP = {
  mm: { step: 1, leastWidth: 15, held: 60, free: 120 },
  in: { step: MM_PER_INCH / 16, leastWidth: (5 / 8) * MM_PER_INCH, held: 2.5 * MM_PER_INCH, free: 5 * MM_PER_INCH },
} as const;
/** Radii from so many steps up are rounded. */
const ROUND_FROM = 5;
/** A strip turned less shows too little springback to read, one turned more cannot be swung past its own held leg (common practice). */
const LEAST_TURN = 60 * DEGREE;
const MOST_TURN = 150 * DEGREE;
/** Round a large disc so long an arc will do, if the turn can still be measured well, mm. */
const MOST_ARC = 400;
const LEAST_LONG_TURN = 45 * DEGREE;

/** A strip to cut for a job and the disc to bend it round: mm, radians. */
export interface TrialAdvice {
  /** Of the disc: a round number near the form's radii. */
  readonly radius: number;
  readonly width: number;
  /** From the strip's end to the tangent line, from the other tangent line to its other end, and from end to end. */
  readonly held: number;
  readonly free: number;
  readonly length: number;
  /** Turn from flat to bend it through, and what should be left by the plan's own factor. */
  readonly bent: number;
  readonly left: number;
}

/** The trial strip that tells most about this bend: near its form radii and its wrap, in whole mm or sixteenths of an inch. */
export function adviseTrial(bend: BendPlan, units: LengthUnit): TrialAdvice {
  const { step, leastWidth, held, free } = SHOP[units];
  const { section, form } = bend;
  const between = Math.sqrt(curvatureRadiusAt(form, 0) * curvatureRadiusAt(form, bend.length));
  // Down, so that the disc sets the sheet where the form does.
  const radius = between >= ROUND_FROM * step ? step * Math.floor(between / step + ROUNDING) : between;
  const mid = midRadius(radius, section.thickness);
  const whole = (mm: number): number => step * Math.ceil(mm / step - ROUNDING);
  const bent = Math.min(Math.max(bend.wrap.chosen, LEAST_TURN), MOST_TURN, Math.max(MOST_ARC / mid, LEAST_LONG_TURN));
  const bentArc = bendAllowance(bent, radius, { thickness: section.thickness, neutral: bend.neutral });
  const length = whole(held + bentArc + free);
  return {
    radius,
    width: whole(Math.max(leastWidth, LEAST_WIDTH_RATIO * section.thickness)),
    held,
    free: length - held - bentArc,
    length,
    bent,
    left: (bent * mid) / finishedRadius(section, mid),
  };
}
