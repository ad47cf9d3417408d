import { describe, expect, it } from 'vitest';
import { asLoop } from '../../src/base/as-loop';
import { flattenLoop } from '../../src/base/flatten';
import { integrate, nodesBetween } from '../../src/base/integrate';
import { minimumBetween } from '../../src/base/minimum';
import { mirrorShapes } from '../../src/base/mirror';
import { isInside, levelAt, type Point } from '../../src/base/polygon';
import { rootBetween } from '../../src/base/solve';
import { after, apart3, back, cross3, movedBy, sideOf, stay, turnAbout, turnedBy, unit3 } from '../../src/base/space';
import type { Text } from '../../src/base/drawing';

/** The small sums everything rests on, by closed forms. */

const near = (values: readonly number[], expected: readonly number[], digits = 9): void => {
  expect(values).toHaveLength(expected.length);
  values.forEach((value, index) => expect(value).toBeCloseTo(expected[index] ?? NaN, digits));
};

describe('roots, least values, integrals', () => {
  it('a root is found to the last digits, in few steps, from either side and at either end', () => {
    let looks = 0;
    const counted = (f: (x: number) => number) => (x: number) => {
      looks++;
      return f(x);
    };
    expect(
      rootBetween(
        counted((x) => x * x - 2),
        0,
        2,
      ),
    ).toBeCloseTo(Math.SQRT2, 15);
    expect(looks).toBeLessThan(40);
    expect(rootBetween((x) => 2 - x * x, 0, 2)).toBeCloseTo(Math.SQRT2, 15);
    expect(rootBetween((x) => x * x - 2, 2, 0)).toBeCloseTo(Math.SQRT2, 15);
    // Of high order, where the secant alone hardly moves.
    looks = 0;
    expect(
      Math.abs(
        rootBetween(
          counted((x) => x ** 9 - 1e-9),
          0,
          10,
        ) /
          0.1 -
          1,
      ),
    ).toBeLessThan(1e-14);
    expect(looks).toBeLessThan(120);
    expect(rootBetween((x) => x - 3, 3, 7)).toBe(3);
    expect(rootBetween((x) => x - 7, 3, 7)).toBe(7);
    expect(rootBetween((x) => x - 5, 3, 7)).toBe(5);
    // A step has no root but a place where it changes sign.
    expect(Math.abs(rootBetween((x) => (x < 1 / 3 ? -1 : 1), 0, 1) - 1 / 3)).toBeLessThan(1e-15);
    expect(Math.abs(rootBetween((x) => Math.exp(x) - 2, 0, 5, 1e-3) - Math.LN2)).toBeLessThan(1e-3);
    expect(() => rootBetween((x) => x * x + 1, 0, 1)).toThrow('no sign change');
  });

  it('the least of several hollows is found, at an end too', () => {
    expect(minimumBetween((x) => (x - 0.3) ** 2, 0, 1)).toBeCloseTo(0.3, 7);
    expect(minimumBetween((x) => x, 2, 5)).toBe(2);
    expect(minimumBetween((x) => -x, 2, 5)).toBe(5);
    // cos 3x + x/10 has hollows near π/3 and π: the first is lower; sin 3x = 1/30 there.
    const first = (Math.PI - Math.asin(1 / 30)) / 3;
    expect(minimumBetween((x) => Math.cos(3 * x) + x / 10, 0, 4)).toBeCloseTo(first, 6);
    expect(minimumBetween((x) => Math.abs(x - 0.7071), 0, 1)).toBeCloseTo(0.7071, 9);
  });

  it('the 8-point rule is exact to the fifteenth power, on any number of pieces', () => {
    expect(integrate((x) => x ** 15, 0, 1, 1)).toBeCloseTo(1 / 16, 13);
    expect(integrate((x) => 3 * x * x, -1, 2)).toBeCloseTo(9, 12);
    expect(integrate(Math.sin, 0, Math.PI, 3)).toBeCloseTo(2, 13);
    const nodes = nodesBetween(2, 5, 4);
    expect(nodes).toHaveLength(32);
    expect(nodesBetween(2, 5)).toHaveLength(64);
    expect(nodes.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(3, 12);
    expect(nodes.every(({ x }, index) => x > (nodes[index - 1]?.x ?? 2) && x < 5)).toBe(true);
  });
});

describe('polygons and flattened loops', () => {
  const square: readonly Point[] = [
    [0, 0],
    [10, 0],
    [10, 10],
    [0, 10],
  ];

  it('a place lies inside or not, a notch counted', () => {
    expect(isInside([5, 5], square)).toBe(true);
    for (const outside of [
      [-1, 5],
      [11, 5],
      [5, -1],
      [5, 11],
    ] as const)
      expect(isInside(outside, square)).toBe(false);
    const notched: readonly Point[] = [
      [0, 0],
      [10, 0],
      [10, 10],
      [5, 2],
      [0, 10],
    ];
    expect(isInside([5, 5], notched)).toBe(false);
    expect(isInside([5, 1], notched)).toBe(true);
    expect(isInside([1, 5], notched)).toBe(true);
    expect(isInside([9, 5], notched)).toBe(true);
    expect(isInside([5, 5], [])).toBe(false);
    expect(levelAt([2, 0], [8, 10], 5)).toBe(5);
    expect(levelAt([2, 10], [8, 20], 12.5)).toBe(3.5);
  });

  it('arcs become chords that stray no further than asked, corners stay', () => {
    const half = [
      { x: 10, y: 0, bulge: 1 },
      { x: -10, y: 0, bulge: 0 },
    ];
    // 1 mm off a radius of 10: chords of 2·acos(0.9) = 51.7°: four of 45°.
    const points = flattenLoop(half, 1);
    near(
      points.flat(),
      [0, 45, 90, 135, 180].flatMap((angle) => [
        10 * Math.cos((angle * Math.PI) / 180),
        10 * Math.sin((angle * Math.PI) / 180),
      ]),
    );
    // Never finer than 1e-4 radians.
    expect(flattenLoop(half, 1e-12)).toHaveLength(Math.ceil(Math.PI / 1e-4) + 1);
    // A half circle is no further from its chord than that: its two corners are left.
    expect(flattenLoop(half, 50)).toHaveLength(2);
  });
});

describe('a circle as a loop', () => {
  it('is two half circles from its left; a loop is its own', () => {
    const loop = asLoop({ kind: 'circle', operation: 'hole', x: 20, y: 7, radius: 3 });
    expect(loop).toEqual({
      kind: 'loop',
      operation: 'hole',
      vertices: [
        { x: 17, y: 7, bulge: 1 },
        { x: 23, y: 7, bulge: 1 },
      ],
    });
    expect(asLoop(loop)).toBe(loop);
  });
});

describe('space', () => {
  const quarter = turnAbout([1, 0, 0], [0, 0, 1], Math.PI / 2);

  it('a quarter turn about an upright line through (1, 0, 0), and back', () => {
    near(movedBy(quarter, [3, 0, 5]), [1, 2, 5]);
    near(turnedBy(quarter, [1, 0, 0]), [0, 1, 0]);
    near(movedBy(back(quarter), [1, 2, 5]), [3, 0, 5]);
    near(movedBy(turnAbout([0, 0, 0], unit3([1, 1, 1]), (2 * Math.PI) / 3), [1, 0, 0]), [0, 1, 0]);
    // First the turn, then the turn again: half round.
    near(movedBy(after(quarter, quarter), [3, 0, 5]), [-1, 0, 5]);
    near(movedBy(after(stay, quarter), [3, 0, 5]), [1, 2, 5]);
    const tilt = turnAbout([0, 0, 0], [1, 0, 0], Math.PI / 2);
    // Tilt first: (3, 0, 5) → (3, −5, 0); then the quarter: about (1, 0): (2, −5) → (5, 2) → (6, 2).
    near(movedBy(after(quarter, tilt), [3, 0, 5]), [6, 2, 0]);
  });

  it('lengths, directions, hands', () => {
    expect(apart3([1, 2, 3], [3, 5, 9])).toBe(7);
    near(unit3([2, 3, 6]), [2 / 7, 3 / 7, 6 / 7]);
    expect(cross3([1, 2, 3], [4, 5, 6])).toEqual([-3, 6, -3]);
    expect(sideOf(stay)).toBe(1);
    expect(sideOf({ ...stay, z: [0, 0, -1] })).toBe(-1);
  });
});

describe('drawings mirrored', () => {
  it('places change sides, loops keep their way round, text stays readable', () => {
    const text: Text = {
      kind: 'text',
      operation: 'label',
      x: 10,
      y: 5,
      height: 4,
      angle: 0,
      anchor: 'start',
      text: 'S1',
    };
    const [line, circle, loop, level, upright, slanted] = mirrorShapes(
      [
        { kind: 'line', operation: 'mark', from: [1, 2], to: [30, 4] },
        { kind: 'circle', operation: 'hole', x: 20, y: 7, radius: 3 },
        {
          kind: 'loop',
          operation: 'outline',
          vertices: [
            { x: 0, y: 0, bulge: 0.1 },
            { x: 10, y: 0, bulge: 0.2 },
            { x: 0, y: 8, bulge: 0.3 },
          ],
        },
        text,
        { ...text, angle: Math.PI / 2 },
        { ...text, angle: Math.PI / 6, anchor: 'middle' },
      ],
      100,
    );
    expect(line).toMatchObject({ from: [99, 2], to: [70, 4] });
    expect(() => mirrorShapes([{ kind: 'stroke', operation: 'label', points: [[1, 2]] }], 100)).toThrow('strokes');
    expect(circle).toMatchObject({ x: 80, y: 7, radius: 3 });
    // Reversed; each side keeps its own arc: 10,0 → 0,0 was 0 → 10 with 0.1, and so on.
    expect(loop).toMatchObject({
      vertices: [
        { x: 100, y: 8, bulge: 0.2 },
        { x: 90, y: 0, bulge: 0.1 },
        { x: 100, y: 0, bulge: 0.3 },
      ],
    });
    expect(level).toMatchObject({ x: 90, y: 5, anchor: 'end' });
    // Upright letters reach from x − 4 to x: their middle is at 8, mirrored at 92, so the baseline at 94.
    expect(upright).toMatchObject({ anchor: 'start', angle: Math.PI / 2 });
    near(upright?.kind === 'text' ? [upright.x, upright.y] : [], [94, 5]);
    // Slanted: middle of the height at (10 − 1, 5 + √3), mirrored (91, 5 + √3), with the other slant the baseline is at 90, 5.
    expect(slanted).toMatchObject({ anchor: 'middle', angle: -Math.PI / 6 });
    near(slanted?.kind === 'text' ? [slanted.x, slanted.y] : [], [90, 5]);
  });
});
