import { Clipper, EndType, FillRule, JoinType, type PathD, type PathsD } from 'clipper2-ts';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loopArea } from '../../src/base/area';
import type { Vertex } from '../../src/base/drawing';
import { InternalError } from '../../src/base/errors';
import { offsetLoop, offsetRadius } from '../../src/base/offset';
import { isOffsetOf } from '../../src/base/offset-check';
import { samplePoints } from '../helpers/loops';
import { anyOutline, backwards, halfDisc, loop, notchedBoard, splittingOutline } from '../helpers/offset-loops';
import { cases } from '../helpers/cases';

/** The offset where there must be one. */
function offset(vertices: readonly Vertex[], distance: number): readonly Vertex[] {
  const result = offsetLoop(vertices, distance);
  if (result === 'pinched-off') throw new Error(`pinched off at ${distance}`);
  return result;
}

function expectLoop(found: readonly Vertex[], expected: readonly Vertex[]): void {
  expect(found).toHaveLength(expected.length);
  for (const [index, { x, y, bulge }] of expected.entries()) {
    expect(found[index]?.x).toBeCloseTo(x, 10);
    expect(found[index]?.y).toBeCloseTo(y, 10);
    expect(found[index]?.bulge).toBeCloseTo(bulge, 10);
  }
}

/** tan(90°/4): the bulge of a quarter circle. */
const QUARTER = Math.SQRT2 - 1;
const disc = loop([-10, 0, 1], [10, 0, 1]);
const rectangle = loop([0, 0], [10, 0], [10, 5], [0, 5]);
const slot = loop([0, -5], [30, -5, 1], [30, 5], [0, 5, 1]);
const rounded = loop(
  [3, 0],
  [17, 0, QUARTER],
  [20, 3],
  [20, 7, QUARTER],
  [17, 10],
  [3, 10, QUARTER],
  [0, 7],
  [0, 3, QUARTER],
);
/** A quarter of a ring of radii 20 and 30 about the origin. */
const sector = loop([30, 0, QUARTER], [0, 30], [0, 20, -QUARTER], [20, 0]);

