import { error } from '../entry';

/** What there is no room for in the finishing block. */
export const blockFindings = {
  'block-too-thick': error({ thickness: 'length' }, ({ thickness }, { field }) => ({
    message: `the bend is shorter than one layer of board ${thickness} thick`,
    hint: `choose a thinner board with ${field('block.stock')}`,
  })),
  'block-too-many-layers': error({ most: 'count', thickness: 'length' }, ({ most, thickness }) => ({
    message: `the finishing block takes more than ${most} layers of board ${thickness} thick`,
    hint: 'make it shorter or choose a thicker board',
    allowed: `at most ${most} layers`,
  })),
  'block-without-room-for-dowels': error({ between: 'length', needed: 'length' }, ({ between, needed }) => ({
    message: `the finishing block’s smallest layer leaves ${between} between its two dowel holes; ${needed} are needed`,
    hint: 'move it toward the larger radius, or leave it out and dress over a station',
    got: between,
    allowed: `at least ${needed}`,
  })),
  'block-larger-than-board': error(
    { size: 'size', board: 'text', room: 'size' },
    ({ size, board, room }, { field }) => ({
      message: `a layer of the finishing block is ${size}; ${board} gives ${room} inside its border`,
      hint: `choose a larger board with ${field('block.stock')}`,
      got: size,
      allowed: `at most ${room}`,
    }),
  ),
};
