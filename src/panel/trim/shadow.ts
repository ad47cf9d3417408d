import type { PathsD } from 'clipper2-ts';
import type { Place } from '../../base/side';
import { common, regionOf, united } from './regions';
import type { PulledSide } from './trim';

/**
 * The shadow of a pulled side: at each place along the free tangent line everything from the side's nearest point out to the lever. It is
 * as wide as the side, whatever its edges lean: a slanted edge drawn on would double a flaring leg and turn a narrowing one over.
 */
export function shadowOf({ line: [from, to], free, lever }: PulledSide): PathsD {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const along = { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
  const out = { x: -along.y * lever, y: along.x * lever };
  const region = regionOf(free);
  const swept = united([...region, ...region.flatMap((path) => sweepSides(path, out))]);
  return common(swept, strip(from, { along, out }, region));
}

/** Each side of a path drawn along `out`, as a parallelogram wound counter-clockwise. */
function sweepSides(path: readonly Place[], out: Place): PathsD {
  return path.map((p, index) => {
    const q = path[(index + 1) % path.length] ?? p;
    const corners = [p, q, { x: q.x + out.x, y: q.y + out.y }, { x: p.x + out.x, y: p.y + out.y }];
    return (q.x - p.x) * out.y - (q.y - p.y) * out.x < 0 ? corners.reverse() : corners;
  });
}

/** From the free tangent line to the lever, as far to both sides as the region reaches. */
function strip(from: Place, { along, out }: { readonly along: Place; readonly out: Place }, region: PathsD): PathsD {
  const shares = region.flat().map(({ x, y }) => (x - from.x) * along.x + (y - from.y) * along.y);
  const at = (share: number, times: number): Place => ({
    x: from.x + share * along.x + times * out.x,
    y: from.y + share * along.y + times * out.y,
  });
  const [low, high] = [Math.min(...shares) - 1, Math.max(...shares) + 1];
  return [[at(low, 0), at(high, 0), at(high, 1), at(low, 1)]];
}