describe('offset of a loop, by formula', () => {
  it('rectangle: larger by perimeter·d + π·d² with quarter circles about the old corners, smaller by squared corners', () => {
    expectLoop(
      offset(rectangle, 0.5),
      loop(
        [-0.5, 0, QUARTER],
        [0, -0.5],
        [10, -0.5, QUARTER],
        [10.5, 0],
        [10.5, 5, QUARTER],
        [10, 5.5],
        [0, 5.5, QUARTER],
        [-0.5, 5],
      ),
    );
    expect(loopArea(offset(rectangle, 0.5))).toBeCloseTo(50 + 30 * 0.5 + Math.PI * 0.25, 11);
    expectLoop(offset(rectangle, -0.5), loop([0.5, 0.5], [9.5, 0.5], [9.5, 4.5], [0.5, 4.5]));
  });

  it('circle of two halves: π(r + d)², two vertices', () => {
    for (const distance of [2, 0.05, -0.05, -2, -9.99]) {
      expectLoop(offset(disc, distance), loop([-10 - distance, 0, 1], [10 + distance, 0, 1]));
      expect(loopArea(offset(disc, distance))).toBeCloseTo(Math.PI * (10 + distance) ** 2, 9);
    }
    expect(offsetLoop(disc, -10)).toBe('pinched-off');
    expect([offsetRadius(10, 2), offsetRadius(10, -2), offsetRadius(10, -10), offsetRadius(10, -11)]).toEqual([
      12,
      8,
      'pinched-off',
      'pinched-off',
    ]);
  });

  it('slot and rounded rectangle: joins stay joins, straights as long as before', () => {
    for (const distance of [1.5, 0.1, -0.1, -2.9]) {
      expectLoop(
        offset(slot, distance),
        loop([0, -5 - distance], [30, -5 - distance, 1], [30, 5 + distance], [0, 5 + distance, 1]),
      );
      expect(loopArea(offset(slot, distance))).toBeCloseTo(60 * (5 + distance) + Math.PI * (5 + distance) ** 2, 9);
      expect(offset(rounded, distance)).toHaveLength(8);
      expect(loopArea(offset(rounded, distance))).toBeCloseTo(
        (20 + 2 * distance) * (10 + 2 * distance) - (4 - Math.PI) * (3 + distance) ** 2,
        9,
      );
    }
  });

  it('half-disc: outside, two quarter circles at the ends; inside, the straight edge cuts the smaller circle at √((R−d)² − d²)', () => {
    const [radius, distance] = [10, 0.75];
    expectLoop(
      offset(halfDisc(radius, 1, []), distance),
      loop(
        [radius, -distance, QUARTER],
        [radius + distance, 0, 1],
        [-radius - distance, 0, QUARTER],
        [-radius, -distance],
      ),
    );
    expect(loopArea(offset(halfDisc(radius, 1, []), distance))).toBeCloseTo(
      (Math.PI * (radius + distance) ** 2) / 2 + 2 * radius * distance + (Math.PI * distance ** 2) / 2,
      10,
    );
    const [small, half] = [radius - distance, Math.sqrt((radius - distance) ** 2 - distance ** 2)];
    const bulge = Math.tan((Math.PI - 2 * Math.asin(distance / small)) / 4);
    expectLoop(offset(halfDisc(radius, 1, []), -distance), loop([half, distance, bulge], [-half, distance]));
    expect(loopArea(offset(halfDisc(radius, 1, []), -distance))).toBeCloseTo(
      small ** 2 * Math.acos(distance / small) - distance * half,
      10,
    );
  });

  it('half-disc with tabs behind its diameter: the inner corners are square, the outer ones round', () => {
    const [radius, depth, distance] = [40, 6, 0.1];
    const station = halfDisc(radius, depth, [
      [-25, -15],
      [15, 25],
    ]);
    const result = offset(station, distance);
    // Two arcs at the ends of the round edge, two corners at either tab's far edge.
    expect(result).toHaveLength(station.length + 2 + 4);
    const bare = (Math.PI * (radius + distance) ** 2) / 2 + 2 * radius * distance + (Math.PI * distance ** 2) / 2;
    // A tab leaves 2·d by depth beside it, and its two square corners lack (1 − π/4)·d² each.
    expect(loopArea(result)).toBeCloseTo(
      bare + 2 * (depth * (10 + 2 * distance) - (2 - Math.PI / 2) * distance ** 2),
      9,
    );
    expect(result).toContainEqual({
      x: expect.closeTo(-25 - distance, 10) as number,
      y: expect.closeTo(-distance, 10) as number,
      bulge: 0,
    });
  });

  it('sector of a ring: the hollow arc shrinks as the round one grows', () => {
    const distance = 0.5;
    // Area and lengths: the ring's quarter, its two arcs and its two ends, all four corners convex.
    const length = ((30 + 20) * Math.PI) / 2 + 2 * 10;
    expect(loopArea(offset(sector, distance))).toBeCloseTo(
      (500 * Math.PI) / 4 + length * distance + Math.PI * distance ** 2,
      9,
    );
    const inner = offset(sector, -distance);
    expect(inner).toHaveLength(4);
    // About the centre each moved end takes asin(d/r) from either end of an arc.
    const [outerCut, innerCut] = [Math.asin(distance / 29.5), Math.asin(distance / 20.5)];
    expectLoop(inner, [
      { x: 29.5 * Math.cos(outerCut), y: distance, bulge: Math.tan((Math.PI / 2 - 2 * outerCut) / 4) },
      { x: distance, y: 29.5 * Math.cos(outerCut), bulge: 0 },
      { x: distance, y: 20.5 * Math.cos(innerCut), bulge: -Math.tan((Math.PI / 2 - 2 * innerCut) / 4) },
      { x: 20.5 * Math.cos(innerCut), y: distance, bulge: 0 },
    ]);
    expect(offsetLoop(sector, 20)).toBe('pinched-off');
  });

  it('board of two heights with a notch in either end: the notches shrink as it grows', () => {
    const [length, low, high, depth, width, distance] = [60, 10, 20, 4, 3, 0.2];
    const board = notchedBoard(length, low, high, { depth, width });
    const result = offset(board, distance);
    // The four outer corners and the two at either notch's mouth open; the two at either notch's bottom close.
    expect(result).toHaveLength(12 + 8);
    const slope = Math.atan2(high - low, length);
    const perimeter = length + length / Math.cos(slope) + low + high + 4 * depth;
    // Turns of the opened corners: 360° in all for the outer four, 90° each for the mouths; the bottoms take the squares twice.
    expect(loopArea(result)).toBeCloseTo(
      ((low + high) / 2) * length -
        2 * depth * width +
        perimeter * distance +
        (Math.PI + 4 * (Math.PI / 4) - 4) * distance ** 2,
      9,
    );
    expect(offset(board, -distance)).toHaveLength(12 + 4);
  });

  it('lens of two arcs: outside an arc at either tip, inside the lens of the smaller circles', () => {
    const lens = loop([-6, 0, 0.5], [6, 0, 0.5]);
    // Bulge ½ over 12: radius 12·1.25/2 = 7.5, centres 4.5 off the chord; the moved circles meet at √((7.5 + d)² − 4.5²).
    const at = Math.sqrt(6.5 ** 2 - 4.5 ** 2);
    expectLoop(offset(lens, -1), loop([-at, 0, (6.5 - 4.5) / at], [at, 0, (6.5 - 4.5) / at]));
    expect(offset(lens, 1)).toHaveLength(4);
    expect(loopArea(offset(lens, 1))).toBeCloseTo(loopArea(lens) + 2 * 7.5 * 4 * Math.atan(0.5) + Math.PI, 10);
    expect(offsetLoop(lens, -3.1)).toBe('pinched-off');
  });
});

