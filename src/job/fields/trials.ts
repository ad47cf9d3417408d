import { field, list } from './field';
import { angle, length } from './quantities';

/** Strips of the job's own sheet, bent round a disc and let go. */
export const trials = list(
  {
    help: 'Strips of your own sheet, bent and measured: they set the springback in place of the tables’',
    one: 'strip',
    empty:
      'None: springback by the tables. Bend a strip at least 8 thicknesses wide round a disc, let go, and enter what you measured.',
    group: 'trials',
    least: 1,
    most: 20,
  },
  {
    /** Of the disc, mm. */
    radius: field({
      label: 'radius of the disc',
      help: 'Radius of the disc the strip was bent round',
      example: '38',
      fresh: ['bend', 'radius', 'from'],
      is: length(1, 3000),
      required: true,
    }),
    /** Turn away from flat between the strip's legs while held on the disc, radians. Less cannot be measured well enough, more cannot be reached. */
    bent: field({
      label: 'angle bent',
      help: 'Degrees turned from flat while held on the disc',
      example: '95',
      is: angle(5, 179),
      required: true,
    }),
    /** The same after it was let go. */
    left: field({
      label: 'angle left',
      help: 'Degrees turned from flat after it was let go',
      example: '84.5',
      is: angle(0, 179),
      required: true,
    }),
    /** mm; null where it was not said. */
    width: field({
      label: 'width of the strip',
      help: 'Width of the strip: at least 8 times its thickness',
      example: '30',
      is: length(1, 500),
      without: 'not said',
    }),
  },
);
