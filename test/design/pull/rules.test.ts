import { describe, expect, it } from 'vitest';
import { toRadians } from '../../../src/base/angle';
import type { BendPlan, Hold, Pull } from '../../../src/design/bend/bend-plan';
import { checkHold, checkPull } from '../../../src/design/pull/check';
import {
  bearingArm,
  bearingWith,
  clampNeed,
  pullTips,
  wholeMoment,
  type HeldForm,
} from '../../../src/design/pull/hold';
import { noseLines } from '../../../src/design/pull/nose-lines';
import { reachOf, turnAt } from '../../../src/design/pull/pulling';
import { straightGap } from '../../../src/design/pull/nose';
import { chooseWay, type Way } from '../../../src/design/pull/way';
import type { Job } from '../../../src/job/job';
import { planStarter, tables } from '../../helpers/starters';

/** The pull's rules at the place where each begins to hold, by the limits of `shared/shop-rules.json`. */

const { bend, job, hold } = planStarter('plain-curve');
const { rules } = tables;
const wayOf = (): Way => {
  const found = chooseWay(bend, job, tables);
  if ('limp' in found) throw new Error('too limp');
  return { ...found, bows: false, gives: false };
};
const way = wayOf();
const leg = (turn: number): Pull['legs']['A'] => ({ ...bend.pull.legs.A, loaded: toRadians(turn) });
const calm: BendPlan = {
  ...bend,
  wrap: { A: 1, B: 1, chosen: 1 },
  twist: { A: 0, B: 0 },
  pull: { ...bend.pull, with: 'bare', yoke: null, handForce: 1, legs: { A: leg(10), B: leg(10) } },
};
const found = (changed: BendPlan, more: Partial<Way> = {}, of: Job = job) =>
  checkPull(changed, { ...way, ...more }, of, rules);

describe('what the pull is refused or doubted for', () => {
  it('nothing, where every limit is kept', () => {
    expect(found(calm)).toEqual([]);
  });

  it('a wrap beyond what a half-disc carries, 170 degrees', () => {
    const wrapped = (degrees: number): BendPlan => {
      const wrap = toRadians(degrees);
      return { ...calm, wrap: { A: wrap, B: wrap, chosen: wrap } };
    };
    expect(found(wrapped(169.9))).toEqual([]);
    expect(found(wrapped(170.1))).toMatchObject([
      {
        code: 'wrap-too-far',
        path: 'bend.angle',
        values: { wrap: toRadians(170.1), angle: calm.angle, most: toRadians(170) },
      },
    ]);
  });

  it('an end whose legs alone keep the whole angle', () => {
    const ends = (A: number, B: number): BendPlan => ({ ...calm, wrap: { A, B, chosen: 0.2 } });
    const allTail = [{ code: 'all-tail', values: { angle: calm.angle, lever: calm.pull.lever } }];
    expect(found(ends(0.01, 0.4))).toEqual([]);
    expect(found(ends(0, 0.4))).toMatchObject(allTail);
    expect(found(ends(0.4, -0.1))).toMatchObject(allTail);
  });

  it('a twist one can see, more than a degree at either end and either way', () => {
    const twisted = (A: number, B: number) => found({ ...calm, twist: { A: toRadians(A), B: toRadians(B) } });
    expect(twisted(0.99, -0.99)).toEqual([]);
    for (const [A, B] of [
      [1.01, -0.5],
      [-1.01, 0.5],
      [0.5, -1.01],
      [-0.5, 1.01],
    ] as const)
      expect(twisted(A, B)).toMatchObject([{ code: 'twist', path: 'bend.radius', values: { twist: toRadians(1.01) } }]);
  });

  it('a pull a quarter above what all hands together are asked for', () => {
    const pulled = (force: number) =>
      found(
        { ...calm, pull: { ...calm.pull, handForce: force, lever: 100 } },
        {},
        { ...job, effort: { ...job.effort, handForce: 100, people: 2 } },
      );
    expect(pulled(250)).toEqual([]);
    expect(pulled(250.1)).toMatchObject([
      { code: 'hard-pull', path: 'effort', values: { force: 250.1, lever: 100, most: 200 } },
    ]);
  });

  it('a leg turned by more than 45 degrees while pulled by bare hands must be pulled square', () => {
    const turned = (A: number, B: number, by: Pull['with'] = 'bare') =>
      found({ ...calm, pull: { ...calm.pull, with: by, legs: { A: leg(A), B: leg(B) } } });
    expect(turned(44.9, 44.9)).toEqual([]);
    expect(turned(45.1, 20)).toMatchObject([{ code: 'pull-square', path: 'pull', values: { turn: toRadians(45.1) } }]);
    expect(turned(20, 45.1)).toMatchObject([{ code: 'pull-square', values: { turn: toRadians(45.1) } }]);
    expect(turned(45.1, 45.1, 'press')).toEqual([]);
  });

  it('a leg that bows, a yoke that gives', () => {
    const bowed = { ...calm, pull: { ...calm.pull, departure: { A: 1.5, B: 2.5 }, bow: 3 } };
    expect(found(bowed, { bows: true })).toMatchObject([
      {
        code: 'leg-bows',
        path: 'pull.with',
        values: { departure: 2.5, most: rules.maxDeparture, bow: 3, way: 'bare' },
      },
    ]);
    expect(found(bowed, { gives: true })).toEqual([]);
    const yoked = planStarter('plain-curve', (text) => `${text}\npull: { with: yoke }\n`);
    const { yoke } = yoked.bend.pull;
    if (!yoke) throw new Error('no yoke');
    const given = { ...calm, pull: { ...calm.pull, with: 'yoke', yoke } } as const;
    expect(found(given, { gives: true })).toMatchObject([
      {
        code: 'yoke-gives',
        path: 'pull.with',
        values: { opens: yoke.opens, stays: yoke.stays, nose: yoke.nose.name, outer: yoke.outer.name },
      },
    ]);
    expect(found(given)).toEqual([]);
  });
});

