import type { JSX } from 'preact';
import type { Opened, OpenedDrawing } from './draft';
import type { Source } from './open-file';

/** What the page of one bend, or of a panel, begins with. */
export interface Given {
  readonly text: string;
  readonly source: Source | null;
  /** The drawing beside the job, where it names one. */
  readonly drawing: OpenedDrawing | null;
  /** Why what was to be opened first was not; empty where nothing was. */
  readonly refused: string;
}

export interface AppProps {
  readonly given: Given;
  /** Opens what the other page is for; `left` is the job that is left. */
  readonly leave: (opened: Opened, source: Source | null, left: Pick<Given, 'text' | 'drawing'>) => void;
  /** The way back to the job that was left for this one. */
  readonly back: JSX.Element | null;
}
