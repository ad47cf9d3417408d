import { boundsOf } from '../base/bounds';
import { findBoard } from '../tables/look-up';
import type { Part } from '../parts/part';
import type { Station } from '../fixture/fixture';
import { radiusAtCentre } from '../base/cone';
import { outlineOf } from '../sheets/outline';
import { html, type HtmlElement } from '../write/html';
import { list, paragraph, table } from './pieces';
import type { Shop } from './shop';

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
    alike(shop.parts.map((part) => pieceRow(shop, part))).map(({ names, what, size, board }) => [names.join(', '), what, size, board, String(names.length)]),
  );
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
  const station = shop.layout.stations.find(({ name }) => name === part.id);
  const backing = shop.layout.backings.some(({ name }) => name === part.id);
  if (part.id === 'spine') return spineRow(shop);
  if (station) return stationRow(shop, station, part);
  return backing ? backingRow(shop, part) : drawnRow(shop, part);
}

function spineRow({ layout, bend, say, board }: Shop): PieceRow {
  const { length, ears } = layout.spine;
  const [atA, atB] = [radiusAtCentre(bend.form, -ears), radiusAtCentre(bend.form, length + ears)].map((half) => say.length(2 * half)) as [string, string];
  return { names: ['spine'], what: 'board on edge', size: `${say.length(length + 2 * ears)} long, ${bend.form.halfAngle === 0 ? `${atA} wide` : `${atA} wide at end A to ${atB} at end B`}`, board: board.spine.name };
}

/** The size is that of the piece as cut, with what reaches into the spine. */
function stationRow({ say, board }: Shop, { radius }: Station, part: Part): PieceRow {
  const { wide, high } = sizeOf(part);
  return { names: [part.id], what: 'half-disc', size: `radius ${say.length(radius)}: ${say.length(wide)} × ${say.length(high)}`, board: board.stations.name };
}

function backingRow({ say, board }: Shop, part: Part): PieceRow {
  const { wide, high } = sizeOf(part);
  return { names: [part.id], what: 'rectangle', size: `${say.length(high)} high × ${say.length(wide)} deep`, board: board.backing.name };
}

function sizeOf(part: Part): { readonly wide: number; readonly high: number } {
  const { minX, minY, maxX, maxY } = boundsOf({ shapes: [outlineOf(part)] });
  return { wide: maxX - minX, high: maxY - minY };
}

function drawnRow({ say, tables }: Shop, { name, stock, drawing }: Part): PieceRow {
  const { minX, minY, maxX, maxY } = boundsOf(drawing);
  return { names: [name], what: 'as drawn', size: `within ${say.length(maxX - minX)} × ${say.length(maxY - minY)}`, board: findBoard(tables, stock)?.name ?? stock };
}

/** Boards to buy or find: whole boards as sold, and the offcut that would do. */
export function boardList({ boards, job, say, tables }: Shop): HtmlElement[] {
  const kinds = [...new Set(boards.filter((board) => board.offcut === null).map((board) => board.stock))];
  return [
    html('h3', {}, 'Board'),
    list(
      ...kinds.map((stock) => {
        const sheets = boards.filter((board) => board.stock === stock && board.offcut === null);
        const [first] = sheets;
        const name = findBoard(tables, stock)?.name ?? stock;
        if (!first) return name;
        const whole = `${sheets.length} × ${name}, ${say.thickness(first.thickness)} thick as reckoned here, sold as ${say.atLeast(first.width)} × ${say.atLeast(first.length)}`;
        return sheets.length > 1 ? whole : `${whole}; an offcut of ${offcut(first.drawing, say.atLeast, job.cut.border)} will do, laid out as drawn`;
      }),
      ...boards.filter((board) => board.offcut !== null).map((board) => `your offcut ${(board.offcut ?? 0) + 1}: ${findBoard(tables, board.stock)?.name ?? board.stock}, ${say.length(board.width)} × ${say.length(board.length)}, ${board.placements.map(({ part }) => part).join(', ')}`),
    ),
    paragraph('Measure your board: if its thickness differs from the one reckoned here by more than ', say.units === 'in' ? '1/64 in' : '0.5 mm', ', give the measured thickness in the job file and print again. The station positions depend on it.'),
  ];
}

function offcut(drawing: Parameters<typeof boundsOf>[0], length: (mm: number) => string, border: number): string {
  const { maxX, maxY } = boundsOf(drawing);
  return `${length(maxX + border)} × ${length(maxY + border)}`;
}
