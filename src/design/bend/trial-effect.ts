import type { Job } from '../../job/job';
import { sectionOf, type SheetMetal } from './section';
import { shapeBend } from './shape';
import type { BendAtFactor, TrialEffect, TrialFit } from './trial-fit';

/** Form radii and wrap of the job at factor 1, and at the least and the greatest factor of its strips. */
export function effectOfTrials(job: Job, sheet: SheetMetal, { spread }: TrialFit): TrialEffect {
  const bendAt = (factor: number): BendAtFactor | null => {
    const { value: shape } = shapeBend(job, sectionOf(sheet, job.sheet.thickness, factor));
    if (!shape) return null;
    const { form, finished, wrap } = shape;
    return {
      form: { A: form.radiusA, B: form.radiusB },
      finished: { A: finished.radiusA, B: finished.radiusB },
      wrap: wrap.chosen,
    };
  };
  return { tables: bendAt(1), low: bendAt(spread.low), high: bendAt(spread.high) };
}
