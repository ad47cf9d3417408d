import { cases } from '../../helpers/cases';
import { describe, expect, it } from 'vitest';
import { layOutBlock } from '../../../src/drawing/aids';
import type { Circle, Loop } from '../../../src/base/drawing';
import { planBend } from '../../../src/design/pull';
import { hasErrors } from '../../../src/base/findings';
import { parseJob } from '../../../src/job/parse';
import type { Part } from '../../../src/drawing/parts/part';
import { doubled } from '../../helpers/doubled';
import { samplePoints } from '../../helpers/loops';
import { jobText, type RandomJob } from '../../helpers/random-jobs';
import { planStarter, tables } from '../../helpers/starters';
import {
  arcOf,
  bendOf,
  blockLayers,
  boxOf,
  cosineOf,
  onRandomBends,
  outlineOf,
  textsOf,
  turns,
  within,
  type Bent,
} from '../../drawing/aids/bends';

const DEGREE = Math.PI / 180;
type Space = readonly [number, number, number];
const cross = (a: Space, b: Space): Space => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const dot = (a: Space, b: Space): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

/** The random job with a block in its middle, of 50 mm or a quarter of the bend. */
function withBlock(random: RandomJob): Bent | null {
  const length = (JSON.parse(jobText(random, 'mm')) as { bend: { length: number } }).bend.length;
  return bendOf(random, { block: { at: length / 2, length: Math.min(50, length / 4), stock: 'mdf-12' } });
}

/** The straight sides that meet a layer's arc: both run away from it. */
function legEdges(loop: Loop): { at: readonly [number, number]; way: readonly [number, number]; length: number }[] {
  const { vertices } = loop;
  const start = vertices.findIndex(({ bulge }) => bulge !== 0);
  const pick = (index: number): { x: number; y: number } =>
    vertices[(index + vertices.length) % vertices.length] ?? { x: NaN, y: NaN };
  return [
    [pick(start), pick(start - 1)],
    [pick(start + 1), pick(start + 2)],
  ].map(([at, to]) => {
    const [dx, dy] = [(to?.x ?? NaN) - (at?.x ?? NaN), (to?.y ?? NaN) - (at?.y ?? NaN)];
    const length = Math.hypot(dx, dy);
    return { at: [at?.x ?? NaN, at?.y ?? NaN] as const, way: [dx / length, dy / length] as const, length };
  });
}

