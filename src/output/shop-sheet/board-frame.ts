import type { PaperPoint } from './board-ink';

/** How a board lies on paper: which stretch of it is shown, to what scale, and whether turned on its side. */
export interface BoardFrame {
  /** Mm of board to one of paper. */
  readonly scale: number;
  /** Turned a quarter, its width along the paper: for boards used across rather than along. */
  readonly turned: boolean;
  /** What is shown of the board, along it and across, mm of board. */
  readonly shown: { readonly length: number; readonly width: number };
  /** Whether the board goes on past what is shown. */
  readonly broken: { readonly length: boolean; readonly width: boolean };
  /** Size of what is shown, mm of paper. */
  readonly wide: number;
  readonly high: number;
  /** A place on the board → on the paper, mm from the top left corner of what is shown. */
  readonly at: (x: number, y: number) => PaperPoint;
}

interface Extent {
  readonly length: number;
  readonly width: number;
}

/** Shown past the parts before the board is broken off, mm of paper. */
const BEYOND = 7;
/** A board of which no less than this would be shown is shown whole. */
const NEARLY_ALL = 0.85;

/**
 * The largest scale 1:1, 1:2, 1:3 … at which the used part of a `board` fits `room` (mm of paper), its longer side along the paper
 * where it fits either way; `used`: how far along and across it the parts reach, mm.
 */
export function frameOf(
  board: Extent,
  used: Extent,
  room: { readonly width: number; readonly height: number },
): BoardFrame {
  for (let scale = 1; ; scale++) {
    const shown = { length: shownOf(board.length, used.length, scale), width: shownOf(board.width, used.width, scale) };
    const lying = shown.width > shown.length;
    const turned = [lying, !lying].find(
      (way) =>
        (way ? shown.width : shown.length) <= room.width * scale &&
        (way ? shown.length : shown.width) <= room.height * scale,
    );
    if (turned === undefined) continue;
    const [wide, high] = turned ? [shown.width, shown.length] : [shown.length, shown.width];
    return {
      scale,
      turned,
      shown,
      broken: { length: shown.length < board.length, width: shown.width < board.width },
      wide: wide / scale,
      high: high / scale,
      // Turned, not turned over: the end all is measured from is on the left, or on top.
      at: turned ? (x, y) => [y / scale, x / scale] : (x, y) => [x / scale, (shown.width - y) / scale],
    };
  }
}

function shownOf(whole: number, used: number, scale: number): number {
  const reach = used + BEYOND * scale;
  return reach >= NEARLY_ALL * whole ? whole : reach;
}
