import type { Drawing } from '../../base/drawing';

/** One piece of board to cut. Its drawing is at 1:1 in its own coordinates. */
export interface Part {
  /** Unique, safe as a file name: `spine`, `S1`, `S1-2` (its second layer), `BS1`, `block-1`. */
  readonly id: string;
  readonly kind: 'spine' | 'station' | 'backing' | 'block' | 'test';
  /** What the maker calls it, e.g. `Station S1`. */
  readonly name: string;
  /** Id of its row in `shared/boards.json`. */
  readonly stock: string;
  readonly thickness: number;
  readonly drawing: Drawing;
}

/** As much of a part as laying it out on a board needs. */
export type Shaped = Pick<Part, 'id' | 'drawing'>;