function checkBlock(bent: Bent, layers: readonly Part[]): void {
  const { bend, job } = bent;
  const block = layOutBlock(bend, job, tables).value;
  if (!block) throw new Error('no block');
  expect(layers.map(({ id }) => id)).toEqual(block.layers.map((_, index) => `block-${index + 1}`));
  const { radiusA, radiusB } = bend.finished;
  const cosine = cosineOf(radiusA, radiusB, bend.length);
  const finished = (s: number): number => radiusA + ((radiusB - radiusA) * s) / (bend.length * cosine);
  const shrinking = radiusB < radiusA;

  const outlines = layers.map((layer) => outlineOf(layer));
  outlines.forEach((loop, index) => {
    const layer = block.layers[index];
    if (!layer) throw new Error('no layer');
    const [low, high] = [layer.at - layer.thickness / 2, layer.at + layer.thickness / 2];
    expect(low).toBeGreaterThan(-1e-9);
    expect(high).toBeLessThan(bend.length * cosine + 1e-9);
    expect(turns(loop)).toBeGreaterThan(0);
    const { radius, sweep, centre } = arcOf(loop);
    expect(Math.hypot(...centre)).toBeLessThan(1e-6);
    expect(Math.abs(radius - finished(shrinking ? high : low))).toBeLessThan(0.01);
    // Leg edges leave the arc tangentially: square to the radius there, so their lines lie that radius from the centre line.
    for (const { at, way, length } of legEdges(loop)) {
      expect(Math.abs(at[0] * way[0] + at[1] * way[1])).toBeLessThan(1e-6);
      expect([job.bend.legs.held, job.bend.legs.free].some((leg) => length <= leg + 1e-6)).toBe(true);
    }
    // Never proud: on either face, every point of the slice within every tangent line of the finished section there.
    for (const s of [low, high]) {
      const reach = samplePoints(loop.vertices, 5).flatMap(([x, y]) =>
        Array.from({ length: 17 }, (_, step) => {
          const turn = (sweep * (step - 8)) / 16;
          return x * Math.sin(turn) + y * Math.cos(turn);
        }),
      );
      expect(Math.max(...reach)).toBeLessThan(finished(s) + 1e-6);
    }
  });

  // The assembled planes: through each leg's contact lines of the first and last layer (on a cylinder a layer's two faces).
  const faces = [outlines[0], outlines.at(-1)].map((loop, index) => {
    const layer = index === 0 ? block.layers[0] : block.layers.at(-1);
    if (!loop || !layer) throw new Error('no layer');
    return { loop, s: layer.at + ((shrinking ? 1 : -1) * layer.thickness) / 2 };
  });
  const [first, last] = faces;
  if (!first || !last) throw new Error('no faces');
  if (last.s - first.s > 1) {
    const normals = [0, 1].map((side): Space => {
      const [a, b] = [legEdges(first.loop)[side], legEdges(last.loop)[side]];
      if (!a || !b) throw new Error('no edge');
      return cross([0, ...a.way], [last.s - first.s, b.at[0] - a.at[0], b.at[1] - a.at[1]]);
    });
    const [a, b] = normals as [Space, Space];
    const between = Math.acos(dot(a, b) / Math.sqrt(dot(a, a) * dot(b, b)));
    // The interior angle of the two planes is 180° less the turn; which of the two a cross product gives depends on its order.
    const turn = Math.min(Math.abs(between - job.bend.angle), Math.abs(Math.PI - between - job.bend.angle)) / DEGREE;
    expect(turn).toBeLessThan(0.01);
  }

  // Two holes, the same in every layer, with wood round them in each.
  const wood = tables.rules.clampWood;
  const holes = layers.map(({ drawing }) =>
    drawing.shapes.filter((shape): shape is Circle => shape.kind === 'circle' && shape.operation === 'hole'),
  );
  for (const list of holes) {
    expect(list).toHaveLength(2);
    expect(list).toEqual(holes[0]);
  }
  for (const loop of outlines) {
    for (const { x, y, radius } of holes[0] ?? []) {
      expect(within(loop, [x, y])).toBe(true);
      const points = samplePoints(loop.vertices, 8);
      const gap = Math.min(
        ...points.map(([ax, ay], index) =>
          distanceToSide([x, y], [ax, ay], points[(index + 1) % points.length] ?? [ax, ay]),
        ),
      );
      expect(gap - radius).toBeGreaterThan(wood - 0.01);
    }
  }
  for (const layer of layers) {
    expect(doubled(layer.drawing.shapes), layer.id).toBe(0);
    expect(
      textsOf(layer).filter((text) => !boxOf(text).every((corner) => within(outlineOf(layer), corner))),
      `${layer.id}: hang over`,
    ).toEqual([]);
  }
}

function distanceToSide(
  [x, y]: readonly [number, number],
  [ax, ay]: readonly [number, number],
  [bx, by]: readonly [number, number],
): number {
  const [dx, dy] = [bx - ax, by - ay];
  const share =
    dx === 0 && dy === 0 ? 0 : Math.max(0, Math.min(1, ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy)));
  return Math.hypot(x - ax - share * dx, y - ay - share * dy);
}

