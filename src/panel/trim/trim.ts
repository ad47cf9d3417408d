import type { Vertex } from '../../base/drawing';
import type { Place } from '../../base/side';
import type { Outline } from '../trace/outline';

/** The side of a bend that is pulled, and how far out from the bend it is to reach, mm. */
export interface PulledSide {
  /** The bend's name. */
  readonly bend: string;
  /** The free tangent line; the pulled side lies on the left of the way from one end to the other. */
  readonly line: readonly [from: Place, to: Place];
  /** What of the net panel lies beyond it: closed loops. */
  readonly free: readonly (readonly Vertex[])[];
  /** From the free tangent line to the lever's end. */
  readonly lever: number;
}

/** What is cut before bending, and where it is trimmed after. */
export interface CutAndTrim {
  readonly cut: Outline;
  /** Open runs of the net outline that lie within the cut. */
  readonly trim: readonly (readonly Vertex[])[];
}
