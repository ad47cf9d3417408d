import { z } from 'zod';
import { operations } from '../base/drawing';
import { cuttingTools, paperOrientations, paperSizes } from './job';

/**
 * The shape of a job file. It says which keys there are and what kind of value each takes; what the values may be
 * (ranges, names in the tables, how they go together) is read in `read.ts`.
 */

const length = z
  .union([z.number(), z.string()])
  .meta({ description: 'A number in the job’s unit, or text with its own: 38 mm, 1-1/2 in' });
const lengthOf = (description: string): typeof length =>
  length.meta({
    description: `${description}. A number in the job’s unit, or text with its own: 38 mm, 1-1/2 in, 3/4", 5' 3 1/2"`,
  });
const force = (description: string): typeof length =>
  length.meta({ description: `${description}. A number in newtons, or text with its unit: 200 N, 45 lbf` });
const text = (description: string): z.ZodString => z.string().meta({ description });
const number = (description: string): z.ZodNumber => z.number().meta({ description });

const measured = 'Thickness as you measured it, where it is not the table’s';

const boardChoice = (
  part: string,
): z.ZodUnion<
  readonly [z.ZodString, z.ZodObject<{ stock: z.ZodString; thickness: z.ZodOptional<typeof length> }, z.core.$strict>]
> =>
  z
    .union([
      z.string(),
      z.strictObject({ stock: text('Id of a board in shared/boards.json'), thickness: lengthOf(measured).optional() }),
    ])
    .meta({
      description: `Board for the ${part}: an id in shared/boards.json, or { stock, thickness } with the thickness you measured`,
    });

