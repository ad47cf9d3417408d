import { describe, expect, it } from 'vitest';
import type { LegPiece } from '../../../src/design/bend/bend-plan';
import { gripPoses } from '../../../src/design/pull/grip-poses';
import { grippedLeg, type GrippedLeg } from '../../../src/design/pull/gripped-leg';
import { legShape } from '../../../src/design/pull/leg-shape';
import { leastGap, noseClears, noseOutline } from '../../../src/design/pull/nose';
import { MEAN_OF_SPAN, pulledByYoke } from '../../../src/design/pull/pulling';
import { finishedRadius } from '../../../src/design/bend/springback';
import { CS, onForm } from '../../helpers/pull-curves';
import { planStarter } from '../../helpers/starters';

/** A gripped leg's pieces and poses: 18 ga cold rolled steel over a 34.09 mm disc, hands at 203 mm, as in “The pull and the hold”. */

const { curve, mid } = onForm(CS, 1.2141, 34.09);
const most = 1.4;
const gripped = (gap: number, near?: number): GrippedLeg => {
  const leg = grippedLeg(curve, 1 / mid, { gap, arm: 203 - gap, near }, most);
  if (!leg) throw new Error('too limp');
  return leg;
};
const total = (pieces: readonly LegPiece[], what: keyof LegPiece): number =>
  pieces.reduce((sum, piece) => sum + piece[what], 0);

describe('a leg in a yoke', () => {
  it('is as long as its gap and the grip behind it, and turns and keeps piece by piece what it does as a whole', () => {
    // Near the form the sheet yields under the nose, far out it does not.
    expect(gripped(15).parameter).toBeGreaterThan(1);
    for (const gap of [15, 40, 150]) {
      const leg = gripped(gap);
      const inside = { grip: 30, loaded: 0.06, stays: 0.01 };
      const { force, loaded, stays, pieces } = pulledByYoke(curve, 1 / mid, leg, inside);
      expect(force).toBe(leg.force);
      expect(loaded).toBeCloseTo(leg.loaded + 0.04, 12);
      expect(stays).toBeCloseTo(leg.stays + 0.01 * MEAN_OF_SPAN, 12);
      expect(Math.abs(total(pieces, 'length') - gap - 30)).toBeLessThan(0.005);
      const toNose = pieces.filter((_, index) => total(pieces.slice(0, index + 1), 'length') < gap + 0.005);
      expect(total(toNose, 'loaded')).toBeCloseTo(leg.loaded, 4);
      expect(total(toNose, 'stays')).toBeCloseTo(leg.stays, 4);
      // Behind the nose the moment falls steadily, ∫ κ = grip·W_c/m; the whole edge shows two thirds of it.
      const behind = total(pieces, 'loaded') - total(toNose, 'loaded');
      const { complementary, moment } = curve.at(leg.parameter);
      expect(behind / ((2 / 3) * 30 * (complementary / moment))).toBeCloseTo(1, 3);
    }
  });

  it('is found the same from whatever place its root is looked for', () => {
    for (const gap of [15, 40, 150]) {
      const { parameter, loaded } = gripped(gap);
      for (const near of [1e-6, 0.3 * parameter, parameter, 1.5 * parameter, 1000]) {
        const found = gripped(gap, near);
        expect(Math.abs(found.parameter / parameter - 1)).toBeLessThan(1e-9);
        expect(found.loaded).toBeCloseTo(loaded, 9);
      }
    }
    // What turns too far does so from any place.
    expect(grippedLeg(curve, 1 / mid, { gap: 150, arm: 53, near: 1 }, 0.2)).toBeNull();
  });
});

