import { block, field, orNull } from './field';
import { length } from './quantities';

const SIDE = length(100, 6000);

/** The machine that cuts the boards. */
export const machine = block(
  { help: 'The machine, or the bench, the boards are cut on', group: 'cut' },
  {
    /** mm; null where whole boards are laid out. */
    bed: orNull(
      block(
        { help: 'Its bed: the largest piece of board laid out at once; whole boards unless said', group: 'cut' },
        {
          width: field({
            label: 'Width of the bed',
            help: 'Across the bed, which takes the largest piece laid out at once; whole boards where there is no bed',
            example: '400',
            is: SIDE,
            required: true,
          }),
          length: field({
            label: 'Length of the bed',
            help: 'Along the bed',
            example: '600',
            is: SIDE,
            required: true,
          }),
        },
      ),
    ),
  },
);
