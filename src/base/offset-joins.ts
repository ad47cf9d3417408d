import { bulgeFromSweep } from './arc';
import type { Vertex } from './drawing';
import { crossings, shareAt, startingAt, type Place, type Side } from './side';
import { ROUNDING } from './tolerance';

/** A turn below this, radians, is a tangent join: putting its two moved ends together strays from true by distance·turn²/8. */
const TANGENT = 1e-5;

/** How one moved side goes over into the next: the shares at which the one is left and the other entered, where, and the corner between. */
export interface Join {
  readonly leave: number;
  readonly enter: number;
  readonly from: Place;
  /** The start of the arc about an opened corner; none where the two sides meet. */
  readonly corner: readonly Vertex[];
}

/** The turn from the end of a side into the start of the next, radians, positive counter-clockwise. */
function turnBetween(before: Side, after: Side): number {
  const end = startingAt(before, 1);
  return Math.atan2(
    end.headingX * after.headingY - end.headingY * after.headingX,
    end.headingX * after.headingX + end.headingY * after.headingY,
  );
}

/** Whether the corner between two sides opens when both move `right` mm to the right. */
export function opens(before: Side, after: Side, right: number): boolean {
  const turn = turnBetween(before, after);
  return Math.abs(turn) >= TANGENT && turn * right > 0;
}

/** The join of two sides that met at a corner before both moved `right` mm to the right; null where it closes but they never meet. */
export function joinAcross(before: Side, after: Side, right: number): Join | null {
  const [end, turn] = [startingAt(before, 1), turnBetween(before, after)];
  if (Math.abs(turn) < TANGENT) return meetAt(before, after, { x: (end.x + after.x) / 2, y: (end.y + after.y) / 2 });
  if (!opens(before, after, right)) return joinTrimmed(before, after);
  return {
    leave: 1,
    enter: 0,
    from: { x: after.x, y: after.y },
    corner: [{ x: end.x, y: end.y, bulge: bulgeFromSweep(turn) }],
  };
}

/** The join of two sides trimmed to where they cross, the crossing that takes least away; null where they do not. */
export function joinTrimmed(before: Side, after: Side): Join | null {
  const within = (share: number): boolean => share >= -ROUNDING && share <= 1 + ROUNDING;
  const trimmed = ({ leave, enter }: Join): number => (1 - leave) * before.length + enter * after.length;
  const joins = crossings(startingAt(before, 1), after)
    .map((place) => meetAt(before, after, place))
    .filter(({ leave, enter }) => within(leave) && within(enter));
  return joins.sort((a, b) => trimmed(a) - trimmed(b))[0] ?? null;
}

function meetAt(before: Side, after: Side, place: Place): Join {
  return { leave: shareAt(before, place), enter: shareAt(after, place), from: place, corner: [] };
}
