import { midRadiusAt, type Cone } from '../../base/cone';
import { integrate } from '../../base/integrate';
import type { Job, Run } from '../../job/job';
import type { LoadedRun, Pull } from './bend-plan';
import { momentPerWidth } from './moment';
import type { Section } from './section';

/** Moment per unit width, N, of the sheet on the form at `x` (mm along the tangent line). */
export function formMomentAt(section: Section, form: Cone, x: number): number {
  return momentPerWidth(section, midRadiusAt(form, section.thickness, x));
}

/** The run with its total moment M = ∫ m dx at the form radii, N·mm. */
export function loadRun(section: Section, form: Cone, run: Run): LoadedRun {
  return { ...run, moment: integrate((x) => formMomentAt(section, form, x), run.from, run.to) };
}

/**
 * How long the lever must be, what extra metal that asks, and the force at the hands then: N, mm.
 * `leverage` is held to `effort.maxLeverage` where the sheet can spare no more. Design section 3, "Effort".
 */
export function pullFor(moment: number, job: Job): Pull {
  const { handForce: limit, maxLeverage } = job.effort;
  const free = job.bend.legs.free;
  const leverNeeded = moment / limit;
  const leverage = Math.min(Math.max(0, leverNeeded - free), maxLeverage ?? Infinity);
  const lever = free + leverage;
  return { moment, leverNeeded, leverage, lever, handForce: moment / lever };
}

/**
 * Total clamp force, N, that keeps the form from tipping about the foot's rear edge at the start of the pull:
 * C·(f + b/2) = S·M·(1 + (b + f)/a), `foot` f behind a spine `spine` b thick. Design section 3, "Effort".
 */
export function clampForceFor(pull: Pull, safety: number, spine: number, foot: number): number {
  return (safety * pull.moment * (1 + (spine + foot) / pull.lever)) / (foot + spine / 2);
}
