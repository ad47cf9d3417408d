import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Vertex } from '../../../src/base/drawing';
import type { Offcut } from '../../../src/job/job';
import type { Part } from '../../../src/drawing/parts/part';
import { layOutBoards } from '../../../src/drawing/boards';
import { fillByBoxes } from '../../../src/drawing/boards/boxes';
import { itemsOf } from '../../../src/drawing/boards/item';
import type { LaidOut } from '../../../src/drawing/boards/laid-out';
import { samplePoints } from '../../helpers/loops';
import { partSet } from '../../helpers/part-sets';
import { halfDisc, partOf, straight } from '../../helpers/part-shapes';
import { tables } from '../../helpers/starters';
import { cases } from '../../helpers/cases';

const { partGap: gap, boardBorder: border } = tables.rules;

type Place = readonly [number, number];

/** The part's outline on its board as sampled points: the placed drawing is not asked, only the placement's own numbers. */
function placedOutline(part: Part, { dx, dy, angle }: LaidOut['placements'][number]): Place[] {
  const [outline] = part.drawing.shapes;
  const vertices: readonly Vertex[] = outline?.kind === 'loop' ? outline.vertices : [];
  return samplePoints(vertices, 5).map(([x, y]) => [
    x * Math.cos(angle) - y * Math.sin(angle) + dx,
    x * Math.sin(angle) + y * Math.cos(angle) + dy,
  ]);
}

/** Winding number by the angles its corners are seen under: not nought inside. */
function winds(polygon: readonly Place[], [x, y]: Place): boolean {
  const turns = polygon.reduce((sum, [ax, ay], index) => {
    const [bx, by] = polygon[(index + 1) % polygon.length] ?? [ax, ay];
    return sum + Math.atan2((ax - x) * (by - y) - (ay - y) * (bx - x), (ax - x) * (bx - x) + (ay - y) * (by - y));
  }, 0);
  return Math.abs(turns) > Math.PI;
}

function distance([x, y]: Place, [ax, ay]: Place, [bx, by]: Place): number {
  const share = Math.max(
    0,
    Math.min(1, ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / ((bx - ax) ** 2 + (by - ay) ** 2)),
  );
  return Math.hypot(x - ax - share * (bx - ax), y - ay - share * (by - ay));
}

/** Least distance from the corners of one to the sides of the other and back, of those that may be `within` of the other: of polygons that do not cross, their distance. */
function clearance(a: readonly Place[], b: readonly Place[], within: number): number {
  const oneWay = (corners: readonly Place[], sides: readonly Place[]): number => {
    const [minX, minY, maxX, maxY] = box(sides);
    const near = corners.filter(
      ([x, y]) => x > minX - within && x < maxX + within && y > minY - within && y < maxY + within,
    );
    return Math.min(
      ...near.map((corner) =>
        Math.min(...sides.map((from, index) => distance(corner, from, sides[(index + 1) % sides.length] ?? from))),
      ),
    );
  };
  return Math.min(oneWay(a, b), oneWay(b, a));
}

const box = (points: readonly Place[]): [number, number, number, number] => [
  Math.min(...points.map(([x]) => x)),
  Math.min(...points.map(([, y]) => y)),
  Math.max(...points.map(([x]) => x)),
  Math.max(...points.map(([, y]) => y)),
];

/** Everything the layout promises, by brute force. */
function expectSound(boards: readonly LaidOut[], parts: readonly Part[]): void {
  expect(boards.flatMap(({ placements }) => placements.map(({ part }) => part)).sort()).toEqual(
    parts.map(({ id }) => id).sort(),
  );
  for (const board of boards) {
    const placed = board.placements.map((placement) =>
      placedOutline(parts.find(({ id }) => id === placement.part) as Part, placement),
    );
    for (const [index, a] of placed.entries()) {
      const [minX, minY, maxX, maxY] = box(a);
      expect(Math.min(minX, minY, board.length - maxX, board.width - maxY)).toBeGreaterThan(border - 1e-6);
      expect(maxX).toBeLessThan(board.used.length + 1e-6);
      for (const b of placed.slice(index + 1)) {
        const [otherMinX, otherMinY, otherMaxX, otherMaxY] = box(b);
        if (otherMinX - maxX > gap || minX - otherMaxX > gap || otherMinY - maxY > gap || minY - otherMaxY > gap)
          continue;
        expect(winds(b, a[0] as Place) || winds(a, b[0] as Place)).toBe(false);
        expect(clearance(a, b, 2 * gap)).toBeGreaterThan(gap - 1e-6);
      }
    }
  }
}

