import { describe, expect, it } from 'vitest';
import { at } from '../../src/base/at';
import { toRadians } from '../../src/base/angle';
import type { Point } from '../../src/base/polygon';
import { cornerBlock, type BlockGiven, type CornerBlock } from '../../src/panel/corner/corner-block';
import { insideSurface } from '../../src/panel/corner/inner-side';
import type { BuiltUp } from '../../src/panel';
import { bend, box, built, rules } from './panels';

/** Boards of 18 mm, dowels of 8 mm with 12 mm of wood round them: the shop's rules. */
const GIVEN: BlockGiven = {
  board: 18,
  dowel: 8,
  wood: 12,
  past: rules.cornerBlockPast,
  leg: rules.cornerBlockLeg,
};

const blockOf = (spec: BuiltUp, given = GIVEN): CornerBlock => {
  const panel = built(spec);
  const made = cornerBlock(panel, at(panel.corners, 0), given);
  if (typeof made === 'string') throw new Error(made);
  return made;
};

const equal = (more: Partial<Parameters<typeof bend>[1]> = {}): BuiltUp =>
  box(300, 200, { bends: [bend('long', more), bend('short', more)] });

const near = (places: readonly Point[]): unknown[] =>
  places.map(([x, y]): unknown => [expect.closeTo(x, 9), expect.closeTo(y, 9)]);

const crossAt = (outline: readonly Point[], index: number): number => {
  const [[ax, ay], [bx, by], [cx, cy]] = [
    at(outline, index),
    at(outline, (index + 1) % outline.length),
    at(outline, (index + 2) % outline.length),
  ];
  return (bx - ax) * (cy - by) - (by - ay) * (cx - bx);
};

