import fc from 'fast-check';
import { near } from '../../helpers/near';
import { describe, expect, it } from 'vitest';
import { inWords } from '../../helpers/in-words';
import { boundsOf } from '../../../src/base/bounds';
import type { Drawing } from '../../../src/base/drawing';
import { moveDrawing } from '../../../src/base/transform';
import { writeDxf } from '../../../src/output/dxf';
import { writeSvg } from '../../../src/output/svg';
import {
  asCircle,
  edgeRun,
  findEdge,
  mirrored,
  nameEdges,
  outlineArea,
  outlineOf,
} from '../../../src/panel/trace/outline';
import { outlineFrom, readOutline, type OutlineOptions } from '../../../src/panel/trace/read-outline';
import { lineCurve, circleCurve, type Curve } from '../../../src/panel/trace/curve';
import type { Trace } from '../../../src/panel/trace/trace';

const telling = { path: 'outline.file' } as const;
type Point = readonly [number, number];

const run = (...points: readonly Point[]): Curve[] =>
  points.slice(1).flatMap(([x, y], index) => {
    const before = points[index];
    return before ? [lineCurve({ x: before[0], y: before[1] }, { x, y })] : [];
  });
const trace = (where: string, curves: Curve[]): Trace => ({ where, layer: '', curves });
const closed = (where: string, ...points: readonly Point[]): Trace =>
  trace(where, run(...points, ...points.slice(0, 1)));
const rectangle = (where: string, [x, y]: readonly [number, number], w: number, h: number): Trace =>
  closed(where, [x, y], [x + w, y], [x + w, y + h], [x, y + h]);

function trouble(...traces: readonly Trace[]): string {
  const { value, findings } = outlineFrom(traces, telling);
  expect(value).toBeNull();
  return inWords(findings)
    .map(({ code, message }) => `${code}: ${message}`)
    .join('\n');
}

describe('joining', () => {
  it('ends up to 0.1 mm apart are joined in the middle and said, more are open, with the nearest end named', () => {
    const gap = (wide: number): Trace[] => [
      trace('a', run([0, 0], [100, 0], [100, 50])),
      trace('b', run([100, 50 + wide], [0, 50], [0, 0])),
    ];
    const { value, findings } = outlineFrom(gap(0.09), telling);
    expect(value?.vertices).toEqual([
      { x: 0, y: 0, bulge: 0 },
      { x: 100, y: 0, bulge: 0 },
      { x: 100, y: near(50.045, 9), bulge: 0 },
      { x: 0, y: 50, bulge: 0 },
    ]);
    expect(inWords(findings)).toEqual([
      expect.objectContaining({ code: 'outline-gaps', level: 'note', message: 'a gap of 0.09 mm was closed' }),
    ]);
    expect(trouble(...gap(0.11))).toBe(
      'outline-open: the line ends at (100 mm, 50 mm) and meets no other: a; the nearest end is 0.11 mm away at (100 mm, 50.1 mm)\n' +
        'outline-open: the line ends at (100 mm, 50.1 mm) and meets no other: b; the nearest end is 0.11 mm away at (100 mm, 50 mm)',
    );
  });

  it('inch jobs are told inches', () => {
    const { findings } = outlineFrom([trace('a', run([0, 0], [254, 0]))], telling);
    expect(
      inWords(findings, 'in')
        .map(({ message }) => message)
        .join(),
    ).toContain('the line ends at (10 in, 0 in)');
    expect(
      inWords(findings, 'in')
        .map(({ message, hint }) => message + hint)
        .join(),
    ).not.toContain('mm');
  });

  it('the order and direction of the pieces make no difference to the shape', () => {
    const corners: readonly Point[] = Array.from({ length: 14 }, (_, i) => [
      100 * Math.cos((i * Math.PI) / 7) * (i % 2 === 0 ? 1 : 0.6),
      100 * Math.sin((i * Math.PI) / 7) * (i % 2 === 0 ? 1 : 0.6),
    ]);
    // Shoelace.
    const area = corners.reduce((sum, [x, y], i) => {
      const [u, v] = corners[(i + 1) % corners.length] ?? [0, 0];
      return sum + (x * v - u * y) / 2;
    }, 0);
    const sides = corners.map((corner, i): [Point, Point] => [corner, corners[(i + 1) % corners.length] ?? corner]);
    fc.assert(
      fc.property(
        fc.shuffledSubarray(sides, { minLength: sides.length }),
        fc.array(fc.boolean(), { minLength: 14, maxLength: 14 }),
        (order, flips) => {
          const traces = order.map(([from, to], i) => trace(`s${i}`, flips[i] ? run(to, from) : run(from, to)));
          const { value } = outlineFrom(traces, telling);
          expect(value && outlineArea(value)).toBeCloseTo(area, 6);
          expect(value?.vertices).toHaveLength(14);
        },
      ),
      { numRuns: 100, seed: 1 },
    );
  });

  it('a third end at a corner is named', () => {
    const { findings } = outlineFrom(
      [rectangle('edge', [0, 0], 100, 50), trace('stray', run([0, 0], [-20, -20]))],
      telling,
    );
    expect(findings.map(({ code }) => code)).toContain('outline-open');
    const pieces = [
      trace('a', run([0, 0], [100, 0])),
      trace('b', run([100, 0], [50, 80])),
      trace('c', run([50, 80], [0, 0])),
      trace('d', run([0, 0], [-30, -30])),
      trace('e', run([-30, -30], [-60, 0])),
    ];
    expect(trouble(...pieces)).toContain('(0 mm, 0 mm)');
  });
});

