import { radiusAt } from '../../base/cone';
import type { Ends } from '../../base/ends';
import type { BendPlan } from '../bend/bend-plan';

/**
 * How far from the held tangent mark, where the form stands, a yoke's nose lies on the flat sheet, mm, at either end: along the neutral
 * line to the take-off, and its gap. 0 without a yoke.
 */
export function noseLines({ form, length, wrap, neutral, section, pull }: BendPlan): Ends {
  const yoke = pull.yoke;
  const at = (x: number): number =>
    yoke ? wrap.chosen * (radiusAt(form, x) + neutral * section.thickness * Math.cos(form.halfAngle)) + yoke.gap : 0;
  return { A: at(0), B: at(length) };
}
