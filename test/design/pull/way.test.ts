import { describe, expect, it } from 'vitest';
import { toRadians } from '../../../src/base/angle';
import { coneThrough } from '../../../src/base/cone';
import type { BentSheet } from '../../../src/design/bend/bend-plan';
import { bendingCurve } from '../../../src/design/bend/curve';
import { legShape } from '../../../src/design/pull/leg-shape';
import { bareLeg } from '../../../src/design/pull/pulled-leg';
import { chooseWay, type Way } from '../../../src/design/pull/way';
import type { Job } from '../../../src/job/job';
import type { Tables } from '../../../src/tables/tables';
import { planStarter, tables } from '../../helpers/starters';

/** Which way a leg is pulled, by the rules of “The pull and the hold”: bare where it comes out flat, else a yoke, else a press. */

const { bend, job } = planStarter('plain-curve');
const curve = bendingCurve(bend.section);
const most = toRadians(tables.rules.maxLegTurn);
const mid = bend.form.radiusA + bend.section.thickness / 2;

interface Asked {
  readonly free?: number;
  readonly pull?: Partial<Job['pull']>;
  readonly effort?: Partial<Job['effort']>;
  readonly of?: Tables;
  readonly on?: Partial<BentSheet>;
}

function tryWay({ free = 101.6, pull = {}, effort = {}, of = tables, on = {} }: Asked): ReturnType<typeof chooseWay> {
  const legs = { ...bend.legs, free };
  const asked: Job = {
    ...job,
    bend: { ...job.bend, legs },
    pull: { ...job.pull, ...pull },
    effort: { ...job.effort, ...effort },
  };
  return chooseWay({ ...bend, ...on, legs }, asked, of);
}
function wayOf(asked: Asked): Way {
  const way = tryWay(asked);
  if ('limp' in way) throw new Error('too limp');
  return way;
}
const ruled = (rules: Partial<Tables['rules']>): Tables => ({ ...tables, rules: { ...tables.rules, ...rules } });
const noYokes: Tables = { ...tables, yokeStock: [] };
const four = { people: 4 };

