import { describe, expect, it } from 'vitest';
import { crossings, distanceTo, movedRight, shareAt, sideBetween, startingAt, sweepOf } from '../../src/base/side';

/** Sides of a loop by hand: a straight one and a quarter of a circle. */

const straight = sideBetween({ x: 10, y: 20, bulge: 0 }, { x: 40, y: 60 });
/** Counter-clockwise about (0, 0), radius 10, from (10, 0) to (0, 10). */
const quarter = sideBetween({ x: 10, y: 0, bulge: Math.tan(Math.PI / 8) }, { x: 0, y: 10 });
/** The same way back, clockwise. */
const clockwise = sideBetween({ x: 0, y: 10, bulge: -Math.tan(Math.PI / 8) }, { x: 10, y: 0 });
const near = (values: readonly (number | undefined)[], expected: readonly number[]): void => {
  expect(values).toHaveLength(expected.length);
  values.forEach((value, index) => expect(value).toBeCloseTo(expected[index] ?? NaN, 9));
};

describe('a side', () => {
  it('heads where it starts, is as long as its line and as curved as its circle', () => {
    near([straight.headingX, straight.headingY, straight.curvature, straight.length], [0.6, 0.8, 0, 50]);
    near([quarter.headingX, quarter.headingY, quarter.curvature, quarter.length], [0, 1, 0.1, 5 * Math.PI]);
    near([clockwise.headingX, clockwise.headingY, clockwise.curvature], [1, 0, -0.1]);
    near([sweepOf(quarter), sweepOf(clockwise), sweepOf(straight)], [Math.PI / 2, -Math.PI / 2, 0]);
    // Flatter than any that can be told from a straight one.
    expect(sideBetween({ x: 0, y: 0, bulge: 1e-16 }, { x: 1, y: 0 }).curvature).toBe(0);
    expect(sideBetween({ x: 0, y: 0, bulge: 1e-14 }, { x: 1, y: 0 }).curvature).toBeCloseTo(4e-14, 20);
  });

  it('can be taken up a share of the way along', () => {
    const half = startingAt(straight, 0.5);
    near([half.x, half.y, half.headingX, half.headingY, half.length], [25, 40, 0.6, 0.8, 25]);
    const third = startingAt(quarter, 1 / 3);
    near(
      [third.x, third.y, third.headingX, third.headingY, third.length],
      [10 * Math.cos(Math.PI / 6), 5, -0.5, Math.cos(Math.PI / 6), (10 * Math.PI) / 3],
    );
    const end = startingAt(clockwise, 1);
    near([end.x, end.y, end.headingX, end.headingY, end.length], [10, 0, 0, -1, 0]);
  });

  it('moves to its right as a parallel of the same sweep, until no radius is left', () => {
    const moved = movedRight(straight, 5);
    near([moved?.x, moved?.y, moved?.length, moved?.curvature], [14, 17, 50, 0]);
    const wider = movedRight(quarter, 5);
    near([wider?.x, wider?.y, wider?.curvature, wider?.length], [15, 0, 1 / 15, 7.5 * Math.PI]);
    const tighter = movedRight(clockwise, 4);
    near([tighter?.x, tighter?.y, tighter?.curvature, tighter?.length], [0, 6, -1 / 6, 3 * Math.PI]);
    expect(movedRight(quarter, -10)).toBeNull();
    expect(movedRight(clockwise, 12)).toBeNull();
    expect(movedRight(clockwise, 9.99)?.curvature).toBeCloseTo(-100, 6);
  });

  it('tells the share at which it passes closest, before and past its ends too', () => {
    near([shareAt(straight, { x: 25, y: 40 }), shareAt(straight, { x: 10 - 3, y: 20 - 4 })], [0.5, -0.1]);
    near([shareAt(straight, { x: 25 + 8, y: 40 - 6 })], [0.5]);
    const at = (degrees: number, radius: number) => ({
      x: radius * Math.cos((degrees * Math.PI) / 180),
      y: radius * Math.sin((degrees * Math.PI) / 180),
    });
    near(
      [
        shareAt(quarter, at(45, 3)),
        shareAt(quarter, at(45, 30)),
        shareAt(quarter, at(-9, 10)),
        shareAt(quarter, at(180, 10)),
      ],
      [0.5, 0.5, -0.1, 2],
    );
    // Opposite the middle of the arc, 225°, it turns from past its end to before its start.
    near([shareAt(quarter, at(224, 10)), shareAt(quarter, at(226, 10))], [224 / 90, -134 / 90]);
    near([shareAt(clockwise, at(60, 5)), shareAt(clockwise, at(99, 5))], [1 / 3, -0.1]);
  });

  it('is as far from a place as its nearest point, its ends included', () => {
    near([distanceTo(straight, { x: 25 + 8, y: 40 - 6 }), distanceTo(straight, { x: 40 + 3, y: 60 + 4 })], [10, 5]);
    near([distanceTo(straight, { x: 7, y: 16 })], [5]);
    near(
      [distanceTo(quarter, { x: 3, y: 4 }), distanceTo(quarter, { x: 6, y: 8 }), distanceTo(quarter, { x: 12, y: 16 })],
      [5, 0, 10],
    );
    near([distanceTo(quarter, { x: 10, y: -3 }), distanceTo(quarter, { x: -4, y: 10 })], [3, 4]);
    near([distanceTo(quarter, { x: 0, y: 0 }), distanceTo(clockwise, { x: 3, y: 4 })], [10, 5]);
  });
});

describe('two sides’ lines and circles', () => {
  const horizontal = (y: number) => sideBetween({ x: -50, y, bulge: 0 }, { x: 50, y });
  const sorted = (places: readonly { x: number; y: number }[]): number[] =>
    [...places].sort((a, b) => a.x - b.x).flatMap(({ x, y }) => [x, y]);

  it('cross where geometry says', () => {
    // (10, 20) + t·(3, 4) at y = 32.
    near(sorted(crossings(straight, horizontal(32))), [19, 32]);
    expect(crossings(horizontal(0), horizontal(5))).toEqual([]);
    // The whole circle at y = 6: x = ±8.
    near(sorted(crossings(quarter, horizontal(6))), [-8, 6, 8, 6]);
    near(sorted(crossings(horizontal(6), clockwise)), [-8, 6, 8, 6]);
    expect(crossings(quarter, horizontal(11))).toEqual([]);
    // Circles of 10 about (0, 0) and (12, 0): x = 6, y = ±8.
    const other = sideBetween({ x: 22, y: 0, bulge: Math.tan(Math.PI / 8) }, { x: 12, y: 10 });
    const places = crossings(quarter, other);
    near(
      [...places].sort((a, b) => a.y - b.y).flatMap(({ x, y }) => [x, y]),
      [6, -8, 6, 8],
    );
    // Of 10 about (0, 0) and 5 about (9, 0): x = (81 + 100 − 25)/18.
    const small = sideBetween({ x: 14, y: 0, bulge: Math.tan(Math.PI / 8) }, { x: 9, y: 5 });
    const x = 156 / 18;
    const y = Math.sqrt(100 - x * x);
    near(
      [...crossings(small, quarter)].sort((a, b) => a.y - b.y).flatMap((place) => [place.x, place.y]),
      [x, -y, x, y],
    );
    const far = sideBetween({ x: 35, y: 0, bulge: Math.tan(Math.PI / 8) }, { x: 30, y: 5 });
    expect(crossings(quarter, far)).toEqual([]);
  });
});
