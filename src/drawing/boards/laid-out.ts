import type { Drawing } from '../../base/drawing';

/** A board, a metal sheet or an offcut with what is laid out on it. */
export interface LaidOut {
  /** Unique, safe as a file name: `board-mdf-18-1`, `offcut-2`. */
  readonly id: string;
  readonly stock: string;
  readonly thickness: number;
  /** The board lies with its length along x and one corner at the origin, mm. */
  readonly width: number;
  readonly length: number;
  /** Which of the job's offcuts it is, counted from 0; null for a whole board. */
  readonly offcut: number | null;
  readonly used: Used;
  readonly placements: readonly Placement[];
  /** The board's own edge, and all placed parts' shapes, moved into place. */
  readonly drawing: Drawing;
}

/** What the parts take of a board. */
export interface Used {
  /** From the board's end to the far edge of the farthest part, mm. */
  readonly length: number;
  /** From the board's side to the far edge of the farthest part, mm. */
  readonly width: number;
  /** The parts' outlines' share of the area up to there, 0…1. */
  readonly share: number;
}

/** Where a part's drawing was moved: turned by `angle` (radians) about its origin, then moved by `dx`, `dy`. */
export interface Placement {
  readonly part: string;
  readonly dx: number;
  readonly dy: number;
  readonly angle: number;
}
