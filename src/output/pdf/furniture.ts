import { MM_PER_INCH, type LengthUnit } from '../../base/units';
import { shorten, type Lettering } from './lettering';
import { FOOT_BAND, type Page, type Rect } from './paper';
import type { Pen } from './pen';
import { tileName, type Grid, type Seam, type Tile } from './tile-plan';

/** What stands on every page besides the drawing: check bars, names, page map, seams with their register marks. Lengths mm. */

export interface PageNames {
  readonly title: string;
  /** The drawing, or drawings, on this page. */
  readonly names: string;
  readonly number: number;
  readonly pages: number;
  readonly units: LengthUnit;
}

/** What a bar must measure, in the job's unit. */
export const BARS = {
  mm: { length: 100, name: '100 mm' },
  in: { length: 4 * MM_PER_INCH, name: '4 in' },
} as const;
export const BAR_WIDTH = 1.4;
/** From the foot's lower edge to its level bar, and from its left edge to its upright one. */
const BAR_IN = { up: 3.1, across: 2.5 };
/** How far the stroke at either end of a bar stands out, where a rule is read. */
const BAR_END = 1;
const MAP = { width: 24, height: 23 };
/** Beside the title, for the page's number. */
const PAGE_ROOM = 32;
const GAP = 4;
const HAIRLINE = 0.13;
const SMALL = 1.9;
const WARNING = { height: 2.6, frame: 0.6, padding: 1.5 };
/** Length of each arm of a register mark, and radius of its ring. */
const ARM = 4;
const RING = 1.5;

/** Where a register mark's name stands from its middle: on the side of the seam that is still seen when the pages are joined. */
const PAIR_AT = {
  right: [-RING - 0.7, 0.7, 'end'],
  left: [RING + 0.7, 0.7, 'start'],
  top: [RING + 0.5, -SMALL - 0.7, 'start'],
  bottom: [RING + 0.5, 0.7, 'start'],
} as const;

type Bar = (typeof BARS)[LengthUnit];

/** What to do where a bar of the templates is not as long as it says. */
const WRONG = 'Is it not? Page 1 says what to do.';

function barWords({ name }: Bar, wrong: string): string {
  return `THIS BAR IS ${name} LONG. Measure it. ${wrong}`;
}

/** A level bar from `x`, its lower edge at `y`, with what it must measure above it. */
export function drawLevelBar(pen: Pen, bar: Bar, [x, y]: readonly [number, number], wrong = WRONG): void {
  pen.fill({ x, y, width: bar.length, height: BAR_WIDTH });
  for (const end of [x, x + bar.length - HAIRLINE])
    pen.fill({ x: end, y: y - BAR_END, width: HAIRLINE, height: BAR_WIDTH + 2 * BAR_END });
  pen.text(barWords(bar, wrong), [x + 1, y + BAR_WIDTH + 0.8], SMALL);
}

/** An upright bar from `y`, its left edge at `x`, with what it must measure on its right. */
export function drawUprightBar(pen: Pen, bar: Bar, [x, y]: readonly [number, number], wrong = WRONG): void {
  pen.fill({ x, y, width: BAR_WIDTH, height: bar.length });
  for (const end of [y, y + bar.length - HAIRLINE])
    pen.fill({ x: x - BAR_END / 2, y: end, width: BAR_WIDTH + BAR_END, height: HAIRLINE });
  pen.text(barWords(bar, wrong), [x + BAR_WIDTH + 0.8 + SMALL, y + 1], SMALL, { angle: Math.PI / 2 });
}

/** Check bars, names and a line between them and the drawing. */
export function drawFoot(
  pen: Pen,
  page: Page,
  { title, names, number, pages, units }: PageNames,
  letters: Lettering,
): void {
  const { margin, frame } = page;
  const [left, bottom, right] = [margin, margin, page.width - margin];
  drawLevelBar(pen, BARS[units], [left, bottom + BAR_IN.up]);
  drawUprightBar(pen, BARS[units], [left + BAR_IN.across, frame.y]);
  const room = right - MAP.width - GAP - left;
  pen.text(shorten(letters, names, 3, room), [left, bottom + 20.5], 3);
  pen.text(shorten(letters, title, 2.3, room - PAGE_ROOM), [left, bottom + 15], 2.3);
  pen.text(`Page ${number} of ${pages}`, [left + room, bottom + 15], 2.3, { anchor: 'end' });
  const beside = left + 4 * MM_PER_INCH + GAP;
  drawWarning(pen, { x: beside, y: bottom - 0.5, width: left + room - beside, height: 12.5 }, letters);
  pen.style(HAIRLINE);
  pen.line([left, bottom + FOOT_BAND - 1.5], [right, bottom + FOOT_BAND - 1.5]);
}

