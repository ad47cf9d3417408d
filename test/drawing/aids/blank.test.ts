import { describe, expect, it } from 'vitest';
import type { Line, Shape } from '../../../src/base/drawing';
import { samplePoints } from '../../helpers/loops';
import { planStarter, starters, tables } from '../../helpers/starters';
import { toPartialPlan } from '../../../src/output/plan/to-plan';
import { aid, onRandomBends, outlineOf, textsOf, turns, type Bent } from './bends';
import { cases } from '../../helpers/cases';

type Flat = readonly [number, number];
type Space = readonly [number, number, number];

const isMark = (shape: Shape): shape is Line => shape.kind === 'line';
const minus = (a: Space, b: Space): Space => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const cross = (a: Space, b: Space): Space => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const dot = (a: Space, b: Space): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const size = (a: Space): number => Math.hypot(...a);

/**
 * Rolls a flat point up on the neutral cone by polar coordinates about the apex of the design's section 2, on the cylinder by its
 * arc: written from the design alone. Gives the place in space and the wrap.
 */
function rollUp({ bend }: Bent, [x, y]: Flat): { place: Space; wrap: number; radius: number } {
  const { radiusA, radiusB } = bend.finished;
  const sine = (radiusB - radiusA) / bend.length;
  const cosine = Math.sqrt(1 - sine ** 2);
  const start = radiusA + bend.neutral * bend.section.thickness * cosine;
  if (sine === 0) return at(x, y / start, start);
  const slant = start / sine;
  const distance = Math.sign(slant) * Math.hypot(x + slant, y);
  const polar = Math.atan2(Math.sign(slant) * y, Math.sign(slant) * (x + slant));
  return at((distance - slant) * cosine, polar / sine, distance * sine);

  function at(along: number, wrap: number, radius: number): { place: Space; wrap: number; radius: number } {
    return { place: [along, radius * Math.sin(wrap), -radius * Math.cos(wrap)], wrap, radius };
  }
}

/**
 * The blank drawn: outline corners in order, and its marks that are as long as the bend (tangent lines and trim line, in that order). `long`:
 * the held leg's mark put back from where the form stands to the bend's own tangent line.
 */
function drawn(bent: Bent): {
  corners: Flat[];
  arcs: Flat[][];
  marks: (readonly [Flat, Flat])[];
  long: (readonly [Flat, Flat])[];
} {
  const one = aid(bent, 'blank-left');
  const { vertices } = outlineOf(one);
  const corners = vertices.map(({ x, y }): Flat => [x, y]);
  const arcs = vertices.flatMap((from, index) => {
    const to = vertices[(index + 1) % vertices.length];
    return to && from.bulge !== 0 ? [samplePoints([from, { ...to, bulge: 0 }], 5).slice(0, -1)] : [];
  });
  const marks = one.drawing.shapes
    .filter(isMark)
    .slice(0, bent.bend.pull.leverage > 0 ? 3 : 2)
    .map(({ from, to }) => [from, to] as const);
  const { early } = bent.bend.pull;
  const back = ([x, y]: Flat): Flat => [x, y + early];
  const long = marks.map((line, index) => (index === 0 ? ([back(line[0]), back(line[1])] as const) : line));
  return { corners, arcs, marks, long };
}

const distanceToLine = ([x, y]: Flat, [[ax, ay], [bx, by]]: readonly [Flat, Flat]): number =>
  ((bx - ax) * (y - ay) - (by - ay) * (x - ax)) / Math.hypot(bx - ax, by - ay);

