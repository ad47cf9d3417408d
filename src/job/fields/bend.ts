import { finding } from '../../findings/finding';
import type { Reader } from '../reader';
import { block, field, shortened, type Read } from './field';
import { angle, choice, length } from './quantities';

/** What every bend’s angle, inside radius and flat leg are bounded by, a panel’s too. */
export const ANGLE = angle(1, 179);
export const LEG = length(1, 3000);
export const RADIUS_RANGE = { min: 1, max: 3000 };
export const RADIUS = length(RADIUS_RANGE.min, RADIUS_RANGE.max);

/** The bend as wanted. */
export const bend = block(
  { help: 'The bend as wanted', group: 'bend', required: true },
  {
    /** Turn away from flat between the legs' planes, radians. */
    angle: field({
      label: 'Angle turned from flat',
      help: 'Degrees turned from flat, between the legs’ planes',
      example: '90',
      is: ANGLE,
      required: true,
    }),
    /** mm. */
    length: field({
      label: 'Length along the tangent line',
      help: 'Along the tangent line, end A to end B',
      example: '620',
      is: length(20, 6000),
      required: true,
    }),
    /** mm, square to the centre line. */
    radius: shortened(
      block(
        { help: 'Inside radius, square to the centre line: one length, or { from, to } for a taper', required: true },
        {
          from: field({
            label: 'Inside radius at end A',
            help: 'Inside radius at end A',
            example: '38',
            is: RADIUS,
            required: true,
          }),
          to: field({
            label: 'Inside radius at end B',
            help: 'Inside radius at end B',
            example: '50',
            is: RADIUS,
            required: true,
          }),
        },
      ),
      ['from', 'to'],
    ),
    radiusOf: field({
      label: 'The radii are',
      help: 'Whether the radii are the part’s after release, or the form’s as cut',
      is: choice(['finished', 'form'], { finished: 'the part’s, after release', form: 'the form’s, as cut' }),
      unless: 'finished',
    }),
    legs: block(
      { help: 'The flats on either side of the bend', required: true },
      {
        held: field({
          label: 'Held leg',
          help: 'The leg clamped under the spine, from the tangent line',
          example: '40',
          is: LEG,
          required: true,
        }),
        free: field({
          label: 'Free leg',
          help: 'The leg that is pulled up, from the tangent line',
          example: '180',
          is: LEG,
          required: true,
        }),
      },
    ),
  },
);

/** No cone grows by more than its length. */
export function checkTaper(reader: Reader, { radius, length }: Read<typeof bend>): void {
  const growth = Math.abs(radius.to - radius.from);
  if (!(growth >= length)) return;
  reader.refuse(finding('taper-too-steep', 'bend.radius', { growth, length }));
}
