import { toDegrees } from '../../base/angle';
import { coneFromCurvatures, coneThrough, curvatureRadiusAt, wrapFromAngle, type Cone } from '../../base/cone';
import { error, hasErrors, type Finding, type Staged } from '../../base/findings';
import type { Job } from '../../job/job';
import type { Ends } from '../../base/ends';
import { elasticRadius, type Section } from './section';
import { finishedRadius, formRadiusFor } from './springback';

/** The bend before and after release: inside surfaces in mm, wraps about the centre line in radians. */
export interface BendShape {
  readonly finished: Cone;
  readonly form: Cone;
  readonly finishedWrap: number;
  /** Needed at each end, and the one chosen. */
  readonly wrap: Ends & { readonly chosen: number };
}

/** What the sheet must be wrapped to, or what it springs back to, for the job's radii. Null where no such bend exists; the findings say why. */
export function shapeBend(job: Job, section: Section): Staged<BendShape | null> {
  const cones = findCones(job, section);
  if ('findings' in cones) return { value: null, findings: cones.findings };
  const { finished, form } = cones;
  const finishedWrap = wrapFromAngle(job.bend.angle, finished.halfAngle);
  if (Number.isNaN(finishedWrap)) return { value: null, findings: [tooSteepForAngle(job, finished)] };
  const wrapAt = (x: number): number => (finishedWrap * midRadius(finished, section, x)) / midRadius(form, section, x);
  const [from, to] = [wrapAt(0), wrapAt(job.bend.length)];
  return { value: { finished, form, finishedWrap, wrap: { from, to, chosen: (from + to) / 2 } }, findings: [] };
}

/** Mid-surface radius of curvature ρ = R/cos β + t/2, mm, at `x` along the tangent line. */
export function midRadius(cone: Cone, section: Section, x: number): number {
  return curvatureRadiusAt(cone, x) + section.thickness / 2;
}

function findCones(job: Job, section: Section): { finished: Cone; form: Cone } | { findings: Finding[] } {
  const { radius, length, radiusOf } = job.bend;
  const given = coneThrough(radius.from, radius.to, length);
  const ends = [0, length].map((x) => midRadius(given, section, x));
  const half = section.thickness / 2;
  const found = ends.map(
    (mid) => (radiusOf === 'finished' ? formRadiusFor(section, mid) : finishedRadius(section, mid)) - half,
  );
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
      {
        got: `${(mid - section.thickness / 2).toFixed(1)} mm`,
        allowed: `below ${(limit - section.thickness / 2).toFixed(1)} mm`,
      },
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