/** Arcs cut into chords that stray at most this, mm, and as much for clipper's own round corners. */
const CHORD_ERROR = 1e-6;
const DECIMALS = 6;

/** Points of a loop as dense as the chord error asks: each halving of an arc takes a quarter of what it strays. */
function dense(vertices: readonly Vertex[], chordError = CHORD_ERROR): PathD {
  return vertices.flatMap((from, index) => {
    const to = vertices[(index + 1) % vertices.length] ?? from;
    const sagitta = (Math.abs(from.bulge) * Math.hypot(to.x - from.x, to.y - from.y)) / 2;
    const depth = sagitta > chordError ? Math.ceil(Math.log2(sagitta / chordError) / 2) : 0;
    return samplePoints([from, { ...to, bulge: 0 }], depth)
      .slice(0, -1)
      .map(([x, y]) => ({ x, y }));
  });
}

const areaOf = (paths: PathsD): number => paths.reduce((sum, path) => sum + Clipper.areaD(path), 0);
const outlineOf = (path: PathD): number =>
  path.reduce(
    (sum, { x, y }, index) => sum + Math.hypot(x - (path.at(index - 1)?.x ?? NaN), y - (path.at(index - 1)?.y ?? NaN)),
    0,
  );

function judged(vertices: readonly Vertex[], distance: number, chordError = CHORD_ERROR): PathsD {
  const path = dense(vertices, chordError);
  const paths = Clipper.inflatePathsD(
    [Clipper.areaD(path) < 0 ? [...path].reverse() : path],
    distance,
    JoinType.Round,
    EndType.Polygon,
    2,
    DECIMALS,
    chordError,
  );
  return paths.filter((found) => Math.abs(Clipper.areaD(found)) > chordError * 100);
}