describe('what crosses, touches or is drawn twice', () => {
  it.each([
    [
      'a bow tie',
      [closed('edge', [0, 0], [100, 50], [100, 0], [0, 50])],
      'crosses or touches itself at (50 mm, 25 mm): edge',
    ],
    ['a corner on a side', [closed('edge', [0, 0], [100, 0], [100, 50], [50, 0], [0, 50])], 'itself at (50 mm, 0 mm)'],
    ['a whisker', [closed('edge', [0, 0], [100, 0], [100, 50], [100, 90], [100, 70], [0, 50])], 'itself at (100 mm, '],
    [
      'a hole over the edge',
      [rectangle('edge', [0, 0], 100, 50), trace('hole', [circleCurve({ x: 100, y: 25 }, 5)])],
      'cross or touch at (100 mm, ',
    ],
    [
      'a hole that touches the edge',
      [rectangle('edge', [0, 0], 100, 50), rectangle('hole', [80, 10], 20, 20)],
      'touch at (100 mm, ',
    ],
    [
      'two holes that cross',
      [
        rectangle('edge', [0, 0], 100, 50),
        trace('a', [circleCurve({ x: 40, y: 25 }, 5)]),
        trace('b', [circleCurve({ x: 46, y: 25 }, 5)]),
      ],
      'cross or touch at (43 mm, ',
    ],
    [
      'a side drawn twice',
      [rectangle('edge', [0, 0], 100, 50), trace('again', run([100, 0], [0, 0]))],
      'outline-double: the same line is drawn twice at (50 mm, 0 mm)',
    ],
    [
      'all of it drawn twice',
      [rectangle('edge', [0, 0], 100, 50), rectangle('copy', [0, 0], 100, 50)],
      'outline-double',
    ],
    ['nothing', [], 'outline-missing'],
    ['a point', [trace('dot', run([5, 5], [5, 5]))], 'outline-missing'],
    ['a kilometre', [rectangle('edge', [0, 0], 2e6, 50)], 'drawing-too-far: edge'],
    ['no number', [rectangle('edge', [0, NaN], 20, 50)], 'drawing-too-far: edge'],
  ])('%s', (_, traces, words) => {
    expect(trouble(...traces)).toContain(words);
  });
});

describe('outline and holes', () => {
  it('several outlines are listed with size and place; one can be chosen', () => {
    const traces = [
      rectangle('small', [300, 10], 40, 30),
      rectangle('large', [0, 0], 100, 50),
      rectangle('hole', [310, 20], 5, 5),
    ];
    expect(trouble(...traces)).toBe(
      'outline-choice: the drawing holds 2 outlines: 1: 100 × 50 mm at (0 mm, 0 mm), large; 2: 40 × 30 mm at (300 mm, 10 mm), small',
    );
    const { value } = outlineFrom(traces, { ...telling, part: 2 });
    expect(value && outlineArea(value)).toBeCloseTo(40 * 30 - 25, 9);
    expect(outlineFrom(traces, { ...telling, part: 3 }).value).toBeNull();
  });

  it('what is drawn in a hole is refused', () => {
    expect(
      trouble(
        rectangle('edge', [0, 0], 100, 50),
        rectangle('hole', [10, 10], 30, 30),
        rectangle('island', [20, 20], 5, 5),
      ),
    ).toBe('outline-island: something is drawn inside a hole at (20 mm, 20 mm): island');
  });

  it('names go to the nearest side with what runs on smoothly, and follow the mirror image', () => {
    const edge = outlineOf(
      [
        { x: 0, y: 0, bulge: 0 },
        { x: 60, y: 0, bulge: Math.tan(Math.PI / 8) },
        { x: 80, y: 20, bulge: 0 },
        { x: 80, y: 50, bulge: 0 },
        { x: 0, y: 50, bulge: 0 },
      ],
      [],
    );
    const named = nameEdges(edge, { front: { x: 30, y: -5 }, back: { x: 40, y: 60 } });
    expect(named.edges).toEqual(['front', 'front', 'front', 'back', null]);
    const front = findEdge(named, 'front');
    expect(front && edgeRun(named, front).map(({ x, y }) => [x, y])).toEqual([
      [0, 0],
      [60, 0],
      [80, 20],
      [80, 50],
    ]);
    const twin = mirrored(named);
    expect(outlineArea(twin)).toBeCloseTo(outlineArea(named), 9);
    const twinFront = findEdge(twin, 'front');
    expect(twinFront && edgeRun(twin, twinFront).map(({ x, y }) => [x + 0, y])).toEqual([
      [-80, 50],
      [-80, 20],
      [-60, 0],
      [0, 0],
    ]);
  });
});

