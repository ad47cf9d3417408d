import { curvatureRadiusAt } from '../../base/cone';
import { toDegrees } from '../../base/angle';
import { error, warning, type Finding } from '../../base/findings';
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
  const wrap = toDegrees(bend.wrap.chosen);
  if (wrap <= rules.maxWrapDegrees) return [];
  return [
    error(
      'wrap-too-far',
      'bend.angle',
      `the sheet would have to be wrapped ${wrap.toFixed(1)}° to spring back to ${toDegrees(bend.angle).toFixed(1)}°; a half-disc holds it up to ${rules.maxWrapDegrees}°`,
      'bend less, make the radius smaller, or use a softer temper',
      { got: `${wrap.toFixed(1)}°`, allowed: `at most ${rules.maxWrapDegrees}°` },
    ),
  ];
}

function crackFindings(bend: BendPlan, job: Job): Finding[] {
  const thickness = bend.section.thickness;
  const smallest = job.sheet.minBendRatio ?? minBendRatioFor(bend.metal, thickness);
  if (smallest === null) {
    return [
      warning(
        'no-minimum-radius',
        'sheet.thickness',
        `no minimum bend radius is published here for ${bend.metal.name} ${thickness.toFixed(2)} mm thick`,
        'ask the supplier, bend a scrap first, and set sheet.minBendRatio',
      ),
    ];
  }
  const radius = Math.min(curvatureRadiusAt(bend.form, 0), curvatureRadiusAt(bend.form, bend.length));
  const ratio = radius / thickness;
  if (ratio >= smallest) return [];
  return [
    error(
      'would-crack',
      'bend.radius',
      `the form bends ${bend.metal.name} to ${ratio.toFixed(2)} times its thickness (outside strain ${(100 * Math.max(bend.strain.from, bend.strain.to)).toFixed(1)} %); the published minimum is ${smallest}`,
      'use a larger radius, a softer temper or a thinner sheet; set sheet.minBendRatio if your supplier allows less',
      { got: `${ratio.toFixed(2)} × thickness`, allowed: `at least ${smallest} × thickness` },
    ),
  ];
}

function settingFindings(bend: BendPlan): Finding[] {
  const limit = elasticRadius(bend.section);
  const largest =
    Math.max(curvatureRadiusAt(bend.form, 0), curvatureRadiusAt(bend.form, bend.length)) + bend.section.thickness / 2;
  if (largest < MOSTLY_SPRINGBACK * limit) return [];
  return [
    warning(
      'mostly-springback',
      'bend.radius',
      `at its larger end the sheet springs back more than half of its bend (form ${largest.toFixed(0)} mm, nothing sets above ${limit.toFixed(0)} mm): table data is a poor guide here`,
      'bend trial strips of your own sheet before cutting the form, or use a softer or thicker sheet',
    ),
  ];
}

function twistFindings(bend: BendPlan): Finding[] {
  const worst = toDegrees(Math.max(Math.abs(bend.twist.from), Math.abs(bend.twist.to)));
  if (worst <= VISIBLE_TWIST) return [];
  return [
    warning(
      'twist',
      'bend.radius',
      `one wrap serves both ends, so the leg comes out twisted by up to ${worst.toFixed(1)}° at an end`,
      'correct the end by hand after release, or make the two radii more alike',
    ),
  ];
}

function pullFindings(bend: BendPlan, rules: ShopRules): Finding[] {
  const { handForce, lever } = bend.pull;
  if (handForce <= rules.handForceFinding) return [];
  return [
    warning(
      'hard-pull',
      'effort',
      `it takes ${handForce.toFixed(0)} N at ${lever.toFixed(0)} mm from the tangent line to pull the leg round; ${rules.handForceFinding} N is as much as one person should`,
      'get help, leave more leverage, or split the run',
      { got: `${handForce.toFixed(0)} N`, allowed: `at most ${rules.handForceFinding} N` },
    ),
  ];
}
