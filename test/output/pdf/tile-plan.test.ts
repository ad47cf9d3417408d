import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Bounds } from '../../../src/base/bounds';
import { moveDrawing, type Move } from '../../../src/base/transform';
import type { PaperChoice } from '../../../src/job/job';
import { pagesOf } from '../../../src/output/pdf/paper';
import { planPages, type Item } from '../../../src/output/pdf/page-plan';
import { gridFor, pageCount, tileName, tilesOf, type Grid, type Tile } from '../../../src/output/pdf/tile-plan';
import { cases } from '../../helpers/cases';

type Point = readonly [number, number];

const paper = fc.record({
  size: fc.constantFrom('letter', 'A4', 'tabloid', 'A3', 'roll'),
  orientation: fc.constantFrom('auto', 'portrait', 'landscape'),
  width: fc.double({ min: 200, max: 1600, noNaN: true }),
  margin: fc.double({ min: 3, max: 25, noNaN: true }),
  overlap: fc.double({ min: 6, max: 40, noNaN: true }),
}) satisfies fc.Arbitrary<PaperChoice>;

const size = (max: number): fc.Arbitrary<Bounds> =>
  fc
    .tuple(
      fc.double({ min: -900, max: 900, noNaN: true }),
      fc.double({ min: -900, max: 900, noNaN: true }),
      fc.double({ min: 1, max, noNaN: true }),
      fc.double({ min: 1, max, noNaN: true }),
    )
    .map(([minX, minY, width, height]) => ({ minX, minY, maxX: minX + width, maxY: minY + height }));

/** Where a point of the drawing comes to lie on a page, by the mover every writer uses. */
function onPage(move: Move, [x, y]: Point): Point {
  const [shape] = moveDrawing({ shapes: [{ kind: 'line', operation: 'mark', from: [x, y], to: [x, y] }] }, move).shapes;
  return shape?.kind === 'line' ? shape.from : [NaN, NaN];
}

/** Which point of the drawing lies at a point of a page: the move undone. */
function inDrawing({ angle, dx, dy }: Move, [x, y]: Point): Point {
  const [cosine, sine] = [Math.cos(angle), Math.sin(angle)];
  return [(x - dx) * cosine + (y - dy) * sine, -(x - dx) * sine + (y - dy) * cosine];
}

function shows({ page: { frame } }: Grid, tile: Tile, point: Point, slack = 1e-6): boolean {
  const [x, y] = onPage(tile.place, point);
  return (
    x >= frame.x - slack &&
    x <= frame.x + frame.width + slack &&
    y >= frame.y - slack &&
    y <= frame.y + frame.height + slack
  );
}

const near = ([x1, y1]: Point, [x2, y2]: Point): boolean => Math.hypot(x1 - x2, y1 - y2) < 1e-6;