describe('our own drawings come back the same', () => {
  const quarter = Math.tan(Math.PI / 8);
  const blank: Drawing = {
    shapes: [
      {
        kind: 'loop',
        operation: 'outline',
        vertices: [
          { x: 0, y: 0, bulge: 0.01234567 },
          { x: 612.345678, y: 3.5, bulge: 0 },
          { x: 640, y: 30, bulge: quarter },
          { x: 610, y: 60, bulge: 0 },
          { x: 55.5, y: 250.25, bulge: -0.4 },
          { x: 10, y: 200, bulge: 0 },
        ],
      },
      { kind: 'circle', operation: 'hole', x: 100, y: 60, radius: 2.25 },
      {
        kind: 'loop',
        operation: 'hole',
        vertices: [
          { x: 200, y: 60, bulge: 0 },
          { x: 240, y: 60, bulge: 1 },
          { x: 240, y: 80, bulge: 0 },
          { x: 200, y: 80, bulge: 1 },
        ],
      },
      { kind: 'line', operation: 'mark', from: [10, 50], to: [600, 55] },
      { kind: 'text', operation: 'label', x: 20, y: 100, height: 5, angle: 0, anchor: 'start', text: 'left' },
    ],
  };
  const loops = blank.shapes.flatMap((shape) => (shape.kind === 'loop' ? [shape.vertices] : []));
  const [outer = [], slot = []] = loops;

  it.each(['dxf', 'svg'] as const)('%s: every corner and bulge within 1e-6 of what was written', (format) => {
    const text = format === 'dxf' ? writeDxf(blank) : writeSvg(blank, { title: 'Blank' });
    const options: OutlineOptions = { ...telling, format };
    const { value, findings } = readOutline(text, options);
    expect(findings.filter(({ level }) => level !== 'note')).toEqual([]);
    const outline = value?.outline;
    // The page puts its margin round the drawing.
    const bounds = boundsOf(blank);
    const shift =
      format === 'svg' ? { dx: 5 - bounds.minX, dy: 5 - bounds.minY, angle: 0 } : { dx: 0, dy: 0, angle: 0 };
    const expected = moveDrawing(blank, shift);
    // SVG writes five decimals and wide arcs in pieces: compare area and places; DXF every corner.
    const digits = format === 'dxf' ? 6 : 4;
    const written = outlineOf(outer, [slot]);
    expect(outline && outlineArea(outline)).toBeCloseTo(
      outlineArea(written) - Math.PI * 2.25 ** 2,
      format === 'dxf' ? 3 : 1,
    );
    const first = expected.shapes[0];
    const corners = first?.kind === 'loop' ? first.vertices : [];
    for (const { x, y, bulge } of corners) {
      const away = (vertex: { readonly x: number; readonly y: number }): number =>
        Math.hypot(vertex.x - x, vertex.y - y);
      const [near] = [...(outline?.vertices ?? [])].sort((a, b) => away(a) - away(b));
      expect(near && away(near)).toBeLessThan(10 ** -digits);
      if (format === 'dxf') expect(near?.bulge).toBeCloseTo(bulge, 9);
    }
    expect(outline?.holes).toHaveLength(2);
    const round = outline?.holes.map((hole) => asCircle(hole)).find((hole) => hole !== null);
    expect(round).toMatchObject({
      x: near(100 + shift.dx, digits),
      y: near(60 + shift.dy, digits),
      radius: near(2.25, digits),
    });
  });
});
