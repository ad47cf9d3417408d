import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loopArea } from '../../src/base/area';
import { hasErrors } from '../../src/base/findings';
import type { Loop, Shape, Text } from '../../src/base/drawing';
import { parseJob } from '../../src/job/parse';
import { drawParts } from '../../src/parts';
import type { Part } from '../../src/parts/part';
import { planJob, type Planned } from '../../src/pipeline';
import { jobText, randomJobs } from '../helpers/random-jobs';
import { planStarter, starters, tables } from '../helpers/starters';

function partsOf(planned: Planned): Part[] {
  if (!planned.bend || !planned.layout) throw new Error('nothing to draw');
  return drawParts(planned.layout, planned.bend, planned.job);
}

const outline = (part: Part): Loop => part.drawing.shapes.find((shape): shape is Loop => shape.kind === 'loop' && shape.operation === 'outline') as Loop;
const texts = (part: Part): Text[] => part.drawing.shapes.filter((shape): shape is Text => shape.kind === 'text');

/** Two marks, or a mark and an outline's side, that run over one another for more than a point. */
function doubled(shapes: readonly Shape[]): number {
  const lines: [number, number, number, number][] = [];
  for (const shape of shapes) {
    if (shape.kind === 'line') lines.push([...shape.from, ...shape.to] as [number, number, number, number]);
    if (shape.kind === 'loop') {
      shape.vertices.forEach((from, index) => {
        const to = shape.vertices[(index + 1) % shape.vertices.length];
        if (to && from.bulge === 0) lines.push([from.x, from.y, to.x, to.y]);
      });
    }
  }
  let count = 0;
  lines.forEach(([ax, ay, bx, by], index) => {
    const length = Math.hypot(bx - ax, by - ay);
    const [ux, uy] = [(bx - ax) / length, (by - ay) / length];
    for (const [cx, cy, dx, dy] of lines.slice(index + 1)) {
      const aside = (x: number, y: number): number => Math.abs((x - ax) * uy - (y - ay) * ux);
      const along = (x: number, y: number): number => (x - ax) * ux + (y - ay) * uy;
      const [from, to] = [along(cx, cy), along(dx, dy)].sort((p, q) => p - q) as [number, number];
      if (aside(cx, cy) < 1e-3 && aside(dx, dy) < 1e-3 && Math.min(to, length) - Math.max(from, 0) > 1e-3) count++;
    }
  });
  return count;
}

function expectSound(planned: Planned): void {
  const { plan } = planned;
  const parts = partsOf(planned);
  expect(parts.map(({ id }) => id)).toEqual(['spine', ...plan.stations.map(({ name }) => name), ...plan.backings.map(({ name }) => name)]);
  for (const part of parts) {
    expect(doubled(part.drawing.shapes), `${part.id}: lines drawn twice`).toBe(0);
    const names = part.kind === 'spine' ? [...plan.stations, ...plan.backings].map(({ name }) => name) : [part.id];
    expect(texts(part).map(({ text }) => text), part.id).toEqual(expect.arrayContaining(names));
  }
  // Areas by closed form: a half-disc, a trapezium (ears follow the taper), a rectangle.
  for (const station of plan.stations) {
    const part = parts.find(({ id }) => id === station.name) as Part;
    expect(loopArea(outline(part).vertices)).toBeCloseTo((Math.PI * station.radius ** 2) / 2, 4);
    expect(texts(part).some(({ text }) => text.startsWith('R ')), `${part.id} shows its radius`).toBe(true);
    expect(texts(part).some(({ text }) => text.startsWith('TO END')), `${part.id} shows its end`).toBe(true);
  }
  const spine = plan.spine;
  if (!spine) throw new Error('no spine');
  expect(loopArea(outline(parts[0] as Part).vertices)).toBeCloseTo(((spine.widthFrom + spine.widthTo) / 2) * (spine.length + 2 * spine.ears), 3);
  for (const backing of plan.backings) {
    expect(loopArea(outline(parts.find(({ id }) => id === backing.name) as Part).vertices)).toBeCloseTo(backing.width * backing.depth, 4);
  }
}

describe('part drawings', () => {
  it.each(starters)('%s: outlines by closed form, every part named, no line twice', (name) => {
    expectSound(planStarter(name));
  });

  it('the same for random jobs', () => {
    let drawn = 0;
    fc.assert(
      fc.property(randomJobs, (random) => {
        const { job } = parseJob(jobText(random, 'mm'), tables);
        if (!job) throw new Error('a random job must read');
        const planned = planJob(job, tables);
        if (hasErrors(planned.plan.findings)) return;
        drawn++;
        expectSound(planned);
      }),
      { numRuns: 300 },
    );
    expect(drawn).toBeGreaterThan(30);
  });
});
