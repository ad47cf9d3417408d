import fc from 'fast-check';
import { parse } from 'parse5';
import { describe, expect, it } from 'vitest';
import { parseJob } from '../../../src/job/parse';
import { drawPieces } from '../../../src/output/pieces';
import { planJob } from '../../../src/output/pipeline';
import { layOutBoards } from '../../../src/drawing/boards';
import { writeShopSheet } from '../../../src/output/shop-sheet';
import type { tools } from '../../helpers/for-tool';
import { cutWith } from '../../helpers/for-tool';
import { jobText, randomJobs, shared, type RandomJob } from '../../helpers/random-jobs';
import { tables } from '../../helpers/starters';
import { cases } from '../../helpers/cases';

/** Laid out on boards for their pictures; forms of more pieces go without. */
const MOST_PARTS = 12;

/** How many random jobs are tried with each tool. */
const RUNS: Partial<Record<keyof typeof tools, number>> = {
  jigsaw: 200,
  router: 60,
  laser: 60,
  'laser, thin board': 40,
  'laser, one layer': 40,
};

/** Its spine has ears, whatever the others turn out to have. */
const EARED: RandomJob = {
  material: 'aluminium-2024-t3',
  thickness: 3,
  angle: 99,
  length: 179,
  from: 131,
  to: 131,
  radiusOf: 'finished',
  held: 77,
  free: 72,
  spine: 'mdf-3/4',
  stations: 'mdf-3/4',
  backing: 'mdf-3/4',
  runs: [{ name: 'whole', from: 0, to: 179 }],
};

describe('shop sheets of random jobs', () => {
  let withEars = 0;

  it.each(Object.entries(RUNS) as [keyof typeof tools, number][])(
    'cut with %s are well-formed, name every board, and hold no number that is none, in every choice of units',
    (tool, numRuns) => {
      let made = 0;
      fc.assert(
        fc.property(randomJobs, fc.constantFrom('mm' as const, 'in' as const, 'both' as const), (random, units) => {
          const { job } = parseJob(cutWith(tool)(jobText(random, 'mm')), tables);
          if (!job) return;
          const planned = planJob(shared(job, random), tables);
          if (!planned.buildable) return;
          const parts = drawPieces(planned, tables);
          // Many small layers take long to lay out, and how they are laid out is not what is asked here.
          const boards = parts.length <= MOST_PARTS ? layOutBoards(parts, tables, job.cut) : [];
          const sheet = writeShopSheet(planned, { parts, boards }, tables, { units });
          const complaints: string[] = [];
          parse(sheet, { onParseError: (error) => complaints.push(error.code) });
          expect(complaints).toEqual([]);
          expect(sheet).not.toMatch(/NaN|Infinity|undefined|\[object/u);
          for (const { name } of [...planned.plan.stations, ...planned.plan.backings])
            expect(sheet).toContain(`<th scope="row">${name}`);
          made++;
          if (planned.layout.spine.ears > 0) withEars++;
        }),
        { numRuns: cases(numRuns), examples: [[EARED, 'mm']] },
      );
      expect(made).toBeGreaterThanOrEqual(Math.floor(cases(numRuns) / 8));
    },
  );

  it('were some of them with ears', () => {
    expect(withEars).toBeGreaterThan(0);
  });
});
