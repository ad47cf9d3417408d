import { findBoard } from '../../tables/look-up';
import type { Part } from '../../drawing/parts/part';
import type { LaidOut } from '../../drawing/boards/laid-out';
import { html, type HtmlElement } from '../html';
import { isPrintable } from '../pdf/board-page';
import { alike, pieceNames, type PieceRow } from './cut-list';
import { drawBoard } from './board-drawing';
import { isHatched } from './jigsaw-marks';
import { paragraph, table } from './pieces';
import type { Shop } from './shop';

/** What pictures of boards are drawn by; `rowOf`: a piece's line of the cut list. */
export interface ShownBoards extends Pick<Shop, 'job' | 'say' | 'tables' | 'parts' | 'boards'> {
  readonly rowOf: (part: Part) => PieceRow;
}

/** A picture of every board and offcut with its parts in place, and the list of what is cut from it. */
export function boardFigures(shown: ShownBoards): HtmlElement[] {
  return [
    paragraph(shown.job.cut.with === 'jigsaw' ? BY_HAND : BY_MACHINE, ...(isHatched(shown) ? [HATCHING] : [])),
    ...shown.boards.map((board) => boardFigure(shown, board)),
  ];
}

const BY_HAND =
  'Copy the layout, or make your own: leave the gap between parts that your saw needs. Every board is drawn full size in the folder “boards”, every part in “parts”.';
const BY_MACHINE =
  'Every board is drawn full size in the folder “boards”, for the machine’s program, inside before outside; every part by itself in “parts”.';
const HATCHING =
  ' Slanted hatching on the full-size boards marks waste between two parts that is narrower than a saw is safely steered in: keep the blade on the hatched side of both lines.';

function boardFigure(shop: ShownBoards, board: LaidOut): HtmlElement {
  const { say, parts, rowOf } = shop;
  const name = boardName(shop, board);
  const size = board.offcut === null ? say.atLeast : say.length;
  const used = say.atLeast(board.used.length);
  const lines = (length: string): string[] => length.split(' / ');
  const { svg, frame, narrow } = drawBoard(board, parts, {
    title: `${name}, laid out`,
    length: ['length', ...lines(size(board.length))],
    width: ['width', ...lines(size(board.width))],
    used: ['used', ...lines(used)],
    rest: 'rest of the board',
  });
  const broken = frame.broken.length || frame.broken.width;
  const caption = html(
    'figcaption',
    {},
    html('strong', {}, `${name.charAt(0).toUpperCase()}${name.slice(1)}`),
    `, ${size(board.width)} × ${size(board.length)}. Used from the heavy end to the dashed line: ${used} of its length, ${Math.round(100 * board.used.share)}\u00a0% of that stretch is parts. `,
    broken ? 'Only the used end is drawn: the board goes on past the zigzag line. ' : '',
    `Drawn about 1:${frame.scale} on paper; full size in boards/${board.id}${isPrintable(board) ? '' : ', as SVG and DXF only: it is longer than one PDF page can be'}.`,
  );
  const ids = new Set(board.placements.map(({ part }) => part));
  const placed = parts.filter(({ id }) => ids.has(id));
  const rows = alike(placed.map((part) => ({ ...rowOf(part), names: [part.id] })));
  return html(
    'div',
    { class: narrow ? 'board beside' : 'board' },
    html('figure', {}, svg, caption),
    table(
      `Cut from ${name}`,
      ['Piece', 'What', 'Quantity'],
      rows.map(({ names, what, size: measures }) => [pieceNames(names), `${what}, ${measures}`, String(names.length)]),
    ),
  );
}

/** `board 1 of 2, MDF 18 mm`, or `your offcut 1, MDF 18 mm`. */
function boardName({ boards, tables }: ShownBoards, board: LaidOut): string {
  const stock = findBoard(tables, board.stock)?.name ?? board.stock;
  if (board.offcut !== null) return `your offcut ${board.offcut + 1}, ${stock}`;
  const whole = boards.filter(({ offcut }) => offcut === null);
  const sold = findBoard(tables, board.stock);
  const isPiece = sold !== undefined && (board.length < sold.length || board.width < sold.width);
  return `${isPiece ? 'piece' : 'board'} ${whole.indexOf(board) + 1} of ${whole.length}, ${stock}`;
}
