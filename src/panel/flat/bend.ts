import type { Cone } from '../../base/cone';
import type { Vertex } from '../../base/drawing';
import type { Point } from '../../base/polygon';
import { toBent, toFlat, type BentPlace, type ParallelSurface } from '../../design/form/development';
import { add, dot, less, turned } from './plane';

/** Where a bend stands on the flat: end A of its base line, the way to end B, and the way to its leg, square to it. */
export interface BendFrame {
  readonly at: Point;
  readonly along: Point;
  readonly toLeg: Point;
}

/** One bend of a panel, mm and radians. Its base line is the tangent line on the side nearer the base of the tree, its leg line the other. */
export interface Bend {
  readonly name: string;
  /** To which side of the marked face the leg rises. */
  readonly turn: 'up' | 'down';
  /** Between the two faces' planes, from flat. */
  readonly angle: number;
  /** About the centre line. */
  readonly wrap: number;
  /** Inside surface once let go, from end A to end B of the base line. */
  readonly finished: Cone;
  readonly thickness: number;
  /** Neutral-line factor K. */
  readonly neutral: number;
  readonly frame: BendFrame;
  /** Numbers of the faces it joins. */
  readonly base: number;
  readonly leg: number;
  /** The metal between base line and leg line, counter-clockwise. */
  readonly zone: readonly Vertex[];
  /** How far the zone reaches along its rulings, mm from end A; past the base line's ends at a mitred corner. */
  readonly run: { readonly from: number; readonly to: number };
}

/** What a place on a bend's developed cone needs to know of it. */
export type BendSurface = Pick<Bend, 'finished' | 'thickness' | 'neutral' | 'wrap' | 'frame'>;

/** The neutral surface of a bend. */
function neutralOf({ finished, thickness, neutral }: BendSurface): ParallelSurface {
  return { cone: finished, offset: neutral * thickness };
}

/** The angle the leg line makes with the base line on the flat, radians: positive where the radius grows toward B. */
export function fanOf({ finished, wrap }: Pick<Bend, 'finished' | 'wrap'>): number {
  return wrap * Math.sin(finished.halfAngle);
}

/** From the bend's own coordinates (along the base line from A, toward the leg) to the flat's. Inverse: {@link toFrame}. */
export function fromFrame({ at, along, toLeg }: BendFrame, [x, y]: Point): Point {
  return add(add(at, along, x), toLeg, y);
}

export function toFrame({ at, along, toLeg }: BendFrame, place: Point): Point {
  const step = less(place, at);
  return [dot(step, along), dot(step, toLeg)];
}

/** Where a place of the bent zone lies on the flat. Inverse: {@link bentAt}. */
export function flatAt(bend: BendSurface, place: BentPlace): Point {
  return fromFrame(bend.frame, toFlat(neutralOf(bend), place));
}

/** Ruling and wrap of a place on the flat; 0…wrap between the tangent lines, less before the base line, more beyond the leg line. */
export function bentAt(bend: BendSurface, place: Point): BentPlace {
  return toBent(neutralOf(bend), toFrame(bend.frame, place));
}

/** A place of the leg, `x` along the leg line from end A and `y` beyond it, on the flat. Inverse: {@link onLeg}. */
export function flatOnLeg(bend: BendSurface, [x, y]: Point): Point {
  const fan = fanOf(bend);
  return fromFrame(bend.frame, add(add(legStart(bend), turned([1, 0], fan), x), turned([0, 1], fan), y));
}

export function onLeg(bend: BendSurface, place: Point): Point {
  return turned(less(toFrame(bend.frame, place), legStart(bend)), -fanOf(bend));
}

function legStart(bend: BendSurface): Point {
  return toFlat(neutralOf(bend), { x: 0, wrap: bend.wrap });
}

/** +1 where walking the base line from A to B has the leg on the left, −1 on the right. */
export function sideOfLeg({ along, toLeg }: BendFrame): 1 | -1 {
  return along[0] * toLeg[1] - along[1] * toLeg[0] > 0 ? 1 : -1;
}
