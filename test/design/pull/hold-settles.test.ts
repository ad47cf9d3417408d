import { describe, expect, it } from 'vitest';
import { coneThrough } from '../../../src/base/cone';
import type { BendPlan } from '../../../src/design/bend/bend-plan';
import { bendingCurve, parameterForMoment } from '../../../src/design/bend/curve';
import type { DepthAlong } from '../../../src/design/bend/depth-along';
import { momentPerWidth } from '../../../src/design/bend/moment';
import { planBend } from '../../../src/design/pull';
import { pullTips } from '../../../src/design/pull/hold';
import { clampsFor, heldForm, holdBend, likelyBearing } from '../../../src/design/pull/plan-hold';
import { bearingAt, heldTail, settle } from '../../../src/design/pull/settle';
import { chooseWay } from '../../../src/design/pull/way';
import { planStarter, tables } from '../../helpers/starters';

/** Clamps, wrap and bearing settle one another: by statics of the form cut free, and by strips of the held leg. */

const { bend: planned, job } = planStarter('plain-curve');
const { rules } = tables;
const standing = { foot: 80, spine: 18 };
const shop = { job, rules };
const way = chooseWay(planned, job, tables);
if ('limp' in way) throw new Error('too limp');
/** As it is before anyone knows of clamps: the held leg flat from the tangent line back. */
const flat = settle(planned, { ...way, bows: false, gives: false }, 0);
const ended = (bend: BendPlan, clamps: number, of = shop) => {
  const { value, findings } = holdBend(bend, standing, clamps, of);
  if (!value) throw new Error(JSON.stringify(findings));
  return value;
};
const round = (from: number, to: number, more: Partial<BendPlan> = {}): BendPlan => {
  const form = coneThrough(from, to, 457.2);
  return { ...flat, form, finished: form, ...more };
};

describe('the form as it is held', () => {
  it('is tipped by the run that asks most, wherever it stands', () => {
    const runs = [100, 300, 200].map((to, index) => ({ name: `${index}`, from: 0, to, moment: 42 * to }));
    const per = momentPerWidth(flat.section, flat.form.radiusA + flat.section.thickness / 2);
    for (const order of [runs, [...runs].reverse()]) {
      const { slices } = heldForm({ ...flat, runs: order }, standing);
      expect(slices.reduce((sum, { moment }) => sum + moment, 0)).toBeCloseTo(300 * per, 6);
    }
  });

  it('is cut where its held leg’s depth turns a corner, within the run', () => {
    const level = (from: number, to: number, deep: number) => {
      const depth = { A: deep, B: deep };
      return { from, to, under: depth, last: depth };
    };
    const heldAlong = [level(0, 40, 90), level(40, 100, 10), level(100, 300, 60), level(300, 457.2, 20)];
    const runs = [{ name: '', from: 50, to: 250, moment: 1 }];
    const { slices } = heldForm({ ...flat, runs, heldAlong }, standing);
    const per = momentPerWidth(flat.section, flat.form.radiusA + flat.section.thickness / 2);
    const asDeep = (deep: number): number =>
      slices.filter(({ held }) => held === deep).reduce((sum, { moment }) => sum + moment, 0);
    expect(asDeep(10)).toBeCloseTo(50 * per, 6);
    expect(asDeep(60)).toBeCloseTo(150 * per, 6);
    expect(slices.every(({ held }) => held === 10 || held === 60)).toBe(true);
  });

  it('is held by as many clamps as the wrap asks for that they themselves bring about', () => {
    for (const rating of [250, 400, 900, 5000]) {
      const rated = { job: { ...job, clamps: { ...job.clamps, rating } }, rules };
      const { clampForce, clamps } = clampsFor(flat, standing, rated);
      expect(clamps).toBe(Math.max(rules.minClamps, Math.ceil(clampForce / rating)));
      const { hold } = ended(flat, clamps, rated);
      expect(hold.clampForce).toBeCloseTo(clampForce, 6);
      expect(hold.fitted).toBe(clamps * rating);
    }
  });

  it('is not held by clamps too few: as many as its force asks for are named', () => {
    const rating = 100;
    const { value, findings } = holdBend(flat, standing, 1, {
      job: { ...job, clamps: { ...job.clamps, rating } },
      rules,
    });
    expect(value).toBeNull();
    const [lifts] = findings;
    expect(lifts).toMatchObject({ code: 'no-room-for-clamps', path: 'clamps', values: { rating } });
    const force = Number(lifts?.values['force']);
    expect(force).toBeGreaterThan(100);
    expect(lifts?.values['clamps']).toBe(Math.ceil(force / rating));
  });
});

