import type { Cone } from '../../base/cone';
import type { Point } from '../../base/polygon';
import type { HeldSide } from '../form/hand';
import type { Stretch } from '../form/share-forms';

/** A form as a body in the way of the metal; along its tangent line from the small end, mm. */
export interface FormBody {
  readonly name: string;
  /** Bend surface over its whole length, small end first. */
  readonly cone: Cone;
  /** Thickness of the spine. */
  readonly spine: number;
  /** How far the spine reaches past the end stations. */
  readonly ears: { readonly small: number; readonly large: number };
  /** Depth of the backing stations behind the spine, and where they stand. */
  readonly foot: number;
  readonly backings: readonly { readonly at: number; readonly thickness: number }[];
  /** Middles of the clamp holes. */
  readonly clamps: readonly number[];
}

/** A form that may serve a bend, and with which stretch. */
export interface FormUse {
  readonly body: FormBody;
  readonly stretch: Pick<Stretch, 'from' | 'to' | 'startsAtA'>;
}

/** What is gripped on the pulled side: a member inside and one outside the sheet; mm. */
export interface YokeBody {
  /** Along the tangent line from end A of the bend. */
  readonly from: number;
  readonly to: number;
  /** From the far tangent line out to its near edge. */
  readonly near: number;
  /** An angle: one flange on the sheet, the other standing off it at the edge away from the bend. */
  readonly inner: { readonly width: number; readonly height: number; readonly thickness: number };
  readonly outer: { readonly width: number; readonly depth: number };
}

/** A form that is offered to a bend, by its name; whether it can be made for it too, and how it then is, is worked out once it is looked at. */
export interface OfferedUse extends FormUse {
  /** Null where it cannot be made so. Absent where it stands as it is. */
  readonly settled?: () => FormUse | null;
}

export function settledUse(use: OfferedUse): FormUse | null {
  return use.settled ? use.settled() : use;
}

/** One bend to be put in order. */
export interface BendWork {
  /** Forms that would do, the most wanted first. */
  readonly uses: readonly OfferedUse[];
  /** How it is pulled with either side held; null for a side that cannot be. */
  readonly pulling: Readonly<Record<HeldSide, Pulling | null>>;
}

/** How a bend is pulled while one of its sides is held. */
export interface Pulling {
  /** How far it is wrapped at the end of the pull, radians about the centre line. */
  readonly pulled: number;
  /** Hand force, N. */
  readonly force: number;
  readonly yoke: YokeBody | null;
  /** From the take-off to the hands where the pulled side is pulled bare, mm; null where a yoke holds it flat. */
  readonly lever: number | null;
}

/** Metal left on at a face until a bend has been made: it swings and lies as the face does, and is trimmed before the bend after. */
export interface LeftMetal {
  /** The bend it is left on for. */
  readonly bend: number;
  /** The face that it carries on. */
  readonly face: number;
  /** Closed polygons on the flat, beyond the net outline. */
  readonly regions: readonly (readonly Point[])[];
}

/** The clamps and what they reach. */
export interface ClampBody {
  /** From the jaw's middle to the frame, mm. */
  readonly throat: number;
  readonly width: number;
  /** How thick its frame is, seen from the side. */
  readonly frame: number;
  /** Whether the sheet may be clamped past its ends, on the form's ears. */
  readonly pastEnds: boolean;
}

export interface ShopBodies {
  readonly clamp: ClampBody;
}

/** An edge of the bench that has to lie beside the form, so that legs hang past it. */
export type BenchEdge = 'front' | 'back' | 'endA' | 'endB';

/** What one bend of the order is done with. */
export interface Step {
  readonly bend: number;
  readonly held: HeldSide;
  readonly use: FormUse;
  /** Edges of the bench beside the form; none where it may stand anywhere. */
  readonly bench: readonly BenchEdge[];
  /** How the form comes off: lifted, pushed back, or slid toward an end of the bend. */
  readonly off: FormOff;
  readonly clamped: 'holes' | 'ends';
  /** How far the form reaches past the bend's ends A and B, mm: over bench it needs packing of the sheet's thickness. */
  readonly overhang: { readonly from: number; readonly to: number };
}

export type FormOff = 'lift' | 'back' | 'endA' | 'endB';

/** Why a bend cannot be done so. */
export interface Strike {
  readonly bend: number;
  readonly held: HeldSide;
  readonly form: string;
  readonly why: 'throat' | 'strikes' | 'bench' | 'trapped' | 'too-short' | 'reopens';
  /** The two things, as the maker calls them. */
  readonly what: readonly [string, string];
  /** mm: the gap left where they come nearest, or the clamp's reach needed. */
  readonly gap: number;
  /** mm: what would do. */
  readonly needed: number;
  /** How far the sheet had been pulled, radians. */
  readonly at: number;
}
