import { coneThrough, radiusAt, type Cone } from '../../base/cone';
import type { Ends } from '../../base/ends';
import type { PanelRules } from '../../tables/panel-rules';
import { ROUNDING } from '../../base/tolerance';

/** What a bend asks of a form: the form's inside surface along the bend's own base line, end A first. */
export interface FormNeed {
  readonly bend: string;
  readonly form: Cone;
}

/** A stretch of a form that serves a bend. */
export interface Stretch {
  readonly bend: string;
  /** Along the form's tangent line from its small end, mm. */
  readonly from: number;
  readonly to: number;
  /** Whether the bend's end A lies toward the form's small end. */
  readonly startsAtA: boolean;
  /** The most the form's radius there differs from the one asked for, mm. */
  readonly off: number;
}

/** A form and the bends it serves. */
export interface SharedForm {
  /** The bend that it is made for; its length and radii are the form's. */
  readonly name: string;
  /** From the small end on. */
  readonly cone: Cone;
  readonly stretches: readonly Stretch[];
}

/** A form that would nearly do for a bend, and the form radii the bend would get at its ends A and B. */
export interface FormOffer {
  readonly bend: string;
  readonly form: string;
  readonly stretch: Stretch;
  readonly radii: Ends;
}

/** The cone written from its small end. */
export function fromSmallEnd(cone: Cone): { readonly cone: Cone; readonly startsAtA: boolean } {
  if (cone.radiusA <= cone.radiusB) return { cone, startsAtA: true };
  return { cone: coneThrough(cone.radiusB, cone.radiusA, cone.length), startsAtA: false };
}

/**
 * The stretch of a form that comes nearest to what a bend asks for; null where the form is too short. Where it differs by no more than `alike` mm there, it is the one
 * flush with an end of the form: one station then serves both.
 */
export function nearestStretch(form: Cone, need: FormNeed, alike = 0): Stretch | null {
  const { cone, startsAtA } = fromSmallEnd(need.form);
  const spare = form.length - cone.length;
  if (spare < -ROUNDING) return null;
  // Both radii are straight lines: they differ least where their middles agree.
  const slope = Math.sin(form.halfAngle);
  const wanted = slope === 0 ? 0 : (radiusAt(cone, cone.length / 2) - form.radiusA) / slope - cone.length / 2;
  const offFrom = (from: number): number =>
    Math.max(...[0, cone.length].map((x) => Math.abs(radiusAt(form, from + x) - radiusAt(cone, x))));
  const last = Math.max(0, spare);
  const flush = offFrom(0) <= offFrom(last) ? 0 : last;
  const from = offFrom(flush) <= alike ? flush : Math.min(Math.max(0, wanted), last);
  return { bend: need.bend, from, to: from + cone.length, startsAtA, off: offFrom(from) };
}

/** A bend's own form, whole. */
export function ownForm(need: FormNeed): SharedForm {
  const { cone, startsAtA } = fromSmallEnd(need.form);
  return { name: need.bend, cone, stretches: [{ bend: need.bend, from: 0, to: cone.length, startsAtA, off: 0 }] };
}

/** A form with one more bend on it. */
export function withStretch(form: SharedForm, stretch: Stretch): SharedForm {
  return { ...form, stretches: [...form.stretches, stretch] };
}

/**
 * The fewest forms by their radii alone, the longest bend first, and what else would nearly do. Which of these can be used side by side is for the order of
 * work to say.
 */
export function shareForms(
  needs: readonly FormNeed[],
  rules: PanelRules,
): { readonly forms: readonly SharedForm[]; readonly offers: readonly FormOffer[] } {
  const longestFirst = [...needs].sort((a, b) => b.form.length - a.form.length);
  const forms: SharedForm[] = [];
  const offers: FormOffer[] = [];
  for (const need of longestFirst) {
    const fits = forms.flatMap((form, index) => {
      const stretch = nearestStretch(form.cone, need, rules.formsAlike);
      return stretch ? [{ form, index, stretch }] : [];
    });
    const best = fits.reduce<(typeof fits)[number] | null>(
      (least, fit) => (least && least.stretch.off <= fit.stretch.off ? least : fit),
      null,
    );
    if (best && best.stretch.off <= rules.formsAlike) {
      forms[best.index] = withStretch(best.form, best.stretch);
      continue;
    }
    if (best && best.stretch.off <= rules.formsOffered) offers.push(offerOf(best.form, need, best.stretch));
    forms.push(ownForm(need));
  }
  return { forms, offers };
}

function offerOf(form: SharedForm, need: FormNeed, stretch: Stretch): FormOffer {
  const [small, large] = [radiusAt(form.cone, stretch.from), radiusAt(form.cone, stretch.to)];
  const radii = stretch.startsAtA ? { A: small, B: large } : { A: large, B: small };
  return { bend: need.bend, form: form.name, stretch, radii };
}