/** Reach, board by board, of the same parts laid out by the boxes round them. */
function boxesReach(parts: readonly Part[]): number {
  const boards =
    fillByBoxes(
      itemsOf(parts, gap / 2),
      { offcuts: [], board: { width: 1220, length: 2440, offcut: null }, border },
      gap,
    ) ?? [];
  return boards.reduce((sum, { reach }) => sum + reach, 0);
}

const reach = (boards: readonly LaidOut[]): number => boards.reduce((sum, { used }) => sum + used.length, 0);

describe('parts laid out on boards', () => {
  it.each([1, 2, 3, 4, 5])(
    'never lie too near each other or the edge, each on one board: 500 random sets in full, seed %i',
    (seed) => {
      fc.assert(
        fc.property(partSet, (parts) => {
          expectSound(layOutBoards(parts, tables), parts);
        }),
        { numRuns: cases(100), seed },
      );
    },
  );

  it('never take more boards or more length than the boxes round them', () => {
    fc.assert(
      fc.property(partSet, (parts) => {
        expect(reach(layOutBoards(parts, tables))).toBeLessThanOrEqual(boxesReach(parts) + 1e-6);
      }),
      { numRuns: cases(30) },
    );
  });

  it('lie the same whatever order they are given in', () => {
    fc.assert(
      fc.property(
        partSet.chain((parts) => fc.tuple(fc.constant(parts), fc.shuffledSubarray(parts, { minLength: parts.length }))),
        ([parts, shuffled]) => {
          expect(layOutBoards(shuffled, tables)).toEqual(layOutBoards(parts, tables));
        },
      ),
      { numRuns: cases(20) },
    );
  });

  it('fill a board to its border', () => {
    const whole = partOf('whole', straight([0, 0], [2420, 0], [2420, 1200], [0, 1200]));
    const [board, ...more] = layOutBoards([whole], tables);
    expect(more).toEqual([]);
    expect(board?.placements).toEqual([{ part: 'whole', angle: 0, dx: border, dy: border }]);
    expect(board?.used.length).toBeCloseTo(2430, 9);
    expect(board?.used.share).toBeCloseTo((2420 * 1200) / (2430 * 1220), 12);
  });

  it('are named where they fit nowhere', () => {
    const parts = [
      partOf('fits', straight([0, 0], [300, 0], [300, 200], [0, 200])),
      partOf('long', straight([0, 0], [2421, 0], [2421, 50], [0, 50])),
      partOf('wide', straight([0, 0], [1300, 0], [1300, 1201], [0, 1201])),
    ];
    expect(() =>
      layOutBoards(parts, tables, { offcuts: [{ stock: 'mdf-18', width: 100, length: 2430, thickness: null }] }),
    ).toThrow(/no room for long, wide on a board of mdf-18, 1220 × 2440 mm, nor on any of 1 offcuts/u);
  });

  it('take a second board when one is full', () => {
    const half = ['a', 'b', 'c'].map((id) => partOf(id, straight([0, 0], [1206, 0], [1206, 1200], [0, 1200])));
    const boards = layOutBoards(half, tables);
    expectSound(boards, half);
    expect(boards.map(({ id, placements }) => [id, placements.length])).toEqual([
      ['board-mdf-18-1', 2],
      ['board-mdf-18-2', 1],
    ]);
  });

  it('nest into hollows: a half-disc inside an L takes no length of its own', () => {
    const corner = partOf('corner', straight([0, 0], [1200, 0], [1200, 60], [60, 60], [60, 400], [0, 400]));
    const boards = layOutBoards([corner, partOf('S1', halfDisc(150))], tables);
    expectSound(boards, [corner, partOf('S1', halfDisc(150))]);
    expect(reach(boards)).toBeLessThanOrEqual(border + 400 + 1e-6);
  });
});

