import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawDisc, drawStrip, drawTrial } from '../../../src/drawing/aids/trial-strip';
import { toRadians } from '../../../src/base/angle';
import type { Circle, Line, Loop, Shape, Text, Vertex } from '../../../src/base/drawing';
import { adviseTrial, type TrialAdvice } from '../../../src/design/bend/trial-advice';
import { samplePoints } from '../../helpers/loops';
import { planStarter, starters, tables } from '../../helpers/starters';

type Place = readonly [number, number];

const loopOf = (shapes: readonly Shape[]): Vertex[] => {
  const loops = shapes.filter((shape): shape is Loop => shape.kind === 'loop');
  expect(loops).toHaveLength(1);
  return [...(loops[0]?.vertices ?? [])];
};
const holesOf = (shapes: readonly Shape[]): Circle[] =>
  shapes.filter((shape): shape is Circle => shape.kind === 'circle');
const marksOf = (shapes: readonly Shape[]): Line[] => shapes.filter((shape): shape is Line => shape.kind === 'line');
const textsOf = (shapes: readonly Shape[]): Text[] => shapes.filter((shape): shape is Text => shape.kind === 'text');

const edgesOf = (places: readonly Place[]): (readonly [Place, Place])[] =>
  places.map((place, index) => [place, places[(index + 1) % places.length] ?? place] as const);

/** Angle the polygon winds about a place, in turns: 1 inside a loop, 0 outside. */
function turnsAbout(places: readonly Place[], [x, y]: Place): number {
  const sum = edgesOf(places).reduce(
    (angle, [[ax, ay], [bx, by]]) =>
      angle + Math.atan2((ax - x) * (by - y) - (ay - y) * (bx - x), (ax - x) * (bx - x) + (ay - y) * (by - y)),
    0,
  );
  return Math.abs(Math.round(sum / (2 * Math.PI)));
}

const nearestPoint = (places: readonly Place[], [x, y]: Place): number =>
  Math.min(
    ...edgesOf(places).map(([[ax, ay], [bx, by]]) => {
      const share = Math.max(
        0,
        Math.min(1, ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / ((bx - ax) ** 2 + (by - ay) ** 2)),
      );
      return Math.hypot(x - ax - share * (bx - ax), y - ay - share * (by - ay));
    }),
  );

function crosses([a, b]: readonly [Place, Place], [c, d]: readonly [Place, Place]): boolean {
  const side = (p: Place, q: Place, r: Place): number => (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]);
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
}

const advised = (name: string, change?: (text: string) => string): TrialAdvice => {
  const { bend, job } = planStarter(name, change);
  return adviseTrial(bend, job.units);
};

const advices: fc.Arbitrary<TrialAdvice> = fc
  .record({
    radius: fc.oneof(fc.double({ min: 1, max: 95, noNaN: true }), fc.double({ min: 85, max: 3000, noNaN: true })),
    width: fc.double({ min: 15, max: 102, noNaN: true }),
    turn: fc.double({ min: 45, max: 150, noNaN: true }),
  })
  .map(({ radius, width, turn }) => {
    const bent = Math.min(toRadians(turn), Math.max(400 / radius, toRadians(45)));
    return { radius, width, held: 60, free: 120, length: 180 + bent * radius, bent, left: 0.8 * bent };
  });

