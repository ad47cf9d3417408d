import { sidesOf } from '../../base/arc';
import type { Bounds } from '../../base/bounds';
import type { Vertex } from '../../base/drawing';
import {
  crossings,
  distanceTo,
  shareAt,
  sideBetween,
  startingAt,
  sweepOf,
  type Place,
  type Side,
} from '../../base/side';
import { distance, middleOf, openSides, type Chain } from './chain';
import { ROUNDING, SAME_PLACE } from '../../base/tolerance';

interface Run {
  readonly loop: number;
  /** Its place among the loop's sides, and how many those are: neighbours share a corner. */
  readonly index: number;
  readonly count: number;
  readonly from: Vertex;
  readonly to: Vertex;
  readonly side: Side;
  readonly bounds: Bounds;
}

/** Where a side of a loop meets another one that it should not: crosses, touches or runs along it. */
export interface Clash {
  readonly at: Place;
  readonly loops: readonly [number, number];
}

/** The clashes within and between closed loops, at most `most` of them. */
export function findClashes(loops: readonly (readonly Vertex[])[], most = 5): Clash[] {
  const runs = loops.flatMap((vertices, loop) =>
    sidesOf(vertices).map(([from, to], index): Run => {
      const count = vertices.length;
      return { loop, index, count, from, to, side: sideBetween(from, to), bounds: sideBounds(from, to) };
    }),
  );
  runs.sort((a, b) => a.bounds.minX - b.bounds.minX);
  const clashes: Clash[] = [];
  for (const [place, a] of runs.entries()) {
    for (let other = place + 1; other < runs.length; other++) {
      const b = runs[other];
      if (!b || b.bounds.minX > a.bounds.maxX + SAME_PLACE) break;
      if (b.bounds.minY > a.bounds.maxY + SAME_PLACE || b.bounds.maxY < a.bounds.minY - SAME_PLACE) continue;
      const at = meeting(a, b);
      if (at) clashes.push({ at, loops: [a.loop, b.loop] });
      if (clashes.length >= most) return clashes;
    }
  }
  return clashes;
}

/** A box that holds a side: its chord's, grown by the height of the arc over it, which is all that needs to be known here. */
function sideBounds(from: Vertex, to: Vertex): Bounds {
  const grown = (Math.abs(from.bulge) * distance(from, to)) / 2;
  return {
    minX: Math.min(from.x, to.x) - grown,
    minY: Math.min(from.y, to.y) - grown,
    maxX: Math.max(from.x, to.x) + grown,
    maxY: Math.max(from.y, to.y) + grown,
  };
}

/** A place where two sides meet other than in the corner they share; null where there is none. */
function meeting(a: Run, b: Run): Place | null {
  const shared = sharedCorners(a, b);
  const isShared = (place: Place): boolean => shared.some((corner) => distance(corner, place) < CORNER);
  const candidates = [
    ...[a.from, a.to].filter((place) => distanceTo(b.side, place) < SAME_PLACE),
    ...[b.from, b.to].filter((place) => distanceTo(a.side, place) < SAME_PLACE),
    ...crossings(a.side, b.side).filter((place) => isOn(a.side, place) && isOn(b.side, place)),
  ];
  return (
    candidates.find((place) => !isShared(place)) ?? (shared.length > 0 && runsBack(a, b) ? (shared[0] ?? null) : null)
  );
}

/** So near a shared corner a crossing is the corner itself, or too small a sliver to matter, mm. */
const CORNER = 1e-3;

function sharedCorners(a: Run, b: Run): Place[] {
  if (a.loop !== b.loop) return [];
  const follows = (first: Run, second: Run): boolean => (first.index + 1) % first.count === second.index;
  return [...(follows(a, b) ? [a.to] : []), ...(follows(b, a) ? [b.to] : [])];
}

function isOn(side: Side, place: Place): boolean {
  const share = shareAt(side, place);
  const slack = SAME_PLACE / side.length;
  return share >= -slack && share <= 1 + slack && distanceTo(side, place) < SAME_PLACE * 10;
}

/** Whether a side turns back along the one before it. */
function runsBack(a: Run, b: Run): boolean {
  const [first, second] = (a.index + 1) % a.count === b.index ? [a, b] : [b, a];
  if (first.count <= 2) return Math.abs(sweepOf(first.side) + sweepOf(second.side)) < ROUNDING;
  const end = startingAt(first.side, 1);
  const against = end.headingX * second.side.headingX + end.headingY * second.side.headingY;
  return against < -1 + 1e-12 && Math.abs(end.curvature + second.side.curvature) < ROUNDING;
}

/** Places where the same side is drawn twice: both ends and the middle within `reach` mm. Shorter sides than four times that are not looked at. */
export function findDoubles(chains: readonly Chain[], reach: number, most = 5): Place[] {
  const sides = chains.flatMap(({ vertices }) => openSides(vertices)).map((side) => ({ side, middle: middleOf(side) }));
  const long = sides.filter(
    ({ side: [from, to], middle }) => distance(from, middle) + distance(middle, to) > 4 * reach,
  );
  long.sort((a, b) => a.middle.x - b.middle.x);
  const doubles: Place[] = [];
  for (const [index, a] of long.entries()) {
    for (let other = index + 1; other < long.length && doubles.length < most; other++) {
      const b = long[other];
      if (!b || b.middle.x > a.middle.x + reach) break;
      if (distance(a.middle, b.middle) <= reach && haveSameEnds(a.side, b.side, reach)) doubles.push(a.middle);
    }
  }
  return doubles;
}

function haveSameEnds(a: readonly [Place, Place], b: readonly [Place, Place], reach: number): boolean {
  const near = (p: Place, q: Place): boolean => distance(p, q) <= reach;
  return (near(a[0], b[0]) && near(a[1], b[1])) || (near(a[0], b[1]) && near(a[1], b[0]));
}
