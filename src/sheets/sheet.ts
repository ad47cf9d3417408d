import type { Drawing } from '../base/drawing';

/** One stock board with the parts laid out on it. */
export interface Sheet {
  /** Unique, safe as a file name: `sheet-mdf-18-1`. */
  readonly id: string;
  readonly stock: string;
  readonly thickness: number;
  readonly width: number;
  readonly length: number;
  readonly placements: readonly Placement[];
  /** All placed parts' shapes, moved into place; the board's own edge is not drawn. */
  readonly drawing: Drawing;
}

/** Where a part's drawing was moved: turned by `angle` (radians) about its origin, then moved by `dx`, `dy`. */
export interface Placement {
  readonly part: string;
  readonly dx: number;
  readonly dy: number;
  readonly angle: number;
}
