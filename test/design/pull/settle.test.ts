import { describe, expect, it } from 'vitest';
import { coneThrough } from '../../../src/base/cone';
import type { BendPlan } from '../../../src/design/bend/bend-plan';
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
