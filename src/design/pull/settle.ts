import { angleFromWrap, midRadiusAt } from '../../base/cone';
import type { Ends } from '../../base/ends';
import type { BendPlan, BentSheet, Pull } from '../bend/bend-plan';
import { bendingCurve } from '../bend/curve';
import { BOW_FROM, type FinishedShape } from './finished-shape';
import { legShape, placeOf } from './leg-shape';
import { reachOf, turnAt } from './pulling';
import { tailPerLength } from './tail';
import type { Way } from './way';

/**
 * The bend pulled in a way, its held leg bearing on the bench `bearing` mm back (0 before the clamps are known): the wrap to the take-off
 * that leaves the wanted angle, tails included, and what else belongs to that instant. A turn T of a leg about its rulings is a wrap T/cos β.
 */
export function settle(bend: BentSheet, way: Way, bearing: number): BendPlan {
  const held = heldTail(bend, bearing);
  const each = (f: (end: 'from' | 'to') => number): Ends => ({ from: f('from'), to: f('to') });
  const wrap = wrapFor(bend, way.legs, held);
  const { chosen } = wrap;
  const shape = legShape(bend, 'from', way.legs.from, bearing);
  const shapes: Record<'from' | 'to', FinishedShape> = {
    from: shape,
    to: way.legs.to === way.legs.from ? shape : legShape(bend, 'to', way.legs.to, bearing),
  };
  const wrapWith = (turn: number): number => chosen + turn / Math.cos(bend.form.halfAngle);
  const angleWith = (turn: number): number => angleFromWrap(wrapWith(turn), bend.form.halfAngle);
  const { moment, lever, leverNeeded, leverage, edge, handForce, people, legs, yoke, bare } = way;
  return {
    ...bend,
    wrap,
    twist: each((end) => (chosen - wrap[end]) / opensBy(bend, end)),
    pull: {
      with: way.with,
      moment,
      lever,
      leverNeeded,
      leverage,
      edge,
      handForce,
      people,
      legs,
      yoke,
      bare,
      reach: Math.max(reachOf(way.legs.from.pieces), reachOf(way.legs.to.pieces)),
      legAngle: each((end) => angleWith(way.legs[end].loaded)),
      gaugeWrap: wrapWith((way.legs.from.loaded + way.legs.to.loaded) / 2),
      nearAngle: each((end) => angleWith(turnAt(way.legs[end].pieces, BOW_FROM))),
      departure: each((end) => shapes[end].departure),
      bow: Math.max(shapes.from.bow, shapes.to.bow),
      early: (shapes.from.early + shapes.to.early) / 2,
      held,
      bearing,
    },
  };
}

/** The wrap each end needs for the wanted angle, what stays of both legs' turns taken off, and their mean. */
export function wrapFor(bend: BentSheet, legs: Pull['legs'], held: Ends): BendPlan['wrap'] {
  const needed = (end: 'from' | 'to'): number =>
    (bend.finishedWrap - (legs[end].stays + held[end]) / Math.cos(bend.finished.halfAngle)) * opensBy(bend, end);
  const [from, to] = [needed('from'), needed('to')];
  return { from, to, chosen: (from + to) / 2 };
}

/** The wrap that would do if both legs stayed flat, the mean of both ends. */
export function idealWrap(bend: BentSheet): number {
  return (bend.finishedWrap * (opensBy(bend, 'from') + opensBy(bend, 'to'))) / 2;
}

/** How many times its wrap on the form an end keeps in radius: ρ_finished/ρ_form. */
function opensBy(bend: BentSheet, end: 'from' | 'to'): number {
  const x = placeOf(bend, end);
  return midRadiusAt(bend.finished, bend.section.thickness, x) / midRadiusAt(bend.form, bend.section.thickness, x);
}

/** What stays of the held leg's turn at either end, radians, bearing `bearing` mm behind the tangent line. */
export function heldTail(bend: BentSheet, bearing: number): Pull['held'] {
  if (bearing === 0) return { from: 0, to: 0 };
  const curve = bendingCurve(bend.section);
  const at = (end: 'from' | 'to'): number =>
    bearing * tailPerLength(curve, 1 / midRadiusAt(bend.form, bend.section.thickness, placeOf(bend, end))).stays;
  return { from: at('from'), to: at('to') };
}
