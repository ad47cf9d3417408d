import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arcBetween, bulgeFromSweep, radiusFromBulge, sagittaFromBulge, sweepFromBulge } from '../../src/base/arc';
import { loopArea } from '../../src/base/area';
import { boundsOf } from '../../src/base/bounds';
import type { Drawing, Vertex } from '../../src/base/drawing';
import { flattenLoop } from '../../src/base/flatten';
import { moveDrawing } from '../../src/base/transform';

const bulges = fc.oneof(
  fc.constant(0),
  fc.double({ min: -0.9, max: 0.9, noNaN: true }).filter((bulge) => Math.abs(bulge) > 1e-3),
);
/** Star-shaped loops about the origin: any radii, rising angles. */
const loops: fc.Arbitrary<Vertex[]> = fc
  .array(fc.tuple(fc.double({ min: 20, max: 60, noNaN: true }), bulges), { minLength: 3, maxLength: 9 })
  .map((corners) =>
    corners.map(([radius, bulge], index) => {
      const angle = (2 * Math.PI * index) / corners.length;
      return { x: radius * Math.cos(angle), y: radius * Math.sin(angle), bulge };
    }),
  );

const polygonArea = (points: readonly (readonly [number, number])[]): number =>
  points.reduce((sum, [x, y], index) => {
    const [nextX, nextY] = points[(index + 1) % points.length] ?? [0, 0];
    return sum + (x * nextY - nextX * y) / 2;
  }, 0);

describe('arcs', () => {
  it('bulge of a half circle is 1, of a quarter .414214, and back (public guide to bulges: tan of a quarter of the angle)', () => {
    expect(bulgeFromSweep(Math.PI)).toBeCloseTo(1, 12);
    expect(bulgeFromSweep(Math.PI / 2)).toBeCloseTo(0.414214, 6);
    expect(sweepFromBulge(0.414214)).toBeCloseTo(Math.PI / 2, 5);
    expect(radiusFromBulge(100, 1)).toBe(50);
    expect(sagittaFromBulge(100, 1)).toBe(50);
  });

  it('chord and sagitta: s = R − √(R² − c²/4)', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 300, noNaN: true }),
        fc.double({ min: 0.05, max: 1, noNaN: true }),
        (chord, bulge) => {
          const radius = radiusFromBulge(chord, bulge);
          expect(sagittaFromBulge(chord, bulge)).toBeCloseTo(
            radius - Math.sqrt(Math.max(0, radius ** 2 - chord ** 2 / 4)),
            6,
          );
        },
      ),
    );
  });

  it('run from corner to corner about their centre', () => {
    fc.assert(
      fc.property(
        bulges.filter((bulge) => bulge !== 0),
        fc.double({ min: -50, max: 50, noNaN: true }),
        fc.double({ min: 1, max: 50, noNaN: true }),
        (bulge, x, y) => {
          const arc = arcBetween({ x: 3, y: -2, bulge }, { x: x + 3, y });
          if (!arc) throw new Error('no arc');
          const at = (angle: number): number[] => [
            arc.centreX + arc.radius * Math.cos(angle),
            arc.centreY + arc.radius * Math.sin(angle),
          ];
          expect(at(arc.start)[0]).toBeCloseTo(3, 6);
          expect(at(arc.start)[1]).toBeCloseTo(-2, 6);
          expect(at(arc.start + arc.sweep)[0]).toBeCloseTo(x + 3, 6);
          expect(at(arc.start + arc.sweep)[1]).toBeCloseTo(y, 6);
        },
      ),
    );
  });
});

describe('loops', () => {
  it('area is that of a finely cut polygon, and does not change when the loop is moved', () => {
    fc.assert(
      fc.property(loops, fc.double({ min: -7, max: 7, noNaN: true }), (vertices, angle) => {
        const exact = loopArea(vertices);
        expect(Math.abs(polygonArea(flattenLoop(vertices, 1e-4)) - exact)).toBeLessThan(0.05);
        const drawing: Drawing = { shapes: [{ kind: 'loop', operation: 'outline', vertices }] };
        const moved = moveDrawing(drawing, { dx: 12, dy: -30, angle }).shapes[0];
        if (moved?.kind !== 'loop') throw new Error('no loop');
        expect(loopArea(moved.vertices)).toBeCloseTo(exact, 6);
      }),
    );
    // A half-disc: πR²/2.
    expect(
      loopArea([
        { x: -50, y: 0, bulge: 0 },
        { x: 50, y: 0, bulge: 1 },
      ]),
    ).toBeCloseTo((Math.PI * 2500) / 2, 9);
  });

  it('bounds hold every point of the arcs and touch one on each side', () => {
    fc.assert(
      fc.property(loops, (vertices) => {
        const bounds = boundsOf({ shapes: [{ kind: 'loop', operation: 'outline', vertices }] });
        const points = flattenLoop(vertices, 1e-5);
        const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
        for (const [bound, found] of [
          [bounds.minX, Math.min(...xs)],
          [bounds.maxX, Math.max(...xs)],
          [bounds.minY, Math.min(...ys)],
          [bounds.maxY, Math.max(...ys)],
        ] as const) {
          expect(Math.abs(bound - found)).toBeLessThan(1e-4);
        }
      }),
    );
  });
});
