import { at } from '../../base/at';
import { pointOnSide, sidesOf, sweepFromBulge } from '../../base/arc';
import type { Vertex } from '../../base/drawing';
import { distanceTo, shareAt, sideBetween } from '../../base/side';

/** Nearer to the cut's edge than this, mm, a side of the net outline is that edge. */
const SAME = 1e-3;
/** A corner of the cut so near to a side's line stands on it, mm. */
const ON = 1e-4;

/** The runs of a net outline that do not lie on the edge of what is cut: where it is trimmed. Open, ends included, in the outline's order. */
export function trimRuns(net: readonly Vertex[], cut: readonly Vertex[]): Vertex[][] {
  const edges = sidesOf(cut).map(([from, to]) => sideBetween(from, to));
  const pieces = sidesOf(net).flatMap(([from, to]) => splitAtCorners(from, to, cut));
  const isTrim = pieces.map(([from, to]) => {
    const [x, y] = pointOnSide(from, to, 0.5);
    return !edges.some((edge) => distanceTo(edge, { x, y }) < SAME);
  });
  const runs: Vertex[][] = [];
  const start = Math.max(
    0,
    isTrim.findIndex((trim, index) => trim && !isTrim.at(index - 1)),
  );
  for (let step = 0; step < pieces.length; step++) {
    const index = (start + step) % pieces.length;
    const piece = pieces[index];
    if (!piece || !isTrim[index]) continue;
    const [from, to] = piece;
    const run = step > 0 && isTrim.at(index - 1) ? runs.at(-1) : undefined;
    const end = { x: to.x, y: to.y, bulge: 0 };
    if (run) run.splice(-1, 1, from, end);
    else runs.push([from, end]);
  }
  return runs;
}

/** A side in pieces, parted where a corner of the cut stands on it. */
function splitAtCorners(from: Vertex, to: Vertex, cut: readonly Vertex[]): (readonly [Vertex, Vertex])[] {
  const side = sideBetween(from, to);
  const slack = SAME / side.length;
  const inner = cut
    .filter((corner) => distanceTo(side, corner) < ON)
    .map((corner) => shareAt(side, corner))
    .filter((share) => share > slack && share < 1 - slack);
  const shares = [0, ...inner.sort((a, b) => a - b), 1].filter(
    (share, index, all) => share - (all[index - 1] ?? -1) > slack,
  );
  const sweep = sweepFromBulge(from.bulge);
  return shares.slice(1).map((end, index) => {
    const begin = at(shares, index);
    const bulge = Math.tan((sweep * (end - begin)) / 4);
    return [placeOn(from, to, begin, bulge), placeOn(from, to, end, 0)] as const;
  });
}

function placeOn(from: Vertex, to: Vertex, share: number, bulge: number): Vertex {
  if (share === 0 || share === 1) return { x: share === 0 ? from.x : to.x, y: share === 0 ? from.y : to.y, bulge };
  const [x, y] = pointOnSide(from, to, share);
  return { x, y, bulge };
}
