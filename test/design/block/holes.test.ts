import { describe, expect, it } from 'vitest';
import { coneThrough } from '../../../src/base/cone';
import { layOutBlock, type FinishingBlock } from '../../../src/design/block/finishing-block';
import { planStarter, tables } from '../../helpers/starters';

/** Where a block's dowels stand, found by walking aside from the middle until the wood round them would be less than the rule leaves. */

const { bend, job } = planStarter('plain-curve');
/** Dowels of 8 mm with 12 mm of wood round them. */
const need = 12 + 8 / 2;

interface Shape {
  readonly from: number;
  readonly to: number;
  readonly wrap: number;
  readonly leg: number;
}

function laidOut({ from, to, wrap, leg }: Shape): ReturnType<typeof layOutBlock> {
  const finished = coneThrough(from, to, 457.2);
  const legs = { held: leg, free: leg };
  const board = planStarter('plain-curve', (text) => `${text}\nblock: { at: 200, length: 60, stock: mdf-18 }\n`).job
    .block;
  if (!board) throw new Error('no block asked for');
  return layOutBlock({ ...bend, finished, finishedWrap: wrap, legs }, { ...job, block: board }, tables);
}

/** How far a place of the smallest layer is from the nearest of its sides: its own arc, lines of the legs, ends, back. */
function fromSides(
  x: number,
  y: number,
  { wrap, base }: FinishingBlock,
  { radius, leg }: { radius: number; leg: number },
): number {
  const half = wrap / 2;
  const aside = Math.abs(x);
  const end = radius * Math.sin(half) + leg * Math.cos(half);
  const underLeg = radius - aside * Math.sin(half) - y * Math.cos(half);
  const arc = Math.atan2(aside, y) <= half ? radius - Math.hypot(x, y) : Infinity;
  return Math.min(y - base, end - aside, underLeg, arc);
}

describe('a finishing block’s dowels', () => {
  it.each([
    { from: 60, to: 60, wrap: 1.5, leg: 40 },
    { from: 60, to: 60, wrap: 2.6, leg: 100 },
    // A shallow arc with hardly a leg: the arc itself is nearest.
    { from: 200, to: 200, wrap: 1.5, leg: 10 },
    { from: 400, to: 400, wrap: 1.2, leg: 2 },
    { from: 60, to: 90, wrap: 1.2, leg: 80 },
  ])('of $from to $to mm, legs of $leg: seven tenths as far out as leaves 12 mm round them', (shape) => {
    const { value, findings } = laidOut(shape);
    if (!value) throw new Error(JSON.stringify(findings));
    const radius = Math.min(...value.layers.map((layer) => layer.radius));
    const [left, right] = value.holes;
    if (!left || !right) throw new Error('two holes');
    expect(left.y).toBe(right.y);
    let out = 0;
    while (fromSides(out + 0.01, left.y, value, { radius, leg: shape.leg }) >= need - 1e-6) out += 0.01;
    expect(Math.abs(right.x - 0.7 * out)).toBeLessThan(0.02);
    expect(left.x).toBeCloseTo(-right.x, 9);
    expect([left.diameter, right.diameter]).toEqual([8, 8]);
  });

  it('have 12 mm of wood between them, or the block is not made: it says how much there would be', () => {
    const between = (radius: number): { apart: number; codes: readonly string[] } => {
      const { value, findings } = laidOut({ from: radius, to: radius, wrap: 2, leg: 8 });
      const said = findings.find(({ code }) => code === 'block-without-room-for-dowels');
      const [left, right] = value?.holes ?? [];
      const apart = said ? Number(said.values['between']) : (right?.x ?? NaN) - (left?.x ?? NaN) - 8;
      return { apart, codes: findings.map(({ code }) => code) };
    };
    const looks = Array.from({ length: 60 }, (_, look) => between(20 + look));
    const refused = looks.filter(({ codes }) => codes.includes('block-without-room-for-dowels'));
    const made = looks.filter(({ codes }) => codes.length === 0);
    expect(refused.length).toBeGreaterThan(3);
    expect(made.length).toBeGreaterThan(3);
    expect(Math.max(...refused.map(({ apart }) => apart))).toBeLessThan(12);
    expect(Math.max(...refused.map(({ apart }) => apart))).toBeGreaterThan(10);
    expect(Math.min(...refused.map(({ apart }) => apart))).toBeGreaterThanOrEqual(0);
    expect(Math.min(...made.map(({ apart }) => apart))).toBeGreaterThanOrEqual(12);
    expect(Math.min(...made.map(({ apart }) => apart))).toBeLessThan(14);
  });
});
