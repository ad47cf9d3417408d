import type { Convex } from './convex';

/** Shifts that keep a part on the board, mm. */
export interface Range {
  readonly minX: number;
  readonly maxX: number;
  readonly minY: number;
  readonly maxY: number;
}

/** A no-fit polygon where it lies on the board: no part may be shifted to a place inside it. */
export interface Obstacle extends Range {
  readonly shape: Convex;
  readonly x: number;
  readonly y: number;
}
