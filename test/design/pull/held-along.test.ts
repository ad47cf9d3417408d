import { describe, expect, it } from 'vitest';
import { depthAt, stretchesShort, type DepthAlong } from '../../../src/design/bend/depth-along';
import { bearingWith, clampNeed, LEAST_BEARING, pullTips, upPush, type HeldForm } from '../../../src/design/pull/hold';

/** A held leg that narrows from 120 mm at end A to 20 mm at end B, 400 mm long; a notch of 10 mm of metal right behind its middle. */
const narrowing: DepthAlong = [
  { from: 0, to: 190, under: { A: 120, B: 72.5 }, last: { A: 120, B: 72.5 } },
  { from: 190, to: 210, under: { A: 10, B: 10 }, last: { A: 72.5, B: 67.5 } },
  { from: 210, to: 400, under: { A: 67.5, B: 20 }, last: { A: 67.5, B: 20 } },
];

const even: HeldForm = {
  foot: 80,
  spine: 18,
  held: 60,
  lever: 200,
  wrap: 1.6,
  slices: [0, 1, 2, 3].map((index) => ({ moment: 4000, radius: 40 + index, mid: 41 + index })),
};

function withDepths(depths: readonly number[]): HeldForm {
  const slices = even.slices.map((slice, index) => ({ ...slice, held: depths[index] ?? 0 }));
  return { ...even, held: Math.max(...depths), slices };
}

describe('a held leg of unlike depth', () => {
  it('is as deep as its edges say, what lies under the form apart from what a clamp goes round', () => {
    expect(depthAt(narrowing, 'under', 95)).toBeCloseTo(96.25, 12);
    expect(depthAt(narrowing, 'under', 200)).toBe(10);
    expect(depthAt(narrowing, 'last', 200)).toBe(70);
    expect(depthAt(narrowing, 'last', 500)).toBe(20);
    expect(depthAt(narrowing, 'under', -5)).toBe(120);
  });

  it('is short of a reach where its edge crosses it', () => {
    // 120 − x/4 = 80 at x = 160; from there on all of it is short.
    expect(stretchesShort(narrowing, 80, { from: 0, to: 400 })).toEqual([{ from: 160, to: 400, least: 10 }]);
    expect(stretchesShort(narrowing, 18, { from: 0, to: 400 })).toEqual([{ from: 190, to: 210, least: 10 }]);
    expect(stretchesShort(narrowing, 5, { from: 0, to: 400 })).toEqual([]);
  });

  it('is short only between the places asked for, from as short a stretch as asked for on', () => {
    const level = (from: number, to: number, deep: number) => ({
      ...{ from, to },
      under: { A: deep, B: deep },
      last: { A: deep, B: deep },
    });
    const steps = [
      level(0, 100, 30),
      level(100, 101, 60),
      level(101, 200, 20),
      level(200, 300, 60),
      level(300, 301, 10),
    ];
    const all = { from: 0, to: 301 };
    // Just as deep as the reach is deep enough.
    expect(stretchesShort(steps, 30, all)).toEqual([
      { from: 101, to: 200, least: 20 },
      { from: 300, to: 301, least: 10 },
    ]);
    // A gap of a millimetre parts two stretches, a shorter one does not; nor does a stretch shorter than asked for count.
    expect(stretchesShort(steps, 40, all).map(({ from, to }) => [from, to])).toEqual([
      [0, 100],
      [101, 200],
      [300, 301],
    ]);
    expect(stretchesShort(steps, 40, { ...all, shortest: 1.1 })).toEqual([{ from: 0, to: 200, least: 20 }]);
    expect(stretchesShort(steps, 40, { from: 150, to: 250 })).toEqual([{ from: 150, to: 200, least: 20 }]);
    expect(stretchesShort(steps, 40, { from: 200, to: 300 })).toEqual([]);
    // Deepening from 20 to 60 over 100 mm: 40 at its middle.
    const rising = [{ from: 0, to: 100, under: { A: 20, B: 60 }, last: { A: 60, B: 60 } }];
    expect(stretchesShort(rising, 40, { from: 0, to: 100 })).toEqual([{ from: 0, to: 50, least: 20 }]);
  });

  it('holds as one of like depth where it is as deep everywhere', () => {
    const alike = withDepths([60, 60, 60, 60]);
    expect(clampNeed(alike)).toEqual(clampNeed(even));
    expect(bearingWith(alike, 3000)).toBeCloseTo(bearingWith(even, 3000) ?? 0, 12);
  });

  it('pushes up each slice by its moment over its own depth: form and sheet cut free leave nothing over', () => {
    const unlike = withDepths([120, 60, 30, 20]);
    const arm = unlike.foot + unlike.spine / 2;
    const reach = unlike.foot + unlike.spine;
    const { force, wrap } = clampNeed(unlike);
    // By hand: 98 mm of foot and spine stop the deepest slice’s bearing.
    const up = 4000 / 98 + 4000 / 60 + 4000 / 30 + 4000 / 20;
    expect(upPush(unlike, 98)).toBeCloseTo(up, 9);
    expect(force * arm).toBeCloseTo(up * reach + pullTips(unlike, wrap), 6);
  });

  it('bears just as far back as the clamps leave it, a shallow slice no further than its depth', () => {
    const unlike = withDepths([120, 60, 30, 20]);
    const reach = unlike.foot + unlike.spine;
    for (const fitted of [700, 900, 1500, 3000]) {
      const bearing = bearingWith(unlike, fitted);
      const left = fitted * (unlike.foot + unlike.spine / 2) - pullTips(unlike, unlike.wrap);
      if (bearing === null) expect(upPush(unlike, 98) * reach).toBeGreaterThan(left);
      else if (bearing > LEAST_BEARING) expect((upPush(unlike, bearing) * reach) / left).toBeCloseTo(1, 9);
    }
    expect(bearingWith(unlike, 300)).toBeNull();
    expect(bearingWith(unlike, 900)).not.toBeNull();
  });
});
