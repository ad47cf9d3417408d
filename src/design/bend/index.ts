import { curvatureRadiusAt, midRadiusAt, radiusAt, type Cone } from '../../base/cone';
import { InternalError } from '../../base/errors';
import { hasErrors, type Staged } from '../../base/findings';
import type { Job } from '../../job/job';
import { findMetal } from '../../tables/look-up';
import type { Tables } from '../../tables/tables';
import { bendAllowance, setback } from './allowance';
import type { BentSheet } from './bend-plan';
import { loadRun } from './effort';
import { checkSheet } from './limits';
import { neutralFactor } from './neutral';
import { sectionOf, type Section } from './section';
import { shapeBend } from './shape';
import { fitTrials } from './trial';
import { checkDiscs } from './trial-findings';
import type { TrialFit } from './trial-fit';

/**
 * Job → the bend and its form, before anyone pulls: by its strips, or by `known` where finished parts were looked at already. Null where the
 * bend cannot exist; the findings say why.
 */
export function bendSheet(job: Job, tables: Tables, known?: Staged<TrialFit>): Staged<BentSheet | null> {
  const metal = findMetal(tables, job.sheet.material);
  if (!metal) throw new InternalError(`job names a metal that is not in the tables: ${job.sheet.material}`);
  const { value: fit, findings: fitFindings } = known ?? fitTrials(job.trials, metal, job.sheet.thickness);
  if (hasErrors(fitFindings)) return { value: null, findings: fitFindings };
  const factor = fit?.factor ?? 1;
  const section = sectionOf(metal, job.sheet.thickness, factor);
  const { angle, length, legs } = job.bend;

  const { value: shape, findings: impossible } = shapeBend(job, section);
  if (!shape) return { value: null, findings: [...fitFindings, ...impossible] };
  const { finished, form, finishedWrap } = shape;

  const tightest = Math.min(curvatureRadiusAt(finished, 0), curvatureRadiusAt(finished, length));
  const neutral = job.neutral ?? neutralFactor(tightest / section.thickness);
  const allowanceAt = (x: number): number =>
    bendAllowance(finishedWrap, radiusAt(finished, x), {
      thickness: section.thickness,
      neutral,
      halfAngle: finished.halfAngle,
    });
  const setbackAt = (x: number): number =>
    setback(finishedWrap, radiusAt(finished, x), section.thickness, finished.halfAngle);
  const runs = job.runs.map((run) => loadRun(section, form, run));

  const bend: BentSheet = {
    metal,
    section,
    factor,
    trials: fit,
    angle,
    length,
    legs,
    finished,
    form,
    finishedWrap,
    neutral,
    allowance: { A: allowanceAt(0), B: allowanceAt(length) },
    setback: { A: setbackAt(0), B: setbackAt(length) },
    fan: finishedWrap * Math.sin(finished.halfAngle),
    strain: { A: outsideStrain(form, section, 0), B: outsideStrain(form, section, length) },
    runs,
  };
  return {
    value: bend,
    findings: [...fitFindings, ...(fit ? checkDiscs(bend, fit) : []), ...checkSheet(bend, job)],
  };
}

/** Strain of the outside fibre on the form: t/(2R + t) with R the inside radius of curvature. */
function outsideStrain(form: Cone, section: Section, x: number): number {
  return section.thickness / (2 * midRadiusAt(form, section.thickness, x));
}
