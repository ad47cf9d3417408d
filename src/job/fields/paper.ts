import { finding } from '../../findings/finding';
import type { Reader } from '../reader';
import { block, field, type Read } from './field';
import { choice, length } from './quantities';

/** What the drawings are printed on; the sizes are in `output/pdf/paper.ts`. */
export const paper = block(
  { help: 'Paper for full-size drawings', group: 'paper' },
  {
    size: field({
      label: 'Size',
      help: 'Paper for the full-size drawings',
      is: choice(['letter', 'A4', 'tabloid', 'A3', 'roll']),
      unless: ({ units }) => (units === 'in' ? 'letter' : 'A4'),
    }),
    /** A roll has none. */
    orientation: field({
      label: 'Orientation',
      help: 'Which way the paper lies; auto is whichever needs fewer pages',
      is: choice(['auto', 'portrait', 'landscape'], { auto: 'whichever needs fewer pages' }),
      unless: 'auto',
    }),
    /** Of a roll, mm; null for the other sizes. */
    width: field({
      label: 'Width of a roll',
      help: 'Width of the roll of paper',
      example: '610',
      is: length(200, 1600),
      without: 'for rolls',
    }),
    /** mm. Desk and office printers leave 6 mm, 1/4 in, and a little over (common practice). */
    margin: field({
      label: 'Edge the printer leaves blank',
      help: 'Edge your printer leaves blank',
      example: '7',
      is: length(3, 25),
      unless: ({ units }) => (units === 'in' ? 7.14375 : 7),
    }),
    /** mm. Wide enough for a glue stick or tape (common practice). */
    overlap: field({
      label: 'Overlap of pages',
      help: 'Strip that neighbouring pages share, for gluing',
      example: '10',
      is: length(6, 40),
      unless: ({ units }) => (units === 'in' ? 9.525 : 10),
    }),
    blanks: field({
      label: 'Blanks on paper',
      help: 'Which blanks are printed full size: those of one hand, of both, or none; the files of both are always written',
      is: choice(['left', 'right', 'both', 'none']),
      unless: 'left',
    }),
  },
);

/** Width of a roll of plotter paper, mm: 24 in. */
const ROLL = 609.6;

/** A roll has a width, and nothing else has. */
export function checkRoll(reader: Reader, { size, width }: Read<typeof paper>): void {
  const path = ['paper', 'width'];
  if (size === 'roll' && reader.at(path) === undefined)
    reader.refuse(finding('roll-without-width', 'paper.width', { example: ROLL }));
  if (size !== 'roll' && width !== null) reader.refuse(finding('width-without-roll', 'paper.width', { size, width }));
}