describe('the strip and disc advised', () => {
  it.each(starters)('for %s: wide enough, round numbers, near the form', (name) => {
    const { bend } = planStarter(name);
    const { radius, width, bent, left, held, free, length } = advised(name);
    const thickness = bend?.section.thickness ?? NaN;
    expect(width).toBeGreaterThanOrEqual(Math.max(8 * thickness, 15));
    expect(width).toBeLessThan(Math.max(8 * thickness, 15) + 2);
    // Whole mm, or sixteenths of an inch: what a rule of that shop has.
    const step = planStarter(name).job.units === 'in' ? 25.4 / 16 : 1;
    for (const value of [radius, width, held, length]) expect(value / step).toBeCloseTo(Math.round(value / step), 9);
    const form = [bend?.form.radiusA ?? NaN, bend?.form.radiusB ?? NaN];
    expect(radius).toBeGreaterThan(0.95 * Math.min(...form));
    expect(radius).toBeLessThanOrEqual(Math.max(...form));
    expect(left).toBeLessThan(bent);
    // As much arc as the turn needs at the middle of the sheet or nearer its inside, DIN 6935 (from memory), and at least the free end.
    expect(length - held - free).toBeGreaterThan(bent * radius);
    expect(length - held - free).toBeLessThanOrEqual(bent * (radius + thickness / 2) + 1e-9);
    expect(free).toBeGreaterThanOrEqual(120);
  });

  it('what should be left is what the fit takes for factor 1', () => {
    const { radius, bent, left } = advised('tapered-curve');
    const trials = `\ntrials: [{ radius: ${radius}, bent: ${(bent * 180) / Math.PI}, left: ${(left * 180) / Math.PI} }]\n`;
    expect(planStarter('tapered-curve', (text) => text + trials).plan.sheet?.factor).toBeCloseTo(1, 7);
  });

  it('a wide bend gets a wide disc and a shorter turn', () => {
    const wide = advised('plain-curve', (text) =>
      text.replace('radius: 38.1', 'radius: 500').replace('thickness: 0.79375', 'thickness: 2'),
    );
    expect(wide.radius).toBeGreaterThan(150);
    expect(wide.bent).toBeGreaterThanOrEqual(toRadians(45));
    expect(wide.bent).toBeLessThan(toRadians(91));
  });
});

describe('the strip drawn', () => {
  it('is a rectangle of its width and length, tangent lines square across it an arc apart', () => {
    fc.assert(
      fc.property(advices, (advice) => {
        const shapes = drawStrip(advice);
        expect(loopOf(shapes)).toEqual([
          { x: 0, y: 0, bulge: 0 },
          { x: advice.length, y: 0, bulge: 0 },
          { x: advice.length, y: advice.width, bulge: 0 },
          { x: 0, y: advice.width, bulge: 0 },
        ]);
        const lines = marksOf(shapes);
        expect(lines.map(({ from, to }) => [from[1], to[1], to[0] - from[0]])).toEqual([
          [0, advice.width, 0],
          [0, advice.width, 0],
        ]);
        expect(lines[0]?.from[0]).toBe(advice.held);
        expect((lines[1]?.from[0] ?? 0) - advice.held).toBeCloseTo(advice.bent * advice.radius, 9);
        for (const { y, height } of textsOf(shapes)) {
          expect(y).toBeGreaterThan(0);
          expect(y + height).toBeLessThan(advice.width);
        }
      }),
    );
  });
});

