import type { LaidOut } from '../../drawing/boards/laid-out';
import type { LengthUnit } from '../../base/units';
import { addPageTo, beginDocument, endDocument } from './document';
import { dressForPaper, printDressed } from './dress';
import { BARS, drawLevelBar, drawUprightBar, heavyBox } from './furniture';
import { wrap, type Lettering } from './lettering';
import { isPrintable, shownOf } from './board-page';
import type { Rect } from './paper';
import type { Pen } from './pen';

/** What is printed beside a board's drawing. */
export interface BoardTitle {
  /** Of the job. */
  readonly title: string;
  /** Which board, from what, how large. */
  readonly name: string;
  readonly units: LengthUnit;
}

/** Blank paper round everything, and room left of the drawing for the upright bars, mm. */
const EDGE = 10;
const SIDE = 14;
/** The narrowest page that holds bars and words, and the lowest that holds the upright bars, mm. */
const LEAST = { width: 150, height: 115 };
/** The heavy frame of words and level bars at the foot: its own line, what is left inside it, and from it to the drawing, mm. */
const FRAME = { line: 0.8, padding: 3, away: 3 };
const LEADING = 1.7;
const LEVEL_PITCH = 6.2;

const TO_THE_PRINTER = [
  'PRINT AT EXACTLY 100 %, ONE PAGE. Nothing is to be fitted, shrunk or centred.',
  'Lay a steel rule on both bars before you glue this on a board: a bar wrong, level or upright, and the print is not to be used.',
  'The dash-dotted corner, lower left, is the board’s. The rest of the board, where no part lies, is not printed.',
];
const WRONG = 'Is it not? This print is not to be used.';

/**
 * The parts of one board at exactly 1:1 as a PDF of one page, for a print shop: as much of the board as parts lie on, from its lower left
 * corner. Null where it is not {@link isPrintable}. `font` as for the templates.
 */
export async function writeBoardPdf(
  board: LaidOut,
  { title, name, units }: BoardTitle,
  font: Uint8Array,
): Promise<Uint8Array | null> {
  const document = await beginDocument(font);
  const { letters } = document;
  if (!isPrintable(board)) return null;
  const shown = shownOf(board);
  const wide = Math.max(LEAST.width, shown.width + 1);
  const foot = layOutFoot({ name: `${title}: ${name}`, units }, SIDE + wide, letters);
  const frame: Rect = {
    x: EDGE + SIDE,
    y: EDGE + foot.height + FRAME.away,
    width: wide,
    height: Math.max(LEAST.height, shown.height + 1),
  };
  const page = { width: frame.x + frame.width + EDGE, height: frame.y + frame.height + EDGE };
  addPageTo(document, page, (pen) => {
    const clip = { x: frame.x - 1, y: frame.y - 1, width: shown.width + 1.5, height: shown.height + 1.5 };
    printDressed(
      pen,
      dressForPaper(board.drawing, units, letters),
      { place: { angle: 0, dx: frame.x, dy: frame.y }, frame: clip },
      letters,
    );
    foot.draw(pen);
    drawUprightBar(pen, BARS[units], [EDGE + 3, frame.y], WRONG);
  });
  return endDocument(document, `${title}: ${name}`);
}

function layOutFoot(
  { name, units }: { readonly name: string; readonly units: LengthUnit },
  width: number,
  letters: Lettering,
): { readonly height: number; readonly draw: (pen: Pen) => void } {
  const lines = [{ text: name, height: 4 }, ...TO_THE_PRINTER.map((text) => ({ text, height: 2.6 }))].flatMap(
    ({ text, height }) => wrap(letters, text, height, width - 2 * FRAME.padding).map((line) => ({ line, height })),
  );
  const written = lines.reduce((sum, { height }) => sum + height * LEADING, 0);
  const height = written + LEVEL_PITCH + 2 * FRAME.padding;
  return {
    height,
    draw: (pen) => {
      heavyBox(pen, { x: EDGE, y: EDGE, width, height }, FRAME.line);
      const left = EDGE + FRAME.padding;
      drawLevelBar(pen, BARS[units], [left, EDGE + FRAME.padding], WRONG);
      let y = EDGE + height - FRAME.padding;
      for (const { line, height: letter } of lines) {
        pen.text(line, [left, y - letter], letter);
        y -= letter * LEADING;
      }
    },
  };
}
