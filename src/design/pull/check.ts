import { toDegrees, toRadians } from '../../base/angle';
import type { Finding } from '../../base/findings';
import { finding } from '../../findings/finding';
import type { Job } from '../../job/job';
import type { ShopRules } from '../../tables/tables';
import type { BendPlan, Hold } from '../bend/bend-plan';
import type { Way } from './way';

/** Twist left at an end after release that a maker would see against a square, degrees (common practice). */
const VISIBLE_TWIST = 1;

/** What the pull forbids or makes doubtful: wrap, twist, hand force, the leg's shape. */
export function checkPull(bend: BendPlan, way: Way, job: Job, rules: ShopRules): Finding[] {
  const { pull } = bend;
  const turn = Math.max(pull.legs.A.loaded, pull.legs.B.loaded);
  return [
    ...wrapFindings(bend, rules),
    ...twistFindings(bend),
    ...forceFindings(bend, job),
    ...(way.bows
      ? [
          finding('leg-bows', 'pull.with', {
            departure: Math.max(pull.departure.A, pull.departure.B),
            most: rules.maxDeparture,
            bow: pull.bow,
            way: pull.with,
          }),
        ]
      : []),
    ...(way.gives && pull.yoke
      ? [
          finding('yoke-gives', 'pull.with', {
            opens: pull.yoke.opens,
            stays: pull.yoke.stays,
            nose: pull.yoke.nose.name,
            outer: pull.yoke.outer.name,
          }),
        ]
      : []),
    ...(pull.with === 'bare' && toDegrees(turn) > rules.squarePullAbove
      ? [finding('pull-square', 'pull', { turn })]
      : []),
  ];
}

function wrapFindings(bend: BendPlan, rules: ShopRules): Finding[] {
  const wrap = bend.wrap.chosen;
  const most = toRadians(rules.maxWrapDegrees);
  if (toDegrees(wrap) > rules.maxWrapDegrees)
    return [finding('wrap-too-far', 'bend.angle', { wrap, angle: bend.angle, most })];
  if (Math.min(bend.wrap.A, bend.wrap.B) <= 0)
    return [finding('all-tail', 'bend.angle', { angle: bend.angle, lever: bend.pull.lever })];
  return [];
}

function twistFindings(bend: BendPlan): Finding[] {
  const worst = Math.max(Math.abs(bend.twist.A), Math.abs(bend.twist.B));
  if (toDegrees(worst) <= VISIBLE_TWIST) return [];
  return [finding('twist', 'bend.radius', { twist: worst })];
}

function forceFindings(bend: BendPlan, { effort }: Job): Finding[] {
  const { handForce, lever } = bend.pull;
  const most = effort.handForce * effort.people;
  // The sums turn a leg at large; the limit was set by the plain lever.
  if (handForce <= most * 1.25) return [];
  return [finding('hard-pull', 'effort', { force: handForce, lever, most })];
}

/** What the hold leaves in doubt. */
export function checkHold(bend: BendPlan, hold: Hold, rules: ShopRules): Finding[] {
  const { spread } = hold;
  const vary = spread.weak === null ? null : spread.weak - spread.strong;
  return [
    ...(vary === null || vary > toRadians(rules.maxHeldSpread)
      ? [finding('held-leg-tail', 'clamps', { vary, clamps: hold.clamps, more: hold.clamps })]
      : []),
    ...(hold.lift > rules.maxHeldLift
      ? [finding('front-edge-lifts', 'clamps', { lift: hold.lift, most: rules.maxHeldLift })]
      : []),
    ...(bend.wrap.chosen <= 0
      ? [finding('all-tail', 'bend.angle', { angle: bend.angle, lever: bend.pull.lever })]
      : []),
  ];
}