/** Whether nothing of some side's parallel lies at the distance from the whole loop: brute force, 64 places along every side, no offset reckoned. */
function losesASide(vertices: readonly Vertex[], distance: number): boolean {
  const [path, right] = [dense(vertices), distance * Math.sign(loopArea(vertices))];
  return vertices.some((from, index) => {
    const to = vertices[(index + 1) % vertices.length] ?? from;
    const split =
      from.bulge === 0
        ? Array.from({ length: 65 }, (_, at): [number, number] => [
            from.x + ((to.x - from.x) * at) / 64,
            from.y + ((to.y - from.y) * at) / 64,
          ])
        : samplePoints([from, { ...to, bulge: 0 }], 6);
    return split.every(([x, y], at) => {
      const [before, after] = [split[at - 1], split[at + 1]];
      if (!before || !after) return true;
      // The neighbours are as far one way as the other, so their chord runs as the side does here.
      const [dx, dy] = [after[0] - before[0], after[1] - before[1]];
      const place = { x: x + (right * dy) / Math.hypot(dx, dy), y: y - (right * dx) / Math.hypot(dx, dy) };
      return path.some(
        (point, next) =>
          distanceToChord(place, point, path[(next + 1) % path.length] ?? point) < Math.abs(distance) - 5 * CHORD_ERROR,
      );
    });
  });
}

function distanceToChord(
  place: { x: number; y: number },
  a: { x: number; y: number },
  b: { x: number; y: number },
): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const share = Math.min(1, Math.max(0, ((place.x - a.x) * dx + (place.y - a.y) * dy) / (dx ** 2 + dy ** 2 || 1)));
  return Math.hypot(place.x - a.x - share * dx, place.y - a.y - share * dy);
}

const distances = fc
  .tuple(
    fc.oneof(
      fc.double({ min: 0.025, max: 0.3, noNaN: true }),
      fc.double({ min: 0.3, max: 2, noNaN: true }),
      fc.double({ min: 2, max: 8, noNaN: true }),
    ),
    fc.boolean(),
  )
  .map(([size, grow]) => (grow ? size : -size));

// The outside judge: clipper2-ts (a port of Angus Johnson's Clipper2), which offsets a polygon of many thousand points.
describe('offset of a loop against clipper2-ts', () => {
  it('covers the same area, 1e-4 mm² per mm of outline; where that splits, vanishes or loses a side, it is pinched off', () => {
    // What chords stray by is a fifth of what the two may differ by. (A tenth more finely takes clipper ten times as long.)
    const chordError = 1e-5;
    // How often each happened: all three must.
    const seen = { same: 0, lost: 0, apart: 0 };
    fc.assert(
      fc.property(anyOutline, distances, (vertices, distance) => {
        const theirs = judged(vertices, distance, chordError);
        const ours = offsetLoop(vertices, distance);
        if (ours !== 'pinched-off') {
          seen.same++;
          expect(theirs).toHaveLength(1);
          const apart = areaOf(Clipper.xorD([dense(ours, chordError)], theirs, FillRule.NonZero, DECIMALS));
          expect(Math.abs(apart)).toBeLessThan(1e-4 * outlineOf(dense(vertices)));
          expect(Math.sign(loopArea(ours))).toBe(Math.sign(loopArea(vertices)));
        } else if (theirs.length === 1) {
          seen.lost++;
          expect(losesASide(vertices, distance)).toBe(true);
        } else seen.apart++;
      }),
      { numRuns: 80 },
    );
    expect(seen.same).toBeGreaterThan(40);
    expect(seen.lost).toBeGreaterThan(5);
    expect(seen.apart).toBeGreaterThan(2);
  });

  it('is pinched off where dumbbells part and open rings close', () => {
    // Coarser, and so quicker: such shapes cost clipper much.
    const chordError = 1e-3;
    const seen = { same: 0, split: 0 };
    fc.assert(
      fc.property(splittingOutline, distances, (vertices, distance) => {
        const theirs = judged(vertices, distance, chordError);
        const ours = offsetLoop(vertices, distance);
        if (theirs.length > 1) seen.split++;
        if (theirs.length !== 1) expect(ours).toBe('pinched-off');
        if (ours === 'pinched-off') return;
        seen.same++;
        const apart = areaOf(Clipper.xorD([dense(ours, chordError)], theirs, FillRule.NonZero, DECIMALS));
        expect(Math.abs(apart)).toBeLessThan(2 * chordError * outlineOf(dense(vertices, chordError)));
      }),
      { numRuns: cases(320) },
    );
    expect(seen.same).toBeGreaterThan(cases(50));
    expect(seen.split).toBeGreaterThan(cases(20));
  });
});

