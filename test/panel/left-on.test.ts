import { describe, expect, it } from 'vitest';
import { toRadians } from '../../src/base/angle';
import { loopArea } from '../../src/base/area';
import { at } from '../../src/base/at';
import { leftMetals, type LeftOn } from '../../src/output/panel/finish/left-on';
import { tryBend } from '../../src/panel/order/try-bend';
import type { LeftMetal, Strike } from '../../src/panel/order/work';
import { bend, box, built, rules } from './panels';
import { shop, worksFor } from './works';

/** One side stands 200 mm high; the other leans in, with a lip that is bent last and lies in its plane until then. */
const channel = (opposite = 130) =>
  built(
    box(200, opposite, {
      bends: [
        bend('top', { reach: { leg: 200 }, radius: 15 }),
        bend('long', { reach: { leg: 130 }, radius: 15, angle: toRadians(120) }),
        bend('long.rim', { reach: { leg: 25 }, radius: 15, angle: toRadians(30) }),
      ],
    }),
  );

const lever = (bend: number, extra: number): LeftOn => ({ bend, side: 'leg', extra, isLever: true });

function areaOf({ regions }: LeftMetal): number {
  const loops = regions.map((region) => region.map(([x, y]) => ({ x, y, bulge: 0 })));
  return loops.reduce((sum, loop) => sum + Math.abs(loopArea(loop)), 0);
}

describe('metal left on', () => {
  it('hangs on the outermost face: as wide as the leg, as deep as what is left', () => {
    const panel = channel();
    const [lip, ...more] = leftMetals(panel, [lever(2, 40)]);
    expect(more).toEqual([]);
    expect(lip).toMatchObject({ bend: 2, face: at(panel.bends, 2).leg });
    expect(lip && areaOf(lip)).toBeCloseTo(200 * 40, 1);
  });

  it('of a leg that bears a lip is what goes past the lip, and hangs on that', () => {
    const panel = channel();
    const [own, ...more] = leftMetals(panel, [lever(1, 60)]);
    expect(more).toEqual([]);
    expect(own).toMatchObject({ bend: 1, face: at(panel.bends, 2).leg });
    // The lip's zone is π/6·(15 + 0.5·1.2) wide (K of 0.5), and its leg 25 mm.
    const zone = (Math.PI / 6) * (15 + at(panel.bends, 2).neutral * 1.2);
    expect(own && areaOf(own)).toBeCloseTo(200 * (60 - zone - 25), 1);
  });

  it('for a later bend swings with the leg that is bent before it', () => {
    const panel = channel();
    const work = at(worksFor(panel), 1);
    // Clamped past the sheet's ends, on the form's ears: behind the form stands the other side.
    const [use] = work.uses;
    if (!use) throw new Error('a form');
    const eared = { ...use, body: { ...use.body, ears: { small: 60, large: 60 } } };
    const ends = { clamp: { ...shop.clamp, throat: 120, pastEnds: true } };
    const given = { bend: 1, held: 'base', use: eared, work, shop: ends, rules } as const;
    const swung = (extra: number, lipMade = false): Strike | null => {
      const found = tryBend(panel, {
        ...given,
        done: [true, false, lipMade],
        leftOn: leftMetals(panel, [lever(2, extra)]),
      });
      return 'why' in found ? found : null;
    };
    // Pulled to 133° the leg leans back over 145 mm to the other side: 163 mm with its lip, 0.68 of it level, fall short, 263 mm do not.
    expect(swung(0)).toBeNull();
    expect(swung(100)).toMatchObject({ why: 'strikes', what: ['long.rim', 'top'], needed: 3 });
    // It is trimmed once the bend it was for is made.
    expect(swung(100, true)).toBeNull();
  });

  it('for a later bend lies behind the form, where the clamps must reach round it', () => {
    const panel = built(
      box(300, 60, { bends: [bend('long', { reach: { leg: 40 } }), bend('top', { reach: { leg: 20 } })] }),
    );
    const work = at(worksFor(panel), 0);
    const reach = (leftOn: readonly LeftOn[], done = [false, false]): Strike | null => {
      const clamps = { clamp: { ...shop.clamp, throat: 150 } };
      const use = at(work.uses, 0);
      const found = tryBend(panel, {
        ...{ bend: 0, held: 'base', use, done, work, shop: clamps, rules },
        leftOn: leftMetals(panel, leftOn),
      });
      return 'why' in found ? found : null;
    };
    expect(reach([])).toBeNull();
    // From the middle of the spine back: base, zone, leg, and what is left on it.
    const zone = (Math.PI / 2) * (30 + at(panel.bends, 1).neutral * 1.2);
    const struck = reach([lever(1, 40)]);
    expect(struck).toMatchObject({ why: 'throat', gap: 150 });
    expect(struck?.needed).toBeCloseTo(60 + zone + 20 + 40 - 18 / 2, 6);
  });
});
