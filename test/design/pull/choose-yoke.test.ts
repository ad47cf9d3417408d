import { describe, expect, it } from 'vitest';
import { coneThrough } from '../../../src/base/cone';
import { bendingCurve } from '../../../src/design/bend/curve';
import { chooseYoke } from '../../../src/design/pull/choose-yoke';
import { gripLeg } from '../../../src/design/pull/pulling';
import { straightGap } from '../../../src/design/pull/nose';
import { loadYoke } from '../../../src/design/pull/yoke';
import { planStarter, tables } from '../../helpers/starters';

/** The yoke chosen for a taper of 40 to 80 mm, either way about, against its parts reckoned one by one. */

const { bend } = planStarter('plain-curve');
const rules = { ...tables.rules, yokeBoltPast: 30, yokeBoltBehind: 14 };
const wanted = { lever: 260, system: 'mm', most: 0.9, run: 400, mayStray: 1, strays: () => 0 } as const;
const chosenFor = (from: number, to: number, more: object = {}) => {
  const form = coneThrough(from, to, 400);
  const chosen = chooseYoke({ ...bend, form, length: 400 }, { ...tables, rules }, { ...wanted, ...more });
  if (!chosen) throw new Error('no yoke');
  return { form, ...chosen };
};

describe('the yoke that is chosen', () => {
  it.each([
    [40, 80],
    [80, 40],
  ])('from %i to %i mm: set where it clears both ends, loaded by the tighter end’s moment', (from, to) => {
    const { yoke, form } = chosenFor(from, to);
    expect(yoke.nose.kind).toBe('angle');
    expect(yoke.outer.kind).toBe('batten');
    expect(yoke.outer.width).toBeGreaterThanOrEqual(yoke.nose.width);
    // Further out than a straight leg would let a flange as thick as its edge stand beside the tighter end, and clear by the rule.
    expect(yoke.gap).toBeGreaterThan(straightGap(40, yoke.wedge.edge));
    expect(yoke.clears).toBeGreaterThanOrEqual(rules.noseClears);
    expect(yoke.wedge).toEqual({ edge: 1, back: 3 * (yoke.nose.thickness - 1) });
    expect(yoke.arm).toBe(260 - yoke.gap);
    expect([yoke.span, yoke.length]).toEqual([460, 520]);
    // The bend's mid-surface radius at its tighter end: R/cos β + t/2.
    const mid = 40 / Math.cos(form.halfAngle) + bend.section.thickness / 2;
    const curve = bendingCurve(bend.section);
    const grip = gripLeg(curve, 1 / mid, { gap: yoke.gap, arm: yoke.arm }, { most: wanted.most });
    if (!grip) throw new Error('too limp');
    const { nose, outer } = yoke;
    const load = loadYoke(
      curve,
      grip.moment,
      {
        nose: { stiffness: nose.stiffness, modulus: nose.sectionModulus, width: nose.width },
        outer: { stiffness: outer.stiffness, modulus: outer.sectionModulus, width: outer.width },
      },
      { span: 460, bolts: 14 },
    );
    expect(yoke.part).toBeCloseTo(load.part, 9);
    expect(yoke.bolts).toBeCloseTo(load.bolts, 6);
    // The thinnest bolt of the system that holds half of what both bolts of an end do.
    const bolts = tables.yokeBolts.filter(({ system, force }) => system === 'mm' && force >= load.bolts / 2);
    expect(yoke.bolt.force).toBe(Math.min(...bolts.map(({ force }) => force)));
    // Two handles at least.
    expect(yoke.handles).toBe(
      Math.max(2, Math.ceil((grip.moment * 400) / (yoke.handle.sectionModulus * yoke.handle.stress))),
    );
  });

  it('has as many handles as its turning asks of them', () => {
    const weak = tables.yokeStock.map((one) => ({
      ...one,
      stress: one.kind === 'batten' ? 0.02 * one.stress : one.stress,
    }));
    const form = coneThrough(40, 40, 400);
    const yoke = chooseYoke({ ...bend, form, length: 400 }, { ...tables, rules, yokeStock: weak }, wanted)?.yoke;
    if (!yoke) throw new Error('no yoke');
    const grip = gripLeg(
      bendingCurve(bend.section),
      1 / (40 + bend.section.thickness / 2),
      { gap: yoke.gap, arm: yoke.arm },
      { most: wanted.most },
    );
    const needed = ((grip?.moment ?? NaN) * 400) / (yoke.handle.sectionModulus * yoke.handle.stress);
    expect(needed).toBeGreaterThan(2);
    expect(yoke.handles).toBe(Math.ceil(needed));
  });

  it.each([
    [40, 80],
    [80, 40],
  ])('from %i to %i mm: has handles for the harder end’s turning, one more than the other’s asks for', (from, to) => {
    const form = coneThrough(from, to, 400);
    const yokeStock = tables.yokeStock.map((one) => ({
      ...one,
      stress: one.kind === 'batten' ? 0.03 * one.stress : one.stress,
    }));
    const yoke = chooseYoke({ ...bend, form, length: 400 }, { ...tables, rules, yokeStock }, wanted)?.yoke;
    if (!yoke) throw new Error('no yoke');
    const asked = [40, 80].map((radius) => {
      const curvature = 1 / (radius / Math.cos(form.halfAngle) + bend.section.thickness / 2);
      const grip = gripLeg(bendingCurve(bend.section), curvature, yoke, { most: wanted.most });
      return ((grip?.moment ?? NaN) * 400) / (yoke.handle.sectionModulus * yoke.handle.stress);
    });
    expect(asked.map(Math.ceil)).toEqual([4, 3]);
    expect(yoke.handles).toBe(4);
  });

  it('has the thinnest bolts that hold half of what both of an end do', () => {
    const { yoke } = chosenFor(40, 40);
    const [bolt] = tables.yokeBolts.filter(({ system }) => system === 'mm');
    if (!bolt) throw new Error('no bolts');
    const form = coneThrough(40, 40, 400);
    const chosen = (share: number): number | undefined => {
      const yokeBolts = [share * yoke.bolts, 9 * yoke.bolts].map((force) => ({ ...bolt, force }));
      return chooseYoke({ ...bend, form, length: 400 }, { ...tables, rules, yokeBolts }, wanted)?.yoke.bolt.force;
    };
    expect(chosen(0.501)).toBe(0.501 * yoke.bolts);
    expect(chosen(0.499)).toBe(9 * yoke.bolts);
  });

  it('is none where there are no bolts for it', () => {
    const none = { ...tables, rules, yokeBolts: [] };
    expect(chooseYoke({ ...bend, form: coneThrough(40, 40, 400), length: 400 }, none, wanted)).toBeNull();
  });

  it('has an outer member at least as wide as its nose', () => {
    const form = coneThrough(40, 40, 400);
    const outer = (width: number): number | undefined => {
      const yokeStock = tables.yokeStock
        .filter(({ kind, id }) => kind === 'batten' || id === 'angle-40x40x4')
        .map((one) => (one.kind === 'batten' ? { ...one, width } : one));
      return chooseYoke({ ...bend, form, length: 400 }, { ...tables, rules, yokeStock }, wanted)?.yoke.outer.width;
    };
    expect([outer(40), outer(39.9)]).toEqual([40, undefined]);
  });

  it('leaves an arm longer than the nose is wide, or is none', () => {
    expect(
      chooseYoke(
        { ...bend, form: coneThrough(40, 40, 400), length: 400 },
        { ...tables, rules },
        { ...wanted, lever: 30 },
      ),
    ).toBeNull();
  });
});
