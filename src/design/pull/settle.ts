import { angleFromWrap, midRadiusAt } from '../../base/cone';
import { atEnds, type End, type Ends } from '../../base/ends';
import type { BendPlan, BentSheet, Pull } from '../bend/bend-plan';
import { integrate } from '../../base/integrate';
import { bendingCurve } from '../bend/curve';
import { depthAt } from '../bend/depth-along';
import { BOW_FROM, type FinishedShape } from './finished-shape';
import { LEAST_BEARING } from './hold';
import { legShape, placeOf } from './leg-shape';
import { reachOf, turnAt } from './pulling';
import { tailPerLength } from './tail';
import type { Way } from './way';
import { opensBy, wrapFor } from './wrap-for';

/**
 * The bend pulled in a way, its held leg bearing on the bench `bearing` mm back (0 before the clamps are known): the wrap to the take-off
 * that leaves the wanted angle, tails included, and what else belongs to that instant. A turn T of a leg about its rulings is a wrap T/cos β.
 */
export function settle(bend: BentSheet, way: Way, bearing: number): BendPlan {
  const held = heldTail(bend, bearing);
  const wrap = wrapFor(bend, way.legs, held);
  const { chosen } = wrap;
  const shape = legShape(bend, 'A', way.legs.A, bearingAt(bend, 'A', bearing));
  const shapes: Ends<FinishedShape> = {
    A: shape,
    B:
      way.legs.B === way.legs.A && !bend.heldAlong
        ? shape
        : legShape(bend, 'B', way.legs.B, bearingAt(bend, 'B', bearing)),
  };
  const wrapWith = (turn: number): number => chosen + turn / Math.cos(bend.form.halfAngle);
  const angleWith = (turn: number): number => angleFromWrap(wrapWith(turn), bend.form.halfAngle);
  const { moment, lever, leverNeeded, leverage, edge, handForce, people, legs, yoke, bare } = way;
  return {
    ...bend,
    wrap,
    twist: atEnds((end) => (chosen - wrap[end]) / opensBy(bend, end)),
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
      reach: Math.max(reachOf(way.legs.A.pieces), reachOf(way.legs.B.pieces)),
      legAngle: atEnds((end) => angleWith(way.legs[end].loaded)),
      gaugeWrap: wrapWith((way.legs.A.loaded + way.legs.B.loaded) / 2),
      nearAngle: atEnds((end) => angleWith(turnAt(way.legs[end].pieces, BOW_FROM))),
      departure: atEnds((end) => shapes[end].departure),
      bow: Math.max(shapes.A.bow, shapes.B.bow),
      early: (shapes.A.early + shapes.B.early) / 2,
      held,
      bearing,
    },
  };
}

/** What stays of the held leg's turn at either end, radians, bearing `bearing` mm behind the tangent line. */
export function heldTail(bend: BentSheet, bearing: number): Pull['held'] {
  if (bearing === 0) return { A: 0, B: 0 };
  const curve = bendingCurve(bend.section);
  return atEnds(
    (end) =>
      bearingAt(bend, end, bearing) *
      tailPerLength(curve, 1 / midRadiusAt(bend.form, bend.section.thickness, placeOf(bend, end))).stays,
  );
}

/** How far back a held leg that bears `bearing` mm where it is deep enough does so on the half of the bend toward an end, mm, the mean of it. */
export function bearingAt({ heldAlong, length }: BentSheet, end: End, bearing: number): number {
  if (!heldAlong || bearing === 0) return bearing;
  const [from, to] = end === 'A' ? [0, length / 2] : [length / 2, length];
  const bears = (x: number): number => Math.min(Math.max(depthAt(heldAlong, 'under', x), LEAST_BEARING), bearing);
  return integrate(bears, from, to) / (to - from);
}
