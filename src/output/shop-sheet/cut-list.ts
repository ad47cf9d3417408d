import { boundsOf } from '../../base/bounds';
import { InternalError } from '../../base/errors';
import { findBoard } from '../../tables/look-up';
import type { Part } from '../../drawing/parts/part';
import { radiusAtCentre } from '../../base/cone';
import { outlineOf } from '../../drawing/boards/outline';
import { html, type HtmlElement, type HtmlNode } from '../html';
import { table } from './pieces';
import type { Shop } from './shop';
import { yokeMembers } from './yoke-rows';

/** A line of the cut list: one piece, or several alike. */
export interface PieceRow {
  readonly names: readonly string[];
  readonly what: string;
  readonly size: string;
  readonly board: string;
}

/** Every piece of board, alike ones together. */
export function cutList(shop: Shop): HtmlElement {
  return table(
    'Cut list',
    ['Piece', 'What', 'Size', 'Board', 'Quantity'],
    alike(shop.parts.map((part) => pieceRow(shop, part)))
      .map(({ names, what, size, board }) => [pieceNames(names), what, size, oneLine(board), String(names.length)])
      .concat(
        yokeMembers(shop).map(({ name, stock, length, number, remark }) => [
          [name],
          remark,
          length,
          stock,
          String(number),
        ]),
      ),
  );
}

/** Names in a row; none is broken at its own hyphen. */
export function pieceNames(names: readonly string[]): HtmlNode[] {
  return names.flatMap((name, index): HtmlNode[] => [
    index > 0 ? ', ' : '',
    name.includes(' ') ? name : html('span', { class: 'whole' }, name),
  ]);
}

/** Board names up to so many letters take no more than their column's head. */
const SHORT = 12;

/** A short board name on one line, so that each row is one; a long one at least with its unit on the number's. */
function oneLine(name: string): string {
  return name.replaceAll(name.length <= SHORT ? ' ' : / (?=(?:mm|in)\b)/gu, '\u00a0');
}

/** Rows of pieces that differ in nothing but their names as one. */
export function alike(rows: readonly PieceRow[]): PieceRow[] {
  const groups = new Map<string, PieceRow>();
  for (const row of rows) {
    const key = JSON.stringify([row.what, row.size, row.board]);
    const held = groups.get(key);
    groups.set(key, held ? { ...held, names: [...held.names, ...row.names] } : row);
  }
  return [...groups.values()];
}

/** What a piece is, in the words of its trade where it is one of the form's own, else by its size as drawn. */
export function pieceRow(shop: Shop, part: Part): PieceRow {
  switch (part.kind) {
    case 'spine':
      return spineRow(shop, part);
    case 'station':
      return stationRow(shop, part);
    case 'backing':
      return backingRow(shop, part);
    case 'test':
      return testRow(shop, part);
    case 'block':
      return { names: [part.name], what: 'as drawn', size: `within ${sizeOf(shop, part)}`, board: boardOf(shop, part) };
  }
}

function spineRow({ layout, bend, say, board }: Shop, { id }: Part): PieceRow {
  const { length, ears } = layout.spine;
  const widthAt = (s: number): string => say.length(2 * radiusAtCentre(bend.form, s));
  const [atA, atB] = [widthAt(-ears), widthAt(length + ears)];
  return {
    names: [id],
    what: layout.layers.spine > 1 ? 'layer of the spine' : 'board on edge',
    size: `${say.length(length + 2 * ears)} long, ${bend.form.halfAngle === 0 ? `${atA} wide` : `${atA} wide at end A to ${atB} at end B`}`,
    board: board.spine.name,
  };
}

/** The size is that of the piece as cut, with what reaches into the spine. */
function stationRow(shop: Shop, part: Part): PieceRow {
  return {
    names: [part.id],
    what: `half-disc${reachOf(shop, part)}`,
    size: `radius ${shop.say.length(radiusOf(shop, part))}: ${sizeOf(shop, part)}`,
    board: shop.board.stations.name,
  };
}

function radiusOf({ layout, joints }: Shop, { id }: Part): number {
  const station = layout.stations.find(({ name }) => isOf(name, id));
  const stack = joints.with === 'laser' ? joints.boards.find(({ name }) => isOf(name, id)) : undefined;
  const radius = (stack?.layers.find((_, index) => id === `${stack.name}-${index + 1}`) ?? station)?.radius;
  if (radius === undefined) throw new InternalError(`a station that is none: ${id}`);
  return radius;
}

/** Whether a piece is this board, or one of its layers. */
function isOf(name: string, id: string): boolean {
  return id === name || id.startsWith(`${name}-`);
}

function backingRow(shop: Shop, part: Part): PieceRow {
  const { wide, high } = extentOf(shop, part);
  return {
    names: [part.id],
    what: `rectangle${reachOf(shop, part)}`,
    size: `${shop.say.length(high)} high × ${shop.say.length(wide)} deep`,
    board: shop.board.backing.name,
  };
}

/** What a piece has beyond its own shape, which its size counts in. */
function reachOf({ joints }: Shop, { id, kind }: Part): string {
  if (joints.with === 'laser')
    return joints.boards.some(({ name, tabs }) => isOf(name, id) && tabs.length > 0) ? ' with tabs' : '';
  return joints.with === 'router' && kind === 'station' ? ' with its edge in the groove' : '';
}

function testRow(shop: Shop, part: Part): PieceRow {
  const what =
    part.id === 'fit-test'
      ? `strip to try the fit, with three ${shop.joints.with === 'router' ? 'grooves' : 'slots'}`
      : 'tongue to try the fit';
  return { names: [part.id], what, size: sizeOf(shop, part), board: boardOf(shop, part) };
}

function boardOf({ tables }: Shop, { stock }: Part): string {
  return findBoard(tables, stock)?.name ?? stock;
}

function sizeOf(shop: Shop, part: Part): string {
  const { wide, high } = extentOf(shop, part);
  return `${shop.say.length(wide)} × ${shop.say.length(high)}`;
}

/** Of a piece as it comes out, mm: a laser's drawing is larger by the beam. */
export function extentOf({ job }: Pick<Shop, 'job'>, part: Part): { readonly wide: number; readonly high: number } {
  const { minX, minY, maxX, maxY } = boundsOf({ shapes: [outlineOf(part)] });
  const beam = job.cut.with === 'laser' ? job.cut.kerf : 0;
  return { wide: maxX - minX - beam, high: maxY - minY - beam };
}

/** Joints are cut to the board: a jigsaw's drawn lines forgive more. */
export function measureFirst({ job, say }: Shop): string[] {
  if (job.cut.with !== 'jigsaw')
    return [
      `Measure your boards at several places, to ${say.units === 'in' ? 'a thousandth or two of an inch' : '0.05 mm'}: if one differs from the thickness reckoned here, give the measured thickness in the job file and make the files again. ${job.cut.with === 'router' ? 'Grooves' : 'Slots, and what stands in them,'} are cut to it.`,
    ];
  return [
    'Measure your board: if its thickness differs from the one reckoned here by more than ',
    say.units === 'in' ? '1/64 in' : '0.5 mm',
    ', give the measured thickness in the job file and print again. The station positions depend on it.',
  ];
}