describe('clamps that the pull asks most of part-way', () => {
  const mid = flat.form.radiusA + flat.section.thickness / 2;
  const moment = momentPerWidth(flat.section, mid) * 457.2;
  /** N, by statics about the foot's rear at a place of the pull that ends at `wrap`: [M·98/50.8 + F(φ)·(98·cos φ + R·sin φ)]/89, F(φ) = M/(a + ρ·(ψ − φ)). */
  const needAt = (place: number, wrap: number): number => {
    const pull = moment / (flat.pull.lever + mid * (wrap - place));
    return ((moment * 98) / 50.8 + pull * (98 * Math.cos(place) + flat.form.radiusA * Math.sin(place))) / 89;
  };
  /** The most over the pull, looked for in ten thousand places. */
  const needOver = (wrap: number): number =>
    Math.max(...Array.from({ length: 10_001 }, (_, index) => needAt((wrap * index) / 10_000, wrap)));
  const rated = (rating: number) => ({ job: { ...job, clamps: { ...job.clamps, rating } }, rules });

  it('hold it only if they do there, however much less is asked at its end', () => {
    const { wrap } = ended(flat, 1, rated(needOver(flat.wrap.chosen) * 1.01)).bend;
    const need = needOver(wrap.chosen);
    expect(needAt(wrap.chosen, wrap.chosen)).toBeLessThan(0.95 * need);
    expect(ended(flat, 1, rated(need * 1.001)).hold.clampForce).toBeCloseTo(rules.safetyFactor * need, 0);
    const { value, findings } = holdBend(flat, standing, 1, rated(need * 0.999));
    expect(value).toBeNull();
    expect(findings.map(({ code }) => code)).toEqual(['no-room-for-clamps']);
  });

  it('are one more where the shorter wrap that the first count leads to asks for it', () => {
    // 786.3 N at the wrap before the held leg's tail is known, some 788.3 with three clamps' tail, 787.8 with four's.
    const safe = (wrap: number): number => rules.safetyFactor * needOver(wrap);
    const rating = 788 / 3;
    const [three, four] = [3, 4].map((clamps) => safe(ended(flat, clamps, rated(rating)).bend.wrap.chosen));
    expect(safe(flat.wrap.chosen)).toBeLessThan(788);
    expect(three).toBeGreaterThan(788);
    expect(four).toBeLessThan(788);
    const { clamps, clampForce } = clampsFor(flat, standing, rated(rating));
    expect(clamps).toBe(4);
    expect(clampForce).toBeCloseTo(four ?? NaN, 3);
  });
});

describe('the held leg at the end of the pull', () => {
  const curve = bendingCurve(flat.section);
  const mid = flat.form.radiusA + flat.section.thickness / 2;
  const moment = momentPerWidth(flat.section, mid) * 457.2;
  /** By statics about the foot's rear: M·(b + f)/(C·(f + b/2) − what the pull tips). */
  const bears = (bend: BendPlan, force: number): number =>
    (moment * 98) / (force * 89 - pullTips(heldForm(bend, standing), bend.wrap.chosen));
  /** What strips of a leg whose moment falls steadily to nothing keep of their turn, and how far they lift its start. */
  const strips = (bearing: number): { stays: number; lift: number } => {
    const per = moment / 457.2;
    let [stays, lift] = [0, 0];
    const count = 4000;
    for (let strip = 0; strip < count; strip++) {
      const share = (strip + 0.5) / count;
      const m = per * (1 - share);
      const { curvature } = curve.at(parameterForMoment(curve, m));
      stays += ((curvature - m / curve.stiffness) * bearing) / count;
      lift += (curvature * share * bearing ** 2) / count;
    }
    return { stays, lift };
  };

  it('bears as far back as the clamps leave it, and keeps and lifts what its strips add up to', () => {
    const { bend, hold } = ended(flat, 2);
    expect(hold.bearing).toBeCloseTo(bears(bend, 1800), 6);
    expect(hold.bearing).toBeGreaterThan(8.5);
    const { stays, lift } = strips(hold.bearing);
    expect(hold.tail.A / stays).toBeCloseTo(1, 4);
    expect(hold.tail.B).toBe(hold.tail.A);
    expect(hold.lift / lift).toBeCloseTo(1, 4);
    expect(bend.pull.held).toEqual(hold.tail);
    expect(hold.up).toBeCloseTo(moment / hold.bearing, 6);
  });

  it('keeps more with clamps weaker by three tenths and less with stronger ones', () => {
    const { bend, hold } = ended(flat, 2);
    const { weak, strong } = hold.spread;
    const tail = (share: number): number => strips(Math.max(8, bears(bend, share * 1800))).stays;
    expect((weak ?? NaN) / tail(0.7)).toBeCloseTo(1, 4);
    expect(strong / tail(1.3)).toBeCloseTo(1, 4);
    expect(weak ?? NaN).toBeGreaterThan(strong);
  });

  it('on a taper lifts as the tighter end asks', () => {
    const [one, other] = [ended(round(30, 60), 3).hold, ended(round(60, 30), 3).hold];
    expect(one.lift).toBeCloseTo(other.lift, 9);
    const tight = ended(round(30, 30), 3).hold;
    const loose = ended(round(60, 60), 3).hold;
    const per = ({ lift, bearing }: typeof one): number => lift / bearing ** 2;
    // A little less than at the very end: the outermost slice looked at stands a little in from it.
    expect(per(one) / per(tight)).toBeGreaterThan(0.95);
    expect(per(one)).toBeLessThanOrEqual(per(tight));
    expect(per(one) / per(loose)).toBeGreaterThan(1.2);
  });

  it('is laid out beforehand on the shallowest foot with the clamps that takes', () => {
    const { clamps } = clampsFor(flat, standing, shop);
    expect(likelyBearing(flat, job, tables)).toBeCloseTo(ended(flat, clamps).hold.bearing, 9);
  });
});

