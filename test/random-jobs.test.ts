import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hasErrors } from '../src/base/findings';
import type { Job } from '../src/job/job';
import { parseJob } from '../src/job/parse';
import { planJob, type Planned } from '../src/output/pipeline';
import { loadTables } from '../src/tables/bundled';
import { brokenRules } from './helpers/check-rules';
import { jobText, randomJobs, shared, swapEnds, type RandomJob } from './helpers/random-jobs';
import { cases } from './helpers/cases';

const tables = loadTables();

/** One shop whose stock and rules are the same whatever unit a job is written in. */
const inBoth = <Row extends { system: 'mm' | 'in' }>(rows: readonly Row[]): Row[] =>
  rows.filter(({ system }) => system === 'mm').flatMap((row) => [row, { ...row, system: 'in' as const }]);
const oneShop = {
  ...tables,
  inch: { rules: {}, tools: {} },
  screws: inBoth(tables.screws),
  yokeStock: inBoth(tables.yokeStock),
  yokeBolts: inBoth(tables.yokeBolts),
};

function read(text: string, shop = tables): Job {
  const { job, findings } = parseJob(text, shop);
  if (!job) throw new Error(JSON.stringify(findings));
  return job;
}

const plan = (job: RandomJob, units: 'mm' | 'in' = 'mm', shop = tables): Planned =>
  planJob(shared(read(jobText(job, units), shop), job), shop);

/** Every number of two structures agrees to a relative 1e-9 (or 1e-7 mm); everything else is the same. */
function expectSame(a: unknown, b: unknown, path = ''): void {
  if (typeof a === 'number' && typeof b === 'number') {
    if (!(Math.abs(a - b) <= Math.max(1e-7, 1e-9 * Math.abs(a)))) throw new Error(`${path}: ${a} against ${b}`);
  } else if (a !== null && b !== null && typeof a === 'object' && typeof b === 'object') {
    expect(Object.keys(b)).toEqual(Object.keys(a));
    for (const key of Object.keys(a))
      expectSame((a as Record<string, unknown>)[key], (b as Record<string, unknown>)[key], `${path}.${key}`);
  } else if (a !== b) {
    throw new Error(`${path}: ${String(a)} against ${String(b)}`);
  }
}

describe('random jobs', () => {
  it('either have an error finding or keep every rule of the design, by a second brute-force look (2,000 jobs in full)', () => {
    let sound = 0;
    fc.assert(
      fc.property(randomJobs, (random) => {
        const planned = plan(random);
        if (hasErrors(planned.plan.findings)) return;
        sound++;
        expect(brokenRules(planned.plan, planned.job, tables)).toEqual([]);
      }),
      { numRuns: cases(2000) },
    );
    expect(sound).toBeGreaterThan(cases(300));
  });

  it('give the same plan in mm and in inches', () => {
    fc.assert(
      fc.property(randomJobs, (random) => {
        const [mm, inches] = [plan(random, 'mm', oneShop), plan(random, 'in', oneShop)];
        expectSame({ ...mm.plan, findings: mm.findings }, { ...inches.plan, findings: inches.findings });
      }),
      { numRuns: cases(500) },
    );
  });

  it('looked at from the other end give the mirrored plan', () => {
    let compared = 0;
    fc.assert(
      fc.property(
        randomJobs.filter((job) => job.from !== job.to),
        (random) => {
          const [here, there] = [plan(random).plan, plan(swapEnds(random)).plan];
          expect(there.findings.map(({ code }) => code).sort()).toEqual(here.findings.map(({ code }) => code).sort());
          if (hasErrors(here.findings)) return;
          compared++;
          const length = here.spine?.length ?? NaN;
          const flipped = <Thing extends { at: number }>(things: readonly Thing[] = []): number[] =>
            things.map(({ at }) => length - at).sort((a, b) => a - b);
          const straight = <Thing extends { at: number }>(things: readonly Thing[] = []): number[] =>
            things.map(({ at }) => at).sort((a, b) => a - b);
          expectSame(flipped(here.stations), straight(there.stations), 'stations');
          expectSame(
            here.stations.map(({ radius }) => radius).reverse(),
            there.stations.map(({ radius }) => radius),
            'radii',
          );
          expect(there.stations.map(({ contact }) => contact)).toEqual(
            here.stations.map(({ contact }) => (contact === 'from' ? 'to' : 'from')).reverse(),
          );
          expectSame(flipped(here.backings), straight(there.backings), 'backings');
          expectSame(flipped(here.spine?.clampHoles), straight(there.spine?.clampHoles), 'clamp holes');
          expectSame(here.bend?.wrap.from, there.bend?.wrap.to, 'wrap');
          expectSame(here.bend?.twist.to, there.bend?.twist.from, 'twist');
          expectSame(here.bend?.form.from, there.bend?.form.to, 'form');
          expectSame(here.effort, there.effort, 'effort');
        },
      ),
      { numRuns: cases(500) },
    );
    expect(compared).toBeGreaterThan(cases(50));
  });
});
