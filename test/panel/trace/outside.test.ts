import { readFileSync } from 'node:fs';
import DxfParser from 'dxf-parser';
import { near } from '../../helpers/near';
import { describe, expect, it } from 'vitest';
import { inWords } from '../../helpers/in-words';
import { boundsOf } from '../../../src/base/bounds';
import type { Vertex } from '../../../src/base/drawing';
import { loopArea } from '../../../src/base/area';
import { loopLength } from '../../../src/base/way';
import { asCircle } from '../../../src/panel/trace/outline';
import { readOutline, type TracedOutline } from '../../../src/panel/trace/read-outline';

/** Drawings of ours written by other programs; see fixtures/README.md. */
const text = (name: string): string => readFileSync(`test/panel/trace/fixtures/${name}`, 'utf8');

function read(name: string): TracedOutline {
  const format = name.endsWith('.svg') ? 'svg' : 'dxf';
  const { value, findings } = readOutline(text(name), { path: 'outline.file', format });
  if (!value)
    throw new Error(
      inWords(findings)
        .map(({ message }) => message)
        .join('\n'),
    );
  return value;
}

const box = (vertices: readonly Vertex[]) => boundsOf({ shapes: [{ kind: 'loop', operation: 'outline', vertices }] });

/** Holes by falling area, as area, width and height. */
function holesOf({ outline: { holes } }: TracedOutline) {
  const rows = holes.map((hole) => ({ hole, area: Math.abs(loopArea(hole)), ...box(hole) }));
  return rows.sort((a, b) => b.area - a.area);
}

const SIZE = 0.01;
const CURVES = 0.05;

describe('FreeCAD', () => {
  // Part.Face(…).Area of the outline, the circle and the ellipse, as printed when the files were written.
  const [OUTER, CIRCLE, OVAL] = [47091.767932260045, 132.73228961416876, 1413.716694115407];

  it.each(['freecad.dxf', 'freecad.svg'])('%s: sizes within 0.01 mm, spline and ellipse within 0.05 mm', (name) => {
    const traced = read(name);
    const { maxX, minY, maxY } = box(traced.outline.vertices);
    // Right end of the arc over (300, 60) to the corner of the plate (280, 10), top at 190.
    expect(Math.abs(maxY - minY - 180)).toBeLessThan(SIZE);
    expect(Math.abs(loopArea(traced.outline.vertices) - OUTER)).toBeLessThan(200 * CURVES);
    const [oval, hole] = holesOf(traced);
    expect(Math.abs((oval?.area ?? 0) - OVAL)).toBeLessThan(loopLength(oval?.hole ?? []) * CURVES);
    expect(
      Math.max(
        Math.abs((oval?.maxX ?? 0) - (oval?.minX ?? 0) - 60),
        Math.abs((oval?.maxY ?? 0) - (oval?.minY ?? 0) - 30),
      ),
    ).toBeLessThan(2 * CURVES);
    expect(hole?.area).toBeCloseTo(CIRCLE, 3);
    const round = asCircle(hole?.hole ?? []);
    expect(round?.radius).toBeCloseTo(6.5, 4);
    expect(Math.abs(maxX - (round?.x ?? 0) - 200)).toBeLessThan(SIZE);
    expect(Math.abs((round?.y ?? 0) - minY - 50)).toBeLessThan(SIZE);
  });

  it('dxf-parser sees the same corners in the DXF', () => {
    const corners = read('freecad.dxf').outline.vertices;
    const parsed = new DxfParser().parseSync(text('freecad.dxf'));
    const lines = (parsed?.entities ?? []).flatMap((entity) =>
      'vertices' in entity && entity.type === 'LINE' ? [entity.vertices] : [],
    );
    const ends = JSON.parse(JSON.stringify(lines)) as { x: number; y: number }[][];
    expect(ends.flat().length).toBeGreaterThanOrEqual(6);
    for (const { x, y } of ends.flat()) {
      // The file writes six digits, and ends that differ by that are moved to their middle.
      expect(Math.min(...corners.map((corner) => Math.hypot(corner.x - x, corner.y - y)))).toBeLessThan(1e-4);
    }
  });
});

