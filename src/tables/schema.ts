import * as z from 'zod';

/** Shapes of the reference tables in `shared/`. Every row names its source; units are in the field names or stated here. */

const source = z.string().min(3);
const positive = z.number().positive();

/** mm, MPa, kg/m³. One metal in one temper. */
export const metalSchema = z.strictObject({
  id: z.string().regex(/^[a-z0-9-]+$/),
  name: z.string(),
  /** Young's modulus, MPa. */
  modulus: positive,
  poisson: z.number().min(0).max(0.5),
  /** 0.2 % proof stress, MPa. */
  yield: positive,
  /** Ultimate tensile strength, MPa. */
  tensile: positive,
  /** Elongation at fracture, as a fraction (0.3 = 30 %). */
  elongation: positive,
  /**
   * Swift curve σ = strength·(initialStrain + ε)^exponent, strength in MPa: it first yields at strength·initialStrain^exponent and meets the
   * yield at 0.2 %. Null: taken as perfectly plastic.
   */
  hardening: z
    .strictObject({ strength: positive, exponent: positive.max(0.7), initialStrain: positive.max(0.3) })
    .nullable(),
  /** Smallest inside bend radius as multiples of thickness, by thickness; the first row whose `upTo` (mm) is not exceeded. */
  minBendRatio: z.array(z.strictObject({ upTo: positive, ratio: z.number().min(0) })).min(1),
  /** kg/m³. */
  density: positive,
  /** Id of the gauge table its thickness is sold by, or null. */
  gauge: z.string().nullable(),
  source,
  note: z.string().optional(),
});
export type Metal = z.infer<typeof metalSchema>;

/** What metals are also called; `fits` are ids of metals, the likeliest first. */
export const metalNameSchema = z.strictObject({
  names: z.array(z.string().regex(/^[a-z0-9./ -]+$/)).min(1),
  fits: z.array(z.string()).min(1),
  source,
});
export type MetalName = z.infer<typeof metalNameSchema>;

/** Gauge number (as text) to thickness in inches. */
export const gaugeTableSchema = z.strictObject({
  id: z.string(),
  name: z.string(),
  inches: z.record(z.string().regex(/^\d+$/), positive),
  source,
});
export type GaugeTable = z.infer<typeof gaugeTableSchema>;

/** mm, MPa. A board as sold. */
export const boardSchema = z.strictObject({
  id: z.string().regex(/^[a-z0-9./-]+$/),
  name: z.string(),
  /** True thickness, mm (sanded plywood runs under its nominal). */
  thickness: positive,
  width: positive,
  length: positive,
  /** Modulus of elasticity in bending, MPa. */
  modulus: positive,
  /** kg/m³. */
  density: positive,
  /** What it bears on its edge before it crushes: compression in its plane, MPa. */
  edgeStrength: positive,
  /** Screws sold alongside it: chooses #6/#8/#10 or 3.5/4/5 mm. */
  system: z.enum(['in', 'mm']),
  source,
});
export type Board = z.infer<typeof boardSchema>;

/** mm. A countersunk wood screw, one size in all its standard lengths. */
export const screwSchema = z.strictObject({
  id: z.string(),
  name: z.string(),
  system: z.enum(['in', 'mm']),
  diameter: positive,
  headDiameter: positive,
  pilot: positive,
  /** The pilot drill as the trade calls it, e.g. `7/64 in`. */
  pilotDrill: z.string(),
  clearance: positive,
  clearanceDrill: z.string(),
  /** Standard lengths, mm, rising. */
  lengths: z.array(positive).min(1),
  /** How each length is sold, same order, e.g. `1-1/4 in`. */
  lengthNames: z.array(z.string()).min(1),
  /** The thickest spine it is chosen for, mm; null for any thicker. */
  spineUpTo: positive.nullable(),
  source,
});
export type Screw = z.infer<typeof screwSchema>;

/** N. A kind of clamp, tightened by hand. */
export const clampKindSchema = z.strictObject({ id: z.string(), name: z.string(), force: positive, source });
export type ClampKind = z.infer<typeof clampKindSchema>;

/** N. What one person pulls with two hands in a posture. */
export const handForceSchema = z.strictObject({ id: z.string(), name: z.string(), force: positive, source });
export type HandForce = z.infer<typeof handForceSchema>;

/** mm, N·mm², mm³, MPa. A steel angle or a batten a yoke is made from, bending away from the sheet. */
export const yokeStockSchema = z.strictObject({
  id: z.string(),
  name: z.string(),
  kind: z.enum(['angle', 'batten']),
  system: z.enum(['in', 'mm']),
  /** Along the lever. */
  width: positive,
  /** Square to the sheet. */
  depth: positive,
  /** Of an angle's flanges; a batten's depth. */
  thickness: positive,
  /** E·I. */
  stiffness: positive,
  /** I over the distance to the outside. */
  sectionModulus: positive,
  /** The most it is trusted with. */
  stress: positive,
  source,
});
export type YokeStock = z.infer<typeof yokeStockSchema>;

/** mm, N. A bolt of a yoke. */
export const yokeBoltSchema = z.strictObject({
  id: z.string(),
  name: z.string(),
  system: z.enum(['in', 'mm']),
  diameter: positive,
  hole: positive,
  /** The most it is trusted with. */
  force: positive,
  source,
});
export type YokeBolt = z.infer<typeof yokeBoltSchema>;

/** Shop rules that hold for any form; mm, N, MPa, degrees. Each may be overridden where the job file has a field for it. */
export const shopRuleSchema = z.strictObject({
  id: z.string(),
  value: z.union([z.number(), z.array(z.number())]),
  /** For a job in inches, where that is another; in mm all the same. */
  inch: z.union([z.number(), z.array(z.number())]).optional(),
  unit: z.string(),
  what: z.string(),
  source,
});

/** What cutting with a jigsaw, a router or a laser needs; mm unless the row says otherwise. */
export const toolRuleSchema = z.strictObject({
  id: z.string(),
  value: z.union([z.number().positive(), z.array(z.number().positive()).min(1)]),
  /** For a job in inches, where that is another; in mm all the same. */
  inch: z.number().positive().optional(),
  unit: z.string(),
  what: z.string(),
  source,
});
