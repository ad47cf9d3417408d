import { describe, expect, it } from 'vitest';
import { operations, type Drawing } from '../../src/base/drawing';
import { InternalError } from '../../src/base/errors';
import { colourOf, coloursFor } from '../../src/output/colour';
import { writeDxf } from '../../src/output/dxf';
import { lineColours } from '../../src/base/colour';
import { writeSvg } from '../../src/output/svg';

const drawing: Drawing = {
  shapes: [
    { kind: 'circle', operation: 'outline', x: 0, y: 0, radius: 9 },
    { kind: 'circle', operation: 'hole', x: 0, y: 0, radius: 2 },
  ],
};

describe('a colour', () => {
  // Indexes 1 to 7 as the format owner publishes them; the names’ values are those of CSS Color 4 (whose “lime” is the full green).
  it.each([
    ['red', '#ff0000', 1],
    ['yellow', '#ffff00', 2],
    ['green', '#00ff00', 3],
    ['cyan', '#00ffff', 4],
    ['blue', '#0000ff', 5],
    ['magenta', '#ff00ff', 6],
    ['black', '#000000', 7],
    [' Red ', '#ff0000', 1],
    ['#FFFFFF', '#ffffff', 7],
    ['#ffa500', '#ffa500', 2],
    ['#8b0000', '#8b0000', 1],
    ['#202020', '#202020', 7],
    ['#c0c0c0', '#c0c0c0', 7],
    ['#1f3fbf', '#1f3fbf', 5],
    ['#20b2aa', '#20b2aa', 4],
  ])('%j is %s in SVG, index %i in DXF', (text, svg, dxf) => {
    expect(colourOf(text)).toEqual({ svg, dxf });
  });

  it.each([
    '',
    'orange',
    'white',
    '#fff',
    '#gggggg',
    '#ff00000',
    'ff0000',
    'rgb(1,2,3)',
    'url(#x)',
    '#ff0000"/><script>',
    'constructor',
    '__proto__',
    'toString',
    '7',
  ])('%j is none', (text) => {
    expect(colourOf(text)).toBeNull();
  });
});

describe('a job’s colours', () => {
  it('go to both writers, operation by operation; the rest stay', () => {
    const { svg, dxf } = coloursFor({ outline: 'red', label: '#0010F0' });
    expect([svg, dxf]).toEqual([
      { outline: '#ff0000', label: '#0010f0' },
      { outline: 1, label: 5 },
    ]);
    expect(coloursFor({})).toEqual({ svg: {}, dxf: {} });
    const drawn = writeSvg(drawing, { title: '', colours: svg });
    expect([...drawn.matchAll(/<g id="(\w+)"[^>]* stroke="(#\w+)"/gu)].map(([, id, colour]) => [id, colour])).toEqual([
      ['hole', lineColours.hole],
      ['outline', '#ff0000'],
    ]);
    const layers = [
      ...writeDxf(drawing, { colours: dxf }).matchAll(/0\r\nLAYER\r\n70\r\n0\r\n2\r\n(\w+)\r\n62\r\n(\d+)/gu),
    ].map(([, name, index]) => [name, Number(index)]);
    expect(layers).toHaveLength(operations.length + 1);
    expect(layers).toContainEqual(['outline', 1]);
    expect(layers).toContainEqual(['label', 5]);
    expect(layers).toContainEqual(['hole', 4]);
  });

  it('that are none are our mistake by then', () => {
    expect(() => coloursFor({ hole: 'orange' })).toThrow(InternalError);
  });
});
