import type { BlockChoice } from './fields/block';
import type { Boards } from './fields/board';
import type { Cut } from './fields/cut';
import type { Given } from './fields/index';

export type { BlockChoice } from './fields/block';
export type { BoardChoice } from './fields/board';
export type { Cut, JigsawCut, LaserCut, RouterCut } from './fields/cut';
export type { CuttingTool } from './cutting-tool';

/**
 * A job after reading: every default filled in, lengths in mm, angles in radians, forces in N, stresses in MPa.
 * `job/parse.ts` makes it from a job file's text; the page makes it from its fields by the same parser. What each field is stands
 * where it is described, in `job/fields/`.
 */
export interface Job extends Omit<Given, 'board' | 'block' | 'cut' | 'effort' | 'clamps'> {
  /** What is bent on the form: the bend itself over its whole length; on a form that a panel's bends share, each of them on its own stretch. */
  readonly runs: readonly Run[];
  /** `handForce`: what one person may pull, N. */
  readonly effort: Omit<Given['effort'], 'handForce'> & { readonly handForce: number };
  /** `rating`: what one clamp is trusted with, N. */
  readonly clamps: Omit<Given['clamps'], 'rating'> & { readonly rating: number };
  readonly board: Boards;
  /** The block to dress the finished bend over; null for none. */
  readonly block: BlockChoice | null;
  readonly cut: Cut;
}

/** A stretch of a form that one bend is made on; `from` and `to` along the form's tangent line from its end A, mm. */
export interface Run {
  readonly name: string;
  readonly from: number;
  readonly to: number;
}
/** A strip of the job's sheet bent round a disc and let go, or a part that came off the form. */
export type Trial = Given['trials'][number];
export type { FinishedPart, Strip } from './fields/trials';
/** A piece of board left over from other work, used before a whole board is. */
export type Offcut = Given['offcuts'][number];
/** What the drawings are printed on. */
export type PaperChoice = Omit<Given['paper'], 'blanks'>;
