import fc from 'fast-check';
import { parse, type DefaultTreeAdapterTypes as Tree } from 'parse5';
import { describe, expect, it } from 'vitest';
import type { Vertex } from '../../../src/base/drawing';
import type { Offcut } from '../../../src/job/job';
import type { Part } from '../../../src/drawing/parts/part';
import { layOutBoards } from '../../../src/drawing/boards';
import { writeShopSheet } from '../../../src/output/shop-sheet';
import { frameOf } from '../../../src/output/shop-sheet/board-frame';
import { labelParts, type Outlined, type PartLabel } from '../../../src/output/shop-sheet/board-labels';
import { planStarter, starters, tables } from '../../helpers/starters';
import { cases } from '../../helpers/cases';

type Point = readonly [number, number];
const childrenOf = (node: Tree.Node): Tree.ChildNode[] => ('childNodes' in node ? node.childNodes : []);
const all = (node: Tree.Node): Tree.Node[] => [node, ...childrenOf(node).flatMap(all)];
const elements = (node: Tree.Node, name: string): Tree.Element[] =>
  all(node).filter((one): one is Tree.Element => one.nodeName === name);
const textOf = (node: Tree.Node): string =>
  ('value' in node ? node.value : childrenOf(node).map(textOf).join('')).replaceAll('\u00a0', ' ');
const attribute = (element: Tree.Element | undefined, name: string): string =>
  element?.attrs.find((one) => one.name === name)?.value ?? '';
const classed = (node: Tree.Node, name: string): Tree.Element[] =>
  all(node).filter((one): one is Tree.Element => 'attrs' in one && attribute(one, 'class').split(' ').includes(name));

const part = (id: string, kind: Part['kind'], corners: readonly Vertex[]): Part => ({
  id,
  kind,
  name: id,
  stock: 'mdf-18',
  thickness: 18,
  drawing: { shapes: [{ kind: 'loop', operation: 'outline', vertices: corners }] },
});
const corner = (x: number, y: number, bulge = 0): Vertex => ({ x, y, bulge });
const rectangle = (id: string, kind: Part['kind'], a: number, b: number): Part =>
  part(id, kind, [corner(0, 0), corner(a, 0), corner(a, b), corner(0, b)]);
/** A bulge of 1 is a half circle. */
const halfDisc = (id: string, radius: number): Part => part(id, 'station', [corner(radius, 0, 1), corner(-radius, 0)]);

/** A starter's shop sheet with its boards laid out anew, from plain shapes of the plan's sizes. */
function sheetWith(
  name: string,
  offcuts: readonly Offcut[] = [],
  units?: 'mm' | 'in' | 'both',
): { document: Tree.Document; parts: Part[]; boards: ReturnType<typeof layOutBoards>; stations: number; text: string } {
  const planned = planStarter(name);
  const { spine, stations, backings } = planned.plan;
  if (!spine) throw new Error('no plan');
  const parts = [
    rectangle('spine', 'spine', spine.length + 2 * spine.ears, Math.max(spine.widthFrom, spine.widthTo)),
    ...stations.map((station) => halfDisc(station.name, station.radius)),
    ...backings.map((backing) => rectangle(backing.name, 'backing', backing.depth, backing.width)),
  ];
  const boards = layOutBoards(parts, tables, { offcuts });
  const text = writeShopSheet(planned, { parts: parts, boards: boards }, tables, units ? { units } : {});
  return { document: parse(text), parts, boards, stations: stations.length, text };
}

const offcut = (width: number, length: number): Offcut => ({ stock: 'mdf-18', width, length, thickness: null });

