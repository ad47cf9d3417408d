import { describe, expect, it } from 'vitest';
import { parseJob } from '../../src/job/parse';
import type { Job } from '../../src/job/job';
import { planJob, type Buildable } from '../../src/output/pipeline';
import { fieldsOf } from '../../src/job/fields/look';
import { cuttingTools } from '../../src/job/cutting-tool';
import { tablesIn } from '../../src/tables/tables';
import { tables } from '../helpers/starters';

function jobIn(units: 'mm' | 'in', more = ''): Job {
  const { job } = parseJob(
    `title: Hood edge
units: ${units}
sheet: { material: steel-cold-rolled-cs, thickness: 1 mm }
bend: { angle: 90, length: 500 mm, radius: 40 mm, legs: { held: 50 mm, free: 150 mm } }
${more}
`,
    tables,
  );
  if (!job) throw new Error('no job');
  return job;
}

function built(units: 'mm' | 'in'): Buildable {
  const planned = planJob(jobIn(units), tables);
  if (!planned.buildable) throw new Error('not to be built');
  return planned;
}

/** Whether a length is a whole number of 64ths of an inch. */
const isRound = (mm: number): boolean =>
  Math.abs(((mm / 25.4) * 64) % 1) < 1e-9 || Math.abs((((mm / 25.4) * 64) % 1) - 1) < 1e-9;

describe('a job in inches is of things sold in inches', () => {
  it('boards, screws, clamp holes, foot: unless it says otherwise', () => {
    const { job, layout } = built('in');
    expect([job.board.spine.stock, job.board.stations.stock, job.board.backing.stock]).toEqual(
      Array(3).fill('mdf-3/4'),
    );
    expect(layout.stations[0]?.screws[0]?.kind.system).toBe('in');
    expect(job.clamps.hole).toBeCloseTo(38.1, 9);
    for (const length of [job.clamps.hole, job.clamps.wood, job.clamps.throat, job.screws.cover, layout.foot])
      expect(isRound(length), String(length)).toBe(true);
    expect(jobIn('in', 'board: mdf-18').board.spine.stock).toBe('mdf-18');
  });

  it('bits, dowels and laser boards', () => {
    expect(jobIn('in', 'cut: { with: router }').cut).toMatchObject({ bit: 6.35 });
    const laser = jobIn('in', 'cut: { with: laser }');
    expect(laser.cut).toMatchObject({ dowel: 6.35 });
    expect(laser.board.stations.stock).toBe('mdf-1/4');
  });

  it('a job in mm is not', () => {
    const { job, layout } = built('mm');
    expect(job.board.spine.stock).toBe('mdf-18');
    expect(job.clamps.hole).toBe(38);
    expect(layout.stations[0]?.screws[0]?.kind.system).toBe('mm');
    expect(layout.foot).toBe(80);
    expect(jobIn('mm', 'cut: { with: router }').cut).toMatchObject({ bit: 6 });
  });
});

/** A number with a unit, or a fraction of an inch: `100–150 mm`, `4–6 in`, `1/4"`. */
const SIZES = { mm: /[\d⅕-⅞][\s\u00a0]?(mm|millimet)/u, in: /[\d⅕-⅞][\s\u00a0]?(in\b|inch|["”″])/u };

describe('what a field may be chosen from, and what holds unless said', () => {
  it.each([
    ['in', SIZES.mm, SIZES.in],
    ['mm', SIZES.in, SIZES.mm],
  ] as const)('is said in %s alone', (units, other, own) => {
    const said = cuttingTools.flatMap((tool) => {
      const setting = { tables: tablesIn(tables, units), units, tool };
      return fieldsOf().flatMap(({ path, field: { kind, unlessSaid } }) => {
        // What the tables hold is called what it is sold as.
        const choices = kind.name === 'row' ? [] : (kind.choices?.(setting) ?? []);
        return [...choices.map(({ text }) => text), unlessSaid?.(setting) ?? ''].map(
          (text) => `${path.join('.')}: ${text}`,
        );
      });
    });
    expect(said.filter((text) => own.test(text)).length).toBeGreaterThan(10);
    expect(said.filter((text) => other.test(text))).toEqual([]);
  });
});
