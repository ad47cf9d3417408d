import { describe, expect, it } from 'vitest';
import { toRadians } from '../../src/base/angle';
import { coneThrough } from '../../src/base/cone';
import { checkSheet } from '../../src/design/bend/limits';
import { layOutFixture } from '../../src/design/fixture';
import { planBend } from '../../src/design/pull';
import { planHeld } from '../../src/design/came-out';
import { holdBend } from '../../src/design/pull/plan-hold';
import { jobOf, type Changes } from '../helpers/job-of';
import { tables } from '../helpers/starters';

/** Whole jobs that cannot be, or are another than usual, each with the numbers it is refused by, worked out by hand. */

const steel = tables.metals.find(({ id }) => id === 'steel-cold-rolled-cs');
if (!steel?.hardening) throw new Error('no steel');
const { modulus, poisson, hardening } = steel;
/** First yield, MPa, and the greatest mid-surface radius, mm, at which a sheet still sets: E′t/(2Y′). */
const first = (2 / Math.sqrt(3)) * hardening.strength * hardening.initialStrain ** hardening.exponent;
const noneSets = (thickness: number): number => ((modulus / (1 - poisson ** 2)) * thickness) / (2 * first);

describe('a bend that cannot be', () => {
  const refusedBy = (changes: Changes) => {
    const { value, findings } = planBend(jobOf(changes), tables);
    expect(value).toBeNull();
    return findings;
  };

  it('round a form so wide that nothing sets', () => {
    const flat = noneSets(0.5) - 0.25;
    const found = refusedBy({ sheet: { thickness: 0.5 }, bend: { radius: 3000, radiusOf: 'form' } });
    expect(found.map(({ code, path }) => [code, path])).toEqual([
      ['would-not-set', 'bend.radius.from'],
      ['would-not-set', 'bend.radius.to'],
    ]);
    expect(found[0]?.values['radius']).toBe(3000);
    expect(found[0]?.values['flat']).toBeCloseTo(flat, 6);
    // Just at the limit nothing sets, a hair below it does.
    const wide = (radius: number) =>
      planBend(jobOf({ sheet: { thickness: 0.5 }, bend: { radius, radiusOf: 'form' } }), tables).findings.map(
        ({ code }) => code,
      );
    expect(wide(flat + 0.01)).toContain('would-not-set');
    expect(wide(flat - 0.01)).not.toContain('would-not-set');
  });

  it('through an angle its taper does not reach: sin(δ/2) is cos β at most', () => {
    // 100 mm over 200: sin β = ½, so 120° at most.
    const [found] = refusedBy({ bend: { angle: 170, length: 200, radius: { from: 40, to: 140 } } });
    expect(found).toMatchObject({
      code: 'taper-too-steep-for-angle',
      path: 'bend.angle',
      values: { angle: toRadians(170) },
    });
    expect(found?.values['most']).toBeCloseTo(toRadians(120), 9);
  });

  it('with a leg too limp for bare hands', () => {
    const pull = { pull: { with: 'bare' } };
    const [found] = refusedBy({
      sheet: { thickness: 0.5 },
      bend: { legs: { held: 60, free: 400 } },
      more: pull,
    }).filter(({ level }) => level === 'error');
    expect(found).toMatchObject({ code: 'too-limp', path: 'bend.legs.free', values: { lever: 400 } });
    const longest = Number(found?.values['longest']);
    const stands = (free: number): boolean =>
      planBend(
        jobOf({
          sheet: { thickness: 0.5 },
          bend: { legs: { held: 60, free } },
          more: { ...pull, effort: { maxLeverage: 0 } },
        }),
        tables,
      ).value !== null;
    expect(stands(longest - 0.5)).toBe(true);
    expect(stands(longest + 0.5)).toBe(false);
  });
});

describe('a sheet that is doubted', () => {
  it('for want of a published smallest radius', () => {
    const { findings } = planBend(jobOf({ sheet: { thickness: 12 } }), tables);
    expect(findings).toContainEqual(
      expect.objectContaining({
        code: 'no-minimum-radius',
        path: 'sheet.thickness',
        values: { metal: steel.name, thickness: 12 },
      }),
    );
  });

  it('for springing back by more than half, at its straighter end', () => {
    const bent = planBend(jobOf({ bend: { radius: { from: 60, to: 80 } } }), tables).value;
    if (!bent) throw new Error('no bend');
    const mid = (share: number) => {
      // A form of that share of the limit at B, 80 mm tighter at A: sin β = 0.2, and R/cos β is its radius of curvature.
      const wide = (share * noneSets(1) - 0.5) * Math.sqrt(0.96);
      return checkSheet({ ...bent, form: coneThrough(wide - 80, wide, 400) }, jobOf({}));
    };
    expect(mid(0.499)).toEqual([]);
    const [found, ...more] = mid(0.501).filter(({ code }) => code === 'mostly-springback');
    expect(more).toEqual([]);
    expect(found?.path).toBe('bend.radius');
    expect(found?.values['flat']).toBeCloseTo(noneSets(1), 6);
  });
});