describe('pinching off', () => {
  /** Two rooms joined by a neck 2 mm wide. */
  const dumbbell = loop(
    [0, 0],
    [10, 0],
    [10, 4],
    [20, 4],
    [20, 0],
    [30, 0],
    [30, 10],
    [20, 10],
    [20, 6],
    [10, 6],
    [10, 10],
    [0, 10],
  );
  /** Two discs of radius 8 and a neck 2 mm wide between them. */
  const roundDumbbell = loop(
    [7, -1],
    [13, -1, Math.tan((2 * Math.PI - 2 * Math.asin(1 / 8)) / 4)],
    [13, 1],
    [7, 1, Math.tan((2 * Math.PI - 2 * Math.asin(1 / 8)) / 4)],
  );
  /** Gaps of 3 mm between four teeth. */
  const comb = loop(
    [0, 0],
    ...[0, 8, 16, 24].flatMap(
      (at) =>
        [
          [at, 20],
          [at + 5, 20],
          ...(at < 24
            ? [
                [at + 5, 5],
                [at + 8, 5],
              ]
            : [[at + 5, 0]]),
        ] as [number, number][],
    ),
  ).reverse();
  /** A slit of 0.4 mm into a disc. */
  const slit = loop(
    [0.2, 5],
    [0.2, Math.sqrt(400 - 0.04), -Math.tan((2 * Math.PI - 2 * Math.asin(0.01)) / 4)],
    [-0.2, Math.sqrt(400 - 0.04)],
    [-0.2, 5],
  );

  it.each([
    ['a dumbbell splits when its neck is used up', dumbbell, -1],
    ['so does a round one', roundDumbbell, -1],
    ['the gaps of a comb close when it grows', comb, 1.5],
    ['the teeth vanish when it shrinks', comb, -2.5],
    ['a slit into a disc closes', slit, 0.2],
    ['a notch in the end of a board closes', notchedBoard(60, 10, 20, { depth: 4, width: 3 }), 1.5],
    ['a rectangle vanishes', rectangle, -2.5],
    ['a slot vanishes', slot, -5],
  ])('%s', (_, vertices, limit) => {
    for (const shape of [vertices, backwards(vertices)]) {
      expect(Math.sign(loopArea(offset(shape, 0.999 * limit)))).toBe(Math.sign(loopArea(shape)));
      for (const beyond of [1, 1 + 1e-9, 1.001, 1.2, 3, 1e6])
        expect(offsetLoop(shape, beyond * limit)).toBe('pinched-off');
      // And the other way it has room.
      expect(Array.isArray(offsetLoop(shape, -0.1 * limit))).toBe(true);
    }
  });

  it('a ring open by 1 mm closes to a ring with a hole: no outline stands for that', () => {
    const gap = 2 * Math.asin(0.5 / 20);
    const open = (radius: number): readonly [number, number] => [
      radius * Math.cos(gap / 2),
      radius * Math.sin(gap / 2),
    ];
    const [[outerX, outerY], [innerX, innerY]] = [open(20), open(15)];
    const bulge = Math.tan((2 * Math.PI - gap) / 4);
    const ring = loop([outerX, outerY, bulge], [outerX, -outerY], [innerX, -innerY, -bulge], [innerX, innerY]);
    expect(loopArea(ring)).toBeGreaterThan(0);
    expect(offset(ring, 0.3)).toHaveLength(4 + 4);
    expect(offsetLoop(ring, 0.6)).toBe('pinched-off');
  });

  it('a loop that crosses itself has no offset', () => {
    expect(offsetLoop(loop([0, 0], [10, 10], [10, 0], [0, 12]), 0.1)).toBe('pinched-off');
    expect(offsetLoop(loop([0, 0], [20, 0], [20, 10], [30, 10], [30, -5], [10, -5], [10, 10], [0, 10]), -0.1)).toBe(
      'pinched-off',
    );
  });
});

