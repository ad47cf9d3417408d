import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arcBetween } from '../../../src/base/arc';
import type { Drawing, Loop, Vertex } from '../../../src/base/drawing';
import { holeNotes } from '../../../src/output/pdf/hole-notes';
import { curvesOf } from '../../../src/output/pdf/pen';
import { wasteTicks } from '../../../src/output/pdf/waste-ticks';
import { cases } from '../../helpers/cases';

describe('arcs on paper', () => {
  it('stray from the true circle by less than 0.01 mm, to radii of 20 m', () => {
    const place = fc.double({ min: -3000, max: 3000, noNaN: true });
    let arcs = 0;
    fc.assert(
      fc.property(
        fc.tuple(place, place),
        fc.tuple(place, place),
        fc.double({ min: -1, max: 1, noNaN: true }),
        ([x1, y1], [x2, y2], bulge) => {
          const [from, to]: Vertex[] = [
            { x: x1, y: y1, bulge },
            { x: x2, y: y2, bulge: 0 },
          ] as [Vertex, Vertex];
          const arc = from && to ? arcBetween(from, to) : null;
          fc.pre(
            from !== undefined &&
              to !== undefined &&
              arc !== null &&
              arc.radius < 20_000 &&
              Math.hypot(x2 - x1, y2 - y1) > 1e-3,
          );
          if (!from || !to || !arc) return;
          arcs++;
          let start: readonly [number, number] = [x1, y1];
          for (const curve of curvesOf(from, to)) {
            const [ax, ay, bx, by, ex, ey] = curve as [number, number, number, number, number, number];
            for (let step = 0; step <= 20; step++) {
              // Bernstein's form of the cubic.
              const t = step / 20;
              const [k0, k1, k2, k3] = [(1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t ** 2 * (1 - t), t ** 3];
              const x = k0 * start[0] + k1 * ax + k2 * bx + k3 * ex;
              const y = k0 * start[1] + k1 * ay + k2 * by + k3 * ey;
              expect(Math.abs(Math.hypot(x - arc.centreX, y - arc.centreY) - arc.radius)).toBeLessThan(0.01);
            }
            start = [ex, ey];
          }
          expect(Math.hypot(start[0] - x2, start[1] - y2)).toBeLessThan(1e-9);
        },
      ),
      { numRuns: cases(300) },
    );
    expect(arcs).toBeGreaterThan(cases(200));
  });
});

const square = (
  [x, y]: readonly [number, number],
  side: number,
  operation: Loop['operation'] = 'outline',
  clockwise = false,
): Loop => {
  const corners = [
    [x, y],
    [x + side, y],
    [x + side, y + side],
    [x, y + side],
  ].map(([px, py]) => ({ x: px ?? 0, y: py ?? 0, bulge: 0 }));
  return { kind: 'loop', operation, vertices: clockwise ? corners.reverse() : corners };
};

describe('ticks stand on the waste side', () => {
  const inside = ([x, y]: readonly [number, number], left: number, side: number): boolean =>
    x > left && x < left + side && y > left && y < left + side;

  it.each([false, true])('outside an outline, whichever way round it runs (clockwise: %s)', (clockwise) => {
    const ticks = wasteTicks({ shapes: [square([0, 0], 60, 'outline', clockwise)] });
    expect(ticks.length).toBeGreaterThan(30);
    expect(ticks.every(({ to }) => !inside(to, 0, 60))).toBe(true);
  });

  it('inside a hole, inside an outline within an outline, and outside one within that', () => {
    const hole = wasteTicks({ shapes: [square([0, 0], 60, 'hole', true)] });
    expect(hole.length).toBeGreaterThan(30);
    expect(hole.every(({ to }) => inside(to, 0, 60))).toBe(true);
    const drawing: Drawing = { shapes: [square([0, 0], 90), square([10, 10], 70), square([30, 30], 30)] };
    for (const { from, to } of wasteTicks(drawing)) {
      const on = (left: number, side: number): boolean =>
        from.some((value) => Math.abs(value - left) < 1e-9 || Math.abs(value - left - side) < 1e-9) &&
        !inside(from, left, side);
      if (on(30, 30) && inside(from, 10, 70)) expect(inside(to, 30, 30)).toBe(false);
      else if (on(10, 70) && inside(from, 0, 90)) expect(inside(to, 10, 70)).toBe(true);
      else expect(inside(to, 0, 90)).toBe(false);
    }
  });

  it('outside a half disc, and none at a drilled hole or a countersink', () => {
    const disc: Loop = {
      kind: 'loop',
      operation: 'outline',
      vertices: [
        { x: -40, y: 0, bulge: 0 },
        { x: 40, y: 0, bulge: 1 },
      ],
    };
    const ticks = wasteTicks({
      shapes: [
        disc,
        { kind: 'circle', operation: 'hole', x: 0, y: 20, radius: 2 },
        { kind: 'circle', operation: 'countersink', x: 0, y: 20, radius: 8 },
      ],
    });
    expect(ticks.length).toBe(Math.floor((80 + 40 * Math.PI) / 6));
    expect(ticks.every(({ to: [x, y] }) => y < 0 || Math.hypot(x, y) > 40)).toBe(true);
  });
});

describe('diameters beside holes', () => {
  it('one a hole, with its countersink, clear of every hole where there is room', () => {
    const at = [20, 60, 100].flatMap((x) => [20, 50].map((y) => ({ x, y })));
    const shapes = [
      square([0, 0], 120),
      ...at.flatMap(({ x, y }) => [
        { kind: 'circle', operation: 'hole', x, y, radius: 2.25 } as const,
        { kind: 'circle', operation: 'countersink', x, y, radius: 4 } as const,
      ]),
    ];
    const notes = holeNotes({ shapes }, 'mm', (text, height) => text.length * height * 0.7);
    expect(notes.map(({ text }) => text)).toEqual(at.flatMap(() => ['Ø 4.5 mm', 'csk Ø 8 mm']));
    for (const note of notes) {
      const away = at.map((hole) => Math.hypot(note.x - hole.x, note.y - hole.y));
      expect(Math.min(...away)).toBeGreaterThan(4);
      expect(Math.min(...away)).toBeLessThan(25);
    }
  });
});