/** A frame no one looks past, `width` mm wide, inside its box. */
export function heavyBox(pen: Pen, { x, y, width: wide, height: high }: Rect, width: number): void {
  pen.fill({ x, y, width: wide, height: width });
  pen.fill({ x, y: y + high - width, width: wide, height: width });
  pen.fill({ x, y, width, height: high });
  pen.fill({ x: x + wide - width, y, width, height: high });
}

/** What must be done with every page before anything else, in a heavy frame. */
function drawWarning(pen: Pen, box: Rect, letters: Lettering): void {
  const { height, frame, padding } = WARNING;
  const [left, room] = [box.x + padding, box.width - 2 * padding];
  heavyBox(pen, box, frame);
  const top = box.y + box.height - padding - height;
  pen.text(shorten(letters, 'MEASURE THE BARS FIRST', height, room), [left, top], height);
  const lines = ['A bar wrong: do not use this page.', 'Ticks stand on the waste side. Joining: page 1.'];
  for (const [index, line] of lines.entries())
    pen.text(shorten(letters, line, SMALL, room), [left, top - (index + 1) * 3.4], SMALL);
}

/** The pages of a drawing in miniature, this one filled; nothing but the one page where the drawing is whole on it. */
export function drawMap(
  pen: Pen,
  page: Page,
  grid: Pick<Grid, 'columns' | 'rows' | 'overlap' | 'page'>,
  tile: Pick<Tile, 'row' | 'column'>,
): void {
  const { frame } = grid.page;
  const [stepX, stepY] = [frame.width - grid.overlap, frame.height - grid.overlap];
  const scale = Math.min(MAP.width / (grid.columns * stepX), MAP.height / (grid.rows * stepY));
  const [width, height] = [stepX * scale, stepY * scale];
  const [left, top] = [page.width - page.margin - grid.columns * width, page.margin + MAP.height];
  pen.style(HAIRLINE);
  for (let row = 0; row < grid.rows; row++) {
    for (let column = 0; column < grid.columns; column++) {
      const cell = { x: left + column * width, y: top - (row + 1) * height, width, height };
      const here = row === tile.row && column === tile.column;
      if (here) pen.fill(cell, 0.7);
      pen.box(cell);
      const letter = Math.min(2.2, width / 3, height / 2);
      if (letter >= 1)
        pen.text(
          grid.columns * grid.rows === 1 ? 'whole' : tileName(row, column),
          [cell.x + width / 2, cell.y + (height - letter) / 2],
          letter,
          { anchor: 'middle' },
        );
    }
  }
}

/** The seams of a tile: where to trim, what to glue, and the register marks. */
export function drawSeams(pen: Pen, tile: Tile, overlap: number): void {
  for (const seam of tile.seams) {
    pen.style(seam.over ? 0.2 : HAIRLINE, seam.over ? [] : [3, 2]);
    pen.line(seam.from, seam.to);
    pen.style(HAIRLINE);
    for (const [x, y] of seam.marks) {
      pen.line([x - ARM, y], [x + ARM, y]);
      pen.line([x, y - ARM], [x, y + ARM]);
      pen.circle(x, y, RING);
      const [aside, up, anchor] = PAIR_AT[seam.side];
      pen.text(seam.pair, [x + aside, y + up], SMALL, { anchor });
    }
    drawSeamWords(pen, seam, overlap);
  }
}

/** Words along a seam, in the half of the overlap that is cut off or covered. */
function drawSeamWords(pen: Pen, { side, neighbour, over, from, to }: Seam, overlap: number): void {
  const words = over ? `trim here, glue ${neighbour} under this edge` : `${neighbour} is glued over this strip`;
  const strip = (overlap / 2 + SMALL) / 2;
  const along = [from[0] + (to[0] - from[0]) * 0.2, from[1] + (to[1] - from[1]) * 0.2] as const;
  const baselines = {
    right: [strip, 0],
    left: [SMALL - strip, 0],
    top: [0, strip - SMALL],
    bottom: [0, -strip],
  } as const;
  const baseline = baselines[side];
  pen.text(words, [along[0] + baseline[0], along[1] + baseline[1]], SMALL, {
    angle: side === 'left' || side === 'right' ? Math.PI / 2 : 0,
  });
}
