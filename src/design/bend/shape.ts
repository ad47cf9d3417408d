import { coneFromCurvatures, coneThrough, insideRadius, midRadiusAt, wrapFromAngle, type Cone } from '../../base/cone';
import { InternalError } from '../../base/errors';
import { hasErrors, type Finding, type Staged } from '../../base/findings';
import { finding } from '../../findings/finding';
import type { Job } from '../../job/job';
import { elasticRadius, type Section } from './section';
import { finishedRadius, formRadiusFor } from './springback';
import { ROUNDING } from '../../base/tolerance';

/** The bend before and after release: inside surfaces in mm, the finished wrap about the centre line in radians. */
export interface BendShape {
  readonly finished: Cone;
  readonly form: Cone;
  readonly finishedWrap: number;
}

/** What the sheet must be wrapped to, or what it springs back to, for the job's radii. Null where no such bend exists; the findings say why. */
export function shapeBend(job: Job, section: Section): Staged<BendShape | null> {
  const cones = findCones(job, section);
  if ('findings' in cones) return { value: null, findings: cones.findings };
  const { finished, form } = cones;
  const apart = springApart(finished, form, section);
  if (apart) return { value: null, findings: [apart] };
  const finishedWrap = wrapFromAngle(job.bend.angle, finished.halfAngle);
  if (Number.isNaN(finishedWrap)) return { value: null, findings: [tooSteepForAngle(job, finished)] };
  return { value: { finished, form, finishedWrap }, findings: [] };
}

function findCones(job: Job, section: Section): { finished: Cone; form: Cone } | { findings: Finding[] } {
  const { radius, length, radiusOf } = job.bend;
  const given = coneThrough(radius.from, radius.to, length);
  const ends = { from: midRadiusAt(given, section.thickness, 0), to: midRadiusAt(given, section.thickness, length) };
  if (radiusOf === 'finished') {
    const [from, to] = [formRadiusFor(section, ends.from), formRadiusFor(section, ends.to)];
    return { finished: given, form: coneFromCurvatures(insideOf(from, section), insideOf(to, section), length) };
  }
  const findings = [...notSetFinding('from', ends.from, section), ...notSetFinding('to', ends.to, section)];
  if (hasErrors(findings)) return { findings };
  const [from, to] = [finishedRadius(section, ends.from), finishedRadius(section, ends.to)];
  return { finished: coneFromCurvatures(insideOf(from, section), insideOf(to, section), length), form: given };
}

/**
 * Inside radius of curvature, mm, of a mid-surface radius. Always above zero: a sheet bent over a sharp edge springs back by 3S/E′ of
 * its curvature at most, a few hundredths, and a job's radius is at least 1 mm on at most 12.7 mm of sheet.
 */
function insideOf(mid: number, { thickness }: Section): number {
  const inside = insideRadius(mid, thickness);
  if (!(inside > 0)) throw new InternalError(`no form is tight enough for a mid-surface radius of ${mid} mm`);
  return inside;
}

function notSetFinding(key: 'from' | 'to', mid: number, section: Section): Finding[] {
  const limit = elasticRadius(section);
  if (mid < limit) return [];
  return [
    finding('would-not-set', `bend.radius.${key}`, {
      radius: insideRadius(mid, section.thickness),
      flat: insideRadius(limit, section.thickness),
    }),
  ];
}

/**
 * The error where letting go would make the bend tighter at an end. The two ends spring back by the strip's law each for itself, and a cone is
 * laid through what is left of their curvatures. On a sheet that stays one piece without stretching the rulings stay where they are on the flat
 * blank, all curvatures fall by one factor and every radius grows; where the cone's says otherwise there is no such sheet.
 */
function springApart(finished: Cone, form: Cone, { thickness }: Section): Finding | undefined {
  const ends = [
    { end: 'A', x: 0, before: form.radiusA, after: finished.radiusA },
    { end: 'B', x: form.length, before: form.radiusB, after: finished.radiusB },
  ];
  const wrong = ends.find(({ before, after }) => after < before * (1 - ROUNDING));
  if (!wrong) return undefined;
  const { end, x, before, after } = wrong;
  return finding('ends-spring-apart', 'bend.radius', {
    end,
    form: before,
    left: after,
    curved: midRadiusAt(form, thickness, x),
    straighter: midRadiusAt(finished, thickness, x),
  });
}

function tooSteepForAngle(job: Job, cone: Cone): Finding {
  const most = 2 * Math.asin(Math.cos(cone.halfAngle));
  return finding('taper-too-steep-for-angle', 'bend.angle', { angle: job.bend.angle, most });
}
