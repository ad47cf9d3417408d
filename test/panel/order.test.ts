import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { toRadians } from '../../src/base/angle';
import type { Place3 } from '../../src/base/space';
import { boxBetween, convex, gapBetween } from '../../src/panel/order/gap';
import { findOrder } from '../../src/panel/order/find-order';
import { tryBend } from '../../src/panel/order/try-bend';
import { bend, box, built, rules } from './panels';
import { sampledStep } from './brute-force';
import { deep, shop, worksFor } from './works';

const coordinate = (most: number): fc.Arbitrary<number> => fc.double({ min: -most, max: most, noNaN: true });
const places = (most: number): fc.Arbitrary<Place3> => fc.tuple(coordinate(most), coordinate(most), coordinate(most));

describe('gap between convex bodies', () => {
  it('of boxes is what their sides say', () => {
    fc.assert(
      fc.property(places(50), places(50), places(50), places(50), (p, q, r, t) => {
        const low = (u: Place3, v: Place3): Place3 => [
          Math.min(u[0], v[0]),
          Math.min(u[1], v[1]),
          Math.min(u[2], v[2]),
        ];
        const high = (u: Place3, v: Place3): Place3 => [
          Math.max(u[0], v[0]) + 0.1,
          Math.max(u[1], v[1]) + 0.1,
          Math.max(u[2], v[2]) + 0.1,
        ];
        const [a, b] = [[low(p, q), high(p, q)] as const, [low(r, t), high(r, t)] as const];
        const apart = [0, 1, 2].map((axis) =>
          Math.max(0, (a[0][axis] ?? 0) - (b[1][axis] ?? 0), (b[0][axis] ?? 0) - (a[1][axis] ?? 0)),
        );
        expect(gapBetween(boxBetween(...a), boxBetween(...b))).toBeCloseTo(Math.hypot(...apart), 5);
      }),
      { numRuns: 500 },
    );
  });

  it('of bodies of any shape is never more than between places sampled in both, and nearly as little', () => {
    fc.assert(
      fc.property(
        fc.array(places(20), { minLength: 4, maxLength: 9 }),
        fc.array(places(20), { minLength: 4, maxLength: 9 }),
        fc.double({ min: 0, max: 40, noNaN: true }),
        (p, q, off) => {
          const [first, second] = [p, q.map(([x, y, z]): Place3 => [x + off, y, z])];
          const gap = gapBetween(convex(first), convex(second));
          // Frank and Wolfe's steps toward the nearest places, another way to the same gap.
          let a: Place3 = first[0] ?? [0, 0, 0];
          let b: Place3 = second[0] ?? [0, 0, 0];
          for (let round = 0; round < 1000; round++) {
            const way: Place3 = [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
            const dot = (v: Place3): number => v[0] * way[0] + v[1] * way[1] + v[2] * way[2];
            const s = first.reduce((best, v) => (dot(v) < dot(best) ? v : best));
            const t = second.reduce((best, v) => (dot(v) > dot(best) ? v : best));
            const d: Place3 = [s[0] - a[0] - t[0] + b[0], s[1] - a[1] - t[1] + b[1], s[2] - a[2] - t[2] + b[2]];
            const size = d[0] ** 2 + d[1] ** 2 + d[2] ** 2;
            const share = size === 0 ? 0 : Math.min(1, Math.max(0, -dot(d) / size));
            a = [a[0] + share * (s[0] - a[0]), a[1] + share * (s[1] - a[1]), a[2] + share * (s[2] - a[2])];
            b = [b[0] + share * (t[0] - b[0]), b[1] + share * (t[1] - b[1]), b[2] + share * (t[2] - b[2])];
          }
          const other = Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
          expect(gap).toBeLessThan(other + 1e-5);
          expect(other - gap).toBeLessThan(0.6);
        },
      ),
      { numRuns: 100 },
    );
  });
});

const never = (): never => {
  throw new Error('no bend');
};

const hood = () =>
  built(
    box(558.8, 228.6, {
      thickness: 1.2141,
      bends: [bend('long', { radius: { short: 30, back: 45 } }), bend('short', { radius: { long: 30, top: 36 } })],
    }),
  );

describe('order', () => {
  it('hood side: only the legs can be held with clamps of 100 mm throat', () => {
    const panel = hood();
    const found = findOrder(panel, { work: worksFor(panel), shop, rules });
    expect(found.steps?.map(({ held }) => held)).toEqual(['leg', 'leg']);
  });

  it('a form as long as the long edge, used on the short one, may not run into the leg that already stands', () => {
    const spec = (radius: number) =>
      built(
        box(558.8, 228.6, {
          bends: [
            bend('long', { radius: { short: 45, back: 30 } }),
            bend('short', { radius: { long: radius, top: 45 - (15 * 228.6) / 558.8 } }),
          ],
        }),
      );
    const panel = spec(45);
    const works = worksFor(panel, { share: true });
    const [long, short] = works;
    if (!long || !short) throw new Error('two bends');
    const shared = short.uses.filter(({ body }) => body.name === 'long');
    expect(shared).toHaveLength(1);
    const found = findOrder(panel, { work: works, shop: deep, rules });
    expect(found.steps?.map(({ bend }) => bend).sort()).toEqual([0, 1]);
    for (const [index, step] of (found.steps ?? []).entries()) {
      const done = panel.bends.map((_, other) =>
        (found.steps ?? []).slice(0, index).some((before) => before.bend === other),
      );
      const worst = sampledStep(panel, works[step.bend] ?? long, { step, done }, { every: Math.PI / 60, apart: 10 });
      expect(worst.wood).toBeGreaterThan(1.5);
      expect(worst.metal).toBeGreaterThan(2.5);
    }
  });

  it('says what strikes what, and by how much, where there is no order', () => {
    // A box with all four sides up, its base held: behind the form there is less room than its foot needs.
    const panel = built(
      box(100, 100, {
        bends: ['long', 'back', 'top', 'short'].map((on) => bend(on, { radius: 20, reach: { leg: 90 } })),
      }),
    );
    const work = worksFor(panel).map((one) => ({ ...one, pulling: { ...one.pulling, leg: null } }));
    const found = findOrder(panel, { work, shop: deep, rules });
    expect(found.steps).toBeNull();
    expect(found.misses.length).toBeGreaterThan(0);
    for (const miss of found.misses) {
      expect(miss.what.every((name) => name.length > 0)).toBe(true);
      expect(miss.gap).toBeGreaterThanOrEqual(0);
    }
  });

  it('lets a leg that hangs down past the bench’s edge', () => {
    const panel = built(box(300, 200, { bends: [bend('long', { turn: 'down' }), bend('top', { radius: 25 })] }));
    const found = findOrder(panel, { work: worksFor(panel), shop: deep, rules });
    const second = found.steps?.[1];
    expect(second?.bench.length).toBeGreaterThan(0);
  });

  it('holds a leg where a clamp over the base would strike the leg opposite', () => {
    const panel = built(
      box(300, 200, { bends: [bend('long', { angle: toRadians(40) }), bend('top', { angle: toRadians(40) })] }),
    );
    const found = findOrder(panel, { work: worksFor(panel), shop: deep, rules });
    expect(found.steps?.map(({ held }) => held)).toEqual(['base', 'leg']);
    expect(found.misses[0]).toMatchObject({ why: 'strikes', what: ['clamps', 'long'] });
  });

  it('does not pull bare past a bend of an S that stands within two thirds of the lever', () => {
    const panel = built(box(300, 200, { bends: [bend('long'), bend('long.rim', { turn: 'down' })] }));
    const work = worksFor(panel);
    // The rim's bend stands 60 mm from the form: under two thirds of 200 mm, over two thirds of 80; a yoke holds the leg flat.
    const rimFirst = (lever: number | null) =>
      tryBend(panel, {
        bend: 0,
        held: 'base',
        use: work[0]?.uses[0] ?? never(),
        done: [false, true],
        work: { ...(work[0] ?? never()), pulling: { base: { pulled: 1.6, force: 100, yoke: null, lever }, leg: null } },
        shop: deep,
        rules,
      });
    expect(rimFirst(200)).toMatchObject({ why: 'reopens', gap: expect.closeTo(60, 6) as number });
    for (const lever of [80, null]) expect(rimFirst(lever)).not.toMatchObject({ why: 'reopens' });
  });

  it('is the maker’s own where nothing speaks against it, and takes least force', () => {
    const panel = built(
      box(300, 200, { bends: [bend('long', { angle: toRadians(40) }), bend('short', { angle: toRadians(40) })] }),
    );
    const works = worksFor(panel).map((one) => ({
      ...one,
      pulling: {
        base: one.pulling.base && { ...one.pulling.base, force: 80 },
        leg: one.pulling.leg && { ...one.pulling.leg, force: 120 },
      },
    }));
    const found = findOrder(panel, { work: works, shop: deep, rules });
    expect(found.steps?.map(({ bend: number, held }) => [number, held])).toEqual([
      [0, 'base'],
      [1, 'base'],
    ]);
  });
});
