import type { Panel, TakenOff } from '../../panel';
import type { Outline } from '../../panel/trace/outline';
import type { Scale } from '../../panel/trace/scale';

/** A panel laid out flat, whichever way its job gives it. */
export interface FlatPanel {
  readonly panel: Panel;
  /** Its net outline with the names of its edges. */
  readonly outline: Outline;
  /** How it came by its size; null for a panel built up. */
  readonly traced: HowTraced | null;
}

/** A reference length, and what it comes out as once all are weighed, mm. */
export interface ReferenceSeen {
  readonly is: number;
  readonly comesOut: number;
}

/** How an outline came by its size, and what its bends took off it. */
export interface HowTraced {
  /** The drawing; null for corners. */
  readonly file: string | null;
  /** How the drawing's own sizes were taken. */
  readonly sizes: string;
  readonly scale: Scale;
  readonly references: readonly ReferenceSeen[];
  readonly takenOff: readonly TakenOff[];
}
