import { midRadiusAt } from '../../base/cone';
import type { End } from '../../base/ends';
import type { Job } from '../../job/job';
import { sectionOf } from '../bend/section';
import { shapeBend } from '../bend/shape';
import type { BendAtFactor, TrialEffect } from '../bend/trial-fit';
import { placeOf } from '../pull/leg-shape';
import { wrapTo, type Before } from './before';

/** Form radii and wrap of the job at factor 1, and at the least and the greatest factor of its trials, pulled and held as planned. */
export function effectOfTrials(job: Job, planned: Before): TrialEffect | null {
  const { trials } = planned.bend;
  if (!trials) return null;
  return {
    tables: bendAt(1, job, planned),
    low: bendAt(trials.spread.low, job, planned),
    high: bendAt(trials.spread.high, job, planned),
  };
}

function bendAt(factor: number, job: Job, planned: Before): BendAtFactor | null {
  const { bend } = planned;
  const section = sectionOf(bend.metal, job.sheet.thickness, factor);
  const { value: shape } = shapeBend(job, section);
  if (!shape) return null;
  const { form, finished, finishedWrap } = shape;
  const wrapAt = (end: End): number => {
    const at = placeOf(bend, end);
    const bent = { at, mid: midRadiusAt(form, section.thickness, at), wrap: bend.wrap.chosen };
    return wrapTo(planned, bent, section, { finishedWrap, kept: bend.trials?.legsKeep[end] ?? 0 });
  };
  return {
    form: { A: form.radiusA, B: form.radiusB },
    finished: { A: finished.radiusA, B: finished.radiusB },
    wrap: (wrapAt('A') + wrapAt('B')) / 2,
  };
}
