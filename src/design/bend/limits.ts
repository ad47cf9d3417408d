import { curvatureRadiusAt, midRadiusAt } from '../../base/cone';
import type { Finding } from '../../base/findings';
import { finding } from '../../findings/finding';
import type { Job } from '../../job/job';
import { minBendRatioFor } from '../../tables/look-up';
import type { BentSheet } from './bend-plan';
import { elasticRadius } from './section';

/** Share of the no-set radius above which more than half the curvature springs back and table data is a poor guide (common practice). */
const MOSTLY_SPRINGBACK = 0.5;

/** What the sheet itself forbids or makes doubtful: cracking, setting. */
export function checkSheet(bend: BentSheet, job: Job): Finding[] {
  return [...crackFindings(bend, job), ...settingFindings(bend)];
}

function crackFindings(bend: BentSheet, job: Job): Finding[] {
  const thickness = bend.section.thickness;
  const smallest = job.sheet.minBendRatio ?? minBendRatioFor(bend.metal, thickness);
  if (smallest === null) {
    return [finding('no-minimum-radius', 'sheet.thickness', { metal: bend.metal.name, thickness })];
  }
  const radius = Math.min(curvatureRadiusAt(bend.form, 0), curvatureRadiusAt(bend.form, bend.length));
  const ratio = radius / thickness;
  if (ratio >= smallest) return [];
  return [
    finding('would-crack', 'bend.radius', {
      metal: bend.metal.name,
      ratio,
      strain: Math.max(bend.strain.A, bend.strain.B),
      least: smallest,
    }),
  ];
}

function settingFindings(bend: BentSheet): Finding[] {
  const limit = elasticRadius(bend.section);
  const largest = Math.max(...[0, bend.length].map((x) => midRadiusAt(bend.form, bend.section.thickness, x)));
  if (largest < MOSTLY_SPRINGBACK * limit) return [];
  return [finding('mostly-springback', 'bend.radius', { radius: largest, flat: limit })];
}
