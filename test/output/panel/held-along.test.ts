import { describe, expect, it } from 'vitest';
import { at } from '../../../src/base/at';
import { depthAt } from '../../../src/design/bend/depth-along';
import { clampNeed } from '../../../src/design/pull/hold';
import { heldForm } from '../../../src/design/pull/plan-hold';
import { heldAlongOf } from '../../../src/output/panel/held-along';
import { stepWords } from '../../../src/output/panel/step-words';
import { measuresIn } from '../../../src/output/shop-sheet/measures';
import { planPanelStarter } from '../../helpers/starters';
import { bend, box, built } from '../../panel/panels';

/** A trapezium 400 mm along its bend, 120 mm deep at one end and 20 at the other. */
const slanted = (depthA: number, depthB: number) =>
  built(
    box(400, 120, {
      base: {
        corners: [
          [0, 0],
          [400, 0],
          [400, depthB],
          [0, depthA],
        ],
        edges: ['long', 'back', 'top', 'short'],
        measured: 'flat',
      },
      bends: [bend('long')],
    }),
  );

describe('how deep the held side of a bend is along it', () => {
  it('is nothing to say of a rectangle', () => {
    const panel = built(box(400, 120, { bends: [bend('long')] }));
    expect(heldAlongOf(panel, at(panel.bends, 0), 'base')).toBeUndefined();
    expect(heldAlongOf(panel, at(panel.bends, 0), 'leg')).toBeUndefined();
  });

  it('runs straight from end to end of a slanted base', () => {
    const panel = slanted(120, 20);
    const along = heldAlongOf(panel, at(panel.bends, 0), 'base');
    expect(along).toHaveLength(1);
    expect(along?.[0]).toMatchObject({ from: 0, to: 400 });
    const { A, B } = at(along ?? [], 0).under;
    expect([A, B].map((depth) => Math.round(depth * 1e6) / 1e6)).toEqual([120, 20]);
  });
});

const narrow = (text: string): string =>
  text
    .replace('[0, 260]]', '[0, 200]]')
    .replace(
      / {2}- \{ on: left.*\n {2}- \{ on: right.*\n {2}- \{ on: back.*\n/u,
      '  - { on: front, angle: 90, radius: 30, leg: 90 }\n',
    )
    .replace('[420, 260], [0, 200]', '[420, 40], [0, 90]');

describe('a panel whose base narrows along its bend', () => {
  const planned = planPanelStarter('tray', narrow);
  const { alone, step } = at(planned.bends, 0);

  it('holds by what lies under the form at each place, which asks for more than its deepest place would', () => {
    expect(step.held).toBe('base');
    const { layout, bend: sums } = alone;
    const standing = { foot: layout.foot, spine: layout.spine.thickness };
    const { heldAlong, ...deep } = sums;
    expect(heldAlong).toHaveLength(1);
    const [uneven, even] = [heldForm(sums, standing), heldForm(deep, standing)].map((form) => clampNeed(form).force);
    expect(uneven).toBeGreaterThan((even ?? 0) * 1.01);
    // The wider the run of depths, the more pieces: the slices’ widths still make the whole bend.
    const whole = heldForm(sums, standing).slices.reduce((sum, { moment }) => sum + moment, 0);
    expect(whole / heldForm(deep, standing).slices.reduce((sum, { moment }) => sum + moment, 0)).toBeCloseTo(1, 9);
  });

  it('packs each backing station by what lies under it', () => {
    const words = at(stepWords(planned, measuresIn('mm')), 0).sentences.join(' ');
    const { layout, bend: sums } = alone;
    const { length } = measuresIn('mm');
    for (const { name, at: middle, thickness } of layout.backings) {
      // The base narrows toward end B: least lies under the side of the board that is nearer to it.
      const depth = depthAt(sums.heldAlong ?? [], 'under', middle + thickness / 2);
      expect(words).toContain(`${name} ${length(layout.spine.thickness + layout.foot - depth)}`);
    }
    expect(words).toContain('The foot reaches past the held side’s far edge, BS1');
  });
});
