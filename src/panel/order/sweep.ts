import type { Place3 } from '../../base/space';
import { boxesGap, gapAlong, leastGap, separation, type Convex } from './gap';
import { movedBody, type Scene, type Thing } from './scene';
import { TOUCH } from './trying';

/** Two things that must keep apart, and how far, mm; 0: they may come as near as they like but not into one another. */
export interface Pair {
  readonly moving: Thing;
  readonly standing: Thing;
  readonly needed: number;
}

/** Steps of the pull are no finer than makes this much way, mm. */
const FINEST = 0.4;
/** What is due within this, radians, is looked at together. */
const TOGETHER = 0.01;

/** A quick look at a gap is enough where it shows room for this much of the pull, radians. */
const FAR = 0.05;
/** What slides past its neighbour in a corner is looked at this often, mm. */
const SLIDING = 3;

/** What strikes what on the way, mm, and how far the sheet has been pulled, radians. */
export interface Struck {
  readonly pair: Pair;
  readonly gap: number;
  readonly at: number;
}

/** Two bodies of a pair as the sweep follows them: the gap last found and the way across it, and when the room there is used up at the soonest. */
interface Followed {
  readonly pair: Pair;
  readonly moving: Convex;
  readonly standing: Convex;
  /** The most that any place of the moving body goes per radian, mm. */
  readonly speed: number;
  way: Place3 | null;
  last: number;
  due: number;
}

/**
 * Swings through a range of wraps. Two bodies are looked at again before either can have used up the room between them, so that no clash is stepped over (what meets
 * in a corner, which slides past its neighbour, is looked at every few mm).
 */
export function sweep(scene: Scene, pairs: readonly Pair[], { from, to }: { from: number; to: number }): Struck | null {
  const followed = pairs.flatMap((pair) =>
    pair.moving.bodies.flatMap((moving) => {
      const speed = fastest(moving);
      return pair.standing.bodies.map((standing): Followed => ({
        pair,
        moving,
        standing,
        speed,
        way: null,
        last: 0,
        due: from,
      }));
    }),
  );
  for (let at = from; ;) {
    const motion = scene.swing(at);
    const there = new Map<Convex, Convex>();
    let next = Infinity;
    for (const one of followed) {
      if (one.due <= at + TOGETHER) {
        const { needed } = one.pair;
        const body = there.get(one.moving) ?? movedBody(one.moving, motion);
        there.set(one.moving, body);
        const clear = Math.max(needed, TOUCH);
        const gap = followedGap(one, body, clear + one.speed * Math.min(to - at, FAR));
        if (gap < clear) return { pair: one.pair, gap, at };
        const room = needed > 0 ? gap - needed : Math.max(gap, SLIDING);
        one.due = at + Math.max(FINEST, room) / one.speed;
      }
      next = Math.min(next, one.due);
    }
    if (at >= to) return null;
    at = Math.min(to, next);
  }
}

/** The gap of a followed pair, or no more than it where that is enough to go on. */
function followedGap(one: Followed, body: Convex, enough: number): number {
  const least = leastGap(body, one.standing);
  if (least >= enough) return least;
  const apart = boxesGap(body, one.standing);
  if (apart >= enough) return apart;
  if (one.way) {
    const along = gapAlong(body, one.standing, one.way);
    if (along >= enough || along - one.pair.needed > (one.last - one.pair.needed) / 2 + FINEST)
      return (one.last = along);
  }
  const { gap, way } = separation(body, one.standing);
  one.way = way;
  one.last = gap;
  return gap;
}

/** The most any place of a body that is pulled goes per radian, mm: it rolls about where it leaves the form. */
function fastest({ corners }: Convex): number {
  return Math.max(1, ...corners.map((corner) => Math.hypot(Math.max(0, corner[1]), corner[2])));
}
