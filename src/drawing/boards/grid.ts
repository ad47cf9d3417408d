/** A box, mm. */
interface Box {
  readonly minX: number;
  readonly maxX: number;
  readonly minY: number;
  readonly maxY: number;
}

/** Cells along and across: some two or three boxes of a full board reach into each. */
const ALONG = 32;
const ACROSS = 16;

/** An empty cell's boxes. */
const NONE: readonly never[] = [];

/** Boxes by the cells of an even grid they reach into, so that only those about a place are looked at. */
export class Grid<Boxed extends Box> {
  /** Those with any box alone are filled. */
  readonly #cells: (Boxed[] | undefined)[] = new Array<undefined>(ALONG * ACROSS);
  readonly #range: Box;

  /** `range` holds every place that will be asked for. */
  constructor(boxes: readonly Boxed[], range: Box) {
    this.#range = range;
    for (const box of boxes) {
      const [right, top] = [this.#column(box.maxX), this.#row(box.maxY)];
      for (let column = this.#column(box.minX); column <= right; column++)
        for (let row = this.#row(box.minY); row <= top; row++) (this.#cells[column * ACROSS + row] ??= []).push(box);
    }
  }

  /** The boxes that may hold a place. */
  at(x: number, y: number): readonly Boxed[] {
    return this.#cells[this.#column(x) * ACROSS + this.#row(y)] ?? NONE;
  }

  #column(x: number): number {
    return cellOf(x, this.#range.minX, this.#range.maxX, ALONG);
  }

  #row(y: number): number {
    return cellOf(y, this.#range.minY, this.#range.maxY, ACROSS);
  }
}

/** The number of a value's cell, 0 to `count` − 1; what lies outside is of the first or last. */
function cellOf(value: number, low: number, high: number, count: number): number {
  const cell = Math.floor(((value - low) / (high - low)) * count);
  return cell > 0 ? Math.min(cell, count - 1) : 0;
}
