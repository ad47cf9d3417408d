import { at } from './at';
import { bulgeFromSweep, sidesOf } from './arc';
import { loopArea } from './area';
import type { Vertex } from './drawing';
import { InternalError } from './errors';
import { isOffsetOf } from './offset-check';
import { joinAcross, joinTrimmed, opens, type Join } from './offset-joins';
import { movedRight, sideBetween, sweepOf, type Side } from './side';
import { ROUNDING } from './tolerance';

/** The loop has no offset of the same sides: one of them, or the loop itself, vanishes, splits or closes on itself. */
export type PinchedOff = 'pinched-off';
const PINCHED: PinchedOff = 'pinched-off';

/**
 * The parallel curve of a closed loop, `distance` mm outside it (inside below 0), whichever way round it runs: the path of the centre of
 * a beam of radius |distance| whose edge follows the loop. Straight sides stay straight, arcs stay arcs about the same centre, corners
 * that open get an arc about the old corner, corners that close are trimmed to where the moved sides meet. An arc with no radius left
 * between corners that do not open is dropped, and its neighbours meet. The result runs the same way and starts at the corner that comes
 * from the first vertex. All exact but tangent joins (turn below 1e-5 rad), which stay joins.
 *
 * 'pinched-off' where any other side vanishes or the result touches itself or splits, and for a loop that crosses itself or doubles
 * back. `distance` 0 gives the vertices as they are. Valid for |distance| of 1e-3 mm up and loops of up to some metres. Throws
 * InternalError on numbers that are not finite, and on a loop of fewer than two corners or without an area.
 * Derived by hand; the tests have clipper2-ts judge it.
 */
export function offsetLoop(vertices: readonly Vertex[], distance: number): readonly Vertex[] | PinchedOff {
  const loop = withoutRepeats(vertices);
  const area = loopArea(loop);
  const finite = [distance, area, ...vertices.flatMap(({ x, y, bulge }) => [x, y, bulge])].every(Number.isFinite);
  if (!finite || area === 0 || loop.length < 2) throw new InternalError('not a loop, or not a distance, to offset');
  if (distance === 0) return vertices;
  const result = parallel(loop, distance * Math.sign(area));
  return result && isOffsetOf(result, loop, distance) ? result : PINCHED;
}

/** The radius of a circle `distance` mm outside one (inside below 0), mm; 'pinched-off' where nothing is left of it. */
export function offsetRadius(radius: number, distance: number): number | PinchedOff {
  if (!Number.isFinite(radius + distance)) throw new InternalError('not a circle, or not a distance, to offset');
  return radius + distance > 0 ? radius + distance : PINCHED;
}

function withoutRepeats(vertices: readonly Vertex[]): Vertex[] {
  return sidesOf(vertices).flatMap(([from, to]) =>
    Math.hypot(to.x - from.x, to.y - from.y) <= ROUNDING ? [] : [from],
  );
}

/** The loop with every side moved `right` mm to its right and joined again, unchecked; null where a side is lost. */
function parallel(loop: readonly Vertex[], right: number): Vertex[] | null {
  const sides = sidesOf(loop).map(([from, to]) => sideBetween(from, to));
  const moved = sides.map((side) => movedRight(side, right));
  const last = moved.findLast((side) => side !== null);
  if (!last || !onlyBetweenClosed(sides, moved, right)) return null;
  const kept: { readonly side: Side; readonly start: Join }[] = [];
  let before = last;
  for (const [index, side] of moved.entries()) {
    if (!side) continue;
    const start = moved.at(index - 1) ? joinAcross(before, side, right) : joinTrimmed(before, side);
    if (!start) return null;
    kept.push({ side, start });
    before = side;
  }
  const joined = kept.map(({ side, start }, index) => ({
    side,
    start,
    share: at(kept, (index + 1) % kept.length).start.leave - start.enter,
  }));
  if (!joined.every(({ share }) => share > 0)) return null;
  return joined.flatMap(({ side, start, share }): Vertex[] => [
    ...start.corner,
    { ...start.from, bulge: bulgeFromSweep(share * sweepOf(side)) },
  ]);
}

/** Whether no arc that has no radius left is next to a corner that opens: then nothing of the outline is lost with it. */
function onlyBetweenClosed(sides: readonly Side[], moved: readonly (Side | null)[], right: number): boolean {
  return sides.every((side, index) => {
    const before = (index + sides.length - 1) % sides.length;
    return (moved[index] && moved[before]) || !opens(sides[before] ?? side, side, right);
  });
}
