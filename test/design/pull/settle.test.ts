import { describe, expect, it } from 'vitest';
import { coneThrough } from '../../../src/base/cone';
import type { BendPlan } from '../../../src/design/bend/bend-plan';
import { settle } from '../../../src/design/pull/settle';
import { idealWrap, wrapFor } from '../../../src/design/pull/wrap-for';
import { planStarter } from '../../helpers/starters';

/** The wrap by hand: sheet 2 mm thick, forms and finished bends of round radii. */

const { bend: some } = planStarter('plain-curve');
const bend: BendPlan = {
  ...some,
  form: coneThrough(39, 39, 300),
  finished: coneThrough(49, 49, 300),
  length: 300,
  finishedWrap: 1.6,
  section: { ...some.section, thickness: 2 },
  trials: null,
};
const legs = { A: { ...some.pull.legs.A, stays: 0.1 }, B: { ...some.pull.legs.B, stays: 0.2 } };

describe('the wrap that brings the finished angle', () => {
  it('with legs that stay flat: the finished wrap times ρ_finished/ρ_form, 50/40', () => {
    expect(idealWrap(bend)).toBeCloseTo(2, 12);
  });

  it('less what the legs keep, each end for itself, and their mean', () => {
    const { A, B, chosen } = wrapFor(bend, legs, { A: 0.02, B: 0.04 });
    expect(A).toBeCloseTo((1.6 - 0.12) * 1.25, 12);
    expect(B).toBeCloseTo((1.6 - 0.24) * 1.25, 12);
    expect(chosen).toBeCloseTo((1.48 + 1.36) * 0.625, 12);
  });

  it('of a taper whose finished radii are the form’s: the finished wrap; legs keep by 1/cos β', () => {
    // 300 mm along the tangent line, 80 mm wider: sin β = 80/300.
    const cone = coneThrough(40, 120, 300);
    const taper = { ...bend, form: cone, finished: cone };
    expect(idealWrap(taper)).toBeCloseTo(1.6, 12);
    const { A } = wrapFor(taper, legs, { A: 0, B: 0 });
    expect(A).toBeCloseTo(1.6 - 0.1 / Math.cos(cone.halfAngle), 12);
    expect(Math.sin(cone.halfAngle)).toBeCloseTo(80 / 300, 12);
  });

  it('of a finished cone on a cylinder: the mean of both ends', () => {
    const finished = coneThrough(49, 59, 300);
    const cosine = Math.sqrt(1 - (10 / 300) ** 2);
    const opens = [49, 59].map((radius) => (radius / cosine + 1) / 40);
    expect(idealWrap({ ...bend, finished })).toBeCloseTo(1.6 * ((Number(opens[0]) + Number(opens[1])) / 2), 9);
  });
});

const near = (wanted: number): unknown => expect.closeTo(wanted, 12);

describe('the instant at the end of the pull', () => {
  const leg = (...pieces: readonly (readonly [number, number, number])[]) => ({
    ...some.pull.legs.A,
    ...{ loaded: pieces.reduce((sum, [, loaded]) => sum + loaded, 0) },
    ...{ stays: pieces.reduce((sum, [, , stays]) => sum + stays, 0) },
    ...{ pieces: pieces.map(([length, loaded, stays]) => ({ length, loaded, stays })) },
  });
  /** A's leg turns 0.14 and keeps 0.05 of it within 10 mm, B's 0.28 and 0.15 within 60. */
  const pulled = {
    A: leg([10, 0.1, 0.05], [40, 0.04, 0]),
    B: leg([20, 0.2, 0.1], [40, 0.08, 0.05], [5, 0, 0]),
  };
  const settled = (on: BendPlan) => settle(on, { ...some.pull, legs: pulled, bows: false, gives: false }, 0);

  it('turns each leg by the wrap and what it is bent beyond the take-off', () => {
    // 1.25·(1.6 − 0.05) and 1.25·(1.6 − 0.15).
    const { wrap, twist, pull } = settled(bend);
    expect([wrap.A, wrap.B, wrap.chosen]).toEqual([1.9375, 1.8125, 1.875].map(near));
    expect([twist.A, twist.B]).toEqual([-0.05, 0.05].map(near));
    expect([pull.legAngle.A, pull.legAngle.B]).toEqual([2.015, 2.155].map(near));
    expect(pull.gaugeWrap).toBeCloseTo(1.875 + 0.21, 12);
    // 30 mm past the take-off: half of A's second piece, a quarter of B's.
    expect([pull.nearAngle.A, pull.nearAngle.B]).toEqual([1.995, 2.095].map(near));
    expect(pull.reach).toBe(60);
    expect([pull.held, pull.bearing]).toEqual([{ A: 0, B: 0 }, 0]);
  });

  it('on a taper by 1/cos β as much wrap, and between the legs’ planes sin δ/2 = sin ψ/2·cos β', () => {
    const form = coneThrough(40, 120, 300);
    const { wrap, pull } = settled({ ...bend, form, finished: form });
    const cosine = Math.sqrt(1 - (80 / 300) ** 2);
    expect(wrap.chosen).toBeCloseTo(1.6 - 0.1 / cosine, 12);
    expect(pull.gaugeWrap).toBeCloseTo(1.6 - 0.1 / cosine + 0.21 / cosine, 12);
    const between = (turn: number): number => 2 * Math.asin(Math.sin((1.6 + (turn - 0.1) / cosine) / 2) * cosine);
    expect([pull.legAngle.A, pull.legAngle.B]).toEqual([between(0.14), between(0.28)].map(near));
    expect(pull.nearAngle.B).toBeCloseTo(between(0.22), 12);
  });
});
