import { minimumBetween } from '../../base/minimum';

/**
 * A slice of the bend for the hold's sums: how wide it is, mm; its moment, N·mm; the form's radius and the sheet's mid radius there, mm; how deep the held leg
 * is behind it, mm, where that is not the form's `held`.
 */
export interface LoadedSlice {
  readonly moment: number;
  readonly radius: number;
  readonly mid: number;
  readonly held?: number;
}

/** The form as it stands on the bench, and the pull on it: mm, radians. */
export interface HeldForm {
  /** Foot behind the spine, and the spine's thickness. */
  readonly foot: number;
  readonly spine: number;
  /** Held leg, from the tangent line back to its edge where that is furthest. */
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

/** How far back the held leg can bear on the bench under the form, mm: its edge where that is furthest, or the foot's rear. */
export function bearingArm({ held, spine, foot }: HeldForm): number {
  return Math.min(held, spine + foot);
}

/** The held leg's depth at the slices, mm, as far as it counts; null where it is the same at all. */
function depthsOf({ slices }: HeldForm): readonly { readonly moment: number; readonly depth: number }[] | null {
  const own = slices.flatMap(({ moment, held }) =>
    held === undefined ? [] : [{ moment, depth: Math.max(held, LEAST_BEARING) }],
  );
  return own.length === slices.length ? own : null;
}

/** With what force, N, the bench pushes the held leg up, and the form's front edge with it, the leg bearing `bearing` mm back: nowhere further than it is deep. */
export function upPush(form: HeldForm, bearing: number): number {
  const depths = depthsOf(form);
  if (!depths) return wholeMoment(form) / bearing;
  return depths.reduce((sum, { moment, depth }) => sum + moment / Math.min(depth, bearing), 0);
}

/**
 * How far back the held leg bears where the clamps leave `left` N·mm about the foot's rear edge for the bench's push: the other way about of {@link upPush}.
 * Infinity where it would have to be deeper than it is.
 */
function bearingFor(form: HeldForm, left: number): number {
  if (left <= 0) return Infinity;
  const reach = form.spine + form.foot;
  const depths = depthsOf(form);
  if (!depths) return (wholeMoment(form) * reach) / left;
  // What is shallower than the bearing pushes with its own depth, the rest with the bearing.
  let [short, rest] = [0, wholeMoment(form)];
  for (const { moment, depth } of [...depths].sort((a, b) => a.depth - b.depth)) {
    const bearing = (rest * reach) / (left - short * reach);
    if (left > short * reach && bearing <= depth) return bearing;
    short += moment / depth;
    rest -= moment;
  }
  return Infinity;
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
  const up = upPush(form, bearingArm(form)) * (form.spine + form.foot);
  const wrap = minimumBetween((angle) => -pullTips(form, angle), 0, form.wrap);
  return { force: (up + pullTips(form, wrap)) / arm, wrap };
}

/**
 * How far behind the tangent line the held leg bears, mm, at a wrap of the pull (its end unless said) with the clamps holding `force` N together:
 * they press the form down on it so far as the pull does not lift it. Null where they cannot hold the form at all.
 */
export function bearingWith(form: HeldForm, force: number, wrap = form.wrap): number | null {
  const left = force * (form.foot + form.spine / 2) - pullTips(form, wrap);
  const arm = bearingFor(form, left);
  if (arm > bearingArm(form)) return null;
  return Math.max(arm, LEAST_BEARING);
}