describe('a drawing spread over pages', () => {
  it('shows every point of the drawing on a page, within what the printer prints', () => {
    fc.assert(
      fc.property(
        size(3000),
        paper,
        fc.array(fc.tuple(fc.double({ min: 0, max: 1, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true })), {
          minLength: 10,
          maxLength: 10,
        }),
        (bounds, choice, shares) => {
          const grid = gridFor(bounds, choice);
          const { frame, width, height } = grid.page;
          expect(
            frame.x >= choice.margin &&
              frame.y >= choice.margin &&
              frame.x + frame.width <= width - choice.margin + 1e-9 &&
              frame.y + frame.height <= height - choice.margin + 1e-9,
          ).toBe(true);
          const tiles = tilesOf(grid);
          expect(tiles).toHaveLength(pageCount(grid));
          for (const [across, up] of [[0, 0], [0, 1], [1, 0], [1, 1], ...shares] as Point[]) {
            const point: Point = [
              bounds.minX + across * (bounds.maxX - bounds.minX),
              bounds.minY + up * (bounds.maxY - bounds.minY),
            ];
            expect(
              tiles.some((tile) => shows(grid, tile, point)),
              JSON.stringify(point),
            ).toBe(true);
          }
        },
      ),
      { numRuns: cases(300) },
    );
  });

  it('never shrinks: a move is a whole quarter turn and a shift', () => {
    fc.assert(
      fc.property(size(3000), paper, (bounds, choice) => {
        for (const { place } of tilesOf(gridFor(bounds, choice))) {
          expect([0, Math.PI / 2]).toContain(place.angle);
          const [[x1, y1], [x2, y2]] = [onPage(place, [0, 0]), onPage(place, [100, 0])];
          expect(Math.hypot(x2 - x1, y2 - y1)).toBeCloseTo(100, 9);
        }
      }),
      { numRuns: 100 },
    );
  });

  it('neighbours share a strip as wide as the overlap, and the register marks of both are the same points of the drawing', () => {
    let seams = 0;
    fc.assert(
      fc.property(size(2500), paper, (bounds, choice) => {
        const grid = gridFor(bounds, choice);
        const tiles = tilesOf(grid);
        const { frame } = grid.page;
        for (const tile of tiles) {
          expect(tile.seams).toHaveLength(
            [tile.row > 0, tile.row < grid.rows - 1, tile.column > 0, tile.column < grid.columns - 1].filter(Boolean)
              .length,
          );
          for (const seam of tile.seams) {
            seams++;
            const other = tiles.find(({ name }) => name === seam.neighbour);
            const back = other?.seams.find(({ neighbour }) => neighbour === tile.name);
            if (!other || !back) throw new Error(`${seam.neighbour} knows nothing of ${tile.name}`);
            expect(back.pair).toBe(seam.pair);
            expect(back.over).toBe(!seam.over);
            expect(seam.marks.length).toBeGreaterThanOrEqual(2);
            for (const mark of seam.marks)
              expect(back.marks.some((twin) => near(inDrawing(tile.place, mark), inDrawing(other.place, twin)))).toBe(
                true,
              );
            // The neighbour's frame begins one overlap before this one ends.
            const level = seam.side === 'left' || seam.side === 'right';
            const [x, y] = onPage(tile.place, inDrawing(other.place, [frame.x, frame.y]));
            const step = level ? frame.width - grid.overlap : frame.height - grid.overlap;
            const want: Point = { right: [step, 0], left: [-step, 0], top: [0, step], bottom: [0, -step] }[
              seam.side
            ] as unknown as Point;
            expect(near([x - frame.x, y - frame.y], want)).toBe(true);
            // Every mark has paper all round it on both pages, in the middle of the shared strip.
            for (const mark of seam.marks)
              expect(shows(grid, tile, inDrawing(tile.place, mark), -choice.overlap / 2 + 1e-6)).toBe(true);
          }
        }
      }),
      { numRuns: cases(200) },
    );
    expect(seams).toBeGreaterThan(1000);
  });

  it('takes the fewest pages of all ways to hold paper and drawing, found by counting pages one by one', () => {
    const walk = (length: number, frame: number, overlap: number): number => {
      let [pages, reached] = [1, frame];
      for (; reached < length - 1e-6; pages++) reached += frame - overlap;
      return pages;
    };
    fc.assert(
      fc.property(size(3000), paper, (bounds, choice) => {
        const [width, height] = [bounds.maxX - bounds.minX, bounds.maxY - bounds.minY];
        const counts = pagesOf(choice).flatMap(({ frame }) => [
          walk(width, frame.width, choice.overlap) * walk(height, frame.height, choice.overlap),
          walk(height, frame.width, choice.overlap) * walk(width, frame.height, choice.overlap),
        ]);
        const grid = gridFor(bounds, choice);
        expect(pageCount(grid)).toBe(Math.min(...counts));
        if (choice.size !== 'roll' && choice.orientation !== 'auto')
          expect(grid.page.width < grid.page.height).toBe(choice.orientation === 'portrait');
      }),
      { numRuns: cases(500) },
    );
  });

  it('letters rows from the top and numbers columns from the left', () => {
    expect([
      tileName(0, 0),
      tileName(1, 2),
      tileName(25, 0),
      tileName(26, 9),
      tileName(701, 0),
      tileName(702, 0),
    ]).toEqual(['A1', 'B3', 'Z1', 'AA10', 'ZZ1', 'AAA1']);
    const grid = gridFor(
      { minX: 0, minY: 0, maxX: 500, maxY: 600 },
      { size: 'A4', orientation: 'portrait', width: null, margin: 7, overlap: 10 },
    );
    const tiles = tilesOf(grid);
    const topLeft = grid.turned ? ([500, 600] as const) : ([0, 600] as const);
    expect(tiles.filter((tile) => shows(grid, tile, topLeft)).map(({ name }) => name)).toEqual(['A1']);
  });
});