describe.each(starters)('the boards of %s', (name) => {
  it.each([[[]], [[offcut(200, 500), offcut(150, 800)]]])(
    'each have a picture with every part’s name in it once, and a list of those parts',
    (offcuts) => {
      const { document, boards } = sheetWith(name, offcuts);
      const figures = classed(document, 'board');
      expect(figures).toHaveLength(boards.length);
      for (const [index, sheet] of boards.entries()) {
        const figure = figures[index] as Tree.Element;
        const words = elements(figure, 'text').map(textOf);
        const ids = sheet.placements.map(({ part: id }) => id);
        for (const id of ids) expect(words.filter((word) => word === id)).toEqual([id]);
        const rows = elements(elements(figure, 'tbody')[0] as Tree.Element, 'tr').map((row) =>
          childrenOf(row)
            .filter((cell) => cell.nodeName !== '#text')
            .map(textOf),
        );
        expect(rows.flatMap((row) => row[0]?.split(', ') ?? []).sort()).toEqual(ids.toSorted());
        expect(rows.reduce((sum, row) => sum + Number(row[2]), 0)).toBe(ids.length);
        expect(textOf(elements(figure, 'figcaption')[0] as Tree.Element)).toContain(`full size in boards/${sheet.id}.`);
      }
    },
  );

  it('say how much is used, with the share of it that is parts by their own areas', () => {
    const { document, boards, parts } = sheetWith(name, [], 'mm');
    const area = ({ kind, drawing: { shapes } }: Part): number => {
      const [shape] = shapes;
      if (shape?.kind !== 'loop') throw new Error('no outline');
      const [a, , c] = shape.vertices;
      return kind === 'station' ? (Math.PI * (a?.x ?? 0) ** 2) / 2 : (c?.x ?? 0) * (c?.y ?? 0);
    };
    const captions = classed(document, 'board').map((figure) =>
      textOf(elements(figure, 'figcaption')[0] as Tree.Element),
    );
    for (const [index, sheet] of boards.entries()) {
      const held = parts
        .filter(({ id }) => sheet.placements.some((placement) => placement.part === id))
        .reduce((sum, one) => sum + area(one), 0);
      const [, used, share] =
        /dashed line: (\d+) mm of its length, (\d+) % of that stretch is parts/u.exec(captions[index] ?? '') ?? [];
      expect(Number(used)).toBe(Math.ceil(sheet.used.length - 1e-9));
      expect(Math.abs(Number(share) - (100 * held) / (sheet.used.length * sheet.width))).toBeLessThan(0.51);
    }
  });

  it('are drawn to the scale they say', () => {
    const { document, parts } = sheetWith(name);
    const [spine] = parts;
    if (spine?.drawing.shapes[0]?.kind !== 'loop') throw new Error('no spine');
    const { x: long = 0, y: wide = 0 } = spine.drawing.shapes[0].vertices[2] ?? {};
    const sizes = classed(document, 'board').flatMap((figure) => {
      const scale = Number(/1:(\d+)/u.exec(textOf(elements(figure, 'figcaption')[0] as Tree.Element))?.[1]);
      const svg = elements(figure, 'svg')[0];
      expect(attribute(svg, 'viewbox') || attribute(svg, 'viewBox')).toBe(
        `0 0 ${attribute(svg, 'width').replace('mm', '')} ${attribute(svg, 'height').replace('mm', '')}`,
      );
      return elements(figure, 'path').map((path) => {
        const numbers =
          attribute(path, 'd')
            .match(/-?[\d.]+/gu)
            ?.map(Number) ?? [];
        const [xs, ys] = [0, 1].map((odd) => numbers.filter((_, index) => index % 2 === odd)) as [number[], number[]];
        return [
          scale * (Math.max(...xs) - Math.min(...xs)),
          scale * (Math.max(...ys) - Math.min(...ys)),
          scale,
        ] as const;
      });
    });
    // Two decimals of a mm on paper.
    expect(
      sizes.some(
        ([a, b, scale]) =>
          Math.abs(Math.max(a, b) - long) < 0.011 * scale && Math.abs(Math.min(a, b) - wide) < 0.011 * scale,
      ),
    ).toBe(true);
  });
});