describe('offcuts', () => {
  const offcut = (change: Partial<Offcut> = {}): Offcut => ({
    stock: 'mdf-18',
    width: 300,
    length: 400,
    thickness: null,
    ...change,
  });
  const parts = [60, 70, 80].map((radius, index) => partOf(`S${index + 1}`, halfDisc(radius)));

  it('are used before a whole board', () => {
    const boards = layOutBoards(parts, tables, { offcuts: [offcut()] });
    expectSound(boards, parts);
    expect(boards.map(({ id, offcut: number, width, length }) => [id, number, width, length])).toEqual([
      ['offcut-1', 0, 300, 400],
    ]);
  });

  it('serve each once, rather than begin a whole board', () => {
    const large = ['S1', 'S2'].map((id) => partOf(id, halfDisc(80)));
    const boards = layOutBoards(large, tables, {
      offcuts: [offcut({ width: 100, length: 200 }), offcut({ width: 200, length: 100 })],
    });
    expectSound(boards, large);
    expect(boards.map(({ id, placements }) => [id, placements.length])).toEqual([
      ['offcut-1', 1],
      ['offcut-2', 1],
    ]);
  });

  it('too small for a part leave it to a whole board', () => {
    const spine = partOf('spine', straight([0, 0], [900, 0], [900, 200], [0, 200]));
    const boards = layOutBoards([spine], tables, { offcuts: [offcut()] });
    expectSound(boards, [spine]);
    expect(boards.map(({ id }) => id)).toEqual(['board-mdf-18-1']);
  });

  it('serve only parts of their board and thickness', () => {
    const ids = (given: Partial<Offcut>): string[] =>
      layOutBoards(parts, tables, { offcuts: [offcut(given)] }).map(({ id }) => id);
    expect(ids({ stock: 'mdf-12' })).toEqual(['board-mdf-18-1']);
    expect(ids({ thickness: 19 })).toEqual(['board-mdf-18-1']);
    expect(ids({ thickness: 18.3 })).toEqual(['offcut-1']);
  });

  it('no wider than their borders serve nobody', () => {
    expect(layOutBoards(parts, tables, { offcuts: [offcut({ width: 20 })] }).map(({ id }) => id)).toEqual([
      'board-mdf-18-1',
    ]);
  });
});

describe('half-discs', () => {
  const set = (radii: readonly number[]): Part[] =>
    radii.map((radius, index) => partOf(`S${index + 1}`, halfDisc(radius)));
  const taper = (from: number, to: number, count: number): number[] =>
    Array.from({ length: count }, (_, index) => from + ((to - from) * index) / (count - 1));

  it.each([
    { name: 'a taper from 38 to 50 mm', radii: taper(38, 50, 40) },
    { name: 'a taper from 60 to 150 mm', radii: taper(60, 150, 30) },
  ])('$name: take at least 15 % less length than the bounding-box packer lays them out on', ({ radii }) => {
    const parts = set(radii);
    const boards = layOutBoards(parts, tables);
    expectSound(boards, parts);
    expect(reach(boards)).toBeLessThan(0.85 * boxesReach(parts));
  });
});

describe('whoever waits for a layout', () => {
  const parts = [40, 50, 60].map((radius, index) => partOf(`S${index + 1}`, halfDisc(radius)));

  it('is told how far it is, and that it is done', () => {
    const said: [number, number][] = [];
    layOutBoards(parts, tables, { offcuts: [] }, { progress: (done, total) => said.push([done, total]) });
    expect(said.length).toBeGreaterThan(2);
    expect(said.map(([done]) => done)).toEqual(said.map(([done]) => done).sort((a, b) => a - b));
    expect(said.at(-1)?.[0]).toBe(said.at(-1)?.[1]);
  });
});
