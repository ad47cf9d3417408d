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
    const [across, up] = ([this.#across, this.#up] as const).map((sorted, axis) => ({
      ...sorted,
      start: countBelow(sorted.levels, Math.min(at(from, axis), at(to, axis)) - reach),
      end: countBelow(sorted.levels, Math.max(at(from, axis), at(to, axis)) + reach),
    })) as [Slice, Slice];
    const fewer = across.end - across.start < up.end - up.start ? across : up;
    for (let index = fewer.start; index < fewer.end; index++) look(at(fewer.corners, index));
  }
}

/** Corners in order of where they lie along one axis, and where that is. */
interface Sorted {
  readonly corners: readonly Point[];
  readonly levels: Float64Array;
}

interface Slice extends Sorted {
  readonly start: number;
  readonly end: number;
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