describe('a form that cannot stand', () => {
  it('for want of room for its clamps, as many as its force needs', () => {
    const job = jobOf({
      sheet: { thickness: 6 },
      bend: { legs: { held: 60, free: 40 } },
      more: { effort: { maxLeverage: 0 } },
    });
    const { layout, findings } = planHeld(job, tables);
    expect(layout).toBeNull();
    const found = findings.find(({ code }) => code === 'no-room-for-clamps');
    expect(found).toMatchObject({ path: 'clamps', values: { rating: 900, wood: 12 } });
    expect(found?.values['clamps']).toBe(Math.ceil(Number(found?.values['force']) / 900));
  });

  it('for clamps too weak: the force is named, and clamps enough for it', () => {
    const job = jobOf({});
    const bend = planBend(job, tables).value;
    if (!bend) throw new Error('no bend');
    const standing = { foot: 80, spine: 18 };
    const { value, findings } = holdBend(bend, standing, 0, { job, rules: tables.rules });
    expect(value).toBeNull();
    expect(findings).toMatchObject([{ code: 'no-room-for-clamps', path: 'clamps', values: { rating: 900, wood: 12 } }]);
    const force = Number(findings[0]?.values['force']);
    expect(findings[0]?.values['clamps']).toBe(Math.ceil(force / 900));
    // As many as hold that, safety in it, do hold.
    expect(holdBend(bend, standing, Math.ceil(force / 900), { job, rules: tables.rules }).value).not.toBeNull();
  });

  it('for a spine too thin: it bows however it is backed', () => {
    const job = jobOf({
      sheet: { thickness: 6 },
      bend: { legs: { held: 60, free: 60 } },
      more: {
        board: { spine: 'mdf-3', stations: 'mdf-18', backing: 'mdf-18' },
        effort: { handForce: '1000 N', maxLeverage: 0 },
        clamps: { rating: '9000 N' },
      },
    });
    const bend = planBend(job, tables).value;
    if (!bend) throw new Error('no bend');
    const { value, findings } = layOutFixture(bend, job, tables);
    expect(value).toBeNull();
    expect(findings.filter(({ level }) => level === 'error')).toMatchObject([
      { code: 'spine-bows', path: 'board.spine', values: { force: bend.pull.handForce, thickness: 3, most: 0.25 } },
    ]);
  });
});

describe('another way to pull, another way to stand', () => {
  it('a press follows at its own arm, with no leverage left on', () => {
    const job = jobOf({ more: { pull: { with: 'press', press: 45 } } });
    const pull = planBend(job, tables).value?.pull;
    expect(pull).toMatchObject({ with: 'press', lever: 45, leverage: 0, edge: 200, yoke: null, bare: null });
    // F = M/45 if the leg stays straight; it turns a little, and the pull is square to it at the hands.
    if (!pull) throw new Error('no pull');
    expect(pull.handForce / (pull.moment / 45)).toBeGreaterThan(0.98);
    expect(pull.handForce / (pull.moment / 45)).toBeLessThan(1.25);
  });

  it('a narrow spine is clamped on ears past its ends, backed so that it bows by no more than a quarter of a millimetre', () => {
    const job = jobOf({
      bend: { radius: 22, length: 500 },
      more: { clamps: { rating: '9000 N' }, board: { spine: 'mdf-6', stations: 'mdf-18', backing: 'mdf-18' } },
    });
    const { layout, bend } = planHeld(job, tables);
    if (!layout || !bend) throw new Error('no form');
    expect(layout.spine.ears).toBe(60);
    expect(layout.clampHoles).toEqual([]);
    expect(layout.clamps).toBe(2);
    // 5·q·c⁴/(384·E·I), E of the board, width 2R, between the middles of the ears and the backing stations.
    const modulus = tables.boards.find(({ id }) => id === 'mdf-6')?.modulus ?? NaN;
    const second = (2 * bend.form.radiusA * 6 ** 3) / 12;
    const run = bend.runs[0];
    if (!run) throw new Error('no run');
    const load = run.moment / 500 / bend.pull.lever;
    const held = [-30, ...layout.backings.map(({ at }) => at), 530];
    const bows = held
      .slice(1)
      .map((to, index) => (5 * load * (to - (held[index] ?? NaN)) ** 4) / (384 * modulus * second));
    expect(Math.max(...bows)).toBeLessThanOrEqual(0.25);
  });

  it('a job written from its other end gives the mirrored form', () => {
    const runs = (to: number) => [
      { name: 'long', from: 0, to: 600 },
      { name: 'short', from: to === 240 ? 0 : 360, to: to === 240 ? 240 : 600 },
    ];
    const one = planHeld(
      { ...jobOf({ bend: { length: 600, radius: { from: 40, to: 52 } } }), runs: runs(240) },
      tables,
    ).layout;
    const other = planHeld(
      { ...jobOf({ bend: { length: 600, radius: { from: 52, to: 40 } } }), runs: runs(600) },
      tables,
    ).layout;
    if (!one || !other) throw new Error('no form');
    const { length } = one.spine;
    const places = (layout: typeof one, turn: boolean): number[] =>
      [...layout.stations, ...layout.backings, ...layout.clampHoles]
        .map(({ at }) => (turn ? length - at : at))
        .sort((a, b) => a - b);
    expect(places(one, false)).toHaveLength(places(other, true).length);
    places(one, false).forEach((place, index) => expect(place).toBeCloseTo(places(other, true)[index] ?? NaN, 6));
    expect(one.stations.map(({ contact }) => contact)).toEqual(one.stations.map(() => 'A'));
    expect(other.stations.map(({ contact }) => contact)).toEqual(other.stations.map(() => 'B'));
    [...other.stations]
      .reverse()
      .forEach(({ radius }, index) => expect(radius).toBeCloseTo(one.stations[index]?.radius ?? NaN, 6));
    expect(other.clamps).toBe(one.clamps);
    expect(other.foot).toBe(one.foot);
  });
});