export const jobFileSchema = z
  .strictObject({
    title: text('What the part is; names the output folder'),
    units: z.enum(['mm', 'in']).optional().meta({ description: 'Unit of bare numbers, mm unless said' }),
    sheet: z
      .strictObject({
        material: text('Id of a metal in shared/sheet-metals.json'),
        thickness: lengthOf('Sheet thickness; a gauge such as 18 ga goes by the metal’s own gauge table'),
        minBendRatio: number(
          'Smallest inside bend radius as a multiple of the thickness, where your supplier says otherwise',
        ).optional(),
      })
      .meta({ description: 'The metal that is bent' }),
    bend: z
      .strictObject({
        angle: number('Degrees turned from flat, between the legs’ planes'),
        length: lengthOf('Along the tangent line, end A to end B'),
        radius: z
          .union([
            z.number(),
            z.string(),
            z.strictObject({ from: lengthOf('Inside radius at end A'), to: lengthOf('Inside radius at end B') }),
          ])
          .meta({ description: 'Inside radius: one length, or { from, to } for a taper' }),
        radiusOf: z
          .enum(['finished', 'form'])
          .optional()
          .meta({ description: 'Whether the radii are the part’s after release (unless said), or the form’s as cut' }),
        legs: z
          .strictObject({
            held: lengthOf('The leg clamped under the spine, from the tangent line'),
            free: lengthOf('The leg that is pulled up, from the tangent line'),
          })
          .meta({ description: 'The flats on either side of the bend' }),
      })
      .meta({ description: 'The bend as wanted' }),
    runs: z
      .array(
        z.strictObject({
          name: text('What the maker calls this edge'),
          from: lengthOf('Where it begins, along the tangent line from end A'),
          to: lengthOf('Where it ends, along the tangent line from end A'),
        }),
      )
      .min(1)
      .max(40)
      .optional()
      .meta({
        description: 'Stretches of the form, each used by one edge of the panel; one over the whole length unless said',
      }),
    board: z
      .strictObject({
        stock: text('Id of a board in shared/boards.json, for all that do not name their own').optional(),
        thickness: lengthOf(measured).optional(),
        spine: boardChoice('spine').optional(),
        stations: boardChoice('stations').optional(),
        backing: boardChoice('backing stations').optional(),
      })
      .optional()
      .meta({ description: 'What the form is made of; mdf-18 unless said' }),
    stations: z
      .strictObject({
        maxSpan: lengthOf('Longest clear span between stations').optional(),
        maxSag: lengthOf('Most the sheet may sag between stations').optional(),
      })
      .optional()
      .meta({ description: 'How close the stations stand' }),
    screws: z
      .strictObject({
        size: text('Id of a screw in shared/screws.json; by the spine’s thickness unless said').optional(),
        cover: lengthOf('Wood left between a screw’s tip and the round edge').optional(),
      })
      .optional()
      .meta({ description: 'The screws that hold the stations' }),
    clamps: z
      .strictObject({
        hole: lengthOf('Diameter of the clamp holes').optional(),
        wood: lengthOf('Wood left round each clamp hole').optional(),
        rating: force('What one clamp is trusted with').optional(),
      })
      .optional()
      .meta({ description: 'The clamps that hold spine and sheet to the bench' }),
    effort: z
      .strictObject({
        handForce: force('Most you want to pull by hand').optional(),
        safety: number('Factor on the clamp force').optional(),
        maxLeverage: lengthOf('Most extra metal the sheet can spare as a lever').optional(),
      })
      .optional()
      .meta({ description: 'How hard the maker pulls' }),
    neutral: number('Neutral-line factor K, where you use your own instead of DIN 6935’s').optional(),
    trials: z
      .array(
        z.strictObject({
          radius: lengthOf('Radius of the disc the strip was bent round'),
          bent: number('Degrees turned from flat while held on the disc'),
          left: number('Degrees turned from flat after it was let go'),
          width: lengthOf('Width of the strip: at least 8 times its thickness').optional(),
        }),
      )
      .min(1)
      .max(20)
      .optional()
      .meta({
        description: 'Strips of your own sheet, bent and measured: they set the springback in place of the tables’',
      }),
    block: z
      .strictObject({
        at: lengthOf('Middle of the block along the tangent line, from end A'),
        length: lengthOf('Along the tangent line, rounded up to whole layers of board'),
        stock: text('Id of a board in shared/boards.json; the stations’ unless said').optional(),
        thickness: lengthOf(measured).optional(),
      })
      .optional()
      .meta({ description: 'A block of layers of board to dress the finished bend over' }),
    offcuts: z
      .array(
        z.strictObject({
          stock: text('Id of a board in shared/boards.json'),
          width: lengthOf('Across the offcut'),
          length: lengthOf('Along the offcut'),
          thickness: lengthOf(
            'Thickness as you measured it, where it is not that of the job’s boards of this kind',
          ).optional(),
        }),
      )
      .max(40)
      .optional()
      .meta({ description: 'Rectangles of board left over from other work, used before whole boards' }),
    cut: z
      .strictObject({
        with: z
          .enum(cuttingTools)
          .optional()
          .meta({
            description:
              'What cuts the boards: a jigsaw follows drawn lines, a router cuts grooves that the stations stand in, a laser cuts thin layers to stack, with tabs and slots; a jigsaw unless said',
          }),
        turn: lengthOf('Jigsaw: the smallest radius your blade turns').optional(),
        bit: lengthOf('Router: diameter of the bit').optional(),
        groove: lengthOf(
          'Router: depth of the grooves across the spine; a third of its thickness unless said',
        ).optional(),
        bridges: z
          .boolean()
          .optional()
          .meta({
            description: 'Router: leave small bridges that hold the parts to the board until they are cut by hand',
          }),
        kerf: lengthOf('Laser: width the beam takes out of this board').optional(),
        layers: number('Laser: layers stacked to each board of the form').optional(),
        dowel: lengthOf('Laser: diameter of the dowels or bolts that align the layers').optional(),
        fit: lengthOf('Router and laser: how much wider a groove or slot is than what enters it').optional(),
        gap: lengthOf('Left between parts laid out on a board').optional(),
        border: lengthOf('Left uncut along the edges of a board').optional(),
        colours: z
          .strictObject(
            Object.fromEntries(
              operations.map((operation) => [
                operation,
                text('Red, yellow, green, cyan, blue, magenta, black, or #rrggbb').optional(),
              ]),
            ),
          )
          .optional()
          .meta({ description: 'Colours of the drawings’ lines, by operation' }),
      })
      .optional()
      .meta({ description: 'How the boards are cut; with a jigsaw unless said' }),
    paper: z
      .strictObject({
        size: z
          .enum(paperSizes)
          .optional()
          .meta({
            description: 'Paper for the full-size drawings: A4 for jobs in mm, letter for jobs in inches unless said',
          }),
        orientation: z.enum(paperOrientations).optional().meta({ description: 'auto: whichever needs fewer pages' }),
        width: lengthOf('Width of the roll').optional(),
        margin: lengthOf('Edge your printer leaves blank').optional(),
        overlap: lengthOf('Strip that neighbouring pages share, for gluing').optional(),
      })
      .optional()
      .meta({ description: 'Paper for full-size drawings' }),
  })
  .meta({ title: 'bendbuck job', description: 'One bend of one sheet-metal part, and the form to bend it on' });

/** The keys known at a path of the job file, for the nearest match to a mistyped one. */
export function knownKeys(path: readonly PropertyKey[]): string[] {
  let found: z.core.$ZodType[] = [jobFileSchema];
  for (const step of path) found = found.flatMap(open).flatMap((schema) => child(schema, step));
  return found.flatMap(open).flatMap((schema) => (schema instanceof z.ZodObject ? Object.keys(schema.shape) : []));
}

/** What an optional or a union may hold. */
function open(schema: z.core.$ZodType): z.core.$ZodType[] {
  if (schema instanceof z.ZodOptional) return open(schema.unwrap());
  if (schema instanceof z.ZodUnion) return schema.options.flatMap(open);
  return [schema];
}

function child(schema: z.core.$ZodType, step: PropertyKey): z.core.$ZodType[] {
  if (schema instanceof z.ZodArray) return [schema.element];
  if (schema instanceof z.ZodObject) {
    const shape: Readonly<Record<PropertyKey, z.core.$ZodType | undefined>> = schema.shape;
    const found = shape[step];
    return found ? [found] : [];
  }
  return [];
}
