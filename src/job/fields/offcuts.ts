import { field, list } from './field';
import { board, length } from './quantities';

const SIDE = length(20, 6000);

/** Pieces of board to use before whole ones. */
export const offcuts = list(
  {
    help: 'Rectangles of board left over from other work, used before whole boards',
    one: 'offcut',
    empty: 'None: whole boards.',
    group: 'offcuts',
    most: 40,
  },
  {
    /** Id of a row of `shared/boards.json`. */
    stock: field({
      label: 'board',
      help: 'Id of a board in shared/boards.json',
      example: 'mdf-18',
      fresh: ['board', 'stock'],
      is: board,
      required: true,
    }),
    width: field({ label: 'width', help: 'Across the offcut', example: '300', is: SIDE, required: true }),
    length: field({ label: 'length', help: 'Along the offcut', example: '800', is: SIDE, required: true }),
    /** As measured, mm; null where it is as thick as the job's boards of its kind. */
    thickness: field({
      label: 'thickness as measured',
      help: 'Thickness as you measured it, where it is not that of the job’s boards of this kind',
      example: '17.8',
      is: length(2, 100),
      without: 'as the job’s boards',
    }),
  },
);
