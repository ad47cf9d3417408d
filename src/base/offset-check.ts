import { sidesOf } from './arc';
import { loopArea } from './area';
import type { Vertex } from './drawing';
import { crossings, distanceTo, shareAt, sideBetween, startingAt, type Place, type Side } from './side';

/** A point of the result may be this far off its distance from the original, mm. */
const TRUE = 1e-7;
/** Sides that come closer than this touch, mm; a small share of the distance where that is smaller, so that arcs about the flattest corners pass. */
const TOUCH = 1e-9;
const TOUCH_SHARE = 1e-6;
/** Places on every side at which its distance from the original is measured, its start included. */
const LOOKS = 8;

/**
 * Whether a loop is what it should be at `distance` mm outside another (inside below 0): it runs the same way and is the larger (smaller)
 * of the two, does not cross or touch itself, and lies at |distance| from the other throughout.
 */
export function isOffsetOf(result: readonly Vertex[], original: readonly Vertex[], distance: number): boolean {
  const [before, after] = [loopArea(original), loopArea(result)];
  if (!((after - before) * Math.sign(before) * distance > 0 && after * before > 0)) return false;
  const sides = sidesOf(result).map(([from, to]) => sideBetween(from, to));
  return (
    isSimple(sides, Math.min(TOUCH, TOUCH_SHARE * Math.abs(distance))) && liesAt(sides, original, Math.abs(distance))
  );
}

function liesAt(sides: readonly Side[], original: readonly Vertex[], distance: number): boolean {
  const originals = sidesOf(original).map(([from, to]) => sideBetween(from, to));
  return sides.every((side) =>
    Array.from({ length: LOOKS }, (_, look) => startingAt(side, look / LOOKS)).every((place) => {
      const nearest = Math.min(...originals.map((other) => distanceTo(other, place)));
      return Math.abs(nearest - distance) <= TRUE;
    }),
  );
}

/** No side is empty, no corner touches a side that is not its own, and no two sides cross but at the corner between them. */
function isSimple(sides: readonly Side[], touch: number): boolean {
  return sides.every((corner, index) => {
    const before = (index + sides.length - 1) % sides.length;
    return (
      corner.length > touch &&
      sides.every((side, at) => at === index || at === before || distanceTo(side, corner) > touch) &&
      !crossesLater(sides, corner, index)
    );
  });
}

/** Whether a side crosses one that comes later in the loop, their own corners apart. */
function crossesLater(sides: readonly Side[], side: Side, index: number): boolean {
  return sides.some((other, at) => {
    if (at <= index) return false;
    const shared = [...(at === index + 1 ? [other] : []), ...((at + 1) % sides.length === index ? [side] : [])];
    return crossings(side, other).some(
      (place) =>
        isOn(side, place) &&
        isOn(other, place) &&
        shared.every((corner) => Math.hypot(place.x - corner.x, place.y - corner.y) > TRUE),
    );
  });
}

function isOn(side: Side, place: Place): boolean {
  const share = shareAt(side, place);
  return share >= 0 && share <= 1;
}
