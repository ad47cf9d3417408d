import { at } from '../../base/at';
import type { ShopRules } from '../../tables/tables';
import type { BendPlan, Yoke } from '../bend/bend-plan';

/** A hole through both long members of a yoke: from their end at A, and behind the nose, mm. */
export interface YokeHole {
  readonly at: number;
  readonly behind: number;
}

/** How far a yoke reaches below the outside of the sheet, mm: its outer member and the handles on that. */
export function yokeDepth({ outer, handle }: Yoke): number {
  return outer.depth + handle.depth;
}

/** Where the yoke's members begin along the tangent line from end A of the bend, mm: the same beyond both ends of the run that asks most. */
export function yokeFrom({ runs, pull: { yoke } }: BendPlan): number {
  const run = runs.reduce((most, one) => (one.moment > most.moment ? one : most), at(runs, 0));
  return (run.from + run.to) / 2 - (yoke?.length ?? 0) / 2;
}

/** The bolts' holes, a pair about each end of the span, a washer apart. */
export function yokeHoles({ length, span }: Yoke, { yokeBoltBehind, yokeBoltPast }: ShopRules): YokeHole[] {
  const past = (length - span) / 2;
  return [past, length - past].flatMap((middle) =>
    [-1, 1].map((side) => ({ at: middle + (side * yokeBoltPast) / 2, behind: yokeBoltBehind })),
  );
}

/** Middles of the handles along the members, mm from their end at A: the hands spread evenly, two at the quarter points. */
export function handlePlaces({ length, span, handles }: Yoke): number[] {
  return Array.from({ length: handles }, (_, index) => (length - span) / 2 + (span * (index + 0.5)) / handles);
}
