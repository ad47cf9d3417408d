import type { Vertex } from '../../base/drawing';
import { corner, walkedBack } from '../../base/outline';
import type { Point } from '../../base/polygon';
import { beyondHole, holeBulge } from '../corner/root';
import type { PlacedCorner } from './build-corners';
import type { BuiltLeg } from './build-leg';
import { pointOf } from './plane';

/** What the outline is put together from, by edge of the base. */
export interface Walk {
  readonly lines: readonly Point[];
  readonly legs: readonly (BuiltLeg | null)[];
  readonly corners: readonly (PlacedCorner | null)[];
}

/** The whole outline, edge by edge, counter-clockwise from corner 0. */
export function walkOutline({ lines, legs, corners }: Walk): Vertex[] {
  const count = lines.length;
  const runs = lines.map((place, edge): Vertex[] => {
    const leg = legs[edge];
    const here = corners[edge];
    const next = corners[(edge + 1) % count];
    if (!leg) return [corner(place)];
    const start = here?.cuts.root ? beyondHole(leg.start, here.cuts.root) : leg.start;
    const finish = next?.cuts.root ? beyondHole(leg.finish, next.cuts.root) : leg.finish;
    const out = here && !here.cuts.root ? leg.start.slice(-1) : (start ?? leg.start);
    const back = next && !next.cuts.root ? leg.finish.slice(-1) : (finish ?? leg.finish);
    return [...(here ? [] : [corner(place)]), ...out.slice(0, -1), ...leg.rim, ...walkedBack(back)];
  });
  return runs.flatMap((run, edge): Vertex[] => {
    const next = corners[(edge + 1) % count];
    const [last, first] = [run.at(-1), runs[(edge + 1) % count]?.[0]];
    if (!next || !last || !first) return run;
    return [...run.slice(0, -1), { ...last, bulge: joint(next, pointOf(last), pointOf(first)) }];
  });
}

/** Between the two bends' metal: round the root hole, or along a dressed corner's rim. */
function joint({ cuts, headings: [into, out] }: PlacedCorner, from: Point, to: Point): number {
  if (cuts.root) return holeBulge(cuts.root, from, to);
  return Math.tan(Math.atan2(into[0] * out[1] - into[1] * out[0], into[0] * out[0] + into[1] * out[1]) / 4);
}