describe('poses at any gap', () => {
  const poses = (limit: number) => gripPoses(curve, 1 / mid, { lever: 203, from: 14, to: 100, most: limit });

  it('tell the curve’s parameter and what stays at the nose to half a hundredth', () => {
    for (const gap of [14, 22, 37, 61, 100]) {
      const { parameter, stays } = gripped(gap);
      const read = poses(most)(gap);
      expect((read?.parameter ?? NaN) / parameter).toBeCloseTo(1, 2);
      expect(read?.stays).toBeCloseTo(stays, 3);
    }
  });

  it('end where the leg turns further than it may', () => {
    const turns = gripped(50).loaded;
    expect(poses(turns)(30)).not.toBeNull();
    expect(poses(turns)(75)).toBeNull();
    expect(poses(most)(75)).not.toBeNull();
  });

  it('are the same in whatever order they are asked for', () => {
    const [up, down] = [poses(most), poses(most)];
    const gaps = [14, 22, 37, 61, 99];
    const upward = gaps.map((gap) => up(gap));
    const downward = [...gaps].reverse().map((gap) => down(gap));
    downward.reverse().forEach((pose, index) => {
      expect(pose?.out).toBeCloseTo(upward[index]?.out ?? NaN, 2);
      expect(pose?.up).toBeCloseTo(upward[index]?.up ?? NaN, 2);
    });
  });
});

describe('a nose and the wood behind the disc’s middle', () => {
  const flat = noseOutline({ width: 40, depth: 4, thickness: 4 }, { edge: 4, back: 0 });
  const slice = { mid: 50, sheet: 2, wrap: 0 };

  it('clears the spine by its height over it, not by its distance from the disc’s middle', () => {
    // Wood: all within 49 mm of the half line back from the middle. A nose upright 60 mm over it, all of it behind the middle.
    expect(noseClears({ out: -100, up: 50 + 60, turn: 0 }, flat, slice)).toBeCloseTo(60 + 1 - 49, 9);
    expect(noseClears({ out: -100, up: 50 - 70, turn: 0 }, flat, slice)).toBeCloseTo(70 - 1 - 4 - 49, 9);
    // Half before it, half behind: still its height.
    expect(noseClears({ out: -20, up: 50 + 60, turn: 0 }, flat, slice)).toBeCloseTo(60 + 1 - 49, 9);
    // Ahead of it by 30: the corner's distance.
    expect(noseClears({ out: 30, up: 50 + 60, turn: 0 }, flat, slice)).toBeCloseTo(Math.hypot(30, 61) - 49, 9);
  });

  it('is an angle with its flange ground to a wedge: both flanges’ areas less a triangle', () => {
    const outline = noseOutline({ width: 40, depth: 50, thickness: 4 }, { edge: 1, back: 9 });
    const area = outline.reduce((sum, [x, y], index) => {
      const [nextX, nextY] = outline[(index + 1) % outline.length] ?? [NaN, NaN];
      return sum + (x * nextY - nextX * y) / 2;
    }, 0);
    expect(Math.abs(area)).toBeCloseTo(40 * 4 + 46 * 4 - (9 * 3) / 2, 9);
  });

  it('is set no further out than it may be', () => {
    expect(leastGap((gap) => gap - 12.5, 10, 12.5)).toBeCloseTo(12.5, 3);
    expect(leastGap((gap) => gap - 12.5, 10, 12.4)).toBeNull();
  });
});

describe('a leg drawn out to its trim', () => {
  it('is as long as the leg and the arc: every chord of it added up', () => {
    const { bend } = planStarter('plain-curve');
    const { line } = legShape(bend, 'A', bend.pull.legs.A, 12);
    const length = line
      .slice(1)
      .reduce((sum, { x, y }, index) => sum + Math.hypot(x - (line[index]?.x ?? NaN), y - (line[index]?.y ?? NaN)), 0);
    const kept = bend.pull.legs.A.stays;
    const radius = finishedRadius(bend.section, bend.form.radiusA + bend.section.thickness / 2);
    // The held leg keeps a little as well, and its arc is so much shorter.
    const arc = radius * (bend.angle - kept);
    expect(length).toBeLessThan(bend.legs.free + bend.legs.held + arc);
    expect(length).toBeGreaterThan(bend.legs.free + bend.legs.held + arc - radius * 0.1);
  });
});
