import { coneFromCurvatures, coneThrough, curvatureRadiusAt, wrapFromAngle, type Cone } from '../../base/cone';
import { hasErrors, type Finding, type Staged } from '../../base/findings';
import { finding } from '../../findings/finding';
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
    finding('would-not-set', `bend.radius.${end}`, {
      radius: mid - section.thickness / 2,
      flat: limit - section.thickness / 2,
    }),
  ];
}

function noFormFinding(end: 'from' | 'to', inside: number): Finding[] {
  if (inside > 0) return [];
  return [finding('no-form-radius', `bend.radius.${end}`)];
}

function tooSteepForAngle(job: Job, cone: Cone): Finding {
  const most = 2 * Math.asin(Math.cos(cone.halfAngle));
  return finding('taper-too-steep-for-angle', 'bend.angle', { angle: job.bend.angle, most });
}
