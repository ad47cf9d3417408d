import { MM_PER_INCH, type LengthUnit } from '../../base/units';
import { BAR_WIDTH, BARS, drawLevelBar, heavyBox } from './furniture';
import { wrap, type Lettering } from './lettering';
import type { Rect } from './paper';
import type { Pen } from './pen';
import { sentences } from '../sentences';

/** The box that opens the first page: bars to lay a rule on, and what to do where they are short. Lengths mm. */
export interface MeasureFirst {
  readonly height: number;
  /** `box`: as high as said above. */
  readonly draw: (pen: Pen, box: Rect) => void;
}

const HEADING = 'MEASURE BEFORE YOU CUT';
const HEADING_HEIGHT = 5;
const WORDS_HEIGHT = 2.3;
const LEADING = 1.7;
const PADDING = 4;
/** Keeps a number and its sign on one line. */
const JOIN = '\u00a0';
const BORDER = 1;
/** From the heading's baseline to the bar, and below it. */
const BAR_AT = { first: 9, below: 4 };

/** What a bar that was printed too short measures, mm: the usual shrinking of “fit to page”. */
const SHRUNK = { mm: [98, 97, 96, 95, 94], in: [3.9375, 3.875, 3.8125, 3.75].map((inches) => inches * MM_PER_INCH) };
const SHRUNK_NAMES = { mm: ['98', '97', '96', '95', '94'], in: ['3-15/16', '3-7/8', '3-13/16', '3-3/4'] };

export function layOutMeasureFirst(width: number, units: LengthUnit, letters: Lettering): MeasureFirst {
  const room = width - 2 * PADDING;
  const lines = words(units).flatMap((text, index) => wrap(letters, `${index + 1}.  ${text}`, WORDS_HEIGHT, room));
  const barsEnd = HEADING_HEIGHT + BAR_AT.first + BAR_AT.below;
  return {
    height: 2 * PADDING + barsEnd + lines.length * WORDS_HEIGHT * LEADING,
    draw: (pen, box) => {
      const [left, top] = [box.x + PADDING, box.y + box.height - PADDING];
      heavyBox(pen, box, BORDER);
      pen.text(HEADING, [left, top - HEADING_HEIGHT], HEADING_HEIGHT);
      drawLevelBar(pen, BARS[units], [left, top - HEADING_HEIGHT - BAR_AT.first + BAR_WIDTH]);
      for (const [index, line] of lines.entries())
        pen.text(line, [left, top - barsEnd - (index + 1) * WORDS_HEIGHT * LEADING + WORDS_HEIGHT / 2], WORDS_HEIGHT);
    },
  };
}

/** Common practice with printers: a shrunk page is mended at its cause, else by the inverse of what it came out at. */
function words(units: LengthUnit): string[] {
  const whole = units === 'mm' ? 100 : 4 * MM_PER_INCH;
  const scales = SHRUNK[units].map(
    (measured, index) => `${SHRUNK_NAMES[units][index]}${JOIN}→${JOIN}${((100 * whole) / measured).toFixed(1)}${JOIN}%`,
  );
  const [bar, slack] = units === 'mm' ? ['100 mm', '0.5 mm'] : ['4 in', '1/64 in'];
  return [
    `Lay a steel rule on the bar above, on the one at the foot and on the upright one at the left. Every page has both: measure every page. All right to ${slack}: go on.`,
    sentences(
      'A bar is short: the printer has shrunk the page, whatever this file asks of it.',
      'Throw the page away.',
      'In the print window choose “actual size” or 100 %, not “fit” and not “shrink”; then look for the same in the printer’s own settings.',
      'Print, and measure again.',
    ),
    `Still short: print at your own scale, 100 × ${whole === 100 ? 100 : 4} ÷ what the ${bar} bar measures: ${scales.join(', ')}. Measure again.`,
    'Right one way and wrong the other: that printer will not do. Use another, or take the file to a print shop and ask for 100\u00a0%.',
  ];
}
