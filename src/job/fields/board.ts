import type { Reader } from '../reader';
import type { Setting } from '../setting';
import { block, field, shortened, type Block, type Read } from './field';
import { board as boards, length } from './quantities';

/** Thinnest and thickest board, mm. */
export const BOARD_THICKNESS = length(2, 100);

/** What a part is made of. */
export interface BoardChoice {
  /** Id of a row of `shared/boards.json`. */
  readonly stock: string;
  /** Thickness as measured by the maker, mm; null for the table's. */
  readonly thickness: number | null;
}

/** A part's own board; a null stock is the job's. */
interface OwnBoard {
  readonly stock: string | null;
  readonly thickness: number | null;
}

/** The board of one kind of part. `part` as in “the spine”, `label` as the page has it. */
function own(part: string, label: string): Block<OwnBoard> {
  return shortened(
    block(
      {
        help: `Board for the ${part}: an id in shared/boards.json, or { stock, thickness } with the thickness you measured`,
      },
      {
        stock: field({
          label,
          help: `Id of the board for the ${part}, in shared/boards.json`,
          example: 'ply-birch-18',
          is: boards,
          without: 'as the others',
        }),
        thickness: field({
          label: `${label}: thickness as measured`,
          help: `Thickness of the board for the ${part} as you measured it; the job’s where the board is the job’s`,
          example: '17.8',
          is: BOARD_THICKNESS,
          without: 'the table’s',
        }),
      },
    ),
    ['stock'],
  );
}

/** What the form is made of. */
export const board = shortened(
  block(
    {
      help: 'What the form is made of: an id in shared/boards.json, or a block; spine, stations and backing stations may each name their own',
      group: 'board',
    },
    {
      stock: field({
        label: 'Board',
        help: 'Id of a board in shared/boards.json, for all that do not name their own',
        example: 'mdf-18',
        is: boards,
        unless: usualBoard,
      }),
      thickness: field({
        label: 'Thickness as measured',
        help: 'Thickness of the board as you measured it, where it is not the table’s',
        example: '17.8',
        is: BOARD_THICKNESS,
        without: 'the table’s',
      }),
      spine: own('spine', 'Spine'),
      stations: own('stations', 'Stations'),
      backing: own('backing stations', 'Backing stations'),
    },
  ),
  ['stock'],
);

/** The board a form is made of unless the job says otherwise, sold in the job's unit; a laser stacks thin ones. */
function usualBoard({ tool, units }: Setting): string {
  if (units === 'in') return tool === 'laser' ? 'mdf-1/4' : 'mdf-3/4';
  return tool === 'laser' ? 'mdf-6' : 'mdf-18';
}

/** Every kind of part with its board. */
export interface Boards {
  readonly spine: BoardChoice;
  readonly stations: BoardChoice;
  readonly backing: BoardChoice;
}

/** A part that names no board of its own is of the job's; one that names its own has that one's thickness. */
export function boardsOf(reader: Reader, given: Read<typeof board>): Boards {
  const choose = (part: 'spine' | 'stations' | 'backing'): BoardChoice =>
    reader.at(['board', part]) === undefined
      ? { stock: given.stock, thickness: given.thickness }
      : { stock: given[part].stock ?? given.stock, thickness: given[part].thickness };
  return { spine: choose('spine'), stations: choose('stations'), backing: choose('backing') };
}
