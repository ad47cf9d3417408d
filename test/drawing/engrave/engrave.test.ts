import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boundsOf } from '../../../src/base/bounds';
import type { Shape, Stroke, Text } from '../../../src/base/drawing';
import { engrave } from '../../../src/drawing/engrave';
import { textWidth } from '../../../src/drawing/parts/shapes';
import { writeDxf } from '../../../src/output/dxf';
import { readDxf } from '../../helpers/read-dxf';
import { cases } from '../../helpers/cases';

const label = (text: string, rest: Partial<Text> = {}): Text => ({
  kind: 'text',
  operation: 'label',
  x: 0,
  y: 0,
  height: 5,
  angle: 0,
  anchor: 'start',
  text,
  ...rest,
});
const outline: Shape = {
  kind: 'loop',
  operation: 'outline',
  vertices: [
    { x: -50, y: 0, bulge: 0 },
    { x: 50, y: 0, bulge: 1 },
  ],
};
const strokesOf = (text: Text): Stroke[] =>
  engrave([text]).map((shape) => {
    if (shape.kind !== 'stroke') throw new Error(`a ${shape.kind}`);
    return shape;
  });

describe('an engraved label', () => {
  it('has capitals as high as asked, on the baseline', () => {
    for (const height of [1.8, 5, 12]) {
      const { minY, maxY } = boundsOf({ shapes: engrave([label('STATION 3', { height, y: 40 })]) });
      expect(minY).toBeCloseTo(40, 9);
      expect(maxY).toBeCloseTo(40 + height, 9);
    }
  });

  it('stays in the box its part keeps for it, whatever it says: as wide as reckoned, a third of its height below the baseline', () => {
    const texts = fc.oneof(
      fc.string({ unit: 'grapheme', minLength: 1, maxLength: 40 }),
      fc.string({ unit: fc.constantFrom(...'WM@mwÆŒ—%ĩ ') }),
      fc.string({ unit: 'binary', maxLength: 40 }),
    );
    let drawn = 0;
    fc.assert(
      fc.property(texts, fc.double({ min: 0.5, max: 50, noNaN: true }), (text, height) => {
        const shapes = strokesOf(label(text, { height }));
        if (shapes.length === 0) return;
        drawn++;
        const { minX, maxX, minY, maxY } = boundsOf({ shapes });
        expect(minX).toBeGreaterThan(-1e-9);
        expect(maxX).toBeLessThan(textWidth(text, height) + 1e-9);
        expect(minY).toBeGreaterThan(-height / 3 - 1e-9);
        expect(maxY).toBeLessThan(height + 1e-9);
      }),
      { numRuns: cases(500) },
    );
    expect(drawn).toBeGreaterThan(cases(300));
  });

  it('is narrowed only where it would be wider than reckoned: W is 24 units wide where a capital is 21 high', () => {
    const gap = (text: string): number => {
      const [first, second] = strokesOf(label(text, { height: 21 })).filter(
        (_, index, all) => index % (all.length / 2) === 0,
      );
      return (second?.points[0]?.[0] ?? NaN) - (first?.points[0]?.[0] ?? NaN);
    };
    expect(gap('AA')).toBeCloseTo(18, 9);
    expect(gap('WW')).toBeCloseTo(textWidth('WW', 21) / 2, 9);
  });

  it('begins, is centred or ends at its anchor', () => {
    const middleOf = (anchor: Text['anchor']): number => {
      const { minX, maxX } = boundsOf({ shapes: strokesOf(label('TIT', { x: 30, height: 21, anchor })) });
      return (minX + maxX) / 2;
    };
    // T takes 16 units, I takes 8, all with equal room on either side.
    expect([middleOf('start'), middleOf('middle'), middleOf('end')].map((x) => Math.round(x * 1e6) / 1e6)).toEqual([
      50, 30, 10,
    ]);
  });

  it('turned is the level one turned about its anchor, counter-clockwise', () => {
    const level = strokesOf(label('R 112.5', { anchor: 'middle' }));
    const quarter = strokesOf(label('R 112.5', { anchor: 'middle', x: 7, y: -3, angle: Math.PI / 2 }));
    expect(quarter).toHaveLength(level.length);
    for (const [index, { points }] of level.entries()) {
      for (const [place, [x, y]] of points.entries()) {
        expect(quarter[index]?.points[place]?.[0]).toBeCloseTo(7 - y, 9);
        expect(quarter[index]?.points[place]?.[1]).toBeCloseTo(-3 + x, 9);
      }
    }
  });

  it('an unknown character is one closed run of five points', () => {
    expect(strokesOf(label('中')).map(({ points }) => [points.length, points.at(-1)])).toEqual([
      [5, strokesOf(label('中'))[0]?.points[0]],
    ]);
  });

  it('leaves other shapes as they are, in their order', () => {
    const shapes = engrave([outline, label('I'), { kind: 'circle', operation: 'hole', x: 0, y: 20, radius: 3 }]);
    expect(shapes.map(({ kind }) => kind)).toEqual(['loop', 'stroke', 'circle']);
    expect(shapes[0]).toBe(outline);
    expect(engrave([label(''), label(' ')])).toEqual([]);
  });
});

describe('an engraved drawing read back by dxf-parser', () => {
  it('holds its label as open polylines alone: no text, no line; every stroke within the last decimals', () => {
    const text = label('S1-1 Größe “×” 3°', { x: -20, y: 5, angle: 0.3 });
    const read = readDxf(writeDxf({ shapes: engrave([outline, text]) }));
    const found = read.order.filter(({ layer }) => layer === 'label');
    expect(new Set(found.map(({ type }) => type))).toEqual(new Set(['POLYLINE']));
    expect([read.texts, read.lines, read.count]).toEqual([[], [], found.length + 1]);
    const runs = read.polylines.filter(({ layer }) => layer === 'label');
    const strokes = strokesOf(text);
    expect(runs).toHaveLength(strokes.length);
    for (const [index, { closed, vertices }] of runs.entries()) {
      expect(closed).toBe(false);
      expect(vertices).toHaveLength(strokes[index]?.points.length ?? NaN);
      for (const [place, { x, y, bulge }] of vertices.entries()) {
        const [px = NaN, py = NaN] = strokes[index]?.points[place] ?? [];
        expect(Math.hypot(x - px, y - py)).toBeLessThan(1e-6);
        expect(bulge).toBe(0);
      }
    }
  });
});
