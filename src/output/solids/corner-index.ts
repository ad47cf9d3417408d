import { at } from '../../base/at';
import type { Point } from '../../base/polygon';

/** Corners found by where they lie: of a long thin stretch only those within it are looked at. */
export class CornerIndex {
  readonly #across: Sorted;
  readonly #up: Sorted;

  constructor(corners: readonly Point[]) {
    this.#across = sortedBy(corners, 0);
    this.#up = sortedBy(corners, 1);
  }

  /** Looks at no fewer than the corners in the box round two places, `reach` mm wider on every side. */
  eachNear(from: Point, to: Point, reach: number, look: (corner: Point) => void): void {
    const [x, toX] = [from[0], to[0]];
    const [y, toY] = [from[1], to[1]];
    const [left, right] = within(this.#across.levels, Math.min(x, toX) - reach, Math.max(x, toX) + reach);
    const [low, high] = within(this.#up.levels, Math.min(y, toY) - reach, Math.max(y, toY) + reach);
    if (right - left < high - low) lookThrough(this.#across.corners, left, right, look);
    else lookThrough(this.#up.corners, low, high, look);
  }
}

function lookThrough(corners: readonly Point[], start: number, end: number, look: (corner: Point) => void): void {
  for (let index = start; index < end; index++) look(at(corners, index));
}

/** From which of the levels to which lie between two. */
function within(levels: Float64Array, low: number, high: number): readonly [number, number] {
  return [countBelow(levels, low), countBelow(levels, high)];
}

/** Corners in order of where they lie along one axis, and where that is. */
interface Sorted {
  readonly corners: readonly Point[];
  readonly levels: Float64Array;
}

function sortedBy(all: readonly Point[], axis: 0 | 1): Sorted {
  const corners = all.toSorted((a, b) => a[axis] - b[axis]);
  return { corners, levels: Float64Array.from(corners, (corner) => corner[axis]) };
}

/** How many of the levels, smallest first, lie below one. */
function countBelow(levels: Float64Array, level: number): number {
  let [low, high] = [0, levels.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (at(levels, middle) < level) low = middle + 1;
    else high = middle;
  }
  return low;
}
