import { curvatureRadiusAt } from '../../base/cone';
import { toDegrees, toRadians } from '../../base/angle';
import type { Finding } from '../../base/findings';
import { finding } from '../../findings/finding';
import type { Job } from '../../job/job';
import { minBendRatioFor } from '../../tables/look-up';
import type { ShopRules } from '../../tables/tables';
import type { BendPlan } from './bend-plan';
import { elasticRadius } from './section';

/** Twist left at an end after release that a maker would see against a square, degrees (common practice). */
const VISIBLE_TWIST = 1;
/** Share of the no-set radius above which more than half the curvature springs back and table data is a poor guide (common practice). */
const MOSTLY_SPRINGBACK = 0.5;

/** What the sheet itself forbids or makes doubtful: wrap, cracking, setting, twist, hand force. */
export function checkBend(bend: BendPlan, job: Job, rules: ShopRules): Finding[] {
  return [
    ...wrapFindings(bend, rules),
    ...crackFindings(bend, job),
    ...settingFindings(bend),
    ...twistFindings(bend),
    ...pullFindings(bend, rules),
  ];
}

function wrapFindings(bend: BendPlan, rules: ShopRules): Finding[] {
  const wrap = bend.wrap.chosen;
  const most = toRadians(rules.maxWrapDegrees);
  if (toDegrees(wrap) <= rules.maxWrapDegrees) return [];
  return [finding('wrap-too-far', 'bend.angle', { wrap, angle: bend.angle, most })];
}

function crackFindings(bend: BendPlan, job: Job): Finding[] {
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
      strain: Math.max(bend.strain.from, bend.strain.to),
      least: smallest,
    }),
  ];
}

function settingFindings(bend: BendPlan): Finding[] {
  const limit = elasticRadius(bend.section);
  const largest =
    Math.max(curvatureRadiusAt(bend.form, 0), curvatureRadiusAt(bend.form, bend.length)) + bend.section.thickness / 2;
  if (largest < MOSTLY_SPRINGBACK * limit) return [];
  return [finding('mostly-springback', 'bend.radius', { radius: largest, flat: limit })];
}

function twistFindings(bend: BendPlan): Finding[] {
  const worst = Math.max(Math.abs(bend.twist.from), Math.abs(bend.twist.to));
  if (toDegrees(worst) <= VISIBLE_TWIST) return [];
  return [finding('twist', 'bend.radius', { twist: worst })];
}

function pullFindings(bend: BendPlan, rules: ShopRules): Finding[] {
  const { handForce, lever } = bend.pull;
  if (handForce <= rules.handForceFinding) return [];
  return [finding('hard-pull', 'effort', { force: handForce, lever, most: rules.handForceFinding })];
}
