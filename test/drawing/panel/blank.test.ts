import { describe, expect, it } from 'vitest';
import { at } from '../../../src/base/at';
import { sidesOf } from '../../../src/base/arc';
import type { Line, Shape } from '../../../src/base/drawing';
import { distanceTo, sideBetween } from '../../../src/base/side';
import { bendLines, type BlankBend } from '../../../src/drawing/panel/bend-lines';
import { drawPanelBlank, type BlankView, type PanelBlank } from '../../../src/drawing/panel/blank';
import { writeDxf } from '../../../src/output/dxf';
import { writeSvg } from '../../../src/output/svg';
import { bentAt, onLeg, type Panel } from '../../../src/panel';
import { readOutline } from '../../../src/panel/trace/read-outline';
import { bend, box, built } from '../../panel/panels';

const hood = () =>
  built(
    box(558.8, 228.6, {
      thickness: 1.2141,
      bends: [bend('long', { radius: { short: 30, back: 45 } }), bend('short', { radius: { long: 30, top: 36 } })],
    }),
  );

const zed = () =>
  built(box(300, 200, { bends: [bend('long'), bend('top', { turn: 'down', radius: { back: 20, short: 26 } })] }));

function blankOf(panel: Panel): PanelBlank {
  const bends = panel.bends.map(({ finished, wrap }, index): BlankBend => ({
    step: index + 1,
    held: index === 0 ? 'leg' : 'base',
    form: 'long',
    pulled: { cone: finished, wrap: 1.02 * wrap, early: 0, gap: null },
  }));
  return { panel, bends, trim: null, seams: [] };
}

const plain: BlankView = { hand: 'left', face: 'marked', units: 'mm' };

function isLine(shape: Shape): shape is Line {
  return shape.kind === 'line';
}

function isMarked(
  shapes: readonly Shape[],
  [[x, y], [u, v]]: readonly [readonly number[], readonly number[]],
): boolean {
  return shapes
    .filter(isLine)
    .some(
      ({ from, to }) =>
        Math.hypot(from[0] - Number(x), from[1] - Number(y), to[0] - Number(u), to[1] - Number(v)) < 1e-6,
    );
}

describe('blank of a panel', () => {
  it('is called left or right only where there is a pair', () => {
    const words = (hand: BlankView['hand']): string[] =>
      drawPanelBlank(blankOf(hood()), { ...plain, hand }).flatMap((s) =>
        s.kind === 'text' && s.text.startsWith('BLANK') ? [s.text] : [],
      );
    expect((['left', 'right', null] as const).map(words)).toEqual([['BLANK LEFT'], ['BLANK RIGHT'], ['BLANK']]);
  });

  it.each(['dxf', 'svg'] as const)('its own %s read again is the same outline within 1e-6 mm', (format) => {
    const panel = hood();
    const drawing = { shapes: drawPanelBlank(blankOf(panel), plain) };
    const text = format === 'dxf' ? writeDxf(drawing) : writeSvg(drawing, { title: 'hood', decimals: 8 });
    const { value, findings } = readOutline(text, { format, path: 'outline.file' });
    expect(findings.filter(({ level }) => level !== 'note')).toEqual([]);
    const sides = sidesOf(value?.outline.vertices ?? []).map(([from, to]) => sideBetween(from, to));
    const [dx, dy] = format === 'dxf' ? [0, 0] : shiftOf(panel, value?.outline.vertices ?? []);
    const off = panel.outline.map(({ x, y }) =>
      Math.min(...sides.map((side) => distanceTo(side, { x: x + dx, y: y + dy }))),
    );
    expect(Math.max(...off)).toBeLessThan(1e-6);
    expect(value?.outline.holes.length).toBe(panel.holes.length);
  });

  it('tangent lines stand where the sheet begins and ends to bend: wrap 0 and the bend’s own, and span the zone', () => {
    const panel = hood();
    const shapes = drawPanelBlank(blankOf(panel), plain);
    for (const one of panel.bends) {
      const lines = bendLines(one, { held: 'base', pulled: null });
      for (const place of lines.base) expect(bentAt(one, place).wrap).toBeCloseTo(0, 9);
      for (const place of lines.leg) {
        expect(bentAt(one, place).wrap).toBeCloseTo(one.wrap, 9);
        expect(onLeg(one, place)[1]).toBeCloseTo(0, 9);
      }
      expect(isMarked(shapes, lines.base)).toBe(true);
      expect(isMarked(shapes, lines.leg)).toBe(true);
      for (const place of [...lines.base, ...lines.leg]) {
        const atCorner = panel.corners.some(({ at: [x, y] }) => Math.hypot(place[0] - x, place[1] - y) < 1e-6);
        expect(atCorner ? 0 : nearestOf(panel, place)).toBeLessThan(1e-6);
      }
    }
  });

  it('take-off at the finished wrap, round the finished radii, is the free tangent line, base or leg held', () => {
    const panel = hood();
    for (const one of panel.bends) {
      for (const held of ['base', 'leg'] as const) {
        const lines = bendLines(one, { held, pulled: { cone: one.finished, wrap: one.wrap, early: 0, gap: null } });
        const free = held === 'base' ? lines.leg : lines.base;
        expect(lines.takeOff?.flat().map((value, index) => value - at(free.flat(), index))).toEqual(
          Array.from({ length: 4 }, () => expect.closeTo(0, 7) as number),
        );
      }
    }
  });

  it('a bend made downward is drawn on the other face, mirrored, and only carried in from the edge on the marked one', () => {
    const blank = blankOf(zed());
    const down = at(blank.panel.bends, 1);
    const { base } = bendLines(down, at(blank.bends, 1));
    expect(isMarked(drawPanelBlank(blank, plain), base)).toBe(false);
    const xs = blank.panel.outline.map(({ x }) => x);
    const sum = Math.min(...xs) + Math.max(...xs);
    const flipped = base.map(([x, y]) => [sum - x, y]);
    expect(isMarked(drawPanelBlank(blank, { ...plain, face: 'other' }), [at(flipped, 0), at(flipped, 1)])).toBe(true);
  });

  it('the right hand is the left one mirrored; seen from the other face it stands as the left one does', () => {
    const blank = blankOf(zed());
    const loops = (view: BlankView) =>
      drawPanelBlank(blank, view).flatMap((s) => (s.kind === 'loop' ? s.vertices : []));
    const left = loops(plain);
    const right = loops({ ...plain, hand: 'right' });
    const sum = Math.min(...left.map(({ x }) => x)) + Math.max(...left.map(({ x }) => x));
    for (const { x, y } of right) {
      expect(Math.min(...left.map((v) => Math.hypot(sum - v.x - x, v.y - y)))).toBeLessThan(1e-9);
    }
    expect(loops({ ...plain, hand: 'right', face: 'other' })).toEqual(left);
  });
});

function nearestOf({ outline }: Panel, [x, y]: readonly [number, number]): number {
  return Math.min(...sidesOf(outline).map(([from, to]) => distanceTo(sideBetween(from, to), { x, y })));
}

/** The SVG's page begins at its lower left. */
function shiftOf(
  { outline }: Panel,
  read: readonly { readonly x: number; readonly y: number }[],
): readonly [number, number] {
  const low = (all: readonly number[]): number => Math.min(...all);
  return [
    low(read.map(({ x }) => x)) - low(outline.map(({ x }) => x)),
    low(read.map(({ y }) => y)) - low(outline.map(({ y }) => y)),
  ];
}
