import fc from 'fast-check';
import { expect } from 'vitest';
import { buildUp } from '../../src/panel/flat/build-up';
import { findOrder } from '../../src/panel/order/find-order';
import { selfCrossing } from '../../src/panel/order/self-crossing';
import { breathe } from '../helpers/breathe';
import { FULL } from '../helpers/cases';
import { sampledStep } from './brute-force';
import { rules } from './panels';
import { randomPanels } from './random-panels';
import { deep, worksFor } from './works';

/** How many random panels in either of two files, so that two workers share them: in all as many as the design asks for, or a look at a few. */
const COUNT = (FULL ? 2000 : Number(process.env['PANELS'] ?? 24)) / 2;
/** What half of them may take, ms. */
export const LONG = 1_800_000;

/** Half of the random panels: they fold without crossing themselves and have an order that sampling finds clear, or an error. */
export async function lookAtPanels(half: 0 | 1): Promise<void> {
  const { seed = 0 } = fc.readConfigureGlobal();
  const seen = { refused: 0, crossing: 0, noOrder: 0, clear: 0 };
  await fc.assert(
    fc.asyncProperty(randomPanels, async (spec) => {
      await breathe();
      const { value: panel, findings } = buildUp(spec, rules);
      if (!panel) {
        expect(findings.some(({ level }) => level === 'error')).toBe(true);
        seen.refused++;
        return;
      }
      if (selfCrossing(panel)) {
        seen.crossing++;
        return;
      }
      const works = worksFor(panel, { share: true });
      const { steps, misses } = findOrder(panel, { work: works, shop: deep, rules });
      if (!steps) {
        expect(misses.length).toBeGreaterThan(0);
        seen.noOrder++;
        return;
      }
      expect(steps.map(({ bend: number }) => number).sort()).toEqual(panel.bends.map((_, index) => index));
      steps.forEach((step, index) => {
        const done = panel.bends.map((_, other) => steps.slice(0, index).some((before) => before.bend === other));
        const work = works[step.bend];
        if (!work) throw new Error('work');
        const worst = sampledStep(panel, work, { step, done }, { every: Math.PI / 60, apart: 14 });
        // The sampled form is asked by its faces one by one, which makes a gap across an edge look smaller.
        expect(worst.wood).toBeGreaterThan(1.5);
        expect(worst.metal).toBeGreaterThan(2.5);
        // What is past a corner is the corner's own: it may come near, and not touch.
        expect(worst.atCorner).toBeGreaterThan(0.5);
      });
      seen.clear++;
    }),
    { numRuns: COUNT, seed: seed + half },
  );
  expect(seen.clear).toBeGreaterThan(COUNT / 8);
}
