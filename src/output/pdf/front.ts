import type { Drawing, Shape } from '../../base/drawing';
import { boundsOf } from '../../base/bounds';
import type { LengthUnit } from '../../base/units';
import type { PaperChoice } from '../../job/job';
import { dressForPaper, printDressed } from './dress';
import { wrap, type Lettering } from './lettering';
import { layOutMeasureFirst } from './measure-first';
import { cutRoll, isRoll, pagesOf, type Page, type Rect } from './paper';
import type { Pen } from './pen';
import { sentences } from '../sentences';

/** The first page, or pages: the whole title, what to do, and which drawing is on which page. */

/** One drawing's entry in the list. */
export interface Listed {
  readonly title: string;
  readonly notes: readonly string[];
  /** Where it is, as words: `page 3`, `pages 4 to 9: rows A to B, columns 1 to 3`. */
  readonly where: string;
}

/** A line of text, the sample drawing or the box of check bars; `above` is clear paper before it, mm. */
interface Row {
  readonly above: number;
  readonly height: number;
  readonly draw: (pen: Pen, box: Rect) => void;
}

export interface FrontPage {
  readonly page: Page;
  readonly rows: readonly Row[];
}

const LEADING = 1.75;
/** Longest line that is read with ease, mm. */
const WIDEST = 230;
/** Diameters of the sample's holes, round in either unit, mm. */
const SAMPLE_HOLES = {
  mm: { drilled: 5, sunk: 10, sawn: 16 },
  in: { drilled: 4.7625, sunk: 9.525, sawn: 15.875 },
} as const;

function sampleIn(units: LengthUnit): Drawing {
  const { drilled, sunk, sawn } = SAMPLE_HOLES[units];
  const words = (x: number, y: number, text: string): Shape => ({
    kind: 'text',
    operation: 'label',
    x,
    y,
    height: 2,
    angle: 0,
    anchor: 'start',
    text,
  });
  return {
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
      { kind: 'circle', operation: 'hole', x: 12, y: 12, radius: drilled / 2 },
      { kind: 'circle', operation: 'countersink', x: 12, y: 12, radius: sunk / 2 },
      { kind: 'circle', operation: 'hole', x: 116, y: 12, radius: sawn / 2 },
      { kind: 'line', operation: 'mark', from: [64, 0], to: [64, 24] },
      words(66, 4, 'thin line: a mark'),
      words(66, 18, 'sawn hole'),
      words(2, 20, 'drilled, countersunk'),
    ],
  };
}
const SAMPLE_HEIGHT = 30;

const STEPS = [
  'Print at 100 % (“actual size”), one side only.',
  'A page marked with a row and a column, such as B2, is part of a larger drawing. Its right and upper edges that have a neighbour are trimmed along the solid line.',
  sentences(
    'Begin with the top right page and go left, then row by row down.',
    'Lay each trimmed edge on its neighbour’s dashed line, the halved crosses on the whole crosses of the same name, and glue or tape it down.',
  ),
  'Measure a joined drawing once across, against the sizes in the plan, before you cut.',
];

export function layOutFront(
  { title, units }: { readonly title: string; readonly units: LengthUnit },
  drawings: readonly Listed[],
  paper: PaperChoice,
  letters: Lettering,
): FrontPage[] {
  const [page] = pagesOf(paper);
  if (!page) return [];
  const room = Math.min(WIDEST, page.frame.width);
  const line = (text: string, height: number, indent: number, above: number): Row[] =>
    textRows({ text, height, indent, above }, room, letters);
  const measureFirst = layOutMeasureFirst(room, units, letters);
  const rows: Row[] = [
    {
      above: 0,
      height: measureFirst.height,
      draw: (pen, box) => measureFirst.draw(pen, { ...box, width: room }),
    },
    ...line(title, 4, 0, 5),
    ...line(`Full-size drawings on ${paper.size === 'roll' ? 'a paper roll' : `${paper.size} paper`}`, 2.6, 0, 2),
    ...STEPS.flatMap((step, index) => line(`${index + 1}.  ${step}`, 2.2, 0, 2)),
    ...line(
      'How the drawings are read: cut along heavy lines; ticks stand on the waste side; a dashed ring is sunk from the other face.',
      2.2,
      0,
      4,
    ),
    { above: 1, height: SAMPLE_HEIGHT, draw: (pen, box) => drawSample(pen, box, units, letters) },
    ...drawings.flatMap(({ title: name, notes, where }) => [
      ...line(`${name}: ${where}`, 2.4, 0, 2.5),
      ...notes.flatMap((note) => line(note, 2, 6, 0.5)),
    ]),
  ];
  return paginate(rows, page, isRoll(paper));
}

interface Line {
  readonly text: string;
  readonly height: number;
  readonly indent: number;
  readonly above: number;
}

function textRows({ text, height, indent, above }: Line, room: number, letters: Lettering): Row[] {
  return wrap(letters, text, height, room - indent).map((words, index) => ({
    above: index === 0 ? above : 0,
    height: height * LEADING,
    draw: (pen, { x, y }) => pen.text(words, [x + indent, y + height * (LEADING - 1)], height),
  }));
}

function paginate(rows: readonly Row[], page: Page, roll: boolean): FrontPage[] {
  const pages: Row[][] = [[]];
  let used = 0;
  for (const row of rows) {
    if (used + row.above + row.height > page.frame.height) {
      pages.push([]);
      used = 0;
    }
    pages.at(-1)?.push(row);
    used += row.above + row.height;
  }
  const heightOf = (held: readonly Row[]): number => held.reduce((sum, { above, height }) => sum + above + height, 0);
  return pages.map((held) => ({ page: roll ? cutRoll(page, heightOf(held)) : page, rows: held }));
}

export function drawFront(pen: Pen, { page: { frame }, rows }: FrontPage): void {
  let y = frame.y + frame.height;
  for (const { above, height, draw } of rows) {
    y -= above + height;
    draw(pen, { x: frame.x, y, width: frame.width, height });
  }
}

function drawSample(pen: Pen, box: Rect, units: LengthUnit, letters: Lettering): void {
  const sample = sampleIn(units);
  const { minX, minY } = boundsOf(sample);
  const place = { angle: 0, dx: box.x + 3 - minX, dy: box.y + 3 - minY };
  printDressed(pen, dressForPaper(sample, units, letters), { place, frame: box }, letters);
}
