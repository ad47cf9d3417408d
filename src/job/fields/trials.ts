import { block, either, field, type Read } from './field';
import { ANGLE, RADIUS } from './bend';
import { angle, length } from './quantities';

/** A strip of the job's own sheet, bent round a disc and let go. */
export const strip = block(
  { help: 'A strip bent round a disc and let go' },
  {
    /** Of the disc, mm. */
    radius: field({
      label: 'radius of the disc',
      help: 'Radius of the disc the strip was bent round',
      example: '38',
      fresh: ['bend', 'radius', 'from'],
      is: RADIUS,
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

/** What came out of the form itself. */
const part = block(
  { help: 'A part bent on the form, measured after it was let go: its radius, its angle, or both, at one place' },
  {
    /** Along the tangent line from end A, mm. */
    at: field({
      label: 'where, from end A',
      help: 'Where it was measured, along the tangent line from end A; an entry for each end',
      example: '0',
      fresh: '0',
      is: length(0, 6000),
      required: true,
    }),
    /** Inside, square to the centre line, mm; null where it was not measured. */
    radius: field({
      label: 'inside radius that came out',
      help: 'Inside radius that came out there, square to the centre line',
      example: '39.5',
      is: RADIUS,
      without: 'not measured',
    }),
    /** Between the legs' planes from flat, radians; null where it was not measured. */
    angle: field({
      label: 'angle that came out',
      help: 'Angle that came out there between the legs, from flat; asks for the wrap',
      example: '87.5',
      is: ANGLE,
      without: 'not measured',
    }),
    /** Round the form to where the sheet left it at the end of the pull, radians. */
    wrap: field({
      label: 'wrap it was pulled to',
      help: 'How far round the form the sheet lay at the end of the pull, where it left the marks',
      example: '92',
      is: ANGLE,
      without: 'not said',
    }),
    /** Radius the form was cut to there, mm. */
    form: field({
      label: 'form radius it was bent on',
      help: 'Radius of the form there as it was when the part was bent',
      example: '33.8',
      is: length(0.5, 3000),
      without: 'the form’s by this job without its parts',
    }),
  },
);

/** Strips of the job's own sheet, bent round a disc and let go; and parts that came off the form. */
export const trials = either(
  {
    help: 'Strips of your own sheet, bent and measured, or finished parts: they set the springback in place of the tables’',
    empty:
      'None: springback by the tables. Bend a strip at least 8 thicknesses wide round a disc, let go, and enter what you measured; or enter what came out of the form.',
    group: 'trials',
    least: 1,
    most: 20,
  },
  { one: 'strip', block: strip },
  {
    one: 'finished part',
    key: 'part',
    block: part,
    // A radius is whole without the rest; an angle says nothing without the wrap it was pulled to.
    whole: (has) => has('at') && (has('angle') ? has('wrap') : has('radius')),
  },
);

/** A strip as measured. */
export type Strip = Read<typeof strip>;
/** A finished part as measured at one place. */
export type FinishedPart = Read<typeof part>;
