import type { Drawing } from '../../base/drawing';
import { boundsOf } from '../../base/bounds';
import type { LengthUnit } from '../../base/units';
import type { PaperChoice } from '../../job/job';
import { dressForPaper, printDressed } from './dress';
import { wrap, type Lettering } from './lettering';
import { cutRoll, isRoll, pagesOf, type Page } from './paper';
import type { Pen } from './pen';

/** The first page, or pages: the whole title, what to do, and which drawing is on which page. */

/** One drawing's entry in the list. */
export interface Listed {
  readonly title: string;
  readonly notes: readonly string[];
  /** Where it is, as words: `page 3`, `pages 4 to 9: rows A to B, columns 1 to 3`. */
  readonly where: string;
}

/** A line of text or, where it is null, the sample drawing; `above` is clear paper before it, mm. */
interface Row {
  readonly text: string | null;
  readonly height: number;
  readonly indent: number;
  readonly above: number;
}

export interface FrontPage {
  readonly page: Page;
  readonly rows: readonly Row[];
}

const LEADING = 1.75;
/** Longest line that is read with ease, mm. */
const WIDEST = 230;
const SAMPLE: Drawing = {
  shapes: [
    {
      kind: 'loop',
      operation: 'outline',
      vertices: [
        { x: 0, y: 0, bulge: 0 },
        { x: 120, y: 0, bulge: 1 },
        { x: 120, y: 24, bulge: 0 },
        { x: 0, y: 24, bulge: 0 },
      ],
    },
    { kind: 'circle', operation: 'hole', x: 12, y: 12, radius: 2.5 },
    { kind: 'circle', operation: 'countersink', x: 12, y: 12, radius: 5 },
    { kind: 'circle', operation: 'hole', x: 116, y: 12, radius: 8 },
    { kind: 'line', operation: 'mark', from: [64, 0], to: [64, 24] },
    { kind: 'text', operation: 'label', x: 66, y: 4, height: 2, angle: 0, anchor: 'start', text: 'thin line: a mark' },
    { kind: 'text', operation: 'label', x: 66, y: 18, height: 2, angle: 0, anchor: 'start', text: 'sawn hole' },
    {
      kind: 'text',
      operation: 'label',
      x: 2,
      y: 20,
      height: 2,
      angle: 0,
      anchor: 'start',
      text: 'drilled, countersunk',
    },
  ],
};
const SAMPLE_HEIGHT = 30;

const STEPS = [
  'Print at 100 % (“actual size”), one side only. Then measure the bars: 100 mm and 4 in, level and upright, on every page. A page whose bars are wrong is not to be used.',
  'A page marked with a row and a column, such as B2, is part of a larger drawing. Its right and upper edges that have a neighbour are trimmed along the solid line.',
  'Begin with the top right page and go left, then row by row down. Lay each trimmed edge on its neighbour’s dashed line, the halved crosses on the whole crosses of the same name, and glue or tape it down.',
  'Measure a joined drawing once across, against the sizes in the plan, before you cut.',
];

export function layOutFront(
  title: string,
  drawings: readonly Listed[],
  paper: PaperChoice,
  letters: Lettering,
): FrontPage[] {
  const [page] = pagesOf(paper);
  if (!page) return [];
  const rows = [
    ...textRows(title, 4, 0, 0),
    ...textRows(`Full-size drawings on ${paper.size === 'roll' ? 'a paper roll' : `${paper.size} paper`}`, 2.6, 0, 2),
    ...STEPS.flatMap((step, index) => textRows(`${index + 1}.  ${step}`, 2.2, 0, 2)),
    {
      text: 'How the drawings are read: cut along heavy lines; ticks stand on the waste side.',
      height: 2.2,
      indent: 0,
      above: 4,
    },
    { text: null, height: SAMPLE_HEIGHT, indent: 0, above: 1 },
    ...drawings.flatMap(({ title: name, notes, where }) => [
      ...textRows(`${name}: ${where}`, 2.4, 0, 2.5),
      ...notes.flatMap((note) => textRows(note, 2, 6, 0.5)),
    ]),
  ].flatMap((row) => wrapRow(row, page, letters));
  return paginate(rows, page, isRoll(paper));
}

function textRows(text: string, height: number, indent: number, above: number): Row[] {
  return [{ text, height, indent, above }];
}

function wrapRow(row: Row, page: Page, letters: Lettering): Row[] {
  if (row.text === null) return [row];
  const room = Math.min(WIDEST, page.frame.width) - row.indent;
  return wrap(letters, row.text, row.height, room).map((text, index) => ({
    ...row,
    text,
    above: index === 0 ? row.above : 0,
  }));
}

function rowHeight({ text, height, above }: Row): number {
  return above + (text === null ? height : height * LEADING);
}

function paginate(rows: readonly Row[], page: Page, roll: boolean): FrontPage[] {
  const pages: Row[][] = [[]];
  let used = 0;
  for (const row of rows) {
    if (used + rowHeight(row) > page.frame.height) {
      pages.push([]);
      used = 0;
    }
    pages.at(-1)?.push(row);
    used += rowHeight(row);
  }
  const heightOf = (held: readonly Row[]): number => held.reduce((sum, row) => sum + rowHeight(row), 0);
  return pages.map((held) => ({ page: roll ? cutRoll(page, heightOf(held)) : page, rows: held }));
}

export function drawFront(pen: Pen, { page: { frame }, rows }: FrontPage, units: LengthUnit, letters: Lettering): void {
  let y = frame.y + frame.height;
  for (const row of rows) {
    y -= rowHeight(row);
    if (row.text !== null) {
      pen.text(row.text, frame.x + row.indent, y + row.height * (LEADING - 1), row.height);
      continue;
    }
    const { minX, minY } = boundsOf(SAMPLE);
    const box = { x: frame.x, y, width: frame.width, height: row.height };
    printDressed(
      pen,
      dressForPaper(SAMPLE, units, letters),
      { angle: 0, dx: box.x + 3 - minX, dy: box.y + 3 - minY },
      box,
      letters,
    );
  }
}
