import { describe, expect, it } from 'vitest';
import { toDegrees, toRadians } from '../../../src/base/angle';
import { coneThrough } from '../../../src/base/cone';
import { bendingCurve } from '../../../src/design/bend/curve';
import { chooseYoke, type YokedLegs } from '../../../src/design/pull/choose-yoke';
import { poseOf } from '../../../src/design/pull/grip-poses';
import { grippedLeg } from '../../../src/design/pull/gripped-leg';
import { legShape } from '../../../src/design/pull/leg-shape';
import { noseClears, noseOutline } from '../../../src/design/pull/nose';
import { idealWrap } from '../../../src/design/pull/wrap-for';
import type { YokeStock } from '../../../src/tables/schema';
import type { Tables } from '../../../src/tables/tables';
import { planStarter, tables } from '../../helpers/starters';

/** Which yoke is taken, by its limits in “The pull and the hold” and each pair of members bolted up alone. */

const { bend } = planStarter('plain-curve');
const wanted = { lever: 260, system: 'mm', most: 0.9, run: 400, mayStray: 1, strays: () => 0 } as const;
const stockOf = (id: string): YokeStock => {
  const found = tables.yokeStock.find((one) => one.id === id);
  if (!found) throw new Error(id);
  return found;
};
const [angle, batten] = [stockOf('angle-30x30x3'), stockOf('batten-38x89-flat')];
const pair: Tables = { ...tables, yokeStock: [angle, batten] };
const legs = { held: 50, free: 400 };
const sheet = (from: number, to: number) => ({ ...bend, form: coneThrough(from, to, 400), length: 400, legs });
const tryYoke = (of: Tables, more: object = {}, on = sheet(40, 40)): YokedLegs | null =>
  chooseYoke(on, of, { ...wanted, ...more });
const chosen = (...asked: Parameters<typeof tryYoke>): YokedLegs => {
  const found = tryYoke(...asked);
  if (!found) throw new Error('no yoke');
  return found;
};

describe.each([
  [40, 40],
  [40, 80],
  [80, 40],
])('the one pair there is, on a form from %i to %i mm', (from, to) => {
  const on = sheet(from, to);
  // A run so long that the sheet lies flat in the yoke only further back than the flange is wide.
  const long = { run: 900 };
  const { yoke, within } = chosen(pair, long, on);
  const keeps = (of: Tables): boolean => chosen(of, long, on).within;

  it('keeps every limit', () => {
    expect(within).toBe(true);
    expect(yoke.grip).toBeGreaterThan(angle.width);
  });

  it('gives where the sheet keeps more inside it than is allowed', () => {
    const most = (maxYokeTail: number): Tables => ({ ...pair, rules: { ...tables.rules, maxYokeTail } });
    expect(keeps(most(1.001 * toDegrees(yoke.stays)))).toBe(true);
    expect(keeps(most(0.999 * toDegrees(yoke.stays)))).toBe(false);
  });

  it('gives where the sheet lies flat again only behind the outer member', () => {
    const wide = (width: number): Tables => ({ ...pair, yokeStock: [angle, { ...batten, width }] });
    expect(keeps(wide(1.001 * yoke.grip))).toBe(true);
    expect(keeps(wide(0.999 * yoke.grip))).toBe(false);
  });

  it('gives where either member bears more than it is trusted with', () => {
    const trusted = (nose: number, outer: number): Tables => ({
      ...pair,
      yokeStock: [
        { ...angle, stress: nose * yoke.stress.nose },
        { ...batten, stress: outer * yoke.stress.outer },
      ],
    });
    expect(keeps(trusted(1.001, 1.001))).toBe(true);
    expect(keeps(trusted(0.999, 1.001))).toBe(false);
    expect(keeps(trusted(1.001, 0.999))).toBe(false);
  });

  it('gives where half of what the bolts of an end hold is more than one is trusted with', () => {
    const [bolt] = tables.yokeBolts;
    const trusted = (share: number): Tables => ({
      ...pair,
      yokeBolts: bolt ? [{ ...bolt, force: (share * yoke.bolts) / 2 }] : [],
    });
    expect(keeps(trusted(1.001))).toBe(true);
    expect(keeps(trusted(0.999))).toBe(false);
  });

  it('gives where the flange reaches past the leg', () => {
    const leg = (free: number) => ({ ...on, legs: { ...on.legs, free } });
    expect(chosen(pair, long, leg(yoke.gap + 30.001)).within).toBe(true);
    expect(chosen(pair, long, leg(yoke.gap + 29.999)).within).toBe(false);
  });
});

describe('bolts', () => {
  it('are of the job’s system, as are both members and the handles', () => {
    for (const system of ['mm', 'in'] as const) {
      const { nose, outer, handle, bolt } = chosen(tables, { system }).yoke;
      expect([nose, outer, handle, bolt].map((one) => one.system)).toEqual([system, system, system, system]);
    }
  });

  it('are the thickest where none holds, and without any there is no yoke', () => {
    const weak = tables.yokeBolts.map((bolt) => ({ ...bolt, force: 1 }));
    const { yoke, within } = chosen({ ...pair, yokeBolts: weak });
    expect([yoke.bolt.id, within]).toEqual(['M12', false]);
    expect(tryYoke({ ...pair, yokeBolts: [] })).toBeNull();
  });
});

