import { boundsOf } from '../base/bounds';
import { findBoard } from '../tables/look-up';
import type { Part } from '../parts/part';
import type { Backing, Station } from '../fixture/fixture';
import { radiusAtCentre } from '../base/cone';
import { html, type HtmlElement } from '../write/html';
import { list, paragraph, table } from './pieces';
import type { Shop } from './shop';

interface CutRow {
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
    [
      spineRow(shop),
      ...alike(shop.layout.stations.map((station) => stationRow(shop, station))),
      ...alike(shop.layout.backings.map((backing) => backingRow(shop, backing))),
      ...alike(otherParts(shop).map((part) => drawnRow(shop, part))),
    ].map(
      ({ names, what, size, board }) => [names.join(', '), what, size, board, String(names.length)],
    ),
  );
}

function alike(rows: readonly CutRow[]): CutRow[] {
  const groups = new Map<string, CutRow>();
  for (const row of rows) {
    const held = groups.get(row.size);
    groups.set(row.size, held ? { ...held, names: [...held.names, ...row.names] } : row);
  }
  return [...groups.values()];
}

function spineRow({ layout, bend, say, board }: Shop): CutRow {
  const { length, ears } = layout.spine;
  const [atA, atB] = [radiusAtCentre(bend.form, -ears), radiusAtCentre(bend.form, length + ears)].map((half) => say.length(2 * half)) as [string, string];
  return { names: ['spine'], what: 'board on edge', size: `${say.length(length + 2 * ears)} long, ${bend.form.halfAngle === 0 ? `${atA} wide` : `${atA} wide at end A to ${atB} at end B`}`, board: board.spine.name };
}

function stationRow({ say, board }: Shop, { name, radius }: Station): CutRow {
  return { names: [name], what: 'half-disc', size: `radius ${say.length(radius)}: ${say.length(2 * radius)} × ${say.length(radius)}`, board: board.stations.name };
}

function backingRow({ say, board }: Shop, { name, width, depth }: Backing): CutRow {
  return { names: [name], what: 'rectangle', size: `${say.length(width)} high × ${say.length(depth)} deep`, board: board.backing.name };
}

/** Pieces beside the form itself, such as a finishing block's layers. */
function otherParts({ parts, layout }: Shop): Part[] {
  const own = new Set(['spine', ...layout.stations.map(({ name }) => name), ...layout.backings.map(({ name }) => name)]);
  return parts.filter((part) => !own.has(part.id));
}

function drawnRow({ say, tables }: Shop, { name, stock, drawing }: Part): CutRow {
  const { minX, minY, maxX, maxY } = boundsOf(drawing);
  return { names: [name], what: 'as drawn', size: `within ${say.length(maxX - minX)} × ${say.length(maxY - minY)}`, board: findBoard(tables, stock)?.name ?? stock };
}

/** Boards to buy or find: whole boards as sold, and the offcut that would do. */
export function boardList({ boards, say, tables }: Shop): HtmlElement[] {
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
        return sheets.length > 1 ? whole : `${whole}; an offcut of ${offcut(first.drawing, say.atLeast, tables.rules.boardBorder)} will do, laid out as drawn`;
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
