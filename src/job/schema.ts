import { z } from 'zod';
import { paperOrientations, paperSizes } from './job';

/**
 * The shape of a job file. It says which keys there are and what kind of value each takes; what the values may be
 * (ranges, names in the tables, how they go together) is read in `read.ts`.
 */

const length = z.union([z.number(), z.string()]).meta({
  description: 'A number in the job’s unit, or text with its own: 38 mm, 1-1/2 in, 3/4", 5\' 3 1/2"',
});
const text = (description: string): z.ZodString => z.string().meta({ description });
const number = (description: string): z.ZodNumber => z.number().meta({ description });

const boardChoice = z
  .union([z.string(), z.strictObject({ stock: text('Id of a board in shared/boards.json'), thickness: length.optional() })])
  .meta({ description: 'A board’s id, or { stock, thickness } with the thickness you measured' });

export const jobFileSchema = z
  .strictObject({
    title: text('What the part is; names the output folder'),
    units: z.enum(['mm', 'in']).optional().meta({ description: 'Unit of bare numbers, mm unless said' }),
    sheet: z.strictObject({
      material: text('Id of a metal in shared/sheet-metals.json'),
      thickness: length.meta({ description: 'Sheet thickness: a length, or a gauge such as 18 ga' }),
      minBendRatio: number('Smallest inside bend radius as a multiple of the thickness, where your supplier says otherwise').optional(),
    }),
    bend: z.strictObject({
      angle: number('Degrees turned from flat, between the legs’ planes'),
      length: length.meta({ description: 'Along the tangent line' }),
      radius: z.union([z.number(), z.string(), z.strictObject({ from: length, to: length })]).meta({ description: 'Inside radius: one length, or { from, to } for a taper' }),
      radiusOf: z.enum(['finished', 'form']).optional().meta({ description: 'Whether the radii are the part’s after release, or the form’s as cut' }),
      legs: z.strictObject({ held: length, free: length }),
    }),
    runs: z
      .array(z.strictObject({ name: text('What the maker calls this edge'), from: length, to: length }))
      .min(1)
      .max(40)
      .optional()
      .meta({ description: 'Stretches of the form, each used by one edge of the panel; one over the whole length unless said' }),
    board: z
      .strictObject({
        stock: text('Id of a board in shared/boards.json, for all that do not name their own').optional(),
        thickness: length.optional(),
        spine: boardChoice.optional(),
        stations: boardChoice.optional(),
        backing: boardChoice.optional(),
      })
      .optional(),
    stations: z.strictObject({ maxSpan: length.optional(), maxSag: length.optional() }).optional(),
    screws: z.strictObject({ size: text('Id of a screw in shared/screws.json').optional(), cover: length.optional() }).optional(),
    clamps: z.strictObject({ hole: length.optional(), wood: length.optional(), rating: z.union([z.number(), z.string()]).optional() }).optional(),
    effort: z
      .strictObject({
        handForce: z.union([z.number(), z.string()]).optional().meta({ description: 'Hand-force limit, N, or text such as 45 lbf' }),
        safety: number('Factor on the clamp force').optional(),
        maxLeverage: length.optional().meta({ description: 'Most extra metal the sheet can spare' }),
      })
      .optional(),
    neutral: number('Neutral-line factor K, where you use your own instead of DIN 6935’s').optional(),
    paper: z
      .strictObject({
        size: z.enum(paperSizes).optional().meta({ description: 'Paper for the full-size drawings: A4 for jobs in mm, letter for jobs in inches unless said' }),
        orientation: z.enum(paperOrientations).optional().meta({ description: 'auto: whichever needs fewer pages' }),
        width: length.optional().meta({ description: 'Width of the roll' }),
        margin: length.optional().meta({ description: 'Edge your printer leaves blank' }),
        overlap: length.optional().meta({ description: 'Strip that neighbouring pages share, for gluing' }),
      })
      .optional(),
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
