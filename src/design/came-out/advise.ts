import { radiusAt } from '../../base/cone';
import type { BendPlan } from '../bend/bend-plan';
import type { FittedPart } from '../bend/trial-fit';

/** What to do about the form a part came off: mm. */
export interface FormAdvice {
  /** Leave it, cut the round edges smaller, or lay something round them. */
  readonly do: 'keep' | 'recut' | 'shim';
  /** By how much, and the radius wanted there. */
  readonly by: number;
  readonly to: number;
  /** The finished radius wanted there; null where the job gives the form's radii instead. */
  readonly wanted: number | null;
}

/** The form is left where the radius came out as near as it can be measured, and where the job gives the form's own radii. */
export function adviseForm(part: FittedPart, bend: BendPlan, formGiven: boolean): FormAdvice {
  const { at, form, cameOut, sure } = part;
  const wanted = formGiven ? null : radiusAt(bend.finished, at);
  if (wanted === null || Math.abs(cameOut - wanted) <= sure.radius) return { do: 'keep', by: 0, to: form, wanted };
  const to = radiusAt(bend.form, at);
  return { do: to < form ? 'recut' : 'shim', by: Math.abs(to - form), to, wanted };
}
