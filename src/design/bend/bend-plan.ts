import type { Cone } from '../../base/cone';
import type { Ends } from '../../base/ends';
import type { Job, Run } from '../../job/job';
import type { Metal, YokeBolt, YokeStock } from '../../tables/schema';
import type { Section } from './section';
import type { DepthAlong } from './depth-along';
import type { TrialFit } from './trial-fit';

/** What bending asks of the form: mm, radians, N, MPa. Everything later is laid out from this. */
export interface BendPlan extends BentSheet {
  /** Wrap to the take-off, about the centre line: what each end needs for the finished angle, tails included, and the one chosen. */
  readonly wrap: Ends & { readonly chosen: number };
  /** Too far (positive) or short at either end after release. */
  readonly twist: Ends;
  readonly pull: Pull;
}

/** The bend as it is to come out, and the form for it, before anyone pulls. */
export interface BentSheet {
  readonly metal: Metal;
  readonly section: Section;
  /** Factor on the flow curve from trial strips; 1 without. */
  readonly factor: number;
  /** The trials the factor comes from; null without. */
  readonly trials: TrialFit | null;
  /** Between the legs' planes, radians from flat. */
  readonly angle: number;
  readonly length: number;
  /** The held leg at its deepest, and the free one. */
  readonly legs: Job['bend']['legs'];
  /** How deep the held leg is along the bend, where it is not the same everywhere. */
  readonly heldAlong?: DepthAlong;
  /** Inside surface of the part after release, and of the form. */
  readonly finished: Cone;
  readonly form: Cone;
  /** Finished wrap about the centre line, radians. */
  readonly finishedWrap: number;
  readonly neutral: number;
  readonly allowance: Ends;
  /** From each end's tangent lines to where the legs' outside planes meet. */
  readonly setback: Ends;
  readonly fan: number;
  readonly strain: Ends;
  readonly runs: readonly LoadedRun[];
}

/** All that a bend's pull and its form's supports are worked out from, as data: not what form and runs are called. */
export function reckonedFrom(bend: BentSheet, job: Job): object {
  const { metal, section, factor, trials, angle, length, legs, finished, form, finishedWrap, neutral } = bend;
  const given = [section.thickness, factor, trials, angle, length, legs, finished, form, finishedWrap, neutral];
  const loads = bend.runs.map(({ from, to, moment }) => [from, to, moment]);
  return [metal.id, given, loads, bend.heldAlong, { ...job, title: '', runs: [] }];
}

/** A run with the whole moment that bends it, N·mm. */
export interface LoadedRun extends Run {
  readonly moment: number;
}

/** How the free leg is pulled, for the governing run; N, mm, radians. Turns of a leg are about its rulings. */
export interface Pull {
  readonly with: 'bare' | 'yoke' | 'press';
  /** Of the governing run, N·mm. */
  readonly moment: number;
  /** From the take-off, where the sheet leaves the form, to the hands at the end of the pull. */
  readonly lever: number;
  /** Lever at which the hands' limit just does, pulled bare. */
  readonly leverNeeded: number;
  /** Extra metal left beyond the free leg, trimmed off after bending. */
  readonly leverage: number;
  /** From the ideal free tangent line to the edge of the sheet: free leg and leverage. */
  readonly edge: number;
  /** All hands together. */
  readonly handForce: number;
  readonly people: number;
  /** The leg past the take-off at either end of the bend. */
  readonly legs: Ends<PulledEnd>;
  /** How far past the take-off the leg stays bent. */
  readonly reach: number;
  /** Angle between the legs' planes where the gauge is held, while pulled; and about the centre line, for the gauge itself. */
  readonly legAngle: Ends;
  readonly gaugeWrap: number;
  /** The same a little past the take-off. */
  readonly nearAngle: Ends;
  /** Greatest distance of the finished bend from one round arc between the same legs; the finished leg's bow. */
  readonly departure: Ends;
  readonly bow: number;
  /** How far ahead of the ideal tangent line, toward the held edge, the form stands. */
  readonly early: number;
  readonly yoke: Yoke | null;
  /** What the pull would be by bare hands where another way was chosen: the longest lever the sheet's leg keeps flat at; null where none does. */
  readonly bare: { readonly lever: number; readonly handForce: number } | null;
  /** Turn of the held leg that stays, once the clamps are known; nothing before. */
  readonly held: Ends;
  /** How far behind the tangent line the held leg bears on the bench; 0 before the clamps are known. */
  readonly bearing: number;
}

/** The free leg past the take-off at one end, per unit width: N/mm, radians, mm. */
export interface PulledEnd {
  readonly force: number;
  /** Up to the hands or the yoke while pulled; of that what stays after release. */
  readonly loaded: number;
  readonly stays: number;
  /** From the take-off outward. */
  readonly pieces: readonly LegPiece[];
}

/** A piece of leg, from the bend outward: its length, mm, how far it turns while loaded and what of that stays, radians. */
export interface LegPiece {
  readonly length: number;
  readonly loaded: number;
  readonly stays: number;
}

/** How a nose's flange is ground to a wedge from above: how thick its front edge is left, and how far back it is whole again, mm. */
export interface Wedge {
  readonly edge: number;
  readonly back: number;
}

/** A yoke as built for the bend: mm, N, radians, MPa. */
export interface Yoke {
  /** Rows of `shared/yoke-stock.json`: a steel angle on the inner face, a batten on the outer. */
  readonly nose: YokeStock;
  readonly outer: YokeStock;
  /** Battens on the outer face of the outer member, flat, square to it, and how many. */
  readonly handle: YokeStock;
  readonly handles: number;
  readonly bolt: YokeBolt;
  /** How the nose's front is ground. */
  readonly wedge: Wedge;
  /** From the take-off to the nose, the greater end. */
  readonly gap: number;
  /** How far the nose stays clear of the form at the end of the pull, where it comes nearest. */
  readonly clears: number;
  /** From the nose to the hands. */
  readonly arm: number;
  /** Where the sheet, opened by the members' parting, lies flat again. */
  readonly grip: number;
  /** N/mm with which nose and sheet part, and how far they do in the middle. */
  readonly part: number;
  readonly opens: number;
  /** Turn inside the yoke in the middle: loaded, and what stays. */
  readonly loaded: number;
  readonly stays: number;
  readonly stress: { readonly nose: number; readonly outer: number };
  /** From bolts to bolts; pull on the bolts of one end together. */
  readonly span: number;
  readonly bolts: number;
  readonly length: number;
}

/** How the form is held down, by statics: N, mm, radians. */
export interface Hold {
  readonly foot: number;
  readonly clamps: number;
  /** What the clamps must hold together, safety included; and what those fitted do. */
  readonly clampForce: number;
  readonly fitted: number;
  readonly safety: number;
  /** Wrap at which most is asked of them. */
  readonly worst: number;
  /** How far behind the tangent line the held leg bears at the end of the pull. */
  readonly bearing: number;
  /** The held leg's turn that stays, at either end; and with clamps weaker and stronger by their usual spread, the middle. */
  readonly tail: Ends;
  readonly spread: { readonly weak: number | null; readonly strong: number };
  /** Up-push on the spine's front edge. */
  readonly up: number;
  /** How far the front edge lifts off the flat sheet. */
  readonly lift: number;
}