describe('what the hold is doubted for', () => {
  const firm: Hold = { ...hold, lift: 0, spread: { weak: 0.02, strong: 0.01 } };
  const of = (more: Partial<Hold>, changed: BendPlan = calm) => checkHold(changed, { ...firm, ...more }, rules);

  it('an angle that varies by more than two degrees with the clamps, or clamps that when weak would not hold', () => {
    expect(of({})).toEqual([]);
    expect(of({ spread: { weak: toRadians(5), strong: toRadians(3.01) } })).toEqual([]);
    const [varies] = of({ clamps: 3, spread: { weak: toRadians(5), strong: toRadians(2.99) } });
    expect(varies).toMatchObject({ code: 'held-leg-tail', path: 'clamps', values: { clamps: 3, more: 3 } });
    expect(varies?.values['vary']).toBeCloseTo(toRadians(2.01), 12);
    expect(of({ spread: { weak: null, strong: 0 } })).toMatchObject([
      { code: 'held-leg-tail', values: { vary: null } },
    ]);
  });

  it('a front edge that lifts by more than half a millimetre', () => {
    expect(of({ lift: 0.5 })).toEqual([]);
    expect(of({ lift: 0.501 })).toMatchObject([
      { code: 'front-edge-lifts', path: 'clamps', values: { lift: 0.501, most: 0.5 } },
    ]);
  });

  it('no wrap left', () => {
    expect(of({}, { ...calm, wrap: { A: 0, B: 0, chosen: 0 } })).toMatchObject([
      { code: 'all-tail', path: 'bend.angle', values: { angle: calm.angle, lever: calm.pull.lever } },
    ]);
    expect(of({}, { ...calm, wrap: { A: 0, B: 0, chosen: 1e-6 } })).toEqual([]);
  });
});

