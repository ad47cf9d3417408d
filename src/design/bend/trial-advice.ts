import { DEGREE } from '../../base/angle';
import { curvatureRadiusAt, midRadius } from '../../base/cone';
import { bendAllowance } from './allowance';
import type { BendPlan } from './bend-plan';
import { finishedRadius } from './springback';
import { LEAST_WIDTH_RATIO } from './trial-findings';

/** Radii from this up are rounded to whole mm, whatever unit the job is in: the same job in inches has the same disc. */
const ROUND_FROM = 5;
/** Enough to hold by and to lay a protractor to (common practice), mm. */
const LEAST_WIDTH = 15;
const HELD = 60;
const FREE = 120;
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

/** The trial strip that tells most about this bend: near its form radii and its wrap. */
export function adviseTrial(bend: BendPlan): TrialAdvice {
  const { section, form } = bend;
  const between = Math.sqrt(curvatureRadiusAt(form, 0) * curvatureRadiusAt(form, bend.length));
  // Down, so that the disc sets the sheet where the form does.
  const radius = between >= ROUND_FROM ? Math.floor(between + 1e-9) : between;
  const mid = midRadius(radius, section.thickness);
  const whole = (mm: number): number => Math.ceil(mm - 1e-9);
  const bent = Math.min(Math.max(bend.wrap.chosen, LEAST_TURN), MOST_TURN, Math.max(MOST_ARC / mid, LEAST_LONG_TURN));
  const bentArc = bendAllowance(bent, radius, { thickness: section.thickness, neutral: bend.neutral });
  const length = whole(HELD + bentArc + FREE);
  return {
    radius,
    width: whole(Math.max(LEAST_WIDTH, LEAST_WIDTH_RATIO * section.thickness)),
    held: HELD,
    free: length - HELD - bentArc,
    length,
    bent,
    left: (bent * mid) / finishedRadius(section, mid),
  };
}
