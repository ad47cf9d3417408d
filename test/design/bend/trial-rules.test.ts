import { describe, expect, it } from 'vitest';
import { toRadians } from '../../../src/base/angle';
import type { LengthUnit } from '../../../src/base/units';
import { coneThrough } from '../../../src/base/cone';
import type { BendPlan } from '../../../src/design/bend/bend-plan';
import { sectionOf } from '../../../src/design/bend/section';
import { finishedRadius } from '../../../src/design/bend/springback';
import { adviseTrial } from '../../../src/design/bend/trial-advice';
import { checkDiscs, checkFactor, checkFit, checkStrip } from '../../../src/design/bend/trial-findings';
import type { TrialFit } from '../../../src/design/bend/trial-fit';
import type { Strip } from '../../../src/job/job';
import { planStarter } from '../../helpers/starters';

/** The rules for trial strips at the very place where they begin to hold; the limits are the design's (section 3), worked out by hand. */

const { bend } = planStarter('plain-curve');
const strip = (more: Partial<Strip>): Strip => ({
  radius: 40,
  bent: toRadians(90),
  left: toRadians(80),
  width: null,
  ...more,
});
const fit = (more: Partial<TrialFit>): TrialFit => ({
  strips: [],
  parts: [],
  factor: 1,
  spread: { low: 1, high: 1 },
  legsKeep: { A: 0, B: 0 },
  ...more,
});
const fitted = (radius: number, index = 0) => ({ ...strip({ radius }), index, factor: 1 });