describe('the blank', () => {
  it('bent back gives two legs at the finished angle and the end curves, within 1e-6 of its size', () => {
    const checked = onRandomBends((bent) => {
      const { corners, arcs, long } = drawn(bent);
      const whole = Math.hypot(bent.job.bend.length, bent.bend.pull.edge);
      const [held, free] = long;
      if (!held || !free) throw new Error('no tangent lines');

      // End curves: both lie square to the centre line, round it, from one tangent line to the other.
      const ends = [
        { s: rollUp(bent, held[0]).place[0], radius: rollUp(bent, held[0]).radius },
        { s: rollUp(bent, held[1]).place[0], radius: rollUp(bent, held[1]).radius },
      ];
      if (bent.bend.finished.halfAngle !== 0) expect(arcs).toHaveLength(2);
      for (const arc of arcs) {
        const off = arc.map((point) => {
          const rolled = rollUp(bent, point);
          return Math.min(...ends.map(({ s, radius }) => Math.hypot(rolled.place[0] - s, rolled.radius - radius)));
        });
        expect(Math.max(...off) / whole).toBeLessThan(1e-6);
      }
      expect(
        Math.abs(
          (ends[1]?.s ?? 0) -
            (ends[0]?.s ?? 0) -
            Math.sqrt(bent.job.bend.length ** 2 - ((ends[1]?.radius ?? 0) - (ends[0]?.radius ?? 0)) ** 2),
        ) / whole,
      ).toBeLessThan(1e-6);

      // Both legs as planes in space: a tangent line rolled up, and the way the sheet leaves it, by a short step of the bend.
      const plane = (line: readonly [Flat, Flat]): { normal: Space; from: Space } => {
        const [from, to] = [rollUp(bent, line[0]), rollUp(bent, line[1])];
        const ruling = minus(to.place, from.place);
        const out: Space = [0, Math.cos(from.wrap), Math.sin(from.wrap)];
        expect(Math.abs(from.wrap - to.wrap)).toBeLessThan(1e-6);
        return { normal: cross(ruling, out), from: from.place };
      };
      const [heldPlane, freePlane] = [plane(held), plane(free)];
      const cosine = dot(heldPlane.normal, freePlane.normal) / (size(heldPlane.normal) * size(freePlane.normal));
      expect(Math.abs(cosine - Math.cos(bent.job.bend.angle))).toBeLessThan(1e-6);
      const [a, b] = [rollUp(bent, free[0]).place, rollUp(bent, free[1]).place];
      expect(Math.abs(size(minus(b, a)) - bent.job.bend.length) / whole).toBeLessThan(1e-6);

      // Legs: corners off the tangent lines by the legs' lengths, square to their ends.
      const lower = corners.map((corner) => distanceToLine(corner, held)).filter((distance) => distance < -1e-6);
      expect(lower).toHaveLength(2);
      for (const distance of lower) expect(Math.abs(distance + bent.job.bend.legs.held) / whole).toBeLessThan(1e-6);
      const lever = bent.bend.pull.edge;
      const upper = corners.filter((corner) => Math.abs(distanceToLine(corner, free) - lever) / whole < 1e-6);
      expect(upper).toHaveLength(2);
      expect(
        upper
          .map((corner) =>
            Math.min(
              ...free.map((end) => Math.abs(Math.hypot(corner[0] - end[0], corner[1] - end[1]) - lever) / whole),
            ),
          )
          .every((gap) => gap < 1e-6),
      ).toBe(true);
    });
    expect(checked).toBeGreaterThan(cases(60));
  });

  it('has leverage, trims, mass and size as the plan says', () => {
    const checked = onRandomBends((bent) => {
      const plan = toPartialPlan({ ...bent, effect: null, layout: null, block: null, findings: [] });
      const { long, marks, corners } = drawn(bent);
      const [, free, trim] = long;
      if (!free || !plan.blank) throw new Error('no free tangent line');
      expect(plan.blank.trims).toEqual(trim ? [[trim[0], trim[1]]] : []);
      expect(plan.blank.tangents).toEqual(marks.slice(0, 2));
      const furthest = Math.max(...corners.map((corner) => distanceToLine(corner, free)));
      const { leverage } = bent.bend.pull;
      if (trim) for (const end of trim) expect(furthest - distanceToLine(end, free)).toBeCloseTo(leverage, 6);
      else expect(furthest).toBeCloseTo(bent.job.bend.legs.free, 6);
      // Area of a cone's strip: mean arc of the neutral line times its length; both legs are rectangles.
      const { allowance, section, metal } = bent.bend;
      const area =
        bent.job.bend.length * (bent.job.bend.legs.held + (allowance.A + allowance.B) / 2 + bent.bend.pull.edge);
      const density = tables.metals.find(({ id }) => id === bent.job.sheet.material)?.density ?? NaN;
      expect(metal.density).toBe(density);
      expect(plan.blank.mass / (area * section.thickness * density * 1e-9)).toBeCloseTo(1, 9);
      const points = samplePoints(outlineOf(aid(bent, 'blank-left')).vertices, 7);
      const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
      expect(Math.abs(plan.blank.width - (Math.max(...xs) - Math.min(...xs)))).toBeLessThan(1e-3);
      expect(Math.abs(plan.blank.height - (Math.max(...ys) - Math.min(...ys)))).toBeLessThan(1e-3);
    });
    expect(checked).toBeGreaterThan(cases(60));
  });

  it('left and right are mirror images: every point of every outline and mark, once', () => {
    const checked = onRandomBends((bent) => {
      const [left, right] = [aid(bent, 'blank-left'), aid(bent, 'blank-right')];
      const [a, b] = [outlineOf(left), outlineOf(right)];
      expect(turns(a)).toBeGreaterThan(0);
      expect(turns(b)).toBeGreaterThan(0);
      const points = (loop: typeof a): Flat[] => samplePoints(loop.vertices, 3);
      const [p, q] = [points(a), points(b)];
      expect(q).toHaveLength(p.length);
      const sum = Math.min(...p.map(([x]) => x)) + Math.max(...q.map(([x]) => x));
      for (const [x, y] of p)
        expect(q.filter((other) => Math.hypot(other[0] - (sum - x), other[1] - y) < 1e-6)).toHaveLength(1);
      const [m, n] = [left.drawing.shapes.filter(isMark), right.drawing.shapes.filter(isMark)];
      expect(n).toHaveLength(m.length);
      for (const { from, to } of m) {
        const same = n.filter(
          (other) =>
            Math.hypot(
              other.from[0] - (sum - from[0]),
              other.from[1] - from[1],
              other.to[0] - (sum - to[0]),
              other.to[1] - to[1],
            ) < 1e-6,
        );
        expect(same).toHaveLength(1);
      }
    }, 100);
    expect(checked).toBeGreaterThan(cases(30));
  });

  it.each(starters)(
    '%s: end A lies left on the left blank and right on the right one, each named, both with grain and faces',
    (name) => {
      const { bend, job } = planStarter(name);
      if (!bend) throw new Error('no bend');
      for (const hand of ['left', 'right'] as const) {
        const texts = textsOf(aid({ bend, job }, `blank-${hand}`));
        const x = (words: string): number => texts.find(({ text }) => text === words)?.x ?? NaN;
        expect(x('END A') < x('END B')).toBe(hand === 'left');
        const words = texts.map(({ text }) => text);
        expect(words.some((text) => text.startsWith(`BLANK ${hand.toUpperCase()}`))).toBe(true);
        expect(words).toEqual(
          expect.arrayContaining(['GRAIN', 'THIS FACE TO THE FORM', 'GOOD FACE DOWN WHERE THE OUTSIDE SHOWS']),
        );
        if (bend.pull.leverage > 0) expect(words.some((text) => /^LEVERAGE .* TRIM/u.test(text))).toBe(true);
      }
    },
  );
});

describe('the marking strip', () => {
  it('has both tangent lines and both ends of every run where the blank has them', () => {
    const checked = onRandomBends((bent) => {
      const marks = (id: string): Line[] => aid(bent, id).drawing.shapes.filter(isMark);
      const [strip, blank] = [marks('marking-strip'), marks('blank-left')];
      expect(strip.slice(0, 2)).toEqual(blank.slice(0, 2));
      // A run's end is pointed at by the start of a mark, on both tangent lines: at x along each of them.
      for (const [from, to] of strip.slice(0, 2).map((line) => [line.from, line.to] as const)) {
        for (const run of bent.job.runs) {
          for (const x of [run.from, run.to]) {
            const share = x / bent.job.bend.length;
            const place: Flat = [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])];
            const pointing = strip
              .slice(2)
              .filter((line) => Math.hypot(line.from[0] - place[0], line.from[1] - place[1]) < 1e-6);
            expect(pointing.length).toBeGreaterThanOrEqual(2);
          }
        }
      }
    }, 100);
    expect(checked).toBeGreaterThan(cases(30));
  });
});
