import { finding } from '../../findings/finding';
import type { Reader } from '../reader';
import { BOARD_THICKNESS, type BoardChoice } from './board';
import { block, field, orNull, type Read } from './field';
import { board, length } from './quantities';
import { ROUNDING } from '../../base/tolerance';

/** The block of layers of board to dress the finished bend over. */
export const finishingBlock = orNull(
  block(
    { help: 'A block of layers of board to dress the finished bend over; none unless said', group: 'block' },
    {
      /** Its middle along the tangent line from end A, mm. */
      at: field({
        label: 'Middle of the block, from end A',
        help: 'Middle of the block along the tangent line, from end A',
        example: '310',
        is: length(0, 6000),
        required: true,
      }),
      /** Along the tangent line, mm. */
      length: field({
        label: 'Its length',
        help: 'Length of the block along the tangent line, rounded up to whole layers of board',
        example: '100',
        is: length(2, 6000),
        required: true,
      }),
      stock: field({
        label: 'Its board',
        help: 'Id of the block’s board in shared/boards.json',
        example: 'mdf-18',
        is: board,
        without: 'the stations’',
      }),
      thickness: field({
        label: 'Thickness of its board as measured',
        help: 'Thickness of the block’s board as you measured it, where it is not the table’s',
        example: '17.8',
        is: BOARD_THICKNESS,
        without: 'the table’s',
      }),
    },
  ),
);

/** Where along the bend the finishing block fits, and what it is built from. */
export interface BlockChoice {
  /** Its middle along the tangent line from end A, mm. */
  readonly at: number;
  /** Along the tangent line, mm: rounded up to whole layers. */
  readonly length: number;
  readonly board: BoardChoice;
}

/** The block with its board, which is the stations' unless it names its own; it lies within the bend's length (mm). */
export function blockOf(
  reader: Reader,
  given: Read<typeof finishingBlock>,
  bendLength: number,
  stations: BoardChoice,
): BlockChoice | null {
  if (!given) return null;
  const { at, length: long, stock, thickness } = given;
  const [low, high] = [at - long / 2, at + long / 2];
  if (low < -ROUNDING || high > bendLength + ROUNDING) {
    reader.refuse(finding('block-outside-bend', 'block', { from: low, to: high, length: bendLength }));
  }
  const board =
    stock === null ? { stock: stations.stock, thickness: thickness ?? stations.thickness } : { stock, thickness };
  return { at, length: long, board };
}
