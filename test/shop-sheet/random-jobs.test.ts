import fc from 'fast-check';
import { parse } from 'parse5';
import { describe, expect, it } from 'vitest';
import { hasErrors } from '../../src/base/findings';
import { parseJob } from '../../src/job/parse';
import { drawPieces } from '../../src/pieces';
import { planJob } from '../../src/pipeline';
import { layOutSheets } from '../../src/sheets';
import { writeShopSheet } from '../../src/shop-sheet';
import { jobText, randomJobs } from '../helpers/random-jobs';
import { tables } from '../helpers/starters';

describe('shop sheets of random jobs', () => {
  it('are well-formed, name every board, and hold no number that is none, in every choice of units', () => {
    let [made, withEars] = [0, 0];
    fc.assert(
      fc.property(randomJobs, fc.constantFrom('mm' as const, 'in' as const, 'both' as const), (random, units) => {
        const { job } = parseJob(jobText(random, 'mm'), tables);
        if (!job) return;
        const planned = planJob(job, tables);
        if (!planned.layout || !planned.bend || hasErrors(planned.plan.findings)) return;
        const parts = drawPieces(planned, tables);
        const sheet = writeShopSheet(planned, parts, layOutSheets(parts, tables), tables, { units });
        const complaints: string[] = [];
        parse(sheet, { onParseError: (error) => complaints.push(error.code) });
        expect(complaints).toEqual([]);
        expect(sheet).not.toMatch(/NaN|Infinity|undefined|\[object/u);
        for (const { name } of [...planned.plan.stations, ...planned.plan.backings]) expect(sheet).toContain(`<th scope="row">${name}`);
        made++;
        if (planned.layout.spine.ears > 0) withEars++;
      }),
      { numRuns: 250 },
    );
    expect(made).toBeGreaterThan(30);
    expect(withEars).toBeGreaterThan(0);
  });
});
