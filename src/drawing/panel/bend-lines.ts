import type { Cone } from '../../base/cone';
import type { Point } from '../../base/polygon';
import { toBent, toFlat } from '../../design/form/development';
import { flatOnLeg, onLeg, type Bend, type HeldSide } from '../../panel';
import { fromFrame, toFrame } from '../../panel/flat/bend';
import { heldFrame } from '../../panel/form/hand';

/** A straight line on the flat, from the end nearer A to the end nearer B. */
export type FlatLine = readonly [Point, Point];

/** How a bend is made, as far as it is marked on the blank. */
export interface BlankBend {
  /** Number of its step in the order of work, from 1. */
  readonly step: number;
  /** The side that lies clamped. */
  readonly held: HeldSide;
  /** The form's name. */
  readonly form: string;
  /** What it is bent round on the form, its ends A and B the bend's, and how far, radians; null where that is not known. */
  readonly pulled: { readonly cone: Cone; readonly wrap: number } | null;
}

/** The lines that a bend is marked by. */
export interface BendLines {
  /** Tangent line on the side of the base. */
  readonly base: FlatLine;
  /** Tangent line on the side of the leg. */
  readonly leg: FlatLine;
  /** Where the sheet leaves the form at the end of the pull; null where that is not known. */
  readonly takeOff: FlatLine | null;
}

/** Corners of a zone this near a tangent line stand on it, mm. */
const ON_LINE = 1e-6;

/** Both tangent lines of a bend, from edge to edge of its zone, and the take-off line, on the flat. */
export function bendLines(bend: Bend, { held, pulled }: Pick<BlankBend, 'held' | 'pulled'>): BendLines {
  const base = along(
    bend,
    (place) => toFrame(bend.frame, place),
    (x) => fromFrame(bend.frame, [x, 0]),
  );
  const leg = along(
    bend,
    (place) => onLeg(bend, place),
    (x) => flatOnLeg(bend, [x, 0]),
  );
  return { base, leg, takeOff: pulled && takeOffLine(bend, held === 'base' ? leg : base, { held, ...pulled }) };
}

/** The part of a tangent line that bounds the zone; `own`: from the flat to the line's own coordinates. */
function along(bend: Bend, own: (place: Point) => Point, flat: (x: number) => Point): FlatLine {
  const on = bend.zone.flatMap(({ x, y }) => {
    const [place, off] = own([x, y]);
    return Math.abs(off) < ON_LINE ? [place] : [];
  });
  return [flat(Math.min(...on)), flat(Math.max(...on))];
}

/** Between the rulings that the free tangent line ends on. */
function takeOffLine(
  bend: Bend,
  [from, to]: FlatLine,
  { held, cone, wrap }: { readonly held: HeldSide; readonly cone: Cone; readonly wrap: number },
): FlatLine {
  const frame = heldFrame(bend, held);
  const surface = { cone, offset: bend.neutral * bend.thickness };
  const onRulingOf = (place: Point): Point =>
    fromFrame(frame, toFlat(surface, { x: toBent(surface, toFrame(frame, place)).x, wrap }));
  return [onRulingOf(from), onRulingOf(to)];
}
