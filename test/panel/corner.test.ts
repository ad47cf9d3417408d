import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sidesOf } from '../../src/base/arc';
import { toDegrees, toRadians } from '../../src/base/angle';
import { flattenLoop } from '../../src/base/flatten';
import type { Point } from '../../src/base/polygon';
import { distanceTo, sideBetween } from '../../src/base/side';
import { apart3 } from '../../src/base/space';
import { findClashes } from '../../src/panel/trace/clashes';
import { rimShrink, sharpDart } from '../../src/panel/corner/dart';
import { cutPoint } from '../../src/panel/corner/end-cut';
import { flatOf, insideSurface, type CornerBend } from '../../src/panel/corner/inner-side';
import { mitrePair, stationAt, type BendEnd } from '../../src/panel/corner/mitre';
import { mitreOf } from '../../src/panel/corner/treat';
import { cross, direction, distance, dot } from '../../src/panel/flat/plane';
import { buildUp } from '../../src/panel/flat/build-up';
import type { Panel } from '../../src/panel/flat/panel';
import { cases } from '../helpers/cases';
import { bend, box, built, corner, refusal, rules } from './panels';
import { randomPanels } from './random-panels';

const hood = () =>
  built(
    box(558.8, 228.6, {
      thickness: 1.2141,
      bends: [bend('long', { radius: { short: 30, back: 45 } }), bend('short', { radius: { long: 30, top: 36 } })],
    }),
  );

/** The two ends at a panel's corner, from the panel alone. */
function endsAt(panel: Panel, index = 0): readonly [BendEnd, BendEnd] {
  const place = panel.corners[index];
  if (!place) throw new Error('a corner');
  const ends = place.between.map((number): BendEnd => {
    const one = panel.bends[number];
    if (!one) throw new Error('a bend');
    const isA = distance(one.frame.at, place.at) < 1e-6;
    const length = one.finished.length;
    return { bend: one, x: isA ? 0 : length, past: isA ? -1 : 1, middle: length / 2 };
  });
  const [a, b] = ends;
  if (!a || !b) throw new Error('two ends');
  return [a, b];
}

const rims = (panel: Panel) =>
  panel.corners.map(
    () =>
      [
        { start: 60, slope: 0 },
        { start: 60, slope: 0 },
      ] as const,
  )[0] ??
  ([
    { start: 60, slope: 0 },
    { start: 60, slope: 0 },
  ] as const);

describe('what has to leave a corner', () => {
  // reference-facts-2 section 2: dart angles, vector-checked.
  it.each([
    [15, 15, 90, 1.986],
    [30, 30, 90, 8.213],
    [45, 45, 90, 19.471],
    [60, 60, 90, 36.87],
    [90, 90, 90, 90],
    [45, 45, 120, 15.585],
    [90, 90, 120, 60],
  ])('%d° and %d° at a corner of %d°: %f°', (first, second, inside, dart) => {
    expect(toDegrees(sharpDart(Math.PI - toRadians(inside), toRadians(first), toRadians(second)))).toBeCloseTo(dart, 2);
  });

  it('panel design section 3: 90/90 at 90°, finished R 30→45 on 558.8 and 30→36 on 228.6: 88.263°; constant radii: 90°', () => {
    expect(toDegrees(hood().corners[0]?.dart ?? NaN)).toBeCloseTo(88.263, 3);
    const plain = built(box(300, 200, { bends: [bend('long'), bend('short', { radius: 45 })] }));
    expect(toDegrees(plain.corners[0]?.dart ?? NaN)).toBeCloseTo(90, 9);
  });

  it('is the angle the legs’ mitred edges stand at on the flat, for bends of every kind', () => {
    let looked = 0;
    fc.assert(
      fc.property(randomPanels, (spec) => {
        const { value: panel } = buildUp(spec, rules);
        panel?.corners.forEach((place, index) => {
          if (place.treat !== 'mitre') return;
          const ends = endsAt(panel, index);
          const mitre = mitreOf({ at: place.at, inside: Math.PI / 2, ends, rims: rims(panel) }, rules.rootShrink);
          if (!mitre) throw new Error('a mitre');
          const [into, out] = mitre.ideal.map((curve) => {
            const from = curve.straightFrom + 5;
            return direction(cutPoint(curve, from), cutPoint(curve, from + 10));
          });
          if (!into || !out) throw new Error('two edges');
          // Both edges seen from the root outward; the one of the bend the outline comes in on lies clockwise.
          expect(Math.atan2(cross(into, out), dot(into, out))).toBeCloseTo(place.dart, 9);
          looked++;
        });
      }),
      { numRuns: cases(600) },
    );
    expect(looked).toBeGreaterThan(10);
  });

  it('shrink of a rim left whole: reference-facts-2 section 2', () => {
    const shrink = (rounding: number, radius: number, leg: number, degrees: number) =>
      100 * rimShrink({ rounding, radius, leg, wrap: toRadians(degrees) });
    expect(shrink(0, 40, 0, 30)).toBeCloseTo(4.51, 2);
    expect(shrink(0, 40, 0, 45)).toBeCloseTo(9.97, 2);
    expect(shrink(0, 40, 0, 60)).toBeCloseTo(17.3, 2);
    expect(shrink(0, 40, 0, 90)).toBeCloseTo(36.34, 2);
    for (const [rounding, leg, published] of [
      [60, 0, 18.6],
      [60, 20, 30],
      [60, 50, 42.1],
      [200, 0, 8.7],
      [200, 20, 15.1],
      [200, 50, 23.3],
    ] as const)
      expect(shrink(rounding, 40, leg, 90)).toBeCloseTo(published, 1);
    // Panel design section 3: R 30, leg 60, 90°.
    expect(shrink(30, 30, 60, 90)).toBeCloseTo(56, 0);
    expect(shrink(200, 30, 60, 90)).toBeCloseTo(25, 0);
  });
});