describe('the check on the way out', () => {
  it('takes the offset and nothing else: not a micron off, mitred, turned round, or folded', () => {
    const grown = offset(rectangle, 0.5);
    expect(isOffsetOf(grown, rectangle, 0.5)).toBe(true);
    for (const wrong of [0.500001, 0.499999, -0.5]) expect(isOffsetOf(grown, rectangle, wrong)).toBe(false);
    expect(isOffsetOf(backwards(grown), rectangle, 0.5)).toBe(false);
    expect(
      isOffsetOf(
        grown.map((vertex) => ({ ...vertex, x: vertex.x + 1e-6 })),
        rectangle,
        0.5,
      ),
    ).toBe(false);
    expect(isOffsetOf(loop([-0.5, -0.5], [10.5, -0.5], [10.5, 5.5], [-0.5, 5.5]), rectangle, 0.5)).toBe(false);
    expect(
      isOffsetOf(
        grown.map((vertex) => ({ ...vertex, bulge: 0 })),
        rectangle,
        0.5,
      ),
    ).toBe(false);
    const folded = [...grown.slice(0, 3), { x: 4, y: -0.5, bulge: 0 }, ...grown.slice(2)];
    expect(isOffsetOf(folded, rectangle, 0.5)).toBe(false);
  });
});

describe('there and back', () => {
  it('a convex loop grown and shrunk by the same has its area again', () => {
    const convex: [string, Vertex[]][] = [
      ['rectangle', rectangle],
      ['disc', disc],
      ['slot', slot],
      ['rounded', rounded],
      ['half-disc', halfDisc(30, 1, [])],
      ['lens', loop([-6, 0, 0.5], [6, 0, 0.5])],
      ['board', loop([0, 0], [60, 0], [60, 20], [0, 10])],
    ];
    for (const [name, shape] of convex) {
      for (const vertices of [shape, backwards(shape)]) {
        for (const distance of [0.05, 0.3, 2]) {
          const grown = offset(vertices, distance);
          expect(Math.abs(loopArea(offset(grown, -distance)) - loopArea(vertices)), `${name} ${distance}`).toBeLessThan(
            1e-9,
          );
        }
      }
    }
  });
});