describe('a strip as measured', () => {
  it('is wide enough from eight thicknesses on, and a width not said is let pass', () => {
    expect(checkStrip(strip({ width: 16 }), 0, 2)).toEqual([]);
    expect(checkStrip(strip({ width: null }), 0, 2)).toEqual([]);
    expect(checkStrip(strip({ width: 15 }), 1, 2)).toMatchObject([
      {
        code: 'strip-too-narrow',
        path: 'trials[1].width',
        values: { strip: 2, width: 15, times: 7.5, least: 16, leastTimes: 8 },
      },
    ]);
  });

  it('must have opened, and not all the way', () => {
    const codes = (left: number): string[] =>
      checkStrip(strip({ left: toRadians(left) }), 2, 1).map(({ code }) => code);
    expect(codes(90)).toEqual(['no-springback']);
    expect(codes(95)).toEqual(['no-springback']);
    expect(codes(0)).toEqual(['strip-came-back-flat']);
    expect(codes(-1)).toEqual(['strip-came-back-flat']);
    expect(codes(0.5)).toEqual([]);
    expect(checkStrip(strip({ left: toRadians(95) }), 2, 1)[0]).toMatchObject({
      path: 'trials[2].left',
      values: { strip: 3, left: toRadians(95), bent: toRadians(90) },
    });
    expect(checkStrip(strip({ left: 0 }), 2, 1)[0]).toMatchObject({
      path: 'trials[2].left',
      values: { strip: 3, left: 0 },
    });
  });

  it('that opened by less than four degrees is doubted: half a degree misread is then more than an eighth', () => {
    const of = (left: number) => checkStrip(strip({ left: toRadians(left) }), 0, 1);
    expect(of(85.99)).toEqual([]);
    const [found] = of(88);
    expect(found).toMatchObject({ code: 'little-springback', path: 'trials[0].left', values: { strip: 1 } });
    expect(found?.values['springback']).toBeCloseTo(toRadians(2), 12);
    expect(found?.values['change']).toBeCloseTo(0.25, 12);
  });

  it('is told within an eighth by springback of just four degrees', () => {
    expect(checkStrip(strip({ bent: toRadians(8), left: toRadians(4) }), 0, 1)).toEqual([]);
  });

  it('contradicts its sheet beyond twice the table’s strength or half of it', () => {
    for (const factor of [0.5, 1, 2]) expect(checkFactor(strip({}), 0, factor)).toEqual([]);
    for (const factor of [0.499, 2.001]) {
      expect(checkFactor(strip({}), 3, factor)).toMatchObject([
        {
          code: 'trial-contradicts-sheet',
          path: 'trials[3]',
          values: { strip: 4, radius: 40, bent: toRadians(90), left: toRadians(80), factor, least: 0.5, most: 2 },
        },
      ]);
    }
  });

  it('alone is told so, unless a finished part stands beside it', () => {
    const codes = (value: TrialFit): string[] => checkFit(value).map(({ code }) => code);
    expect(codes(fit({ strips: [fitted(40)] }))).toEqual(['one-strip']);
    expect(codes(fit({ strips: [fitted(40), fitted(40, 1)] }))).toEqual([]);
    expect(codes(fit({}))).toEqual([]);
    const part: TrialFit['parts'][number] = {
      ...{ at: 0, radius: 42, angle: null, wrap: null, form: 40, index: 1, factor: 1 },
      ...{ reckoned: { radius: 42, angle: null }, cameOut: 42, again: null, sure: { radius: 1, angle: null } },
    };
    expect(codes(fit({ strips: [fitted(40)], parts: [part] }))).toEqual([]);
  });

  it('disagrees with others where their factors lie more than a quarter of the fitted one apart', () => {
    const two = [fitted(40), fitted(40, 1)];
    const apart = (low: number, high: number) => checkFit(fit({ strips: two, factor: 0.5, spread: { low, high } }));
    expect(apart(0.5, 0.625)).toEqual([]);
    expect(apart(0.5, 0.626)).toMatchObject([
      { code: 'strips-disagree', path: 'trials', values: { low: 0.5, high: 0.626 } },
    ]);
  });

  it('bent round a disc twice as tight or as wide as the form is doubted, by mid-surface radii', () => {
    const of = (radius: number) =>
      checkDiscs(
        { ...bend, form: coneThrough(49, 49, 300), length: 300, section: { ...bend.section, thickness: 2 } },
        fit({ strips: [fitted(60, 0), fitted(radius, 4)] }),
      );
    // Mid radius 50: discs from 25 to 100 mid, 24 to 99 inside.
    expect(of(24)).toEqual([]);
    expect(of(99)).toEqual([]);
    const values = { strip: 5, formLeast: 50, formMost: 50, discLeast: 24, discMost: 99 };
    expect(of(23.9)).toMatchObject([
      { code: 'disc-unlike-form', path: 'trials[4].radius', values: { ...values, radius: 23.9 } },
    ]);
    expect(of(99.1)).toMatchObject([
      { code: 'disc-unlike-form', path: 'trials[4].radius', values: { ...values, radius: 99.1 } },
    ]);
  });

  it('the wider end and the tighter end of a taper are both reckoned with', () => {
    const form = coneThrough(40, 100, 300);
    const cosine = Math.cos(form.halfAngle);
    const of = (radius: number): number =>
      checkDiscs(
        { ...bend, form, length: 300, section: { ...bend.section, thickness: 2 } },
        fit({ strips: [fitted(radius)] }),
      ).length;
    const [low, high] = [(40 / cosine + 1) / 2 - 1, (100 / cosine + 1) * 2 - 1];
    expect([of(low - 0.01), of(low + 0.01), of(high - 0.01), of(high + 0.01)]).toEqual([1, 0, 0, 1]);
  });
});

interface Sheet {
  readonly thickness?: number;
  readonly units?: LengthUnit;
}

