import { toRadians } from '../../base/angle';
import type { Finding } from '../../base/findings';
import { wrapFromAngle } from '../../base/cone';
import { finding } from '../../findings/finding';
import type { FinishedPart } from '../../job/job';
import type { ShopRules } from '../../tables/tables';
import { MOST_FACTOR } from '../bend/trial-findings';
import { formAt, midOn, type Before } from './before';
import { ROUNDING } from '../../base/tolerance';

const at = (index: number, key: string): string => `trials[${index}].part${key === '' ? '' : `.${key}`}`;

/** What forbids or shakes a part's measurements before any sum is done. */
export function checkMeasured(part: FinishedPart, index: number, before: Before): Finding[] {
  const { bend, formGiven } = before;
  const count = index + 1;
  const form = part.form ?? formAt(before, part.at);
  const [{ halfAngle }, { thickness }] = [bend.finished, bend.section];
  const opened =
    part.radius !== null && midOn(part.radius, halfAngle, thickness) > midOn(form, bend.form.halfAngle, thickness);
  return [
    ...(part.at > bend.length * (1 + ROUNDING)
      ? [finding('part-outside-bend', at(index, 'at'), { trial: count, at: part.at, length: bend.length })]
      : []),
    ...(part.radius === null && part.angle === null
      ? [finding('part-not-measured', at(index, ''), { trial: count })]
      : []),
    ...(part.angle !== null && part.wrap === null
      ? [finding('part-lacks-wrap', at(index, 'wrap'), { trial: count, angle: part.angle })]
      : []),
    ...(part.angle !== null && Number.isNaN(wrapFromAngle(part.angle, halfAngle))
      ? [finding('part-beyond-taper', at(index, 'angle'), { trial: count, angle: part.angle })]
      : []),
    ...(part.radius !== null && !opened
      ? [finding('part-not-opened', at(index, 'radius'), { trial: count, radius: part.radius, form })]
      : []),
    ...(part.form === null && !formGiven
      ? [finding('part-form-taken', at(index, 'form'), { trial: count, form })]
      : []),
  ];
}

/** Refuses a part that says the sheet is another one. */
export function checkPartFactor(factor: number | null, index: number): Finding[] {
  if (factor === null || (factor >= 1 / MOST_FACTOR && factor <= MOST_FACTOR)) return [];
  return [
    finding('part-contradicts-sheet', at(index, ''), {
      trial: index + 1,
      stronger: factor > 1 ? 'stronger' : 'weaker',
      least: 1 / MOST_FACTOR,
      most: MOST_FACTOR,
    }),
  ];
}

/** Doubts a part whose legs kept far more or less than the sums say. */
export function checkOff(off: number | null, index: number, rules: ShopRules): Finding[] {
  if (off === null || Math.abs(off) <= toRadians(rules.mostLegsOff)) return [];
  return [
    finding('part-legs-off', at(index, 'angle'), {
      trial: index + 1,
      off: Math.abs(off),
      which: off > 0 ? 'further' : 'less far',
    }),
  ];
}
