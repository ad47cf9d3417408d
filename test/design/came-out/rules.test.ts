import { describe, expect, it } from 'vitest';
import { toRadians } from '../../../src/base/angle';
import { coneThrough } from '../../../src/base/cone';
import type { FittedPart } from '../../../src/design/bend/trial-fit';
import { adviseForm } from '../../../src/design/came-out/advise';
import { midOn, shareLeft, type Before } from '../../../src/design/came-out/before';
import { checkMeasured, checkOff, checkPartFactor } from '../../../src/design/came-out/part-findings';
import { sectionOf } from '../../../src/design/bend/section';
import type { FinishedPart } from '../../../src/job/job';
import { ROUNDING } from '../../../src/base/tolerance';
import { planStarter, tables } from '../../helpers/starters';

/** What a finished part's measurements are refused or doubted for, at the place where each rule begins to hold. */

const { bend } = planStarter('plain-curve');
const part: FinishedPart = { at: 100, radius: 45, angle: null, wrap: null, form: 40 };
const before: Before = {
  bend: { ...bend, form: coneThrough(40, 40, 300), finished: coneThrough(45, 45, 300), length: 300 },
  hold: null,
  formGiven: false,
  rules: { ...tables.rules, mostLegsOff: 6 },
};
const measured = (more: Partial<FinishedPart>, of: Partial<Before> = {}) =>
  checkMeasured({ ...part, ...more }, 2, { ...before, ...of });

describe('a finished part as measured', () => {
  it('says nothing amiss where its radius has opened from the form’s', () => {
    expect(measured({})).toEqual([]);
    expect(measured({ radius: null, angle: 1.5, wrap: 1.6 })).toEqual([]);
  });

  it('lies on the bend', () => {
    for (const at of [300, 300 * (1 + ROUNDING)]) expect(measured({ at })).toEqual([]);
    expect(measured({ at: 300.1 })).toMatchObject([
      { code: 'part-outside-bend', path: 'trials[2].part.at', values: { trial: 3, at: 300.1, length: 300 } },
    ]);
  });

  it('has a radius or an angle, and a wrap to its angle', () => {
    expect(measured({ radius: null })).toMatchObject([
      { code: 'part-not-measured', path: 'trials[2].part', values: { trial: 3 } },
    ]);
    expect(measured({ angle: 1.5 })).toMatchObject([
      { code: 'part-lacks-wrap', path: 'trials[2].part.wrap', values: { trial: 3, angle: 1.5 } },
    ]);
  });

  it('opened, by its curvature across the ruling', () => {
    expect(measured({ radius: 40.01 })).toEqual([]);
    for (const radius of [40, 39])
      expect(measured({ radius })).toMatchObject([
        { code: 'part-not-opened', path: 'trials[2].part.radius', values: { trial: 3, radius, form: 40 } },
      ]);
    // A finished cone of 60° half-angle: R/cos β is twice R.
    const steep = { bend: { ...before.bend, finished: { ...before.bend.finished, halfAngle: Math.PI / 3 } } };
    expect(measured({ radius: 20.1 }, steep)).toEqual([]);
    expect(measured({ radius: 19.9 }, steep)).toHaveLength(1);
  });

  it('has an angle its taper can have: sin(δ/2) no more than cos β', () => {
    const steep = { bend: { ...before.bend, finished: { ...before.bend.finished, halfAngle: Math.PI / 3 } } };
    expect(measured({ radius: null, angle: toRadians(59.9), wrap: 1 }, steep)).toEqual([]);
    expect(measured({ radius: null, angle: toRadians(60.1), wrap: 1 }, steep)).toMatchObject([
      { code: 'part-beyond-taper', path: 'trials[2].part.angle', values: { trial: 3, angle: toRadians(60.1) } },
    ]);
  });

  it('came off the form as planned where no other is named, which is said unless the job gives it', () => {
    expect(measured({ form: null })).toMatchObject([
      { code: 'part-form-taken', path: 'trials[2].part.form', values: { trial: 3, form: 40 } },
    ]);
    expect(measured({ form: null }, { formGiven: true })).toEqual([]);
  });

  it('contradicts its sheet beyond twice or half of the table’s strength', () => {
    for (const factor of [null, 0.5, 1, 2]) expect(checkPartFactor(factor, 1)).toEqual([]);
    const values = { trial: 2, least: 0.5, most: 2 };
    expect(checkPartFactor(2.01, 1)).toMatchObject([
      { code: 'part-contradicts-sheet', path: 'trials[1].part', values: { ...values, stronger: 'stronger' } },
    ]);
    expect(checkPartFactor(0.49, 1)).toMatchObject([{ values: { ...values, stronger: 'weaker' } }]);
  });

  it('is doubted where its legs kept six degrees more or less than the sums', () => {
    const off = (degrees: number | null) => checkOff(degrees === null ? null : toRadians(degrees), 0, before.rules);
    for (const fine of [null, 5.99, -5.99]) expect(off(fine)).toEqual([]);
    expect(off(6.01)).toMatchObject([
      {
        code: 'part-legs-off',
        path: 'trials[0].part.angle',
        values: { trial: 1, off: toRadians(6.01), which: 'further' },
      },
    ]);
    expect(off(-6.01)).toMatchObject([{ values: { off: toRadians(6.01), which: 'less far' } }]);
  });
});

describe('what to do about the form', () => {
  const fitted: FittedPart = {
    ...part,
    index: 0,
    form: 40,
    factor: 1,
    reckoned: { radius: 45, angle: null },
    cameOut: 45,
    again: null,
    sure: { radius: 0.5, angle: null },
  };
  // Wanted 45 finished, on a form that should now be 38.
  const now = { ...before.bend, form: coneThrough(38, 38, 300) };
  const advise = (more: Partial<FittedPart>, given = false) => adviseForm({ ...fitted, ...more }, now, given);

  it('nothing, where the radius came out within what it can be measured to, or the job gives the form', () => {
    const keep = { do: 'keep', by: 0, to: 40, wanted: 45 };
    expect(advise({})).toEqual(keep);
    expect(advise({ cameOut: 45.5 })).toEqual(keep);
    expect(advise({ cameOut: 44.5 })).toEqual(keep);
    expect(advise({ cameOut: 60 }, true)).toEqual({ do: 'keep', by: 0, to: 40, wanted: null });
  });

  it('cut it smaller, or lay something round it', () => {
    expect(advise({ cameOut: 45.6 })).toEqual({ do: 'recut', by: 2, to: 38, wanted: 45 });
    expect(advise({ cameOut: 44.4, form: 37 })).toEqual({ do: 'shim', by: 1, to: 38, wanted: 45 });
    expect(advise({ cameOut: 44.4, form: 38 })).toMatchObject({ do: 'shim', by: 0 });
  });
});

describe('sums of a part', () => {
  it('mid-surface radius of a cone: R/cos β + t/2', () => {
    expect(midOn(20, Math.PI / 3, 2)).toBeCloseTo(41, 12);
  });

  it('the share of its curvature a perfectly plastic strip keeps: 1 − 3x + 4x³, x = Y′ρ/(E′t)', () => {
    const section = sectionOf({ modulus: 200_000, poisson: 0.3, yield: 200, hardening: null }, 1, 1);
    const x = (section.planeYield * 100) / section.planeModulus;
    expect(shareLeft(section, 100)).toBeCloseTo(1 - 3 * x + 4 * x ** 3, 9);
  });
});