describe('the block of a corner', () => {
  it('of equal cylinders at right angles is square in every section: out by √(R² − (R − h)²), then by R', () => {
    const { layers, foot, reach, height, holes } = blockOf(equal());
    // R 30 and 20 mm of leg over it: 50 mm, three boards of 18. Along each edge 40 mm beyond the radius.
    expect([layers.length, reach, height]).toEqual([3, 70, 54]);
    expect(foot).toEqual(
      near([
        [0, 70],
        [0, 0],
        [70, 0],
        [70, 70],
      ]),
    );
    for (const { from, to, outline } of layers) {
      expect(to - from).toBe(18);
      const out = to < 30 ? Math.sqrt(30 ** 2 - (30 - to) ** 2) : 30;
      expect(outline).toEqual(
        near([
          [-out, 70],
          [-out, -out],
          [70, -out],
          [70, 70],
        ]),
      );
    }
    // Beside the foot's middle, a fifth of the way from end to end off it: 35 ± 14, hence 21 from the nearest edge.
    expect(holes).toEqual(
      near([
        [35 - 14, 35 + 14],
        [35 + 14, 35 - 14],
      ]),
    );
  });

  it('is the same under bends that turn down', () => {
    expect(blockOf(equal({ turn: 'down' })).layers).toEqual(blockOf(equal()).layers);
  });

  it('follows legs that lean: at 60° out by R·sin ψ at their tangent lines, then by cot ψ of the height', () => {
    const { layers } = blockOf(equal({ angle: toRadians(60) }));
    // The zone is 15 mm high; with 20 mm of leg two boards.
    expect(layers).toHaveLength(2);
    for (const { to, outline } of layers) {
      const out = 30 * Math.sin(Math.PI / 3) + (to - 15) / Math.tan(Math.PI / 3);
      expect(at(outline, 1)).toEqual(at(near([[-out, -out]]), 0));
    }
  });

  it('of a base whose corner is 120° wide has its edge on the line that halves it, and a chamfer where its backs would run far', () => {
    const wide = (inside: number): BuiltUp => ({
      ...box(0, 0, { bends: [bend('long'), bend('short')] }),
      base: {
        corners: [
          [0, 0],
          [300, 0],
          [300, 280],
          [300 * Math.cos(toRadians(inside)), 300 * Math.sin(toRadians(inside))],
        ],
        edges: ['long', 'back', 'top', 'short'],
        measured: 'flat',
      },
    });
    for (const [inside, backs] of [
      [95, 1],
      [120, 2],
    ] as const) {
      const { layers, foot } = blockOf(wide(inside));
      expect(foot).toHaveLength(3 + backs);
      const away = toRadians(inside);
      const half: Point = [Math.cos(away / 2), Math.sin(away / 2)];
      const { outline } = at(layers, 1);
      const out = 30 / Math.sin(away / 2);
      expect(at(outline, 1)).toEqual([expect.closeTo(-out * half[0], 9), expect.closeTo(-out * half[1], 9)]);
    }
  });

  it('of two cones lies on both within a hundredth of a mm, each layer round the one below, convex', () => {
    const panel = built(
      box(558.8, 228.6, {
        thickness: 1.2141,
        bends: [bend('long', { radius: { short: 30, back: 45 } }), bend('short', { radius: { long: 30, top: 36 } })],
      }),
    );
    const made = cornerBlock(panel, at(panel.corners, 0), GIVEN);
    if (typeof made === 'string') throw new Error(made);
    const [long] = panel.bends;
    if (!long) throw new Error('a bend');
    for (const { to, outline } of made.layers) {
      for (const [index] of outline.entries()) expect(crossAt(outline, index)).toBeGreaterThan(0);
      // Rulings of the long bend, walked until they are as high as the layer's upper face: the section's straight chords pass them.
      for (const x of [2, 20, 40, 60]) {
        const z = panel.thickness / 2 + to;
        const high = (wrap: number): number => insideSurface(long, { x, wrap, beyond: 0 })[2] - z;
        if (high(long.wrap) < 0) continue;
        let [low, top] = [0, long.wrap];
        for (let step = 0; step < 60; step++) {
          const middle = (low + top) / 2;
          if (high(middle) < 0) low = middle;
          else top = middle;
        }
        const [px, py] = insideSurface(long, { x, wrap: low, beyond: 0 });
        const off = Math.min(
          ...outline.map(([ax, ay], index) => {
            const [bx, by] = at(outline, (index + 1) % outline.length);
            const length = Math.hypot(bx - ax, by - ay);
            const share = ((px - ax) * (bx - ax) + (py - ay) * (by - ay)) / length ** 2;
            const beyond = Math.max(0, -share, share - 1) * length;
            return Math.hypot(((bx - ax) * (py - ay) - (by - ay) * (px - ax)) / length, beyond);
          }),
        );
        expect(off).toBeLessThan(0.01);
      }
    }
    made.layers.slice(1).forEach(({ outline }, index) => {
      const [below, above] = [at(made.layers, index).outline, outline].map((each) =>
        Math.min(...each.map(([, y]) => y)),
      );
      expect(above).toBeLessThanOrEqual((below ?? 0) + 1e-9);
    });
  });

  it('of a taper whose apex lies nearer past the corner than the other bend reaches follows the legs’ planes past it', () => {
    const { layers } = blockOf(
      box(300, 200, { bends: [bend('long'), bend('short', { radius: { long: 3, top: 38 } })] }),
    );
    // Over the zones, 30 mm: the cylinder's leg stands 30 out. There, along the cone's base line, R is 3 − 30·(35/200), and its leg's plane,
    // square to the base, R·tan(ψ/2) out, where the planes' right angle asks for cos ψ = 1 − 1/cos² β.
    const sine = 35 / 200;
    const half = Math.acos(1 - 1 / (1 - sine ** 2)) / 2;
    const corner = at(at(layers, 1).outline, 1);
    expect(at(layers, 1).to).toBe(36);
    expect(corner[0]).toBeCloseTo((30 * sine - 3) * Math.tan(half), 9);
    expect(corner[1]).toBeCloseTo(-30, 9);
    for (const { outline } of layers)
      for (const [index] of outline.entries()) expect(crossAt(outline, index)).toBeGreaterThan(0);
  });

  it('is made smaller where the base is: none where not even two dowels fit, none in an overhang, none where one bend goes down', () => {
    const refusal = (spec: BuiltUp): unknown => {
      const panel = built(spec);
      const made = cornerBlock(panel, at(panel.corners, 0), GIVEN);
      return typeof made === 'string' ? made : made.reach;
    };
    const both = (more = {}) => ({ bends: [bend('long', more), bend('short', more)] });
    expect(refusal(box(300, 60, both()))).toBe(60);
    expect(refusal(box(300, 30, both()))).toBe('room');
    expect(refusal(box(300, 200, both({ angle: toRadians(100) })))).toBe('overhang');
    expect(refusal(box(300, 200, { bends: [bend('long'), bend('short', { turn: 'down' })] }))).toBe('turns');
    // Four boards, 72 mm high, there the leg at 13° leans out some 72/tan 13°: on the other's line the two meet past all of the block.
    const leaning = bend('short', { angle: toRadians(13), radius: { long: 20, top: 35 } });
    const upright = bend('long', { angle: toRadians(77), radius: { short: 40, back: 100 } });
    expect(refusal(box(114, 203, { bends: [upright, leaning] }))).toBe('shallow');
  });
});
