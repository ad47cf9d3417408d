import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { at } from '../../../src/base/at';
import { toPanelPlan } from '../../../src/output/panel/panel-plan';
import { planText } from '../../../src/output/plan/plan-text';
import { planPanelStarter } from '../../helpers/starters';
import { apart, bent, INCH, lean, rimCorner, type PrintedBend, type Space } from './by-hand';

/**
 * The hood side folded from its printed plan alone, step by step, with a turn about each bend's centre line as school geometry gives it, and measured against
 * what the job asks of the finished part.
 */

const place = z.tuple([z.number(), z.number()]);
const printed = z.object({
  panel: z.object({
    outline: z.array(place),
    order: z.array(z.string()),
    bends: z.array(
      z.object({
        name: z.string(),
        turn: z.enum(['up', 'down']),
        angle: z.number(),
        baseLine: z.tuple([place, place]),
        legLine: z.tuple([place, place]),
        finished: z.object({ from: z.number(), to: z.number() }),
      }),
    ),
    corners: z.array(z.object({ gap: z.number(), root: z.object({ at: place, diameter: z.number() }) })),
  }),
  forms: z.array(z.object({ plan: z.object({ sheet: z.object({ thickness: z.number() }) }) })),
});

function printedPlan(): z.infer<typeof printed> {
  const planned = planPanelStarter('hood-side');
  return printed.parse(JSON.parse(planText(toPanelPlan(planned, []))));
}

describe('hood side, made from its printed plan', () => {
  const plan = printedPlan();
  const thickness = at(plan.forms, 0).plan.sheet.thickness;
  const bendOf = (name: string): PrintedBend => {
    const found = plan.panel.bends.find((bend) => bend.name === name);
    if (!found) throw new Error(name);
    return found;
  };
  const [long, short] = [bendOf('long'), bendOf('short')];

  it('both bends are in the order of work', () => {
    expect([...plan.panel.order].sort()).toEqual(['long', 'short']);
  });

  it('the base’s tangent lines are its 22 in and 9 in edges, meeting in the corner', () => {
    const ends = [...long.baseLine, ...short.baseLine].map(
      ([x, y]) => `${(x / INCH).toFixed(6)} ${(y / INCH).toFixed(6)}`,
    );
    expect(new Set(ends)).toEqual(new Set(['0.000000 0.000000', '22.000000 0.000000', '0.000000 9.000000']));
  });

  it.each([
    ['long', 1.25, 1.75],
    ['short', 1.25, 1.5],
  ])('%s: the leg stands square to the base, its tangent line at the finished radii asked for', (name, corner, far) => {
    const bend = bendOf(name);
    const [p, q] = bend.legLine.map((flat) => bent(bend, thickness, flat));
    if (!p || !q) throw new Error('two ends');
    expect(lean(bend, thickness)).toBeCloseTo(0, 8);
    // A quarter turn brings the inside of the leg's tangent line as high over the base's inside as the radius there; the taper changes that by its square.
    const heights = [p, q].map(([, , z]) => Math.abs(z) - thickness / 2).sort((a, b) => a - b);
    const asked = [corner, far].map((radius) => radius * INCH);
    for (const [index, height] of heights.entries()) expect(Math.abs(height / at(asked, index) - 1)).toBeLessThan(0.02);
  });

  it('the rims of the two legs, 2-1/2 in beyond the bends, end the asked 1/8 in apart at the corner', () => {
    const rimOf = (bend: PrintedBend): Space =>
      bent(bend, thickness, rimCorner(bend, plan.panel.outline, { wide: 2.5 * INCH, corner: [0, 0], within: 1e-4 }));
    const gap = at(plan.panel.corners, 0).gap;
    expect(gap).toBeCloseTo(INCH / 8, 6);
    // In the middle of the sheet: the gap is asked between the edges square to the cut.
    expect(apart(rimOf(long), rimOf(short))).toBeCloseTo(gap, 1);
  });
});