describe('a mitred corner', () => {
  it('of equal cylinders at a right angle is u = −R·sin(v/R), then straight at −R (panel design section 3)', () => {
    const panel = built(
      box(300, 200, { bends: [bend('long', { radius: 40, neutral: 0 }), bend('short', { radius: 40, neutral: 0 })] }),
    );
    const [, b] = endsAt(panel);
    expect(b.bend.frame.at).toEqual([0, 0]);
    const [end, neighbour] = [...endsAt(panel)].reverse();
    if (!end || !neighbour) throw new Error('two ends');
    for (const out of [0.1, 0.3, 0.5, 0.9, 1, 5, 40]) {
      const station = stationAt(end.bend, out);
      const v = station.wrap * 40;
      expect(mitrePair(end, neighbour.bend, station).own.x).toBeCloseTo(-40 * Math.sin(v / 40), 9);
    }
    expect(panel.corners[0]?.reach[0]).toBeCloseTo(40, 0);
    // The dart begins where the shrink left in is 3 %: sin x/x = .97 at x = .4262 rad (about 0.4 R from both base lines).
    const root = panel.corners[0]?.root?.at ?? [NaN, NaN];
    expect(-root[0]).toBeCloseTo(-root[1], 6);
    expect(-root[0] / 40).toBeCloseTo((0.4262 + Math.sin(0.4262)) / 2, 3);
  });

  it('folded, both cut edges are the same curve within 1e-6, on cones of different radii and angles', () => {
    let looked = 0;
    fc.assert(
      fc.property(randomPanels, (spec) => {
        const { value: panel } = buildUp(spec, rules);
        panel?.corners.forEach((place, index) => {
          if (place.treat !== 'mitre') return;
          const ends = endsAt(panel, index);
          const mitre = mitreOf({ at: place.at, inside: Math.PI / 2, ends, rims: rims(panel) }, rules.rootShrink);
          if (!mitre) throw new Error('a mitre');
          for (const out of [0.05, 0.2, 0.5, 0.8, 1, 3, 30]) {
            const { own, other } = mitrePair(ends[0], ends[1].bend, stationAt(ends[0].bend, out));
            const there = insideSurface(ends[0].bend, own);
            // The other flat's own cut, found on its own ruling, comes to the same place.
            const back = mitrePair(ends[1], ends[0].bend, { wrap: other.wrap, beyond: other.beyond }).own;
            expect(apart3(there, insideSurface(ends[1].bend, back))).toBeLessThan(1e-6);
            looked++;
          }
        });
      }),
      { numRuns: cases(600) },
    );
    expect(looked).toBeGreaterThan(50);
  });

  it('on the flat the two cuts do not cross, and open evenly to the gap at the rim', () => {
    const panel = built(
      box(400, 250, {
        bends: [bend('long', { radius: { short: 30, back: 45 } }), bend('short', { radius: { long: 30, top: 36 } })],
        corners: [corner(['long', 'short'], { gap: 3 })],
      }),
    );
    const narrow = built(
      box(400, 250, {
        bends: [bend('long', { radius: { short: 30, back: 45 } }), bend('short', { radius: { long: 30, top: 36 } })],
        corners: [corner(['long', 'short'], { gap: 0 })],
      }),
    );
    const [long, longer] = [panel.faces[1]?.outline, narrow.faces[1]?.outline];
    // The rim's corner at the mitre: the wider gap takes 1.5 mm off each.
    const rimCorner = (outline: readonly { x: number; y: number }[]) =>
      outline.reduce((least, one) => (one.x + 0.01 * one.y < least.x + 0.01 * least.y ? one : least), {
        x: Infinity,
        y: 0,
      });
    const [a, b] = [rimCorner(long ?? []), rimCorner(longer ?? [])];
    expect(Math.hypot(a.x - b.x, a.y - b.y)).toBeCloseTo(1.5, 1);
    expect(panel.corners[0]).toMatchObject({ treat: 'mitre', gap: 3 });
  });

  it('ends in its root hole, and leaves the metal between that and the corner whole', () => {
    for (const width of [558.8, 5588]) {
      const scale = width / 558.8;
      const radius = { short: 30 * scale, back: 45 * scale };
      const panel = built(
        box(width, 228.6 * scale, {
          bends: [bend('long', { radius, reach: { leg: 60 * scale } }), bend('short', { radius: 30 * scale })],
        }),
      );
      const root = panel.corners[0]?.root;
      if (!root) throw new Error('a root hole');
      const sides = sidesOf(panel.outline).map(([from, to]) => sideBetween(from, to));
      const [x, y] = root.at;
      // Nothing is cut within the hole; its own edge is on the outline.
      expect(Math.min(...sides.map((side) => distanceTo(side, { x, y })))).toBeCloseTo(root.diameter / 2, 6);
      // From the corner the nearest cut is the hole’s near edge.
      const toCorner = Math.min(...sides.map((side) => distanceTo(side, { x: 0, y: 0 })));
      expect(toCorner).toBeCloseTo(Math.hypot(x, y) - root.diameter / 2, 6);
      expect(findClashes([panel.outline])).toEqual([]);
    }
  });

  it('cuts what the folded curve says: sampled densely, the drawn arcs stray from it by less than 0.01 mm', () => {
    const panel = hood();
    const ends = endsAt(panel);
    const mitre = mitreOf({ at: [0, 0], inside: Math.PI / 2, ends, rims: rims(panel) }, rules.rootShrink);
    if (!mitre) throw new Error('a mitre');
    const zone = flattenLoop(
      built(
        box(558.8, 228.6, {
          thickness: 1.2141,
          bends: [bend('long', { radius: { short: 30, back: 45 } }), bend('short', { radius: { long: 30, top: 36 } })],
          corners: [corner(['long', 'short'], { gap: 0 })],
        }),
      ).bends[0]?.zone ?? [],
      1e-4,
    );
    for (let out = 0.02; out < 1; out += 0.013) {
      const place = cutPoint(mitre.ideal[1], out);
      const apart = Math.min(
        ...zone.map((from, index) => toSide(place, from, zone[(index + 1) % zone.length] ?? from)),
      );
      expect(apart).toBeLessThan(0.01);
    }
  });
});

