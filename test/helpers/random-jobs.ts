import fc from 'fast-check';
import type { Job } from '../../src/job/job';

/** A job file as data, and the stretches of its form that bends are made on; every length a whole number of 1/32 in, so that it can be written exactly in mm and in inches. */
export interface RandomJob {
  readonly material: string;
  readonly thickness: number;
  readonly angle: number;
  readonly length: number;
  readonly from: number;
  readonly to: number;
  readonly radiusOf: 'finished' | 'form';
  readonly held: number;
  readonly free: number;
  readonly runs: readonly { readonly name: string; readonly from: number; readonly to: number }[];
  readonly spine: string;
  readonly stations: string;
  readonly backing: string;
}

const materials = [
  'aluminium-1100-o',
  'aluminium-3003-h14',
  'aluminium-5052-h32',
  'aluminium-6061-t6',
  'aluminium-2024-t3',
  'steel-cold-rolled-cs',
  'stainless-304-annealed',
  'copper-c110-soft',
  'brass-c260-half-hard',
];
const boards = ['mdf-12', 'mdf-18', 'mdf-25', 'mdf-3/4', 'mdf-1/2', 'ply-birch-18'];

const inch = 32;
const whole = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: Math.round(min * inch), max: Math.round(max * inch) });

/** Jobs of every kind a maker might try, from sound to impossible; counted in 1/32 in and degrees. */
export const randomJobs: fc.Arbitrary<RandomJob> = fc
  .record({
    material: fc.constantFrom(...materials),
    thickness: fc.integer({ min: 1, max: 5 }),
    angle: fc.integer({ min: 12, max: 165 }),
    length: whole(3, 40),
    from: whole(0.6, 7),
    taper: fc.oneof(fc.constant(0), whole(-2, 2)),
    radiusOf: fc.constantFrom('finished' as const, 'form' as const),
    held: whole(1, 4),
    free: whole(2, 16),
    cuts: fc.array(fc.tuple(fc.integer({ min: 0, max: 16 }), fc.integer({ min: 0, max: 16 })), { maxLength: 2 }),
    whole: fc.boolean(),
    spine: fc.constantFrom(...boards),
    stations: fc.constantFrom(...boards),
    backing: fc.constantFrom(...boards),
  })
  .map(({ taper, cuts, whole: overAll, ...job }) => {
    const at = (sixteenth: number): number => Math.round((job.length * sixteenth) / 16);
    const stretches = cuts
      .map(([a, b], index) => ({ name: `run ${index + 1}`, from: at(Math.min(a, b)), to: at(Math.max(a, b)) }))
      .filter(({ from, to }) => to > from);
    const runs =
      overAll || stretches.length === 0 ? [{ name: 'whole', from: 0, to: job.length }, ...stretches] : stretches;
    return { ...job, to: Math.max(8, job.from + taper), runs };
  });

/** The job as a JSON job file in mm, or in fractional inches. */
export function jobText(job: RandomJob, units: 'mm' | 'in'): string {
  const length = (count: number): number | string => (units === 'mm' ? (count * 3175) / 4000 : mixed(count));
  return JSON.stringify({
    title: 'Random job',
    units,
    sheet: { material: job.material, thickness: length(job.thickness) },
    bend: {
      angle: job.angle,
      length: length(job.length),
      radius: { from: length(job.from), to: length(job.to) },
      radiusOf: job.radiusOf,
      legs: { held: length(job.held), free: length(job.free) },
    },
    board: { stock: job.spine, spine: job.spine, stations: job.stations, backing: job.backing },
  });
}

/** The job as it is read from its text, its form shared by several bends as a panel's may be. */
export function shared(job: Job, { runs }: RandomJob): Job {
  const mm = (count: number): number => (count * 3175) / 4000;
  return { ...job, runs: runs.map(({ name, from, to }) => ({ name, from: mm(from), to: mm(to) })) };
}

/** 1/32 in as a mixed fraction, `2-3/32 in`. */
function mixed(count: number): string {
  const [inches, rest] = [Math.floor(count / inch), count % inch];
  if (rest === 0) return `${inches} in`;
  return inches === 0 ? `${rest}/${inch} in` : `${inches}-${rest}/${inch} in`;
}

/** The same part looked at from the other end. */
export function swapEnds(job: RandomJob): RandomJob {
  return {
    ...job,
    from: job.to,
    to: job.from,
    runs: job.runs.map(({ name, from, to }) => ({ name, from: job.length - to, to: job.length - from })),
  };
}
