import type { Finding } from '../../base/findings';
import { finding } from '../../findings/finding';
import type { Spine } from '../fixture/fixture';
import type { Opening } from './joints';
import { SAME_PLACE } from '../../base/tolerance';

/** A board across the spine, from face to face along the centre line, mm. */
export interface Across {
  readonly name: string;
  readonly low: number;
  readonly high: number;
}

/**
 * The opening in the spine for a board across it. It is wider than the board by `fit`, shared between its two sides; where less than
 * `wood` would be left before the spine's end it runs out of that end, and its other side is exactly at the board's face.
 */
export function openingFor({ low, high }: Across, spine: Spine, fit: number, wood: number): Opening {
  const [start, end] = [-spine.ears, spine.length + spine.ears];
  const least = wood - SAME_PLACE;
  if (low - fit / 2 - start < least) return { low: start, high, open: 'A' };
  if (end - high - fit / 2 < least) return { low, high: end, open: 'B' };
  return { low: low - fit / 2, high: high + fit / 2, open: null };
}

/** An error for each two neighbouring openings with less than `wood` between them; `what` is their kind in the plural. */
export function checkWalls(
  openings: readonly (Opening & { readonly holds: string })[],
  wood: number,
  what: 'grooves' | 'slots',
): Finding[] {
  const sorted = [...openings].sort((a, b) => a.low - b.low);
  return sorted.slice(1).flatMap((opening, index) => {
    const before = sorted[index];
    const wall = before ? opening.low - before.high : Infinity;
    if (!before || wall >= wood - SAME_PLACE) return [];
    return [
      finding(what === 'grooves' ? 'grooves-too-close' : 'slots-too-close', 'bend', {
        first: before.holds,
        second: opening.holds,
        wall: Math.max(0, wall),
        least: wood,
      }),
    ];
  });
}