describe('small print', () => {
  it('no distance gives the vertices as they are', () => {
    expect(offsetLoop(sector, 0)).toEqual(sector);
    expect(offsetLoop(sector, -0)).toEqual(sector);
  });

  it('the other way round gives the same outline the other way round', () => {
    fc.assert(
      fc.property(anyOutline, distances, (vertices, distance) => {
        const [one, other] = [offsetLoop(vertices, distance), offsetLoop(backwards(vertices), distance)];
        if (one === 'pinched-off' || other === 'pinched-off') expect(one).toBe(other);
        else expect(loopArea(other)).toBeCloseTo(-loopArea(one), 8);
      }),
      { numRuns: 100 },
    );
  });

  it('starts at the corner that comes from the first vertex', () => {
    for (const first of [0, 1, 2, 3]) {
      const turned = [...sector.slice(first), ...sector.slice(0, first)];
      const [start, corner] = [offset(turned, 0.5)[0], turned[0]];
      expect(Math.hypot((start?.x ?? NaN) - (corner?.x ?? NaN), (start?.y ?? NaN) - (corner?.y ?? NaN))).toBeCloseTo(
        0.5,
        10,
      );
    }
  });

  it('corners drawn twice count once; joins a rounding off tangent stay joins', () => {
    expectLoop(
      offset(loop([0, 0], [0, 0], [10, 0], [10, 5], [10, 5 + 1e-12], [0, 5]), -0.5),
      loop([0.5, 0.5], [9.5, 0.5], [9.5, 4.5], [0.5, 4.5]),
    );
    const rough = slot.map(({ x, y, bulge }, index) => ({
      x: x + 1e-6 * (index % 2),
      y: y - 1e-6 * (index % 3),
      bulge,
    }));
    for (const distance of [0.1, 2, -2]) expect(offset(rough, distance)).toHaveLength(4);
    const dotted = loop([0, 0], [4, 0], [6, 0], [10, 0], [10, 5], [0, 5]);
    expect(offset(dotted, -0.5)).toHaveLength(6);
  });

  it('arcs as flat as can be keep all their digits', () => {
    for (const bulge of [1e-3, 1e-5, 1e-7, 1e-9, 1e-12, 1e-300]) {
      for (const distance of [0.1, -0.1, 2, -2]) {
        const bowed = loop([0, 0], [600, 0], [600, 50, bulge], [0, 50]);
        const result = offset(bowed, distance);
        const corners = distance > 0 ? Math.PI * distance ** 2 : 4 * distance ** 2;
        // The bow adds to the area its segment, ⅔·chord·sagitta, and to the outline (8/3)·sagitta²/chord; both to first order.
        const [sagitta, chord] = [bulge * 300, 600];
        const expected = 30000 + 1300 * distance + corners + (2 / 3) * chord * sagitta;
        expect(Math.abs(loopArea(result) - expected)).toBeLessThan(
          1e-8 + 10 * Math.abs(distance) * Math.max(sagitta, sagitta ** 2),
        );
      }
    }
  });

  it('arcs smaller than the distance: a round corner of 0.001 mm grows with it, and is square when it shrinks; so is a hollow one', () => {
    const tiny = loop([0.001, 0], [10, 0], [10, 5], [0, 5], [0, 0.001, QUARTER]);
    // And the corner lost is square: nothing of a round one smaller than the distance remains.
    expectLoop(offset(tiny, -0.1), loop([0.1, 0.1], [9.9, 0.1], [9.9, 4.9], [0.1, 4.9]));
    expect(loopArea(offset(tiny, 0.1))).toBeCloseTo(
      loopArea(tiny) + (30 - (2 - Math.PI / 2) * 0.001) * 0.1 + Math.PI * 0.01,
      10,
    );
    expect(offset(tiny, 0.1)).toHaveLength(5 + 3);
    const hollow = loop([0, 0], [20, 0], [20, 5], [8, 5, -QUARTER], [5, 8], [5, 20], [0, 20]);
    expect(offset(hollow, 2.9)).toHaveLength(7 + 5);
    for (const distance of [3, 3.1]) {
      expect(offset(hollow, distance)).toHaveLength(6 + 5);
      expect(offset(hollow, distance)).toContainEqual({
        x: expect.closeTo(5 + distance, 10) as number,
        y: expect.closeTo(5 + distance, 10) as number,
        bulge: 0,
      });
    }
  });

  it('an arc with no radius left beside a corner that opens is not dropped', () => {
    expect(offsetLoop(sector, 20)).toBe('pinched-off');
    expect(offsetLoop(loop([0, 0], [20, 0], [20, 10], [11, 10, -1], [9, 10], [0, 10]), 1.5)).toBe('pinched-off');
  });

  it('numbers that are none, and loops that are none, are faults of ours', () => {
    for (const bad of [NaN, Infinity, -Infinity]) {
      expect(() => offsetLoop(rectangle, bad)).toThrow(InternalError);
      expect(() => offsetLoop(loop([0, 0], [bad, 0], [5, 5]), 1)).toThrow(InternalError);
      expect(() => offsetLoop(loop([0, 0, bad], [5, 0], [5, 5]), 1)).toThrow(InternalError);
      expect(() => offsetRadius(bad, 1)).toThrow(InternalError);
    }
    for (const none of [[], loop([1, 1]), loop([0, 0], [1, 0]), loop([0, 0], [0, 0], [0, 0])])
      expect(() => offsetLoop(none, 1)).toThrow(InternalError);
    expect(offsetLoop(rectangle, 1e200)).toBe('pinched-off');
  });
});
