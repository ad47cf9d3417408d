import { coneFromCurvatures, coneThrough, curvatureRadiusAt, radiusAt, wrapFromAngle, type Cone } from '../base/cone';
import { toDegrees } from '../base/angle';
import { InternalError } from '../base/errors';
import { error, hasErrors, type Finding, type Staged } from '../base/findings';
import type { Job } from '../job/job';
import { findMetal } from '../tables/look-up';
import type { Tables } from '../tables/tables';
import { bendAllowance, setback } from './allowance';
import type { BendPlan } from './bend-plan';
import { loadRun, pullFor } from './effort';
import { checkBend } from './limits';
import { neutralFactor } from './neutral';
import { elasticRadius, sectionOf, type Section } from './section';
import { finishedRadius, formRadiusFor } from './springback';

/** Job → what bending asks of the form. Null where the bend cannot exist; the findings say why. */
export function planBend(job: Job, tables: Tables): Staged<BendPlan | null> {
  const metal = findMetal(tables, job.sheet.material);
  if (!metal) throw new InternalError(`job names a metal that is not in the tables: ${job.sheet.material}`);
  const factor = 1;
  const section = sectionOf(metal, job.sheet.thickness, factor);
  const { angle, length, legs } = job.bend;

  const cones = findCones(job, section);
  if ('findings' in cones) return { value: null, findings: cones.findings };
  const { finished, form } = cones;

  const finishedWrap = wrapFromAngle(angle, finished.halfAngle);
  if (Number.isNaN(finishedWrap)) return { value: null, findings: [tooSteepForAngle(job, finished)] };

  const wrapAt = (x: number): number => (finishedWrap * midRadius(finished, section, x)) / midRadius(form, section, x);
  const wrap = { from: wrapAt(0), to: wrapAt(length), chosen: (wrapAt(0) + wrapAt(length)) / 2 };
  const twistAt = (x: number): number => (wrap.chosen * midRadius(form, section, x)) / midRadius(finished, section, x) - finishedWrap;
  const tightest = Math.min(curvatureRadiusAt(finished, 0), curvatureRadiusAt(finished, length));
  const neutral = job.neutral ?? neutralFactor(tightest / section.thickness);
  const allowanceAt = (x: number): number => bendAllowance(finishedWrap, radiusAt(finished, x), section.thickness, neutral, finished.halfAngle);
  const setbackAt = (x: number): number => setback(finishedWrap, radiusAt(finished, x), section.thickness, finished.halfAngle);
  const runs = job.runs.map((run) => loadRun(section, form, run));

  const bend: BendPlan = {
    metal,
    section,
    factor,
    angle,
    length,
    legs,
    finished,
    form,
    finishedWrap,
    wrap,
    twist: { from: twistAt(0), to: twistAt(length) },
    neutral,
    allowance: { from: allowanceAt(0), to: allowanceAt(length) },
    setback: { from: setbackAt(0), to: setbackAt(length) },
    fan: finishedWrap * Math.sin(finished.halfAngle),
    strain: { from: outsideStrain(form, section, 0), to: outsideStrain(form, section, length) },
    runs,
    pull: pullFor(Math.max(...runs.map((run) => run.moment)), job),
  };
  return { value: bend, findings: checkBend(bend, job, tables.rules) };
}

/** Mid-surface radius of curvature ρ = R/cos β + t/2, mm. */
function midRadius(cone: Cone, section: Section, x: number): number {
  return curvatureRadiusAt(cone, x) + section.thickness / 2;
}

/** Strain of the outside fibre on the form: t/(2R + t) with R the inside radius of curvature. */
function outsideStrain(form: Cone, section: Section, x: number): number {
  return section.thickness / (2 * midRadius(form, section, x));
}

function findCones(job: Job, section: Section): { finished: Cone; form: Cone } | { findings: Finding[] } {
  const { radius, length, radiusOf } = job.bend;
  const given = coneThrough(radius.from, radius.to, length);
  const ends = [0, length].map((x) => midRadius(given, section, x));
  const half = section.thickness / 2;
  const found = ends.map((mid) => (radiusOf === 'finished' ? formRadiusFor(section, mid) : finishedRadius(section, mid)) - half);
  const findings = (['from', 'to'] as const).flatMap((end, index) =>
    radiusOf === 'form' ? notSetFinding(end, ends[index] ?? 0, section) : noFormFinding(end, found[index] ?? 0),
  );
  if (hasErrors(findings)) return { findings };
  const other = coneFromCurvatures(found[0] ?? 0, found[1] ?? 0, length);
  return radiusOf === 'finished' ? { finished: given, form: other } : { finished: other, form: given };
}

function notSetFinding(end: 'from' | 'to', mid: number, section: Section): Finding[] {
  const limit = elasticRadius(section);
  if (mid < limit) return [];
  return [
    error(
      'would-not-set',
      `bend.radius.${end}`,
      `a form this large does not set the sheet: wrapped no tighter than ${(limit - section.thickness / 2).toFixed(1)} mm inside radius it springs back flat`,
      'use a smaller form radius, a thicker sheet or a softer temper',
      { got: `${(mid - section.thickness / 2).toFixed(1)} mm`, allowed: `below ${(limit - section.thickness / 2).toFixed(1)} mm` },
    ),
  ];
}

function noFormFinding(end: 'from' | 'to', inside: number): Finding[] {
  if (inside > 0) return [];
  return [
    error(
      'no-form-radius',
      `bend.radius.${end}`,
      'the sheet springs back so far that no form is tight enough to leave this radius',
      'use a larger radius, a thinner sheet or a softer temper',
    ),
  ];
}

function tooSteepForAngle(job: Job, cone: Cone): Finding {
  const most = 2 * Math.asin(Math.cos(cone.halfAngle));
  return error(
    'taper-too-steep-for-angle',
    'bend.angle',
    `on a taper this steep the legs cannot turn ${toDegrees(job.bend.angle).toFixed(1)}°; even wrapped half round they turn ${toDegrees(most).toFixed(1)}°`,
    'bend less or make the two radii more alike',
    { got: `${toDegrees(job.bend.angle).toFixed(1)}°`, allowed: `below ${toDegrees(most).toFixed(1)}°` },
  );
}
