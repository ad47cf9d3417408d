import { field } from '../fields/field';
import { ANGLE } from '../fields/bend';
import { choice } from '../fields/quantities';

/** What a bend of a panel says whichever way the panel is given. */
export const bendFields = {
  turn: field({
    label: 'turn',
    help: 'To which side of the marked face the leg rises',
    is: choice(['up', 'down']),
    unless: 'up',
  }),
  angle: field({
    label: 'angle',
    help: 'Degrees turned from flat, between the two faces',
    example: '90',
    is: ANGLE,
    required: true,
  }),
};
