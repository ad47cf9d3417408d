import { cases } from '../../helpers/cases';
import { describe, expect, it } from 'vitest';
import { drawAids } from '../../../src/drawing/aids';
import type { Loop } from '../../../src/base/drawing';
import { doubled } from '../../helpers/doubled';
import { planStarter, starters } from '../../helpers/starters';
import {
  aid,
  arcOf,
  boxOf,
  cosineOf,
  onRandomBends,
  outlineOf,
  planesAngle,
  textsOf,
  turns,
  within,
  type Bent,
} from './bends';

const DEGREE = Math.PI / 180;

/** The gauge's leg edge: the side that is not on the bench and whose line passes through the point where both lines meet, the origin. */
function legEdge(loop: Loop): { angle: number; from: number; to: number } {
  const edges = loop.vertices.flatMap((a, index) => {
    const b = loop.vertices[(index + 1) % loop.vertices.length] ?? a;
    const length = Math.hypot(b.x - a.x, b.y - a.y);
    const fromOrigin = Math.abs(a.x * b.y - b.x * a.y) / length;
    if (fromOrigin > 1e-7 || (Math.abs(a.y) < 1e-9 && Math.abs(b.y) < 1e-9)) return [];
    const [near, far] = [Math.hypot(a.x, a.y), Math.hypot(b.x, b.y)].sort((p, q) => p - q) as [number, number];
    return [
      {
        angle: Math.atan2(Math.abs(a.y - b.y), (near === Math.hypot(a.x, a.y) ? 1 : -1) * (b.x - a.x)),
        from: near,
        to: far,
      },
    ];
  });
  if (edges.length !== 1 || !edges[0]) throw new Error(`${edges.length} leg edges`);
  return edges[0];
}

/** The bench edge lies on y = 0 and nothing lies below it. */
function benchEdge(loop: Loop): number {
  const on = loop.vertices.filter(({ y }) => y === 0).map(({ x }) => x);
  expect(on).toHaveLength(2);
  expect(loop.vertices.every(({ y }) => y >= 0)).toBe(true);
  return Math.max(...on) - Math.min(...on);
}

describe('angle gauges', () => {
  it('show the finished angle, and the planes’ angle at the chosen wrap, within 0.01°', () => {
    const checked = onRandomBends((bent) => {
      const finished = outlineOf(aid(bent, 'angle-finished'));
      expect(Math.abs(legEdge(finished).angle - bent.job.bend.angle) / DEGREE).toBeLessThan(0.01);
      const form = outlineOf(aid(bent, 'angle-on-form'));
      const { radiusA, radiusB } = bent.bend.form;
      const wanted = planesAngle((radiusB - radiusA) / bent.bend.length, bent.bend.pull.gaugeWrap);
      expect(Math.abs(legEdge(form).angle - wanted) / DEGREE).toBeLessThan(0.01);
      for (const gauge of [finished, form]) {
        expect(benchEdge(gauge)).toBeGreaterThan(50);
        expect(turns(gauge)).toBeGreaterThan(0);
      }
    });
    expect(checked).toBeGreaterThan(cases(60));
  });

  it('lie against at least 60 mm of a long leg, and clear the bend (constant radius, by points of the sheet’s outside)', () => {
    let round = 0;
    onRandomBends((bent, random) => {
      const { bend, job } = bent;
      if (random.from !== random.to) return;
      round++;
      for (const [id, radius, wrap] of [
        ['angle-finished', bend.finished.radiusA, job.bend.angle],
        ['angle-on-form', bend.form.radiusA, bend.pull.gaugeWrap],
      ] as const) {
        const gauge = outlineOf(aid(bent, id));
        const outside = radius + job.sheet.thickness;
        const setback = outside * Math.tan(wrap / 2);
        const edge = legEdge(gauge);
        expect(edge.to - Math.max(edge.from, setback)).toBeGreaterThan(60);
        // From the tangent line at (−setback, 0): round the bend, out along the free leg, 0.01 mm inside the metal.
        const depth = outside - 0.01;
        for (let step = 0; step <= 20; step++) {
          const turn = (wrap * step) / 20;
          expect(
            within(gauge, [-setback + depth * Math.sin(turn), outside - depth * Math.cos(turn)]),
            `${id} meets the bend`,
          ).toBe(false);
          const out = (step / 20) * 250;
          const leg: [number, number] = [
            -setback + depth * Math.sin(wrap) + out * Math.cos(wrap),
            outside - depth * Math.cos(wrap) + out * Math.sin(wrap),
          ];
          expect(within(gauge, leg), `${id} meets the leg`).toBe(false);
        }
      }
    });
    expect(round).toBeGreaterThan(cases(15));
  });

  it('say how far off square they are held: the planes meet in a line through the cone’s apex', () => {
    const bent = starter('tapered-curve');
    const { finished, finishedWrap, length } = bent.bend;
    // Cross product of the planes' normals, against the ruling they are measured from.
    const sine = (finished.radiusB - finished.radiusA) / length;
    const cosine = Math.sqrt(1 - sine ** 2);
    const [a, b] = [0, finishedWrap].map((turn) => [-sine, cosine * Math.sin(turn), -cosine * Math.cos(turn)]) as [
      number[],
      number[],
    ];
    const [a0, a1, a2, b0, b1, b2] = [...a, ...b] as [number, number, number, number, number, number];
    const meet = [a1 * b2 - a2 * b1, a2 * b0 - a0 * b2, a0 * b1 - a1 * b0] as const;
    const along = Math.abs(meet[0] * cosine + meet[2] * -sine) / Math.hypot(...meet);
    const degrees = Math.acos(along) / DEGREE;
    expect(degrees).toBeGreaterThan(0.5);
    expect(textsOf(aid(bent, 'angle-finished')).map(({ text }) => text)).toContain(`${degrees.toFixed(1)} DEG TO A`);
  });
});

