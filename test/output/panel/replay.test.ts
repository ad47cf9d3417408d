import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { at } from '../../../src/base/at';
import { parseFile } from '../../../src/job/parse';
import { toPanelPlan } from '../../../src/output/panel/panel-plan';
import { planPanel } from '../../../src/output/panel/plan-panel';
import { planText } from '../../../src/output/plan/plan-text';
import { loadTables } from '../../../src/tables/bundled';
import { loadPanelRules } from '../../../src/tables/panel-rules';

/**
 * The hood side folded from its printed plan alone, step by step, with a turn about each bend's centre line as school geometry gives it, and measured against
 * what the job asks of the finished part. Nothing of the panel's own folding is used.
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

type PrintedBend = z.infer<typeof printed>['panel']['bends'][number];
type Flat = readonly [number, number];
type Space = readonly [number, number, number];

function printedPlan(): z.infer<typeof printed> {
  const tables = loadTables();
  const parsed = parseFile(readFileSync('templates/panels/hood-side.yaml', 'utf8'), tables);
  if (parsed.kind !== 'panel' || !parsed.job) throw new Error('no panel');
  const planned = planPanel(parsed.job, { tables, rules: loadPanelRules() }, parsed.findings);
  if (!planned.buildable) throw new Error('it cannot be made');
  return printed.parse(JSON.parse(planText(toPanelPlan(planned, []))));
}

const INCH = 25.4;

/** Along a line from its first place, and to its side (toward `positive`), mm. */
function seenFrom([[x, y], [u, v]]: readonly [Flat, Flat], [px, py]: Flat, side: number): Flat {
  const length = Math.hypot(u - x, v - y);
  const [ax, ay] = [(u - x) / length, (v - y) / length];
  return [(px - x) * ax + (py - y) * ay, side * ((py - y) * ax - (px - x) * ay)];
}

/** A place of the leg, in the middle of the sheet, once its bend is made; the base in z = 0, marked face up. */
function bent(bend: PrintedBend, thickness: number, flat: Flat): Space {
  const [from, to] = bend.baseLine;
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const side = Math.sign(seenFrom(bend.baseLine, at(bend.legLine, 0), 1)[1]);
  const [s, d] = seenFrom(bend.legLine, flat, side);
  // In the bend's frame: x along the base line, y to the leg, z to the inside. The leg's flat is laid on the base line, then turned about the centre line.
  const slope = Math.asin((bend.finished.to - bend.finished.from) / length);
  const angle = (bend.angle * Math.PI) / 180;
  const wrap = 2 * Math.asin(Math.sin(angle / 2) / Math.cos(slope));
  // Square to the inside surface the centre line is R/cos β away.
  const height = thickness / 2 + bend.finished.from / Math.cos(slope);
  const axis: Space = [Math.cos(slope), 0, Math.sin(slope)];
  const turned = about(axis, wrap, [s, d, -height]);
  const [x, y, z] = [turned[0], turned[1], turned[2] + height];
  const along: Flat = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  const out: Flat = [-side * along[1], side * along[0]];
  return [from[0] + x * along[0] + y * out[0], from[1] + x * along[1] + y * out[1], bend.turn === 'up' ? z : -z];
}

/** Rodrigues' turn; the leg rises from +y toward +z. */
function about([a, b, c]: Space, angle: number, [x, y, z]: Space): Space {
  const [cosine, sine] = [Math.cos(angle), Math.sin(angle)];
  const dot = (a * x + b * y + c * z) * (1 - cosine);
  return [
    x * cosine + (b * z - c * y) * sine + a * dot,
    y * cosine + (c * x - a * z) * sine + b * dot,
    z * cosine + (a * y - b * x) * sine + c * dot,
  ];
}

function apart(p: Space, q: Space): number {
  return Math.hypot(p[0] - q[0], p[1] - q[1], p[2] - q[2]);
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
    // Square: any two places of the leg span a plane whose normal lies in the base's plane.
    const side = bent(bend, thickness, [
      2 * at(bend.legLine, 0)[0] - at(bend.baseLine, 0)[0],
      2 * at(bend.legLine, 0)[1] - at(bend.baseLine, 0)[1],
    ]);
    const [e, f] = [minus(q, p), minus(side, p)];
    const normal: Space = [e[1] * f[2] - e[2] * f[1], e[2] * f[0] - e[0] * f[2], e[0] * f[1] - e[1] * f[0]];
    expect(normal[2] / Math.hypot(...normal)).toBeCloseTo(0, 8);
    // A quarter turn brings the inside of the leg's tangent line as high over the base's inside as the radius there; the taper changes that by its square.
    const heights = [p, q].map(([, , z]) => Math.abs(z) - thickness / 2).sort((a, b) => a - b);
    const asked = [corner, far].map((radius) => radius * INCH);
    for (const [index, height] of heights.entries()) expect(Math.abs(height / at(asked, index) - 1)).toBeLessThan(0.02);
  });

  it('the rims of the two legs, 2-1/2 in beyond the bends, end the asked 1/8 in apart at the corner', () => {
    const rimOf = (bend: PrintedBend): Space => {
      const side = Math.sign(seenFrom(bend.baseLine, at(bend.legLine, 0), 1)[1]);
      const atCorner = Math.hypot(...at(bend.baseLine, 0)) < 1e-6 ? 1 : -1;
      const rim = plan.panel.outline
        .map((flat) => ({ flat, seen: seenFrom(bend.legLine, flat, side) }))
        .filter(({ seen }) => Math.abs(seen[1] - 2.5 * INCH) < 1e-4)
        .sort((a, b) => atCorner * (a.seen[0] - b.seen[0]));
      return bent(bend, thickness, at(rim, 0).flat);
    };
    const gap = at(plan.panel.corners, 0).gap;
    expect(gap).toBeCloseTo(INCH / 8, 6);
    // In the middle of the sheet: the gap is asked between the edges square to the cut.
    expect(apart(rimOf(long), rimOf(short))).toBeCloseTo(gap, 1);
  });
});

function minus(p: Space, q: Space): Space {
  return [p[0] - q[0], p[1] - q[1], p[2] - q[2]];
}