describe('a leg by bare hands', () => {
  it('is pulled where the hands’ limit just does: moment over what all hands give', () => {
    const way = wayOf({ pull: { with: 'bare' }, effort: { people: 2, handForce: 85 } });
    expect(way.leverNeeded).toBeCloseTo(way.moment / 170, 9);
    expect(way.lever).toBeCloseTo(way.moment / 170, 9);
    expect(way.lever).toBeGreaterThan(101.6);
    // So much metal is left on beyond the leg's 101.6 mm, and its edge is where the hands are.
    expect(way.leverage).toBeCloseTo(way.moment / 170 - 101.6, 9);
    expect(way.edge).toBeCloseTo(way.lever, 9);
  });

  it('is pulled so wherever it comes out flat, whatever else there is', () => {
    expect(wayOf({ free: 40, effort: { people: 12 } })).toMatchObject({
      ...{ with: 'bare', lever: 40, leverage: 0, edge: 40, bows: false, gives: false, yoke: null, bare: null },
    });
    // A leg long enough for a yoke too.
    expect(wayOf({ effort: { people: 12 } })).toMatchObject({ with: 'bare', lever: 101.6, yoke: null, bare: null });
    expect(wayOf({ effort: { people: 12 }, pull: { with: 'yoke' } })).toMatchObject({ with: 'yoke' });
  });

  it('bows beyond the shop’s share of its length, for itself', () => {
    const asked = { pull: { with: 'bare' }, effort: { people: 9 } } as const;
    const of = (maxLegBow: number): Way => wayOf({ ...asked, of: ruled({ maxDeparture: 99, maxLegBow }) });
    const { bow } = legShape({ ...bend, legs: { ...bend.legs, free: 101.6 } }, 'A', of(99).legs.A, 0);
    expect(bow).toBeGreaterThan(0.005);
    // In mm per 100 mm of leg.
    expect([of(bow / 1.016 + 1e-6).bows, of(bow / 1.016 - 1e-6).bows]).toEqual([false, true]);
  });

  it('is judged on the run that asks most, wherever it stands', () => {
    const runs = [100, 300, 200].map((to, index) => ({ name: `${index}`, from: 0, to, moment: 42 * to }));
    for (const order of [runs, [...runs].reverse()])
      expect(wayOf({ on: { runs: order }, effort: four }).moment).toBe(42 * 300);
  });

  it('could be pulled at most so far out: five mm further it would come out too far from round, or bow', () => {
    const { bare } = wayOf({});
    if (!bare) throw new Error('nothing by hand');
    expect(bare.lever % 5).toBe(0);
    const flat = (lever: number): boolean => {
      const way = wayOf({ free: lever, pull: { with: 'bare' }, effort: { people: 99 } });
      const { departure, bow } = legShape({ ...bend, legs: { ...bend.legs, free: 101.6 } }, 'A', way.legs.A, 0);
      return departure <= tables.rules.maxDeparture && bow <= tables.rules.maxLegBow * 1.016;
    };
    expect([flat(bare.lever), flat(bare.lever + 5)]).toEqual([true, false]);
    // A leg's own pull, N per mm of its width, over 457.2 mm.
    expect(bare.handForce).toBeCloseTo((bareLeg(curve, 1 / mid, most).at(bare.lever)?.force ?? NaN) * 457.2, 6);
  });

  it('has no such place where nothing is flat enough', () => {
    expect(wayOf({ of: ruled({ maxDeparture: 0 }) }).bare).toBeNull();
  });

  it('at the ends of a taper bows where either does', () => {
    const bows = (from: number, to: number, maxDeparture: number): boolean => {
      const form = coneThrough(from, to, 457.2);
      return wayOf({
        on: { form },
        pull: { with: 'bare' },
        effort: { people: 9 },
        of: ruled({ maxDeparture, maxLegBow: 9 }),
      }).bows;
    };
    const shape = (from: number, to: number, end: 'A' | 'B'): number => {
      const form = coneThrough(from, to, 457.2);
      const { legs } = wayOf({ on: { form }, pull: { with: 'bare' }, effort: { people: 9 } });
      return legShape({ ...bend, form }, end, legs[end], 0).departure;
    };
    for (const [from, to] of [
      [30, 60],
      [60, 30],
    ] as const) {
      const [A, B] = [shape(from, to, 'A'), shape(from, to, 'B')];
      expect(Math.abs(A - B)).toBeGreaterThan(0.02);
      expect(bows(from, to, Math.max(A, B) + 1e-6)).toBe(false);
      expect(bows(from, to, Math.max(A, B) - 1e-6)).toBe(true);
    }
  });

  it('is too limp from the lever on at which it turns by sixty degrees', () => {
    const way = tryWay({ free: 5000, pull: { with: 'bare' }, effort: four });
    if (!('limp' in way)) throw new Error('not limp');
    expect(bareLeg(curve, 1 / mid, most).at(way.limp * 0.999)?.loaded).toBeCloseTo(most, 1);
    expect('limp' in tryWay({ free: way.limp * 1.001, pull: { with: 'bare' }, effort: four })).toBe(true);
    expect('limp' in tryWay({ free: way.limp * 0.999, pull: { with: 'bare' }, effort: four })).toBe(false);
    // Of a taper the end that is too limp first.
    const limps = (from: number, to: number): number => {
      const found = tryWay({
        free: 5000,
        pull: { with: 'bare' },
        on: { form: coneThrough(from, to, 4572), length: 4572 },
      });
      return 'limp' in found ? found.limp : NaN;
    };
    const ends = [limps(30, 30), limps(60, 60)];
    for (const taper of [limps(30, 60), limps(60, 30)]) expect(taper / Math.min(...ends)).toBeCloseTo(1, 3);
    expect(Math.max(...ends) / Math.min(...ends)).toBeGreaterThan(1.05);
    // A press out there as well.
    expect(tryWay({ pull: { with: 'press', press: 5000 } })).toEqual(way);
    expect(wayOf({ pull: { with: 'press', press: 40 } })).toMatchObject({
      ...{ with: 'press', lever: 40, leverage: 0, edge: 101.6, yoke: null, bare: null },
      ...{ bows: false, gives: false },
    });
  });
});