describe('of many pairs', () => {
  const stiffer = (kind: YokeStock['kind']): YokeStock[] =>
    tables.yokeStock
      .filter((one) => one.system === 'mm' && one.kind === kind)
      .sort((a, b) => a.stiffness - b.stiffness);
  const [noses, outers] = [stiffer('angle'), stiffer('batten')];
  const on = sheet(40, 40);
  const strays = (legs: YokedLegs['legs']): number => legShape(on, 'A', legs.A, 0).departure;
  const ids = ({ yoke }: YokedLegs): string => `${yoke.nose.id} ${yoke.outer.id}`;
  // Handles and bolts as from the whole tables, which has no bearing on what is looked at here.
  const alone = (run: number) =>
    outers.flatMap((outer) => noses.map((nose) => chosen({ ...tables, yokeStock: [nose, outer] }, { run })));

  it('the least that keeps the limits and leaves the leg flat enough is taken, in whatever order the table has them', () => {
    // Long runs turn the yoke most, and a nose moved out for that takes far less than where it first stood.
    for (const run of [400, 1100, 1300, 1400, 1600]) {
      const each = alone(run);
      const kept = each.filter(({ within }) => within);
      expect(kept.length).toBeGreaterThan(run > 1500 ? 0 : 1);
      const turned = { ...tables, yokeStock: [...tables.yokeStock].reverse() };
      const least = kept.map(ids)[0];
      expect(ids(chosen(tables, { run, strays, mayStray: 10 }))).toBe(least);
      expect(ids(chosen(turned, { run, strays, mayStray: 10 }))).toBe(least);
      // Flat enough but for the least: the next one that is.
      const mayStray = Math.min(...kept.map(({ legs }) => strays(legs))) + 0.005;
      const flat = kept.find(({ legs }) => strays(legs) <= mayStray);
      expect(ids(chosen(tables, { run, strays, mayStray }))).toBe(flat && ids(flat));
    }
    expect(ids(chosen(tables, { run: 1300 }))).not.toBe(ids(chosen(tables, { run: 400 })));
  });

  it('where none leaves it flat, a stiffer one is taken only for a tenth of a mm', () => {
    const kept = alone(400).filter(({ within }) => within);
    const far = (times: number) => (legs: YokedLegs['legs']) => 5 + times * strays(legs);
    const spread = kept.map(({ legs }) => strays(legs));
    const most = Math.max(...spread) - Math.min(...spread);
    // All within a tenth of each other: the least pair. Told apart by tens of mm: the flattest.
    expect(ids(chosen(tables, { strays: far(0.09 / most) }))).toBe(kept.map(ids)[0]);
    const flattest = kept.reduce((a, b) => (strays(b.legs) < strays(a.legs) - 1e-3 ? b : a));
    const taken = chosen(tables, { strays: far(1000) });
    expect(Math.abs(strays(taken.legs) - strays(flattest.legs))).toBeLessThan(2e-3);
  });

  it('where none keeps the limits, the stiffest of all is taken', () => {
    const rules = { ...tables.rules, maxYokeTail: 0.001 };
    const { yoke, within } = chosen({ ...tables, rules });
    expect([yoke.nose.id, yoke.outer.id, within]).toEqual(['angle-50x50x5', 'batten-89x89', false]);
  });
});

describe('a nose between members that do not part', () => {
  it('clears the form beside its bolts, where the sheet is wrapped five degrees further and the nose so much nearer', () => {
    const stiff = [angle, batten].map((one) => ({ ...one, stiffness: 1e6 * one.stiffness }));
    for (const radius of [40, 120]) {
      const on = sheet(radius, radius);
      const { yoke, legs } = chosen({ ...tables, yokeStock: stiff }, {}, on);
      const [curve, mid] = [bendingCurve(on.section), radius + on.section.thickness / 2];
      const over = toRadians(tables.rules.swingExtraDegrees);
      const look = (gap: number, turn: number): number => {
        const leg = grippedLeg(curve, 1 / mid, { gap, arm: 260 - gap }, wanted.most);
        if (!leg) throw new Error('too limp');
        const opens = idealWrap(on) / on.finishedWrap;
        const wrap = (on.finishedWrap - legs.A.stays) * opens + turn;
        const slice = { mid, sheet: on.section.thickness, wrap };
        return noseClears(poseOf(curve, 1 / mid, leg), noseOutline(yoke.nose, yoke.wedge), slice);
      };
      const beside = look(yoke.gap - over * mid, over);
      expect(beside).toBeGreaterThan(-0.03);
      // No further out than one of both looks asks for.
      expect(Math.min(beside, look(yoke.gap, 0) - tables.rules.noseClears)).toBeLessThan(0.2);
    }
  });
});
