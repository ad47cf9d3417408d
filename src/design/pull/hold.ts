import { minimumBetween } from '../../base/minimum';

/** A slice of the bend for the hold's sums: how wide it is, mm; its moment, N·mm; the form's radius and the sheet's mid radius there, mm. */
export interface LoadedSlice {
  readonly moment: number;
  readonly radius: number;
  readonly mid: number;
}

/** The form as it stands on the bench, and the pull on it: mm, radians. */
export interface HeldForm {
  /** Foot behind the spine, and the spine's thickness. */
  readonly foot: number;
  readonly spine: number;
  /** Held leg, from the tangent line back to its edge. */
  readonly held: number;
  /** From take-off to hands at the end of the pull. */
  readonly lever: number;
  /** Wrap at the end of the pull. */
  readonly wrap: number;
  readonly slices: readonly LoadedSlice[];
}

/** Contact with a bench of wood spreads the held leg's bearing at least this far, mm: contact finite elements on an MDF-like bench. */
export const LEAST_BEARING = 8;

/** The whole moment that bends the sheet, N·mm. */
export function wholeMoment({ slices }: HeldForm): number {
  return slices.reduce((sum, { moment }) => sum + moment, 0);
}

/** How far back the held leg can bear on the bench under the form, mm: its edge, or the foot's rear. */
export function bearingArm({ held, spine, foot }: HeldForm): number {
  return Math.min(held, spine + foot);
}

/**
 * Moment about the foot's rear edge, N·mm, with which the pull at wrap `wrap` tips the form: F(φ)·[(b + f)·cos φ + R·sin φ], the pull reaching
 * the form square to the disc, F(φ) = M/(a + ρ·(ψ − φ)).
 */
export function pullTips({ slices, spine, foot, lever, wrap: end }: HeldForm, wrap: number): number {
  return slices.reduce((sum, { moment, radius, mid }) => {
    const force = moment / (lever + mid * (end - wrap));
    return sum + force * ((spine + foot) * Math.cos(wrap) + radius * Math.sin(wrap));
  }, 0);
}

/** What the clamps must hold down in the middle of the spine, at the worst moment of the pull. */
export interface ClampNeed {
  /** N, no safety in it. */
  readonly force: number;
  /** Wrap at which it is needed, radians. */
  readonly wrap: number;
}

/**
 * C·(f + b/2) ≥ max over φ of (M/h)·(b + f) + F(φ)·[(b + f)·cos φ + R·sin φ], h how far back the held leg can bear: moments of the form
 * about the foot's rear edge. Shared plan “The pull and the hold”, The hold.
 */
export function clampNeed(form: HeldForm): ClampNeed {
  const arm = form.foot + form.spine / 2;
  const up = (wholeMoment(form) / bearingArm(form)) * (form.spine + form.foot);
  const wrap = minimumBetween((angle) => -pullTips(form, angle), 0, form.wrap);
  return { force: (up + pullTips(form, wrap)) / arm, wrap };
}

/**
 * How far behind the tangent line the held leg bears, mm, at a wrap of the pull (its end unless said) with the clamps holding `force` N together:
 * they press the form down on it so far as the pull does not lift it. Null where they cannot hold the form at all.
 */
export function bearingWith(form: HeldForm, force: number, wrap = form.wrap): number | null {
  const left = force * (form.foot + form.spine / 2) - pullTips(form, wrap);
  const arm = left > 0 ? (wholeMoment(form) * (form.spine + form.foot)) / left : Infinity;
  if (arm > bearingArm(form)) return null;
  return Math.max(arm, LEAST_BEARING);
}