describe('the strip that is advised', () => {
  const section = sectionOf({ modulus: 200_000, poisson: 0.3, yield: 200, hardening: null }, 1, 1);
  const advise = (radiusA: number, radiusB: number, wrap: number, { thickness = 1, units = 'mm' }: Sheet = {}) =>
    adviseTrial(
      {
        ...bend,
        length: 300,
        neutral: 0.5,
        section: { ...section, thickness },
        form: coneThrough(radiusA, radiusB, 300),
        wrap: { A: wrap, B: wrap, chosen: wrap },
      } satisfies BendPlan,
      units,
    );

  it('goes round a disc of the mean of both ends, in whole mm, down; a tiny one as it is', () => {
    expect(advise(40.7, 40.7, 1.5).radius).toBe(40);
    expect(advise(5, 5, 1.5).radius).toBe(5);
    expect(advise(4.7, 4.7, 1.5).radius).toBe(4.7);
    // √(40·90)/cos β, sin β = 50/300: 60/0.98601 = 60.85
    expect(advise(40, 90, 1.5).radius).toBe(60);
  });

  it('is turned as far as the form, from 60 to 150 degrees, and as far as 400 mm of arc go but not less than 45 degrees', () => {
    expect(advise(40, 40, toRadians(100)).bent).toBeCloseTo(toRadians(100), 12);
    expect(advise(40, 40, toRadians(30)).bent).toBeCloseTo(toRadians(60), 12);
    expect(advise(40, 40, toRadians(165)).bent).toBeCloseTo(toRadians(150), 12);
    // 400 mm round a mid radius of 320.5 mm.
    expect(advise(320, 320, toRadians(100)).bent).toBeCloseTo(400 / 320.5, 12);
    expect(advise(800, 800, toRadians(100)).bent).toBeCloseTo(toRadians(45), 12);
  });

  it('is as long as its arc along the neutral line, 60 mm to hold and 120 mm to swing, whole mm up', () => {
    const made = advise(40, 40, 1.5);
    // 1.5·(40 + 0.5) = 60.75; 60 + 60.75 + 120 = 240.75
    expect(made).toMatchObject({ held: 60, length: 241 });
    expect(made.free).toBeCloseTo(241 - 60 - 60.75, 12);
    // By the closed form: κ left = κ − m/EI, so the turn left is bent·ρ/ρ_left.
    expect(made.left).toBeCloseTo((1.5 * 40.5) / finishedRadius(section, 40.5), 12);
    expect(made.left).toBeLessThan(1.5);
  });

  it('is 15 mm wide, or eight thicknesses where they are more', () => {
    expect(advise(40, 40, 1.5, { thickness: 1 }).width).toBe(15);
    expect(advise(40, 40, 1.5, { thickness: 2 }).width).toBe(16);
    expect(advise(40, 40, 1.5, { thickness: 1.95 }).width).toBe(16);
  });

  it('of an inch job is in sixteenths, 2-1/2 in to hold, 5 in to swing, 5/8 in wide at least', () => {
    const inch = 25.4;
    // 1.6 in is 25.6 sixteenths: 25 of them.
    const made = advise(1.6 * inch, 1.6 * inch, 1.5, { thickness: 1, units: 'in' });
    expect(made.radius).toBeCloseTo((25 / 16) * inch, 9);
    expect(made.width).toBeCloseTo((5 / 8) * inch, 9);
    expect(made.held).toBeCloseTo(2.5 * inch, 9);
    // 2.5 + 1.5·(25/16 + 0.5/25.4) + 5 in = 9.873 in: 158 sixteenths.
    expect(made.length).toBeCloseTo((158 / 16) * inch, 9);
    // 8 · 2 mm = 0.6299 in: 11 sixteenths; five sixteenths of radius are rounded, less is not.
    expect(advise(40, 40, 1.5, { thickness: 2, units: 'in' }).width).toBeCloseTo((11 / 16) * inch, 9);
    expect(advise((5.5 / 16) * inch, (5.5 / 16) * inch, 1.5, { thickness: 1, units: 'in' }).radius).toBeCloseTo(
      (5 / 16) * inch,
      9,
    );
    expect(advise(0.3 * inch, 0.3 * inch, 1.5, { thickness: 1, units: 'in' }).radius).toBeCloseTo(0.3 * inch, 9);
  });
});
