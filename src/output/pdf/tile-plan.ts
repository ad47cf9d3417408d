import type { Bounds } from '../../base/bounds';
import type { Move } from '../../base/transform';
import type { PaperChoice } from '../../job/job';
import { cutRoll, isRoll, pagesOf, type Page, type Size } from './paper';
import { SAME_PLACE } from '../../base/tolerance';

/**
 * How a drawing at 1:1 is spread over pages: pure numbers, mm. Neighbouring frames share a strip as wide as the overlap; the seam runs
 * down its middle. Rows are lettered from the top, columns numbered from the left: A1, A2 … B1 …
 */

/** The pages of one drawing: `columns` × `rows` frames, the drawing in the middle of what they cover. */
export interface Grid {
  readonly page: Page;
  /** Turned a quarter counter-clockwise on the paper. */
  readonly turned: boolean;
  readonly columns: number;
  readonly rows: number;
  readonly overlap: number;
  /** Moves the drawing onto the grid: origin at the lower left corner of the lower left frame. */
  readonly place: Move;
}

/** One page of a grid. */
export interface Tile {
  readonly name: string;
  /** From the top and from the left, counted from 0. */
  readonly row: number;
  readonly column: number;
  /** Moves the drawing onto this page. */
  readonly place: Move;
  readonly seams: readonly Seam[];
}

/** Where a page is joined to a neighbour, in the page's coordinates. */
export interface Seam {
  readonly side: 'left' | 'right' | 'top' | 'bottom';
  readonly neighbour: string;
  /** Names of both pages, the same on both. */
  readonly pair: string;
  /** This page is trimmed along the line and lies over its neighbour; otherwise it lies under it. */
  readonly over: boolean;
  readonly from: Point;
  readonly to: Point;
  /** Register marks: the same points of the drawing on both pages. */
  readonly marks: readonly Point[];
}

type Point = readonly [number, number];

/** Where along a seam its register marks stand, as shares of its length: clear of its ends, where other seams cross it. */
const MARKS_AT = [1 / 6, 1 / 2, 5 / 6];

/** How many frames of a length cover another length, each sharing the overlap with the next. */
function framesOver(length: number, frame: number, overlap: number): number {
  return length <= frame + SAME_PLACE ? 1 : Math.ceil((length - overlap - SAME_PLACE) / (frame - overlap));
}

/**
 * The grid with the fewest pages, over upright and lying pages and the drawing as it is or turned. Among equals the fewest seams, then the
 * shortest page of a roll, then an upright page, then the drawing as it is. `bounds`: all that must show, mm.
 */
export function gridFor(bounds: Bounds, paper: PaperChoice): Grid {
  const choices = pagesOf(paper).flatMap((page) => [false, true].map((turned) => gridOn(page, turned, bounds, paper)));
  return choices.reduce((best, grid) => (isBetter(grid, best) ? grid : best));
}

function isBetter(grid: Grid, best: Grid): boolean {
  const measures = [pageCount, seamCount, ({ page }: Grid) => page.height * page.width];
  const measure = measures.find((of) => Math.abs(of(grid) - of(best)) > SAME_PLACE);
  return measure !== undefined && measure(grid) < measure(best);
}

/** Pages in a grid. */
export function pageCount({ columns, rows }: Pick<Grid, 'columns' | 'rows'>): number {
  return columns * rows;
}

function seamCount({ columns, rows }: Grid): number {
  return (columns - 1) * rows + (rows - 1) * columns;
}

function gridOn(longest: Page, turned: boolean, bounds: Bounds, paper: PaperChoice): Grid {
  const size = turn({ width: bounds.maxX - bounds.minX, height: bounds.maxY - bounds.minY }, turned);
  const { overlap } = paper;
  const columns = framesOver(size.width, longest.frame.width, overlap);
  const rows = framesOver(size.height, longest.frame.height, overlap);
  const page = isRoll(paper) && rows === 1 ? cutRoll(longest, size.height) : longest;
  const aside = (covered(columns, page.frame.width, overlap) - size.width) / 2;
  const above = (covered(rows, page.frame.height, overlap) - size.height) / 2;
  return { page, turned, columns, rows, overlap, place: placeAt(bounds, turned, aside, above) };
}

/** Moves the lower left corner of some bounds, after a quarter turn where they are turned, to `x`, `y`. */
export function placeAt(bounds: Bounds, turned: boolean, x: number, y: number): Move {
  return turned
    ? { angle: Math.PI / 2, dx: x + bounds.maxY, dy: y - bounds.minX }
    : { angle: 0, dx: x - bounds.minX, dy: y - bounds.minY };
}

/** A size after a quarter turn. */
export function turn({ width, height }: Size, turned: boolean): Size {
  return turned ? { width: height, height: width } : { width, height };
}

function covered(count: number, frame: number, overlap: number): number {
  return count * frame - (count - 1) * overlap;
}

/** The pages of a grid, row by row from the top. */
export function tilesOf(grid: Grid): Tile[] {
  return Array.from({ length: pageCount(grid) }, (_, index) =>
    tileAt(grid, Math.floor(index / grid.columns), index % grid.columns),
  );
}

function tileAt(grid: Grid, row: number, column: number): Tile {
  const { frame } = grid.page;
  const [left, bottom] = [column * (frame.width - grid.overlap), (grid.rows - 1 - row) * (frame.height - grid.overlap)];
  return {
    name: tileName(row, column),
    row,
    column,
    place: { ...grid.place, dx: grid.place.dx + frame.x - left, dy: grid.place.dy + frame.y - bottom },
    seams: seamsOf(grid, row, column),
  };
}

/** `A1`: the row's letters from the top, the column's number from the left, both counted from 0. */
export function tileName(row: number, column: number): string {
  const letters = (index: number): string =>
    (index < 26 ? '' : letters(Math.floor(index / 26) - 1)) + String.fromCharCode(65 + (index % 26));
  return `${letters(row)}${column + 1}`;
}

function seamsOf({ page: { frame }, overlap, columns, rows }: Grid, row: number, column: number): Seam[] {
  const [left, right, bottom, top] = [frame.x, frame.x + frame.width, frame.y, frame.y + frame.height];
  const seam = (side: Seam['side'], from: Point, to: Point): Seam => {
    const [down, across] = ({ left: [0, -1], right: [0, 1], top: [-1, 0], bottom: [1, 0] } as const)[side];
    const [name, neighbour] = [tileName(row, column), tileName(row + down, column + across)];
    const over = side === 'right' || side === 'top';
    const marks = MARKS_AT.map((share): Point => [
      from[0] + share * (to[0] - from[0]),
      from[1] + share * (to[1] - from[1]),
    ]);
    return {
      side,
      neighbour,
      pair: side === 'right' || side === 'bottom' ? `${name}-${neighbour}` : `${neighbour}-${name}`,
      over,
      from,
      to,
      marks,
    };
  };
  const half = overlap / 2;
  return [
    ...(column > 0 ? [seam('left', [left + half, bottom], [left + half, top])] : []),
    ...(column < columns - 1 ? [seam('right', [right - half, bottom], [right - half, top])] : []),
    ...(row > 0 ? [seam('top', [left, top - half], [right, top - half])] : []),
    ...(row < rows - 1 ? [seam('bottom', [left, bottom + half], [right, bottom + half])] : []),
  ];
}
