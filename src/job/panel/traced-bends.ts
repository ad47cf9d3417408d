import * as z from 'zod/mini';
import type { Point } from '../../base/polygon';
import { block, field, list, shortened } from '../fields/field';
import { RADIUS } from '../fields/bend';
import { choice, name } from '../fields/quantities';
import { bendFields } from './bend-fields';
import { formChoice } from './form-choice';
import { written } from './keyed';
import { placeAt, placeShape } from './places';

const MOST_BENDS = 6;

const line = written<readonly [Point, Point]>(
  {
    label: 'line',
    help: 'The line it is made along, from its end A to its end B, as drawn; it is run on to the outline’s edges. Where it begins to curve, or the line the card is folded on: see `outline.mockup`',
    example: '[[40, 220], [560, 220]]',
  },
  {
    shape: z.tuple([placeShape, placeShape]),
    writing: 'Two places [x, y]',
    required: true,
    without: '',
    read: (reader, path) => [placeAt(reader, [...path, 0]), placeAt(reader, [...path, 1])],
  },
);

/** The bends of a traced outline, each along a line drawn on it. */
export const tracedBends = list(
  {
    help: 'The bends, each along a line of the outline',
    one: 'bend',
    empty: 'No bend',
    group: 'bend',
    least: 1,
    most: MOST_BENDS,
  },
  {
    name: field({ label: 'name', help: 'What you call the bend', example: 'flange', is: name, required: true }),
    line,
    free: field({
      label: 'free side',
      help: 'Which side of its line is turned, looking from end A to end B on the marked face',
      is: choice(['left', 'right']),
      required: true,
    }),
    ...bendFields,
    radius: shortened(
      block(
        {
          help: 'Inside radius after release where the line meets the outline: one length, or { from, to }',
          required: true,
        },
        {
          from: field({
            label: 'inside radius at end A',
            help: 'Inside radius after release at end A',
            example: '30',
            is: RADIUS,
            required: true,
          }),
          to: field({
            label: 'inside radius at end B',
            help: 'Inside radius after release at end B',
            example: '45',
            is: RADIUS,
            required: true,
          }),
        },
      ),
      ['from', 'to'],
    ),
    form: formChoice,
  },
);
