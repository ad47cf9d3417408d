import { at } from '../../base/at';
import type { Ends } from '../../base/ends';

/** A stretch of a held side along its tangent line, mm from end A of the bend, and how deep its metal is at either end of the stretch, straight between. */
export interface DepthPiece {
  readonly from: number;
  readonly to: number;
  /** Back from the tangent line without a break: what lies under the form. */
  readonly under: Ends;
  /** Back to its last edge there: what a clamp goes round. */
  readonly last: Ends;
}

/** How deep a held side is along its bend: stretches in order, at least one. */
export type DepthAlong = readonly DepthPiece[];

/** How deep it is at a place x, mm; beyond its ends as at them. `what` as in {@link DepthPiece}. */
export function depthAt(along: DepthAlong, what: 'under' | 'last', x: number): number {
  const piece = along.find(({ to }) => x <= to) ?? at(along, -1);
  const { from, to, [what]: depth } = piece;
  const share = Math.min(1, Math.max(0, to > from ? (x - from) / (to - from) : 0));
  return depth.A + share * (depth.B - depth.A);
}

/** Where less than `reach` mm lies under the form, mm from end A, and how little it is there at the least. */
export interface ShortStretch {
  readonly from: number;
  readonly to: number;
  readonly least: number;
}

/** The stretches between two places along the bend where the held side is less deep than `reach`, in order; none shorter than `shortest`, mm. */
export function stretchesShort(
  along: DepthAlong,
  reach: number,
  { from, to, shortest = 1 }: { readonly from: number; readonly to: number; readonly shortest?: number },
): ShortStretch[] {
  const pieces = along.flatMap((piece): ShortStretch[] => {
    const [low, high] = [Math.max(from, piece.from), Math.min(to, piece.to)];
    if (high <= low) return [];
    const [first, last] = [depthAt([piece], 'under', low), depthAt([piece], 'under', high)];
    if (first >= reach && last >= reach) return [];
    // Straight between: it is short from an end to where it reaches `reach`.
    const crossing = low + ((reach - first) / (last - first)) * (high - low);
    return [
      {
        from: first < reach ? low : crossing,
        to: last < reach ? high : crossing,
        least: Math.min(first, last),
      },
    ];
  });
  const joined: ShortStretch[] = [];
  for (const piece of pieces) {
    const before = joined.at(-1);
    if (before && piece.from - before.to < shortest)
      joined[joined.length - 1] = { from: before.from, to: piece.to, least: Math.min(before.least, piece.least) };
    else joined.push(piece);
  }
  return joined.filter((one) => one.to - one.from >= shortest);
}
