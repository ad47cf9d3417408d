import type { Cone } from '../../base/cone';
import type { Point } from '../../base/polygon';
import { toBent, toFlat } from '../../design/form/development';
import { flatOnLeg, onLeg, type Bend, type HeldSide } from '../../panel';
import { fromFrame, toFrame, type BendFrame } from '../../panel/flat/bend';
import { add, dot, less } from '../../panel/flat/plane';
import { heldFrame } from '../../panel/form/hand';
import { SAME_PLACE } from '../../base/tolerance';

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
  /** How it is pulled; null where that is not known. */
  readonly pulled: PulledRound | null;
}

/** What a bend is pulled round. */
export interface PulledRound {
  /** The form's cone, its ends A and B the bend's. */
  readonly cone: Cone;
  /** How far round it the sheet lies at the end of the pull, radians. */
  readonly wrap: number;
  /** How far behind its own tangent line, toward the held edge, the bend starts and the form stands, mm; ahead of it where negative. */
  readonly early: number;
  /** From the take-off line to a yoke's nose, mm; null without a yoke. */
  readonly gap: number | null;
}

/** The lines that a bend is marked by. */
export interface BendLines {
  /** Tangent line on the side of the base. */
  readonly base: FlatLine;
  /** Tangent line on the side of the leg. */
  readonly leg: FlatLine;
  /** Where the form's edge stands: the held side's tangent line, moved by as much as the bend starts early. */
  readonly stand: FlatLine;
  /** Where the sheet leaves the form at the end of the pull; null where that is not known. */
  readonly takeOff: FlatLine | null;
  /** Where a yoke's nose lies, beyond the take-off; null without a yoke. */
  readonly nose: FlatLine | null;
}

/** The lines a bend is marked by, on the flat; tangent lines from edge to edge of its zone. */
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
  const [own, free] = held === 'base' ? [base, leg] : [leg, base];
  const beyond = (line: FlatLine, by: number): FlatLine => shifted(line, by, heldFrame(bend, held));
  const takeOff = pulled && beyond(takeOffLine(bend, free, { held, ...pulled }), -pulled.early);
  return {
    base,
    leg,
    stand: beyond(own, pulled ? -pulled.early : 0),
    takeOff,
    nose: takeOff && pulled.gap !== null ? across(takeOff, pulled.gap, heldFrame(bend, held)) : null,
  };
}

/** The two lines a bend lies between as they are drawn, base's side first: of the held side's the one that the form stands on. */
export function markedLines({ base, leg, stand }: BendLines, held: HeldSide): readonly [FlatLine, FlatLine] {
  return held === 'base' ? [stand, leg] : [base, stand];
}

/** A line moved toward the pulled side, square to the held tangent line. */
function shifted([from, to]: FlatLine, by: number, { toLeg }: BendFrame): FlatLine {
  return [add(from, toLeg, by), add(to, toLeg, by)];
}

/** A line moved toward the pulled side, square to itself. */
function across([from, to]: FlatLine, by: number, { toLeg }: BendFrame): FlatLine {
  const [dx, dy] = less(to, from);
  const size = Math.hypot(dx, dy) * Math.sign(dot([-dy, dx], toLeg));
  const out: Point = [-dy / size, dx / size];
  return [add(from, out, by), add(to, out, by)];
}

/** The part of a tangent line that bounds the zone; `own`: from the flat to the line's own coordinates. */
function along(bend: Bend, own: (place: Point) => Point, flat: (x: number) => Point): FlatLine {
  const on = bend.zone.flatMap(({ x, y }) => {
    const [place, off] = own([x, y]);
    return Math.abs(off) < SAME_PLACE ? [place] : [];
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