describe('what the boards’ pictures say', () => {
  it('a long board is broken off past what is used, and the sheet says so; a used-up offcut is shown whole', () => {
    const [whole] = classed(sheetWith('plain-curve').document, 'board').map(textOf);
    expect(whole).toMatch(/2440 mm/u);
    expect(whole).toContain('the board goes on past the zigzag line');
    const { document, boards } = sheetWith('plain-curve', [offcut(110, 720)]);
    expect(boards.map(({ id }) => id)).toEqual(['offcut-1']);
    const [used] = classed(document, 'board').map(textOf);
    expect(used).toContain('Your offcut 1, MDF 18 mm, 110.0 mm × 720.0 mm');
    expect(used).not.toContain('zigzag');
  });

  it('in inches too', () => {
    const [text] = classed(sheetWith('plain-curve', [], 'in').document, 'board').map(textOf);
    expect(text).toMatch(/length\s+96-1\/8 in/u);
    expect(text).not.toMatch(/\d mm (of|×|long)/u);
  });

  it('where there are none, there is no such section', () => {
    const planned = planStarter('plain-curve');
    expect(writeShopSheet(planned, { parts: [], boards: [] }, tables)).not.toContain('Parts on the boards');
  });
});

describe('the trial strip and its disc', () => {
  it('are listed with their sizes while no strip is measured, and not after', () => {
    const rows = (text: string): string[] =>
      elements(parse(text), 'tr')
        .map((row) => textOf(row).replaceAll(/\s+/gu, ' ').trim())
        .filter((row) => row.startsWith('trial-'));
    expect(rows(sheetWith('plain-curve', [], 'mm').text)).toEqual([
      expect.stringMatching(/^trial-strip strip \d+\.0 mm × \d+\.0 mm the sheet itself 3$/u),
      expect.stringMatching(/^trial-disc disc of radius \d+\.0 mm within .* MDF 18 mm 1$/u),
    ]);
    const planned = planStarter('plain-curve');
    const measured = {
      ...planned,
      job: { ...planned.job, trials: [{ radius: 32, bent: 1.6, left: 1.5, width: null }] },
    };
    expect(rows(writeShopSheet(measured, { parts: [], boards: [] }, tables))).toEqual([]);
  });
});

describe('a board on paper', () => {
  it('is turned at most, never turned over, and fits', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 50, max: 3000, noNaN: true }),
        fc.double({ min: 50, max: 3000, noNaN: true }),
        fc.double({ min: 0.01, max: 1, noNaN: true }),
        fc.double({ min: 0.01, max: 1, noNaN: true }),
        (length, width, far, across) => {
          const room = { width: 140, height: 95 };
          const frame = frameOf({ length, width }, { length: far * length, width: across * width }, room);
          expect(frame.wide).toBeLessThanOrEqual(room.width + 1e-9);
          expect(frame.high).toBeLessThanOrEqual(room.height + 1e-9);
          const [origin, along, up] = [frame.at(0, 0), frame.at(1, 0), frame.at(0, 1)];
          const turn = (along[0] - origin[0]) * (up[1] - origin[1]) - (along[1] - origin[1]) * (up[0] - origin[0]);
          // y points down on paper: a picture that is not mirrored turns the other way there.
          expect(turn * frame.scale ** 2).toBeCloseTo(-1, 6);
          for (const [side, reach] of [
            ['length', far * length],
            ['width', across * width],
          ] as const) {
            expect(frame.shown[side]).toBeGreaterThanOrEqual(reach - 1e-9);
            expect(frame.shown[side]).toBeLessThanOrEqual({ length, width }[side] + 1e-9);
            expect(frame.broken[side]).toBe(frame.shown[side] < { length, width }[side]);
          }
        },
      ),
      { numRuns: cases(300) },
    );
  });
});

/** Advances of Helvetica in thousandths of the font size: Adobe core font metrics, Helvetica.afm (from memory). */
const ADVANCES: Readonly<Record<string, number>> = { S: 667, B: 667, '-': 333 };
const widthOf = (text: string, height: number): number =>
  [...text].reduce((sum, one) => sum + (ADVANCES[one] ?? 556), 0) * 0.001 * (height / 0.72);