function starter(name: string): Bent {
  const { bend, job } = planStarter(name);
  if (!bend) throw new Error('no bend');
  return { bend, job };
}

describe('radius gauges', () => {
  it('have the finished radius inside, and that plus t·cos β outside, at both ends, within 0.01 mm', () => {
    const checked = onRandomBends((bent) => {
      const { radius, length, radiusOf } = bent.job.bend;
      const finished =
        radiusOf === 'finished' ? radius : { from: bent.bend.finished.radiusA, to: bent.bend.finished.radiusB };
      const cosine = cosineOf(finished.from, finished.to, length);
      for (const [end, inside] of [
        ['a', finished.from],
        ['b', finished.to],
      ] as const) {
        const [convex, concave] = [
          outlineOf(aid(bent, `radius-inside-${end}`)),
          outlineOf(aid(bent, `radius-outside-${end}`)),
        ];
        expect(turns(convex)).toBeGreaterThan(0);
        expect(turns(concave)).toBeGreaterThan(0);
        expect(Math.abs(arcOf(convex).radius - inside)).toBeLessThan(0.01);
        expect(Math.abs(arcOf(concave).radius - inside - bent.job.sheet.thickness * cosine)).toBeLessThan(0.01);
        expect(arcOf(convex).sweep).toBeGreaterThan(0);
        expect(arcOf(concave).sweep).toBeLessThan(0);
        // Nothing of the outside gauge reaches past the tangent lines, where the legs leave the arc.
        expect(-arcOf(concave).sweep).toBeLessThan(bent.bend.finishedWrap);
        for (const loop of [convex, concave]) {
          const [x0, y0] = arcOf(loop).centre;
          expect(Math.hypot(x0, y0)).toBeLessThan(1e-6);
        }
        // Inside gauge between the legs: below both tangent lines.
        const half = bent.bend.finishedWrap / 2;
        for (const { x, y } of convex.vertices)
          expect(Math.abs(x) * Math.sin(half) + y * Math.cos(half)).toBeLessThan(inside + 1e-6);
        // Outside gauge clear of the legs: points just inside the legs' outside faces.
        const outside = arcOf(concave).radius;
        for (let out = 0; out < 200; out += 20) {
          const along = (outside - 0.01) * Math.sin(half) + out * Math.cos(half);
          expect(within(concave, [along, (outside - 0.01) * Math.cos(half) - out * Math.sin(half)])).toBe(false);
        }
      }
    });
    expect(checked).toBeGreaterThan(cases(60));
  });
});

describe('all aids', () => {
  it('are one closed outline each, no line twice, every label inside, named so that none is taken for another', () => {
    const checked = onRandomBends(({ bend, job }) => {
      const aids = drawAids(bend, job);
      expect(new Set(aids.map(({ id }) => id)).size).toBe(aids.length);
      for (const one of aids) {
        const loop = outlineOf(one);
        expect(doubled(one.drawing.shapes), `${one.id}: lines drawn twice`).toBe(0);
        const over = textsOf(one).filter((text) => !boxOf(text).every((corner) => within(loop, corner)));
        expect(
          over.map(({ text }) => text),
          `${one.id}: hang over`,
        ).toEqual([]);
      }
    }, 100);
    expect(checked).toBeGreaterThan(cases(30));
  });

  it.each(starters)('%s: say what they are', (name) => {
    const bent = starter(name);
    const said = (id: string): string[] => textsOf(aid(bent, id)).map(({ text }) => text);
    expect(said('angle-finished')).toEqual(
      expect.arrayContaining(['FINISHED', `${(bent.job.bend.angle / DEGREE).toFixed(2)} DEG`, 'BENCH', 'LEG']),
    );
    expect(said('angle-on-form')).toEqual(expect.arrayContaining(['WHILE PULLED', 'BENCH', 'LEG']));
    const { finished, section } = bent.bend;
    for (const [id, words, radius] of [
      ['radius-inside-a', ['END A', 'INSIDE OF BEND'], finished.radiusA],
      // Square to the centre line the sheet is as thick as t·cos β.
      [
        'radius-outside-b',
        ['END B', 'OUTSIDE OF BEND'],
        finished.radiusB + section.thickness * Math.cos(finished.halfAngle),
      ],
    ] as const) {
      expect(said(id)).toEqual(expect.arrayContaining([...words]));
      const inch = bent.job.units === 'in';
      expect(said(id)).toContain(inch ? `R ${(radius / 25.4).toFixed(3)} in` : `R ${radius.toFixed(2)} mm`);
    }
  });
});
