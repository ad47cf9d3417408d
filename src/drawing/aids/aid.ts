import type { Drawing } from '../../base/drawing';

/** Something drawn at 1:1 that helps bending, marking or checking but is no piece of the form. */
export interface Aid {
  /** Unique, safe as a file name: `angle-finished`, `radius-inside-a`, `blank-left`. */
  readonly id: string;
  readonly kind: 'angle-gauge' | 'radius-gauge' | 'marking-strip' | 'blank' | 'trial-strip' | 'trial-disc';
  /** What the maker calls it. */
  readonly title: string;
  /** What it is cut from: card (or board up to 3 mm), paper, the job's own sheet, or board as the stations are. */
  readonly material: 'card' | 'paper' | 'sheet' | 'board';
  /** Short remarks to print beside it: how to use it. */
  readonly notes: readonly string[];
  readonly drawing: Drawing;
}