function boxOf({ id, at: [x, y], height, upright }: PartLabel): {
  minX: number;
  minY: number;
  maxX: number;
  maxY: number;
} {
  const [across, down] = upright ? [height, widthOf(id, height)] : [widthOf(id, height), height];
  return { minX: x - across / 2, maxX: x + across / 2, minY: y - down / 2, maxY: y + down / 2 };
}

/** Even–odd rule. */
function isInside([x, y]: Point, polygon: readonly Point[]): boolean {
  return (
    polygon.filter(([ax, ay], index) => {
      const [bx, by] = polygon[(index + 1) % polygon.length] ?? [ax, ay];
      return ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax);
    }).length %
      2 ===
    1
  );
}

describe('names of parts', () => {
  const half = (id: string, [x, y]: readonly [number, number], radius: number, turn: number): Outlined => ({
    id,
    outline: Array.from({ length: 41 }, (_, index): Point => [
      x + radius * Math.cos(turn + (Math.PI * index) / 40),
      y + radius * Math.sin(turn + (Math.PI * index) / 40),
    ]),
    holes: [],
  });

  it('stand inside their parts or apart from each other past the board’s free end, large enough to read', () => {
    let [inside, outside] = [0, 0];
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.double({ min: 0.5, max: 12, noNaN: true }), fc.integer({ min: 0, max: 3 })), {
          minLength: 1,
          maxLength: 60,
        }),
        fc.boolean(),
        (sizes, turned) => {
          const parts = sizes.map(([radius, quarter], index) =>
            half(
              `S${index + 1}`,
              [12 + 9 * (index % 14), 12 + 14 * Math.floor(index / 14)],
              radius,
              (quarter * Math.PI) / 2,
            ),
          );
          const labels = labelParts(parts, { turned, wide: 150, high: 90 });
          expect(labels.map(({ id }) => id).sort()).toEqual(parts.map(({ id }) => id).sort());
          const below = labels.filter(({ leader }) => leader !== null);
          for (const label of labels) {
            expect(label.height).toBeGreaterThanOrEqual(1.5);
            const { minX, minY, maxX, maxY } = boxOf(label);
            const polygon = parts.find(({ id }) => id === label.id)?.outline ?? [];
            if (label.leader) {
              outside++;
              expect(isInside(label.leader, polygon)).toBe(true);
              expect(turned ? minY > 90 && minX >= 0 && maxX <= 150 : minX > 150 && minY >= 0 && maxY <= 90).toBe(true);
            } else {
              inside++;
              for (let step = 0; step <= 8; step++)
                for (const y of [minY, maxY])
                  expect(isInside([minX + ((maxX - minX) * step) / 8, y], polygon)).toBe(true);
            }
          }
          below.forEach((label, index) => {
            const a = boxOf(label);
            for (const other of below.slice(index + 1)) {
              const b = boxOf(other);
              expect(a.maxX <= b.minX || b.maxX <= a.minX || a.maxY <= b.minY || b.maxY <= a.minY).toBe(true);
            }
          });
        },
      ),
      { numRuns: cases(200) },
    );
    expect(Math.min(inside, outside)).toBeGreaterThan(cases(100));
  });

  it('keep clear of holes', () => {
    const outline: Point[] = [
      [0, 0],
      [60, 0],
      [60, 16],
      [0, 16],
    ];
    const [label] = labelParts(
      [
        {
          id: 'spine',
          outline,
          holes: [
            Array.from({ length: 24 }, (_, index): Point => [
              30 + 5 * Math.cos((index * Math.PI) / 12),
              8 + 5 * Math.sin((index * Math.PI) / 12),
            ]),
          ],
        },
      ],
      { turned: true, wide: 150, high: 90 },
    );
    if (!label) throw new Error('no label');
    const { minX, maxX, minY, maxY } = boxOf(label);
    expect(Math.hypot(Math.max(0, minX - 30, 30 - maxX), Math.max(0, minY - 8, 8 - maxY))).toBeGreaterThan(5);
  });
});