describe('the finishing block', () => {
  it('has the finished radius within 0.01 mm and the finished angle within 0.01°, and stands proud nowhere', () => {
    let built = 0;
    onRandomBends((_, random) => {
      const bent = withBlock(random);
      if (!bent) return;
      const laidOut = layOutBlock(bent.bend, bent.job, tables);
      if (!laidOut.value) {
        expect(hasErrors(laidOut.findings)).toBe(true);
        return;
      }
      built++;
      checkBlock(bent, blockLayers(bent));
    }, 200);
    expect(built).toBeGreaterThan(cases(40));
  });

  it('is named layer by layer, with radius, face and legs, and reaches over the length asked for', () => {
    const planned = planStarter('tapered-curve', (text) => `${text}\nblock: { at: 310, length: 80 }\n`);
    const { bend, job, block, plan } = planned;
    if (!bend || !block) throw new Error('no block');
    expect(plan.findings.filter(({ level }) => level === 'error')).toEqual([]);
    const layers = blockLayers({ bend, job });
    // 80 mm in boards of 18 mm: five layers.
    expect(layers).toHaveLength(5);
    expect(plan.block?.layers).toHaveLength(5);
    expect((plan.block?.to ?? 0) - (plan.block?.from ?? 0)).toBeGreaterThan(80);
    expect(((plan.block?.to ?? 0) + (plan.block?.from ?? 0)) / 2).toBeCloseTo(310, 6);
    layers.forEach((layer, index) => {
      const words = textsOf(layer).map(({ text }) => text);
      expect(words).toEqual(
        expect.arrayContaining([
          `BLOCK ${index + 1} OF 5`,
          'THIS FACE TO END A',
          'HELD LEG: 40.00 mm',
          'FREE LEG: 100.00 mm OF 180.00 mm',
        ]),
      );
      expect(words).toContain(`R ${(plan.block?.layers[index]?.radius ?? NaN).toFixed(2)} mm`);
    });
  });

  it('is left out where the job has none', () => {
    const { block, plan } = planStarter('plain-curve');
    expect(block).toBeNull();
    expect(plan.block).toBeNull();
  });

  it.each([
    ['past end B', { at: 600, length: 80 }, 'block-outside-bend'],
    ['before end A', { at: 20, length: 80 }, 'block-outside-bend'],
    ['of an unknown board', { at: 310, length: 80, stock: 'mdf-17' }, 'unknown-board'],
    ['of no length', { at: 310, length: 0 }, 'out-of-range'],
    ['with a key of its own', { at: 310, length: 80, colour: 'red' }, 'unknown-key'],
  ])('%s is an error of the job', (_, block, code) => {
    const text = JSON.stringify({
      title: 'x',
      sheet: { material: 'aluminium-3003-h14', thickness: 1.6 },
      bend: { angle: 90, length: 620, radius: 40, legs: { held: 40, free: 180 } },
      block,
    });
    const { job, findings } = parseJob(text, tables);
    expect(job).toBeNull();
    expect(findings.map((finding) => finding.code)).toContain(code);
    expect(findings.find((finding) => finding.code === code)?.path).toMatch(/^block/u);
  });

  it.each([
    [
      'leaves no room for its dowels',
      { radius: 4, angle: 60, legs: { held: 3, free: 3 } },
      { at: 100, length: 40 },
      'block-without-room-for-dowels',
    ],
    [
      'needs too many layers',
      { radius: 40, angle: 90, legs: { held: 40, free: 100 } },
      { at: 1000, length: 1900, stock: 'mdf-12' },
      'block-too-many-layers',
    ],
  ])('that %s is an error of the plan', (_, shape, block, code) => {
    const text = JSON.stringify({
      title: 'x',
      sheet: { material: 'aluminium-1100-o', thickness: 1 },
      bend: { length: 2000, ...shape },
      block,
    });
    const { job, findings } = parseJob(text, tables);
    if (!job) throw new Error(JSON.stringify(findings));
    const bend = planBend(job, tables).value;
    if (!bend) throw new Error('no bend');
    const laidOut = layOutBlock(bend, job, tables);
    expect(laidOut.value).toBeNull();
    expect(laidOut.findings.map((finding) => finding.code)).toEqual([code]);
  });
});