describe('a leg that would bow by bare hands', () => {
  it('is pulled by more people where there is no yoke, as far out as it stays flat', () => {
    const way = wayOf({ of: noYokes });
    expect([way.with, way.bows, way.gives]).toEqual(['bare', false, false]);
    expect(way.lever).toBe(wayOf({}).bare?.lever);
    expect(way.leverage).toBeCloseTo(way.lever - 101.6, 9);
  });

  it('is pressed where it is longer than that; pulled all the same where pressing leaves it no rounder', () => {
    const press = wayOf({ of: noYokes, free: 200 });
    expect([press.with, press.lever, press.bows]).toEqual(['press', 40, false]);
    const bowed = { ...noYokes, rules: { ...tables.rules, maxDeparture: 0 } };
    expect(wayOf({ of: bowed, free: 150 })).toMatchObject({ with: 'bare', lever: 150, bows: true });
    // Where hands cannot pull it at all: pressed; and where neither can, too limp.
    expect(wayOf({ of: bowed, free: 5000 })).toMatchObject({ with: 'press', lever: 40, bows: true });
    expect(tryWay({ of: bowed, free: 5000, pull: { press: 5000 } })).toHaveProperty('limp');
  });
});

describe('a leg by yoke', () => {
  it('gives where its members do, and bows where the leg does', () => {
    expect(wayOf({})).toMatchObject({ with: 'yoke', gives: false, bows: false });
    const weak = { ...tables, yokeStock: tables.yokeStock.map((one) => ({ ...one, stress: 0.1 })) };
    expect(wayOf({ of: weak })).toMatchObject({ with: 'yoke', gives: true, bows: false });
    expect(wayOf({ of: ruled({ maxDeparture: 0 }) })).toMatchObject({ with: 'yoke', gives: false, bows: true });
  });

  it('reaches past both ends of the run that asks most: 25 mm to its bolts, as much again to its own ends', () => {
    const runs = [{ name: '', from: 100, to: 300, moment: 42 * 200 }];
    expect(wayOf({ on: { runs }, pull: { with: 'yoke' } }).yoke).toMatchObject({ span: 250, length: 300 });
  });

  it('needs a leg as long as nose and flange, unless it is asked for', () => {
    // Pressed or by hand all else; asked for, the yoke gives.
    expect(wayOf({ free: 40 }).with).not.toBe('yoke');
    expect(wayOf({ free: 40, pull: { with: 'yoke' } })).toMatchObject({ with: 'yoke', gives: true });
  });

  it('is pulled nearer by quarters until the leg is flat, no nearer than hands or handles allow', () => {
    const levers = [400, 300, 225, 168.75, 126.5625, 120];
    const levered = (maxDeparture: number): Way =>
      wayOf({ free: 400, pull: { with: 'yoke' }, effort: four, of: ruled({ maxDeparture, maxLegBow: 99 }) });
    expect(levered(99)).toMatchObject({ lever: 400, bows: false });
    // Never flat: the nearest that is tried, 120 mm for four people.
    expect(levered(0)).toMatchObject({ lever: 120, bows: true });
    for (const maxDeparture of [0.6, 0.8, 1]) {
      const way = levered(maxDeparture);
      expect(levers).toContain(way.lever);
      expect(way.bows).toBe(false);
      // A third further out it would bow.
      const before = levers[levers.indexOf(way.lever) - 1];
      if (before === undefined) continue;
      const alone = wayOf({
        free: before,
        pull: { with: 'yoke' },
        effort: four,
        of: ruled({ maxDeparture, maxLegBow: 99, minHandle: before }),
      });
      expect([alone.lever, alone.bows]).toEqual([before, true]);
    }
    // One person alone reaches 175 mm, and no nearer.
    const alone = wayOf({
      free: 400,
      pull: { with: 'yoke' },
      of: ruled({ maxDeparture: 0, maxLegBow: 99 }),
    });
    expect(alone.lever).toBeCloseTo(alone.moment / 110, 9);
    expect(alone.lever).toBeGreaterThan(169);
  });
});
