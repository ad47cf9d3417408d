import { describe, expect, it } from 'vitest';
import { at } from '../../../src/base/at';
import { parseFile } from '../../../src/job/parse';
import { planPanel, type PlannedPanel } from '../../../src/output/panel/plan-panel';
import { panelRules as rules, tables } from '../../helpers/starters';

/** A channel whose two short legs are pulled by bare hands: each needs a lever left on, which the pulls found first tell. */
function channel(throat: number): PlannedPanel {
  const parsed = parseFile(
    `title: Channel
sheet: { material: aluminium-3003-h14, thickness: 2.2 }
base: { corners: [[0, 0], [370, 0], [370, 190], [0, 190]], edges: [front, right, back, left] }
pull: { with: bare }
effort: { people: 2 }
clamps: { throat: ${throat} }
bends:
  - { on: front, angle: 125, radius: 28, leg: 29 }
  - { on: back, angle: 110, radius: 20, leg: 47 }
board: { stock: mdf-18 }
`,
    tables,
  );
  if (parsed.kind !== 'panel' || !parsed.job) throw new Error(JSON.stringify(parsed.findings));
  return planPanel(parsed.job, { tables, rules, drawing: null }, parsed.findings);
}

function stepsOf(planned: PlannedPanel): string[] {
  if (!planned.buildable) throw new Error(JSON.stringify(planned.findings));
  return planned.order.map(({ bend, held }) => `${at(planned.panel.bends, bend).name}, ${held} held`);
}

/**
 * How far out the hands are, 220 and 230 mm, is the pull's own sum (test/design/pull). With its base held, `front` is clamped past the base, the flat of `back` and
 * the leg of that with its lever: 190 + (20 + 2.2/2) · 110° + 230 = 460.5 mm from the tangent line. The clamps stand in the middle of the spine's 18 mm: they reach 451.5 mm.
 */
describe('levers that the pulls leave on', () => {
  it('are as long as the hands are far out', () => {
    const planned = channel(452);
    if (!planned.buildable) throw new Error(JSON.stringify(planned.findings));
    const pulls = planned.bends.map(({ alone }) => alone.bend.pull);
    expect(pulls.map(({ lever, leverage }) => [lever, leverage])).toEqual([
      [220, 191],
      [230, 183],
    ]);
  });

  it('are reached past where the clamps are deep enough, to the millimetre', () => {
    expect(stepsOf(channel(452))).toEqual(['front, base held', 'back, base held']);
  });

  it('have the order looked for again where they are not: the other side is held then', () => {
    expect(stepsOf(channel(451))).toEqual(['front, leg held', 'back, base held']);
  });
});
