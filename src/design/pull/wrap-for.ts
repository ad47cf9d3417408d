import { midRadiusAt } from '../../base/cone';
import { atEnds, type End, type Ends } from '../../base/ends';
import type { BendPlan, BentSheet, PulledEnd } from '../bend/bend-plan';
import { placeOf } from './leg-shape';

/** The wrap each end needs for the wanted angle, what stays of both legs' turns taken off and what parts showed beyond that; and their mean. */
export function wrapFor(bend: BentSheet, legs: Ends<Pick<PulledEnd, 'stays'>>, held: Ends): BendPlan['wrap'] {
  const kept = (end: End): number => legs[end].stays + held[end] + (bend.trials?.legsKeep[end] ?? 0);
  const needed = (end: End): number =>
    (bend.finishedWrap - kept(end) / Math.cos(bend.finished.halfAngle)) * opensBy(bend, end);
  const { A, B } = atEnds(needed);
  return { A, B, chosen: (A + B) / 2 };
}

/** The wrap that would do if both legs stayed flat, the mean of both ends. */
export function idealWrap(bend: BentSheet): number {
  return (bend.finishedWrap * (opensBy(bend, 'A') + opensBy(bend, 'B'))) / 2;
}

/** How many times its wrap on the form an end keeps in radius: ρ_finished/ρ_form. */
export function opensBy(bend: BentSheet, end: End): number {
  const x = placeOf(bend, end);
  return midRadiusAt(bend.finished, bend.section.thickness, x) / midRadiusAt(bend.form, bend.section.thickness, x);
}
