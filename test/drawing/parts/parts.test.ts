import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loopArea } from '../../../src/base/area';
import type { Loop, Text } from '../../../src/base/drawing';
import { parseJob } from '../../../src/job/parse';
import { drawParts } from '../../../src/drawing/parts';
import type { Part } from '../../../src/drawing/parts/part';
import { planJob, type Buildable } from '../../../src/output/pipeline';
import { doubled } from '../../helpers/doubled';
import { jobText, randomJobs, shared } from '../../helpers/random-jobs';
import { planStarter, starters, tables } from '../../helpers/starters';
import { cases } from '../../helpers/cases';

function partsOf(planned: Buildable): Part[] {
  return drawParts({ layout: planned.layout, bend: planned.bend, job: planned.job, joints: planned.joints }, tables);
}

const outline = (part: Part): Loop =>
  part.drawing.shapes.find((shape): shape is Loop => shape.kind === 'loop' && shape.operation === 'outline') as Loop;
const texts = (part: Part): Text[] => part.drawing.shapes.filter((shape): shape is Text => shape.kind === 'text');

function expectSound(planned: Buildable): void {
  const { plan } = planned;
  const parts = partsOf(planned);
  expect(parts.map(({ id }) => id)).toEqual([
    'spine',
    ...plan.stations.map(({ name }) => name),
    ...plan.backings.map(({ name }) => name),
  ]);
  for (const part of parts) {
    expect(doubled(part.drawing.shapes), `${part.id}: lines drawn twice`).toBe(0);
    const names = part.kind === 'spine' ? [...plan.stations, ...plan.backings].map(({ name }) => name) : [part.id];
    expect(
      texts(part).map(({ text }) => text),
      part.id,
    ).toEqual(expect.arrayContaining(names));
  }
  // Areas by closed form: a half-disc, a trapezium (ears follow the taper), a rectangle.
  for (const station of plan.stations) {
    const part = parts.find(({ id }) => id === station.name) as Part;
    expect(loopArea(outline(part).vertices)).toBeCloseTo((Math.PI * station.radius ** 2) / 2, 4);
    const said = texts(part).map(({ text }) => text);
    const radius = [`R ${station.radius.toFixed(2)} mm`, `R ${(station.radius / 25.4).toFixed(3)} in`];
    expect(
      radius.filter((text) => said.includes(text)),
      `${part.id} shows its radius`,
    ).toHaveLength(1);
    expect(said, `${part.id} shows its end`).toContain(`TO END ${station.contact === 'from' ? 'A' : 'B'}`);
  }
  const spine = plan.spine;
  if (!spine) throw new Error('no spine');
  expect(loopArea(outline(parts[0] as Part).vertices)).toBeCloseTo(
    ((spine.widthFrom + spine.widthTo) / 2) * (spine.length + 2 * spine.ears),
    3,
  );
  for (const backing of plan.backings) {
    expect(loopArea(outline(parts.find(({ id }) => id === backing.name) as Part).vertices)).toBeCloseTo(
      backing.width * backing.depth,
      4,
    );
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
        const planned = planJob(shared(job, random), tables);
        if (!planned.buildable) return;
        drawn++;
        expectSound(planned);
      }),
      { numRuns: cases(300) },
    );
    expect(drawn).toBeGreaterThan(cases(30));
  });
});

describe('the faces a spine cut by hand is countersunk from', () => {
  it.each(starters)('%s: a ring from the drawn front, a dashed one lettered for the back', (name) => {
    const planned = planStarter(name);
    const [spine] = partsOf(planned);
    if (!spine) throw new Error('no spine');
    const { shapes } = spine.drawing;
    const lettered = texts(spine).filter(({ text }) => text === 'FROM BACK');
    for (const hole of planned.plan.spine?.screwHoles ?? []) {
      const away = ([x, y]: readonly [number, number]): number => Math.hypot(x - hole.at, y - hole.offset);
      const onRing = (place: readonly [number, number]): boolean => Math.abs(away(place) - hole.countersink / 2) < 1e-9;
      const ring = shapes.some(
        (shape) => shape.operation === 'countersink' && shape.kind === 'circle' && away([shape.x, shape.y]) < 1e-9,
      );
      const dashes = shapes.filter((shape) => shape.kind === 'line' && onRing(shape.from) && onRing(shape.to));
      expect([ring, dashes.length], hole.holds).toEqual(hole.side === 'front' ? [true, 0] : [false, 12]);
      expect(lettered.filter(({ x, y }) => away([x, y]) < hole.countersink).length).toBe(hole.side === 'front' ? 0 : 1);
    }
  });
});

describe('boards of one measured thickness', () => {
  it('are one kind of board, whatever the thickness is in floats', () => {
    for (let tenths = 170; tenths <= 185; tenths++) {
      const planned = planStarter('tapered-curve', (text) =>
        text.replace('stock: mdf-18', `stock: mdf-18, thickness: ${tenths / 10}`),
      );
      const parts = partsOf(planned);
      expect([...new Set(parts.map(({ thickness }) => thickness))], `${tenths / 10} mm`).toEqual([tenths / 10]);
    }
  });
});
