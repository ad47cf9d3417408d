import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { curvatureRadiusAt, radiusAt } from '../../../src/base/cone';
import { planBend } from '../../../src/design/pull';
import { parseJob } from '../../../src/job/parse';
import { loadTables } from '../../../src/tables/bundled';
import { cases } from '../../helpers/cases';

const tables = loadTables();

/** A tapering bend, its radii those of the form or of the part. */
const bends = fc.record({
  material: fc.constantFrom('steel-cold-rolled-cs', 'aluminium-3003-h14', 'stainless-304-annealed'),
  thickness: fc.constantFrom(0.5, 1, 1.6, 3),
  length: fc.integer({ min: 100, max: 900 }),
  from: fc.integer({ min: 15, max: 90 }),
  taper: fc.double({ min: -0.7, max: 0.7, noNaN: true }),
  radiusOf: fc.constantFrom('form', 'finished'),
});

const planOf = ({ material, thickness, length, from, taper, radiusOf }: Bend): ReturnType<typeof planBend> => {
  const { job, findings } = parseJob(
    JSON.stringify({
      title: 'x',
      sheet: { material, thickness },
      bend: {
        angle: 60,
        length,
        radius: { from, to: from + Math.abs(taper) * length },
        radiusOf,
        legs: { held: 60, free: 200 },
      },
    }),
    tables,
  );
  if (!job) throw new Error(findings.map(({ code }) => code).join());
  return planBend(job, tables);
};
type Bend = typeof bends extends fc.Arbitrary<infer Value> ? Value : never;

describe('a taper let go', () => {
  it('comes off the form larger everywhere, square to the centre line and across the ruling, or is refused', () => {
    let [sound, refused] = [0, 0];
    fc.assert(
      fc.property(bends, (bend) => {
        const { value, findings } = planOf(bend);
        if (findings.some(({ code }) => code === 'ends-spring-apart')) refused++;
        if (!value) return;
        sound++;
        for (const share of [0, 0.25, 0.5, 0.75, 1]) {
          const x = share * bend.length;
          expect(radiusAt(value.finished, x)).toBeGreaterThanOrEqual(radiusAt(value.form, x) * (1 - 1e-9));
          expect(curvatureRadiusAt(value.finished, x)).toBeGreaterThan(curvatureRadiusAt(value.form, x) * (1 - 1e-9));
        }
      }),
      { numRuns: cases(1200) },
    );
    expect(sound).toBeGreaterThan(cases(200));
    expect(refused).toBeGreaterThan(cases(40));
  });

  it('that would shrink at its small end is refused with both radii, not printed', () => {
    // The ends' own springback, by the strip's law, and the cone through what is left: its radius at A is 16.7 mm where the form's is 20.
    const { value, findings } = planOf({
      material: 'steel-cold-rolled-cs',
      thickness: 0.5,
      length: 100,
      from: 20,
      taper: 0.5,
      radiusOf: 'form',
    });
    expect(value).toBeNull();
    const [found] = findings.filter(({ code }) => code === 'ends-spring-apart');
    expect(found).toMatchObject({ path: 'bend.radius', values: { end: 'A', form: 20 } });
    expect(found?.values['left']).toBeCloseTo(16.75, 2);
    expect(Number(found?.values['straighter'])).toBeGreaterThan(Number(found?.values['curved']));
  });

  it('of a gentle taper is as before', () => {
    const { value } = planOf({
      material: 'aluminium-3003-h14',
      thickness: 1.6,
      length: 620,
      from: 38,
      taper: 12 / 620,
      radiusOf: 'finished',
    });
    expect(value?.finished.radiusA).toBeCloseTo(38, 6);
    expect(value?.finished.radiusB).toBeCloseTo(50, 6);
  });
});
