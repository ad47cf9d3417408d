import { InternalError } from '../../base/errors';
import type { PanelRules } from '../../tables/panel-rules';
import { boxesGap, gapBetween, leastGap } from './gap';
import type { SceneGiven, Thing } from './scene';
import type { BendWork, Pulling, ShopBodies, Strike } from './work';

/** Bodies that may touch must be this clear of one another, mm, once drawn in by more. */
export const TOUCH = 0.05;

/** Form ends drawn in where they stand flush beside a corner, mm. */
export const FLUSH = 1;

/** The bench goes on for this far, mm. */
export const BENCH = 4000;

/** A way of making a bend, to be tried. */
export interface TryGiven extends SceneGiven {
  readonly work: BendWork;
  readonly shop: ShopBodies;
  readonly rules: PanelRules;
}

/** How the bend is pulled with the side held that is. Throws where it cannot be: the search does not come to such a side. */
export function pullingOf({ work, held }: TryGiven): Pulling {
  const pulling = work.pulling[held];
  if (!pulling) throw new InternalError('a bend is held on a side that it cannot be pulled from');
  return pulling;
}

interface Failed {
  readonly gap: number;
  readonly needed: number;
  readonly at: number;
}

/** The strike that ends a try: why, what meets what, and by how much; mm, and radians of the pull. */
export function failing({ bend, held, use }: TryGiven) {
  return (why: Strike['why'], what: Strike['what'], failed: Failed): Strike => ({
    bend,
    held,
    form: use.body.name,
    why,
    what,
    ...failed,
  });
}

/** The gap between two things, mm, or `enough` where it is no less; 0 where they meet. */
export function thingGap(a: Thing, b: Thing, enough = Infinity): number {
  let least = enough;
  for (const one of a.bodies)
    for (const other of b.bodies)
      if (leastGap(one, other) < least && boxesGap(one, other) < least) least = Math.min(least, gapBetween(one, other));
  return least;
}

/** Above the plane of the sheet's inside face, mm: what is not, the form stands over. */
export function risesAbove({ bodies }: Thing, level: number): boolean {
  return bodies.some(({ corners }) => corners.some(([, , z]) => z > level));
}