function toSide(place: Point, from: Point, to: Point): number {
  const length = distance(from, to);
  if (length === 0) return distance(place, from);
  const share = Math.min(
    1,
    Math.max(0, ((place[0] - from[0]) * (to[0] - from[0]) + (place[1] - from[1]) * (to[1] - from[1])) / length ** 2),
  );
  return distance(place, [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])]);
}

describe('other corners', () => {
  it('open: ends square, legs R·√2 apart at a right angle, an octant and a quarter cylinder lacking', () => {
    const panel = built(
      box(300, 200, {
        bends: [bend('long', { radius: 40 }), bend('short', { radius: 40 })],
        corners: [corner(['long', 'short'], { treat: 'open' })],
      }),
    );
    expect(panel.corners[0]).toMatchObject({
      treat: 'open',
      root: { at: [0, 0], diameter: expect.closeTo(3.6, 9) as number },
    });
    expect(panel.corners[0]?.apart).toBeCloseTo(40 * Math.SQRT2, 9);
    expect(panel.corners[0]?.patch).toBeCloseTo((Math.PI / 2) * 40 ** 2 + (Math.PI / 2) * 40 * 60, 6);
  });

  it('one up, one down: metal is lacking, a mitre is refused with the angle', () => {
    const bends = [bend('long', { turn: 'down', angle: toRadians(60) }), bend('short', { angle: toRadians(60) })];
    const panel = built(box(300, 200, { bends }));
    expect(panel.corners[0]?.treat).toBe('open');
    expect(panel.corners[0]?.dart).toBeLessThan(0);
    for (const treat of ['mitre', 'lap', 'dress'] as const)
      expect(
        refusal(box(300, 200, { bends, corners: [corner(['long', 'short'], { treat, rounded: 5 })] })),
      ).toMatchObject([{ code: 'corner-metal-lacking', path: 'corners.short/long.treat' }]);
  });

  it('a reflex corner is slit down the middle', () => {
    const panel = built({
      thickness: 1.2,
      base: {
        corners: [
          [0, 0],
          [300, 0],
          [300, 300],
          [150, 300],
          [150, 150],
          [0, 150],
        ],
        edges: ['a', 'b', 'c', 'd', 'e', 'f'],
        measured: 'flat',
      },
      bends: [bend('d', { radius: 20, reach: { leg: 40 } }), bend('e', { radius: 20, reach: { leg: 40 } })],
      corners: [],
    });
    expect(panel.corners[0]).toMatchObject({ treat: 'open', at: [150, 150] });
    expect(toDegrees(panel.corners[0]?.dart ?? NaN)).toBeCloseTo(-90, 9);
  });

  it('lap: a tab beyond the straight part of one leg, which the other keeps clear of', () => {
    const plain = built(box(300, 200, { bends: [bend('long'), bend('short')] }));
    const lapped = built(
      box(300, 200, {
        bends: [bend('long'), bend('short')],
        corners: [corner(['long', 'short'], { treat: 'lap', tab: { width: 12, on: 'long' } })],
      }),
    );
    expect(lapped.corners[0]).toMatchObject({ treat: 'lap', tab: { width: 12 } });
    const left = (panel: Panel) => Math.min(...panel.outline.filter(({ y }) => y < -60).map(({ x }) => x));
    // The tab’s own side is not set back by half the gap.
    expect(left(plain) - left(lapped)).toBeCloseTo(12 + 0.6, 6);
  });

  it('dress: a rounded corner within the limits, refused above', () => {
    const low = { angle: toRadians(30), radius: 12, reach: { leg: 5 } };
    const panel = built(
      box(300, 200, {
        bends: [bend('long', low), bend('short', low)],
        corners: [corner(['long', 'short'], { treat: 'dress', rounded: 60 })],
      }),
    );
    const shrink = rimShrink({ rounding: 60, radius: 12, leg: 5, wrap: toRadians(30) });
    expect(panel.corners[0]?.shrink).toBeCloseTo(shrink, 12);
    expect(panel.bends[0]?.finished.length).toBeCloseTo(240, 9);
    const arc = panel.outline.find(({ bulge }) => Math.abs(bulge) > 0.3);
    expect(arc?.bulge).toBeCloseTo(Math.tan(Math.PI / 8), 9);
    expect(
      refusal(
        box(300, 200, {
          bends: [bend('long'), bend('short')],
          corners: [corner(['long', 'short'], { treat: 'dress', rounded: 30 })],
        }),
      ),
    ).toMatchObject([{ code: 'corner-shrink' }]);
  });

  it('flats that would overlap are an error', () => {
    const wide = { angle: toRadians(40), radius: { short: 60, back: 5, top: 5, long: 60 } };
    const spec = box(200, 200, {
      base: {
        ...box(200, 200).base,
        corners: [
          [0, 0],
          [200, 0],
          [200, 200],
          [-346, 200],
        ],
      },
      bends: [
        bend('long', { ...wide, radius: { short: 30, back: 120 }, reach: { leg: 150 } }),
        bend('short', { ...wide, radius: { long: 30, top: 190 }, reach: { leg: 150 } }),
      ],
      corners: [corner(['long', 'short'], { treat: 'open' })],
    });
    expect(refusal(spec)).toMatchObject([{ code: 'flat-overlaps-itself' }]);
  });
});

describe('corner helpers', () => {
  it('put one ruling’s place on the flat where its bend has it', () => {
    const [end] = endsAt(hood());
    const one: CornerBend = end.bend;
    expect(flatOf(one, { x: 0, wrap: 0, beyond: 0 })).toEqual(one.frame.at);
  });
});
