import type { LaidOut } from '../../drawing/boards/laid-out';
import { LONGEST_PAGE } from './paper';

/** How far the print reaches past the parts, where the board goes on, mm. */
const PAST = 12;
/** Kept of a page's length and width for bars, words and blank edges, mm: more than they ever take. */
const FURNITURE = 250;

type Used = Pick<LaidOut, 'used' | 'length' | 'width'>;

/** The stretch of a board that is printed: as much as parts lie on, mm. */
export function shownOf({ used, length, width }: Used): { readonly width: number; readonly height: number } {
  return { width: Math.min(length, used.length + PAST), height: Math.min(width, used.width + PAST) };
}

/** Whether a board's print at 1:1 is no longer than one PDF page can be. */
export function isPrintable(board: Used): boolean {
  const { width, height } = shownOf(board);
  return Math.max(width, height) + FURNITURE <= LONGEST_PAGE;
}