describe('statics of the form on the bench', () => {
  // A form of two slices: moments 6,000 and 4,000 N·mm; spine 20, foot 80, lever 200.
  const form: HeldForm = {
    foot: 80,
    spine: 20,
    held: 60,
    lever: 200,
    wrap: Math.PI / 2,
    slices: [
      { moment: 6000, radius: 50, mid: 51 },
      { moment: 4000, radius: 50, mid: 51 },
    ],
  };

  it('the held leg bears back to its edge or the foot’s rear, whichever is nearer', () => {
    expect(wholeMoment(form)).toBe(10_000);
    expect(bearingArm(form)).toBe(60);
    expect(bearingArm({ ...form, held: 300 })).toBe(100);
  });

  it('the pull tips it about the foot’s rear edge', () => {
    // At the end: F = 10,000/200 = 50 N, arm (100·cos 90° + 50·sin 90°).
    expect(pullTips(form, Math.PI / 2)).toBeCloseTo(50 * 50, 9);
    // At the start: F = 10,000/(200 + 51·π/2), arm 100.
    expect(pullTips(form, 0)).toBeCloseTo((10_000 / (200 + 51 * (Math.PI / 2))) * 100, 9);
  });

  it('clamps hold the worst of it: (M/h)·(b + f) + F·[…] over f + b/2, the worst found by looking at every half degree', () => {
    const need = clampNeed(form);
    const tips = Array.from({ length: 181 }, (_, k) => pullTips(form, (k * Math.PI) / 360));
    const most = Math.max(...tips);
    expect(need.force).toBeCloseTo(((10_000 / 60) * 100 + most) / 90, 1);
    expect(Math.abs(need.wrap - (tips.indexOf(most) * Math.PI) / 360)).toBeLessThan(0.01);
  });

  it('what the clamps have left over presses the held leg down: h = M·(b + f)/(C·(f + b/2) − tips)', () => {
    // 1,000 N: 90,000 − 2,500 = 87,500 left; 10,000·100/87,500 = 11.43 mm.
    expect(bearingWith(form, 1000)).toBeCloseTo(1_000_000 / 87_500, 9);
    expect(bearingWith(form, 1000, 0)).toBeCloseTo(1_000_000 / (90_000 - pullTips(form, 0)), 9);
    // Wood bears over 8 mm at least.
    expect(bearingWith(form, 100_000)).toBe(8);
    // Not further back than the leg goes, nor where nothing is left.
    const edge = (1_000_000 / 60 + 2500) / 90;
    expect(bearingWith(form, edge + 0.001)).toBeCloseTo(60, 3);
    expect(bearingWith(form, edge - 0.001)).toBeNull();
    expect(bearingWith(form, 10)).toBeNull();
    expect(bearingWith(form, 2500 / 90)).toBeNull();
  });
});

describe('along a leg', () => {
  const pieces = [
    { length: 10, loaded: 0.2, stays: 0.1 },
    { length: 0, loaded: 0, stays: 0 },
    { length: 5, loaded: 0.1, stays: 1e-12 },
    { length: 20, loaded: 0.04, stays: 0 },
  ];

  it('its turn grows evenly within each piece and stands still past its end', () => {
    expect(turnAt(pieces, 0)).toBe(0);
    expect(turnAt(pieces, 5)).toBeCloseTo(0.1, 12);
    expect(turnAt(pieces, 10)).toBeCloseTo(0.2, 12);
    expect(turnAt(pieces, 12.5)).toBeCloseTo(0.25, 12);
    expect(turnAt(pieces, 25)).toBeCloseTo(0.32, 12);
    expect(turnAt(pieces, 500)).toBeCloseTo(0.34, 12);
    expect(turnAt([{ length: 0, loaded: 1, stays: 0 }], 0)).toBe(0);
  });

  it('it stays bent up to the last piece that keeps any turn', () => {
    expect(reachOf(pieces)).toBe(10);
    expect(reachOf([...pieces, { length: 2, loaded: 0.1, stays: 0.1 }])).toBe(37);
    expect(reachOf([])).toBe(0);
  });
});

describe('a yoke’s nose', () => {
  it('stands off, the leg straight, so that its flange clears the disc: √(R² − (R − s)²)', () => {
    // R 50, s 10: √(2500 − 1600) = 30. A flange thicker than the radius: R itself.
    expect(straightGap(50, 10)).toBeCloseTo(30, 12);
    expect(straightGap(5, 10)).toBe(5);
    expect(straightGap(50, 0)).toBe(0);
  });

  it('lies past the neutral line’s arc by its gap, counted from the mark the form stands on', () => {
    const yoked = planStarter('plain-curve', (text) => `${text}\npull: { with: yoke }\n`).bend;
    const { yoke } = yoked.pull;
    if (!yoke) throw new Error('no yoke');
    const form = { radiusA: 40, radiusB: 70, length: 60, halfAngle: Math.PI / 6 };
    const lines = noseLines({
      ...yoked,
      form,
      length: 60,
      neutral: 0.5,
      section: { ...yoked.section, thickness: 2 },
      wrap: { A: 1, B: 1, chosen: 1.5 },
      pull: { ...yoked.pull, early: 3, yoke: { ...yoke, gap: 12 } },
    });
    // 1.5·(40 + 0.5·2·cos 30°) + 12 from where the form stands, however far that is ahead; and at B with 70.
    expect(lines.A).toBeCloseTo(1.5 * (40 + Math.sqrt(0.75)) + 12, 12);
    expect(lines.B).toBeCloseTo(1.5 * (70 + Math.sqrt(0.75)) + 12, 12);
    expect(noseLines({ ...yoked, pull: { ...yoked.pull, yoke: null } })).toEqual({ A: 0, B: 0 });
  });
});