describe('a held leg of unlike depth', () => {
  const along: DepthAlong = [{ from: 0, to: 457.2, under: { A: 120, B: 20 }, last: { A: 120, B: 20 } }];
  const unlike: BendPlan = { ...flat, heldAlong: along };

  it('bears at either end as its half does on the whole, nowhere less than 8 mm', () => {
    // Toward A 120 to 70 mm deep, toward B 70 to 20: all of it deeper than 20, none than 200.
    expect(bearingAt(unlike, 'A', 20)).toBeCloseTo(20, 9);
    expect(bearingAt(unlike, 'B', 20)).toBeCloseTo(20, 9);
    expect(bearingAt(unlike, 'A', 200)).toBeCloseTo(95, 9);
    expect(bearingAt(unlike, 'B', 200)).toBeCloseTo(45, 9);
    expect([bearingAt(unlike, 'B', 0), bearingAt(flat, 'B', 33)]).toEqual([0, 33]);
    const shallow = { ...unlike, heldAlong: [{ from: 0, to: 457.2, under: { A: 2, B: 2 }, last: { A: 2, B: 2 } }] };
    expect(bearingAt(shallow, 'A', 30)).toBeCloseTo(8, 9);
  });

  it('keeps of its turn by how far it bears, and the shape at each end is that end’s own', () => {
    const held = heldTail(unlike, 200);
    expect(held.A / held.B).toBeCloseTo(95 / 45, 9);
    const shapes = settle(unlike, { ...way, bows: false, gives: false }, 200).pull;
    expect(shapes.held).toEqual(held);
    // Twice as long a tail of the held leg departs further from the round bend.
    expect(shapes.departure.A).toBeGreaterThan(shapes.departure.B);
    const alike = (depth: number): number =>
      settle(
        { ...flat, heldAlong: [{ from: 0, to: 457.2, under: { A: depth, B: depth }, last: { A: depth, B: depth } }] },
        { ...way, bows: false, gives: false },
        200,
      ).pull.departure.B;
    expect(shapes.departure.A).toBeCloseTo(alike(95), 9);
    expect(shapes.departure.B).toBeCloseTo(alike(45), 9);
  });

  it('is told on by the plan of a bend', () => {
    expect(planBend(job, tables, { heldAlong: along }).value?.heldAlong).toEqual(along);
    expect(planBend(job, tables).value).not.toHaveProperty('heldAlong');
  });
});

describe('of a taper', () => {
  it('departure and reach are those of each end’s own leg', () => {
    const [tight, loose] = [round(30, 30), round(60, 60)].map((bend) => {
      const found = chooseWay(bend, { ...job, pull: { ...job.pull, with: 'press' } }, tables);
      if ('limp' in found) throw new Error('too limp');
      return settle(bend, found, 0).pull;
    });
    for (const [from, to, ends] of [
      [30, 60, [tight, loose]],
      [60, 30, [loose, tight]],
    ] as const) {
      const cone = coneThrough(from, to, 4572);
      const long = {
        ...flat,
        form: cone,
        finished: cone,
        length: 4572,
        runs: [{ name: '', from: 0, to: 4572, moment: 9 }],
      };
      const found = chooseWay(long, { ...job, pull: { ...job.pull, with: 'press' } }, tables);
      if ('limp' in found) throw new Error('too limp');
      const { departure, reach } = settle(long, found, 0).pull;
      // So long a taper is all but a cylinder at either end.
      expect(departure.A / (ends[0]?.departure.A ?? NaN)).toBeCloseTo(1, 3);
      expect(departure.B / (ends[1]?.departure.A ?? NaN)).toBeCloseTo(1, 3);
      expect(reach / Math.max(tight?.reach ?? NaN, loose?.reach ?? NaN)).toBeCloseTo(1, 3);
    }
    expect(Math.abs((tight?.reach ?? NaN) / (loose?.reach ?? NaN) - 1)).toBeGreaterThan(0.005);
  });
});
