import type { Point } from '../../base/polygon';

/** Corners found by where they lie: of a long thin stretch only those within it are looked at. */
export class CornerIndex {
  readonly #across: readonly Point[];
  readonly #up: readonly Point[];

  constructor(corners: readonly Point[]) {
    this.#across = corners.toSorted(([a], [b]) => a - b);
    this.#up = corners.toSorted(([, a], [, b]) => a - b);
  }

  /** No fewer than the corners in the box round two places, `reach` mm wider on every side. */
  near(from: Point, to: Point, reach: number): readonly Point[] {
    const box = { from, to, reach };
    const [across, up] = [slice(this.#across, 0, box), slice(this.#up, 1, box)];
    return across.end - across.start < up.end - up.start
      ? this.#across.slice(across.start, across.end)
      : this.#up.slice(up.start, up.end);
  }
}

function slice(
  sorted: readonly Point[],
  axis: 0 | 1,
  { from, to, reach }: { readonly from: Point; readonly to: Point; readonly reach: number },
): { readonly start: number; readonly end: number } {
  const start = countBelow(sorted, axis, Math.min(from[axis], to[axis]) - reach);
  return { start, end: countBelow(sorted, axis, Math.max(from[axis], to[axis]) + reach) };
}

/** How many of the sorted corners lie below a level. */
function countBelow(sorted: readonly Point[], axis: 0 | 1, level: number): number {
  let [low, high] = [0, sorted.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((sorted[middle]?.[axis] ?? Infinity) < level) low = middle + 1;
    else high = middle;
  }
  return low;
}