describe('Inkscape', () => {
  // --query-all: x, y, width and height in px, 96 to the inch; the page is 8 in high.
  const mm = 25.4 / 96;
  const rows = {
    edge: [3.9466, 69.2449, 1088.73, 705.926],
    slot: [214.595, 287.58, 298.939, 114.991],
    hole: [786.151, 399.266, 49.1339, 49.1339],
    oval: [530.095, 490.078, 204.409, 149.995],
  } as const;
  const expectBox = (
    vertices: readonly Vertex[],
    [x, y, width, height]: readonly [number, number, number, number],
    within: number,
  ): void => {
    const found = box(vertices);
    const wanted = { minX: x * mm, maxX: (x + width) * mm, minY: 203.2 - (y + height) * mm, maxY: 203.2 - y * mm };
    for (const side of ['minX', 'maxX', 'minY', 'maxY'] as const)
      expect(Math.abs(found[side] - wanted[side])).toBeLessThan(within);
  };

  it.each([
    ['inkscape.svg', SIZE],
    ['inkscape-paths.svg', SIZE],
    ['inkscape-splines.dxf', SIZE],
  ])('%s: every box as Inkscape measures it', (name, within) => {
    const traced = read(name);
    const [slot, oval, hole] = holesOf(traced);
    expectBox(traced.outline.vertices, rows.edge, CURVES);
    expectBox(slot?.hole ?? [], rows.slot, CURVES);
    expectBox(oval?.hole ?? [], rows.oval, CURVES);
    expectBox(hole?.hole ?? [], rows.hole, name.endsWith('dxf') ? CURVES : within);
  });

  it('inkscape.svg: true circles and round ends stay true', () => {
    const [slot, , hole] = holesOf(read('inkscape.svg'));
    expect(slot?.area).toBeCloseTo(60 * 20 + Math.PI * 100, 6);
    expect(asCircle(hole?.hole ?? [])?.radius).toBeCloseTo(6.5, 9);
    // Moved by (10, 5) after a turn of 10° about the page’s corner.
    const [cosine, sine] = [Math.cos(Math.PI / 18), Math.sin(Math.PI / 18)];
    expect(asCircle(hole?.hole ?? [])).toMatchObject({
      x: near(10 + 220 * cosine - 70 * sine, 6),
      y: near(203.2 - (5 + 220 * sine + 70 * cosine), 6),
    });
  });

  it('inkscape-lines.dxf, its curves as chords: corners at size', () => {
    const traced = read('inkscape-lines.dxf');
    const holes = holesOf(traced);
    expect(holes).toHaveLength(3);
    // The straight bottom edge of 240 mm survives whole.
    const corners = traced.outline.vertices;
    const longest = Math.max(
      ...corners.map(({ x, y }, i) => Math.hypot(x - (corners.at(i - 1)?.x ?? 0), y - (corners.at(i - 1)?.y ?? 0))),
    );
    expect(Math.abs(longest - 240)).toBeLessThan(SIZE);
  });
});

describe('LibreCAD', () => {
  it('librecad.dxf: outline as drawn, both circles', () => {
    const traced = read('librecad.dxf');
    expect(box(traced.outline.vertices)).toEqual({ minX: 20, minY: 10, maxX: near(320, 6), maxY: 180 });
    const [large, small] = holesOf(traced).map(({ hole }) => asCircle(hole));
    expect(large).toMatchObject({
      x: near(200, 6),
      y: near(120, 6),
      radius: near(12, 6),
    });
    expect(small).toMatchObject({
      x: near(100, 6),
      y: near(60, 6),
      radius: near(6.5, 6),
    });
    expect(traced.sizes).toBe('mm, as the file states');
  });
});
