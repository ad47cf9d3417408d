import { InternalError } from '../../base/errors';
import type { PaperChoice } from '../../job/job';

/** Sheets of paper and what of them is left for a drawing. Lengths mm, the page's origin at its lower left corner. */

export interface Size {
  readonly width: number;
  readonly height: number;
}

export interface Rect extends Size {
  readonly x: number;
  readonly y: number;
}

/** One sheet as it comes out of the printer: its size, and the frame the drawing shows in. */
export interface Page extends Size {
  readonly margin: number;
  readonly frame: Rect;
}

/** Trimmed sizes, upright. Sources: ISO 216 (A3, A4); ANSI/ASME Y14.1 (size A, letter, 8.5 × 11 in; size B, tabloid, 11 × 17 in). */
const SHEETS: Readonly<Record<Exclude<PaperChoice['size'], 'roll'>, Size>> = {
  A4: { width: 210, height: 297 },
  A3: { width: 297, height: 420 },
  letter: { width: 215.9, height: 279.4 },
  tabloid: { width: 279.4, height: 431.8 },
};

/** Room left of the frame for the upright check bars, mm. */
const SIDE_BAND = 11;
/** Room below the frame for the level check bars, the names and the page map, mm. */
export const FOOT_BAND = 27;
/** A PDF page may be 14400 points of 1/72 in long (ISO 32000-1, annex C.2): 5080 mm. A page is cut before. */
export const LONGEST_PAGE = 5000;
/** Shortest page cut from a roll: a 4 in bar must stand beside the frame. */
const SHORTEST_FRAME = 110;

/** Whether a page may be printed on a roll, where it is as long as it needs to be. */
export function isRoll(paper: PaperChoice): boolean {
  return paper.size === 'roll';
}

/** The pages a paper may be used as: upright and lying, where the job leaves it open; a roll's longest page. The first is preferred. */
export function pagesOf(paper: PaperChoice): Page[] {
  if (paper.size === 'roll') {
    if (paper.width === null) throw new InternalError('a roll without a width');
    return [pageOf(paper.width, LONGEST_PAGE, paper.margin)];
  }
  const { width, height } = SHEETS[paper.size];
  const upright = pageOf(width, height, paper.margin);
  const lying = pageOf(height, width, paper.margin);
  return { auto: [upright, lying], portrait: [upright], landscape: [lying] }[paper.orientation];
}

/** The page of a roll cut off where a drawing of some height in its frame ends. */
export function cutRoll(page: Page, used: number): Page {
  const height = Math.min(page.frame.height, Math.max(SHORTEST_FRAME, used));
  return pageOf(page.width, page.height - page.frame.height + height, page.margin);
}

function pageOf(width: number, height: number, margin: number): Page {
  const frame = {
    x: margin + SIDE_BAND,
    y: margin + FOOT_BAND,
    width: width - 2 * margin - SIDE_BAND,
    height: height - 2 * margin - FOOT_BAND,
  };
  return { width, height, margin, frame };
}