describe('the disc drawn', () => {
  it('has a rim of its radius through the turn, a straight side at a tangent to it, as long as the strip’s held end', () => {
    fc.assert(
      fc.property(advices, (advice) => {
        const vertices = loopOf(drawDisc(advice, 'mm'));
        const arcs = vertices.flatMap((from, index) =>
          from.bulge === 0 ? [] : [{ from, to: vertices[(index + 1) % vertices.length] ?? from }],
        );
        expect(arcs).toHaveLength(1);
        const [arc] = arcs;
        if (!arc) return;
        expect([arc.from.x, arc.from.y]).toEqual([advice.radius, 0]);
        // By halving, so from the bulge alone: every point of the arc lies on the circle.
        const rim = samplePoints([arc.from, { ...arc.to, bulge: 0 }], 6).slice(0, -1);
        for (const [x, y] of rim) expect(Math.abs(Math.hypot(x, y) / advice.radius - 1)).toBeLessThan(1e-9);
        expect(
          Math.atan2(arc.to.y, arc.to.x) < -1e-9 ? 2 * Math.PI : Math.abs(Math.atan2(arc.to.y, arc.to.x)),
        ).toBeGreaterThan(advice.bent);
        const before = vertices.at(vertices.indexOf(arc.from) - 1);
        expect([before?.x, before?.y]).toEqual([advice.radius, -advice.held]);
      }),
    );
  });

  it('is one closed loop that does not cross itself, its screw holes well inside', () => {
    fc.assert(
      fc.property(advices, (advice) => {
        const shapes = drawDisc(advice, 'mm');
        const places = samplePoints(loopOf(shapes), 6);
        const edges = edgesOf(places);
        expect(edges.some((edge, index) => edges.slice(index + 2).some((other) => crosses(edge, other)))).toBe(false);
        const holes = holesOf(shapes);
        expect(holes).toHaveLength(2);
        for (const { x, y, radius } of holes) {
          expect(turnsAbout(places, [x, y])).toBe(1);
          expect(nearestPoint(places, [x, y])).toBeGreaterThan(2 * radius);
        }
        for (const { from, to } of marksOf(shapes))
          expect(turnsAbout(places, [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2])).toBe(1);
      }),
      { numRuns: 60 },
    );
  });

  it('lets the free end swing through the whole turn without meeting it', () => {
    fc.assert(
      fc.property(advices, fc.double({ min: 0.02, max: 1, noNaN: true }), (advice, share) => {
        const places = samplePoints(loopOf(drawDisc(advice, 'mm')), 7);
        const turn = share * advice.bent;
        const leaves: Place = [advice.radius * Math.cos(turn), advice.radius * Math.sin(turn)];
        // A hair clear of the rim it leaves at a tangent, as far as the free end reaches.
        const along = [0.1, 0.3, 0.5, 0.7, 0.9, 1].map((part): Place => [
          leaves[0] * 1.001 - part * advice.free * Math.sin(turn),
          leaves[1] * 1.001 + part * advice.free * Math.cos(turn),
        ]);
        for (const place of along) expect(turnsAbout(places, place)).toBe(0);
      }),
    );
  });

  it('is marked on the rim every 10° from the tangent line, and at the turn', () => {
    const advice = advised('tapered-curve');
    const angles = marksOf(drawDisc(advice, 'mm')).map(({ to }) => Math.atan2(to[1], to[0]));
    for (const degrees of [0, 10, 50, 90])
      expect(Math.min(...angles.map((angle) => Math.abs(angle - toRadians(degrees))))).toBeLessThan(1e-9);
    expect(Math.min(...angles.map((angle) => Math.abs(angle - advice.bent)))).toBeLessThan(1e-9);
  });
});

describe('among the aids of a job', () => {
  const aidsFor = (name: string, change?: (text: string) => string): ReturnType<typeof drawTrial> => {
    const { bend, job } = planStarter(name, change);
    if (!bend) throw new Error(name);
    return drawTrial(bend, job, tables);
  };

  it('there is a strip of sheet and a disc of board; enough layers to carry the strip’s width', () => {
    const aids = aidsFor('thick-steel', (text) =>
      `${text}\nclamps: { kind: f-heavy }\n`
        .replace('14 ga', '5 mm')
        .replace('stainless-304-annealed', 'aluminium-3003-h14')
        .replace('stations: mdf-18', 'stations: { stock: mdf-18, thickness: 17.5 }'),
    );
    expect(aids.map(({ id, material }) => [id, material])).toEqual([
      ['trial-strip', 'sheet'],
      ['trial-disc', 'board'],
    ]);
    // 8 × 5 = 40 mm of strip on 17.5 mm boards.
    expect(aids[1]?.notes[0]).toMatch(/^3 layers of board, screwed together, 52\.5 mm high/u);
    expect(aidsFor('plain-curve')[1]?.notes[0]).toMatch(/^One layer/u);
  });

  it('there is neither once the job has its trials', () => {
    expect(aidsFor('plain-curve', (text) => `${text}\ntrials: [{ radius: 36, bent: 95, left: 80 }]\n`)).toEqual([]);
  });
});
