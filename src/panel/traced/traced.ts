import type { Vertex } from '../../base/drawing';
import type { Ends } from '../../base/ends';
import type { Point } from '../../base/polygon';

/**
 * What an outline was traced from. `metal-allowed`: it is the flat already, its lines the base lines. `sharp`: card folded to lines. Else card
 * wound round something of a `radius` (mm, of the face named by `over`), its lines where the winding begins.
 */
export type Mockup =
  | 'metal-allowed'
  | 'sharp'
  | { readonly radius: number; readonly thickness: number; readonly over: 'inside' | 'outside' };

/** A panel given as a closed outline with lines to bend along; mm, radians, seen on the marked face. */
export interface Traced {
  readonly thickness: number;
  /** Counter-clockwise. */
  readonly outline: readonly Vertex[];
  readonly holes: readonly (readonly Vertex[])[];
  readonly mockup: Mockup;
  readonly bends: readonly TracedBend[];
}

export interface TracedBend {
  readonly name: string;
  /** From end A to end B; it is run on to the outline on both sides of its middle. */
  readonly line: readonly [Point, Point];
  /** Which side of it, walking from A to B, is turned. */
  readonly free: 'left' | 'right';
  readonly turn: 'up' | 'down';
  readonly angle: number;
  /** Finished inside radius at ends A and B, where the line meets the outline. */
  readonly radius: Ends;
  readonly neutral: number | null;
}

/** How much metal a bend takes off the traced outline, mm, at its ends; 0 where the metal was allowed for. */
export interface TakenOff extends Ends {
  readonly bend: string;
}
