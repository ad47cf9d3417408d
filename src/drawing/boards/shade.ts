import { levelAt } from './convex';
import type { Obstacle, Range } from './obstacle';

/** Cells along and across: of a full board's no-fit polygons each covers many. */
const ALONG = 128;
const ACROSS = 64;

/**
 * Which cells of an even grid over a range lie wholly inside one obstacle, `touch` mm and more from its edge: nothing can be shifted to
 * anywhere in them. What the obstacles cover only together is left out.
 */
export class Shade {
  readonly #range: Range;
  readonly #cellX: number;
  readonly #cellY: number;
  /** How many cells of a row, up to and with each, are not shaded, after `#sum`. */
  readonly #open = new Int16Array(ACROSS * (ALONG + 1));

  constructor(obstacles: readonly Obstacle[], range: Range, touch: number) {
    this.#range = range;
    this.#cellX = (range.maxX - range.minX) / ALONG;
    this.#cellY = (range.maxY - range.minY) / ACROSS;
    for (const obstacle of obstacles) this.#cover(obstacle, touch);
    this.#sum();
  }

  /** Whether all of a box is shaded. */
  hides({ minX, minY, maxX, maxY }: Range): boolean {
    const { minX: startX, minY: startY } = this.#range;
    const left = Math.floor((minX - startX) / this.#cellX);
    const right = Math.floor((maxX - startX) / this.#cellX) + 1;
    const top = Math.floor((maxY - startY) / this.#cellY);
    const bottom = Math.floor((minY - startY) / this.#cellY);
    // What lies outside the range is out of the question, hence as good as shaded.
    const [from, to] = [Math.max(0, left), Math.min(ALONG, right)];
    for (let row = Math.max(0, bottom); row <= top && row < ACROSS; row++) {
      const start = row * (ALONG + 1);
      if ((this.#open[start + to] ?? 0) > (this.#open[start + from] ?? 0)) return false;
    }
    return true;
  }

  /** A convex obstacle covers between two levels what it covers at both. */
  #cover({ shape, x, y, minY, maxY }: Obstacle, touch: number): void {
    const { minX: startX, minY: startY } = this.#range;
    const first = Math.max(0, Math.ceil((minY + touch - startY) / this.#cellY));
    const levelOf = (row: number): number => startY + row * this.#cellY - y;
    let [left, right] = [NaN, NaN];
    for (let row = first; row < ACROSS; row++) {
      const high = levelOf(row + 1);
      if (high + y > maxY - touch) return;
      if (row === first) [left, right] = [levelAt(shape.left, levelOf(row)), levelAt(shape.right, levelOf(row))];
      const [nextLeft, nextRight] = [levelAt(shape.left, high), levelAt(shape.right, high)];
      const from = Math.max(0, Math.ceil((x + Math.max(left, nextLeft) + touch - startX) / this.#cellX));
      const to = Math.min(ALONG, Math.floor((x + Math.min(right, nextRight) - touch - startX) / this.#cellX));
      if (from < to) this.#open.fill(1, row * (ALONG + 1) + from + 1, row * (ALONG + 1) + to + 1);
      left = nextLeft;
      right = nextRight;
    }
  }

  /** Marks of what is shaded become, row by row, sums of what is not. */
  #sum(): void {
    for (let row = 0; row < ACROSS; row++) {
      let open = 0;
      const start = row * (ALONG + 1);
      for (let column = 1; column <= ALONG; column++) {
        open += 1 - (this.#open[start + column] ?? 0);
        this.#open[start + column] = open;
      }
    }
  }
}