describe('paper', () => {
  it('has the standards’ sizes: ISO 216 and ANSI/ASME Y14.1', () => {
    const upright = (size: PaperChoice['size']): number[] => {
      const [page] = pagesOf({ size, orientation: 'portrait', width: null, margin: 7, overlap: 10 });
      return page ? [page.width, page.height] : [];
    };
    expect(upright('A4')).toEqual([210, 297]);
    expect(upright('A3')).toEqual([297, 420]);
    expect(upright('letter').map((mm) => mm / 25.4)).toEqual([8.5, 11]);
    expect(upright('tabloid').map((mm) => mm / 25.4)).toEqual([11, 17]);
  });
});

describe('small drawings', () => {
  const item = (bounds: Bounds): Item => ({ bounds, block: { ...bounds, minY: bounds.minY - 9 } });
  const blocks = fc.array(size(160).map(item), { minLength: 1, maxLength: 14 });

  it('share pages: each whole on one page, none over another, nothing off the frame', () => {
    fc.assert(
      fc.property(blocks, paper, (items, choice) => {
        const pages = planPages(items, choice);
        const seen: number[] = [];
        for (const page of pages) {
          if (page.kind === 'tile') {
            seen.push(page.item);
            continue;
          }
          const { frame } = page.page;
          const boxes = page.placed.map(({ item: index, place }) => {
            seen.push(index);
            const { block } = items[index] as Item;
            const [[x1, y1], [x2, y2]] = [
              onPage(place, [block.minX, block.minY]),
              onPage(place, [block.maxX, block.maxY]),
            ];
            return { minX: Math.min(x1, x2), maxX: Math.max(x1, x2), minY: Math.min(y1, y2), maxY: Math.max(y1, y2) };
          });
          for (const [index, box] of boxes.entries()) {
            expect(
              box.minX >= frame.x - 1e-5 &&
                box.minY >= frame.y - 1e-5 &&
                box.maxX <= frame.x + frame.width + 1e-5 &&
                box.maxY <= frame.y + frame.height + 1e-5,
            ).toBe(true);
            for (const other of boxes.slice(index + 1))
              expect(
                Math.max(box.minX - other.maxX, other.minX - box.maxX, box.minY - other.maxY, other.minY - box.maxY),
              ).toBeGreaterThanOrEqual(4 - 1e-5);
          }
        }
        expect([...new Set(seen)].sort((a, b) => a - b)).toEqual(items.map((_, index) => index));
        expect(pages.length).toBeLessThanOrEqual(
          items.reduce((sum, { bounds }) => sum + pageCount(gridFor(bounds, choice)), 0),
        );
      }),
      { numRuns: cases(200) },
    );
  });

  it('of 40 × 40 mm go at least eight to an A4 page', () => {
    const items = Array.from({ length: 8 }, () => item({ minX: 0, minY: 0, maxX: 40, maxY: 40 }));
    expect(planPages(items, { size: 'A4', orientation: 'auto', width: null, margin: 7, overlap: 10 })).toHaveLength(1);
  });

  it('follow the order of the drawings, tiled ones among them', () => {
    const large: Item = item({ minX: 0, minY: 0, maxX: 900, maxY: 100 });
    const small = item({ minX: 0, minY: 0, maxX: 60, maxY: 40 });
    const kinds = planPages([large, small, small], {
      size: 'A4',
      orientation: 'auto',
      width: null,
      margin: 7,
      overlap: 10,
    }).map(({ kind }) => kind);
    expect(kinds.at(0)).toBe('tile');
    expect(kinds.at(-1)).toBe('shared');
    expect(kinds.filter((kind) => kind === 'shared')).toHaveLength(1);
  });
});
