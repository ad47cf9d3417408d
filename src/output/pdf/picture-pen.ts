import { sidesOf } from '../../base/arc';
import type { Vertex } from '../../base/drawing';
import { toDegrees } from '../../base/angle';
import { fixed } from '../number';
import { el, type Element } from '../xml';
import { CAPITAL } from './lettering';
import { curvesOf, type Pen } from './pen';

/** Faces about as wide as the one on paper. */
const FONT = 'Helvetica, Arial, sans-serif';
const INK = '#000000';
/** Tenths of a micrometre, as on paper. */
const mm = (value: number): string => fixed(value, 4);

/** Draws a page of some height, mm, as a picture: y points down in it, from the page's upper edge. */
export function makePicturePen(height: number): Pen & { readonly elements: () => readonly Element[] } {
  let out: Element[] = [];
  let stroke: Element['attributes'] = {};
  const at = (x: number, y: number): string => `${mm(x)} ${mm(height - y)}`;
  const path = (d: string): void => {
    out.push(el('path', { d, fill: 'none', stroke: INK, ...stroke }));
  };
  const run = (points: readonly (readonly [number, number])[]): string =>
    points.map(([x, y], index) => `${index === 0 ? 'M' : 'L'}${at(x, y)}`).join('');
  const outline = (vertices: readonly Vertex[]): string => {
    const [first] = vertices;
    if (!first) return '';
    const sides = sidesOf(vertices).flatMap(([from, to]) => curvesOf(from, to).map(curve));
    return `M${at(first.x, first.y)}${sides.join('')}Z`;
  };
  const curve = (numbers: readonly number[]): string =>
    (numbers.length === 2 ? 'L' : 'C') +
    numbers.map((value, index) => mm(index % 2 === 0 ? value : height - value)).join(' ');
  const corners = ({ x, y, width, height: high }: { x: number; y: number; width: number; height: number }): string =>
    `${run([
      [x, y],
      [x + width, y],
      [x + width, y + high],
      [x, y + high],
    ])}Z`;
  return {
    style: (width, dash = []) => {
      stroke = {
        'stroke-width': mm(width),
        ...(dash.length > 0 ? { 'stroke-dasharray': dash.map(mm).join(' ') } : {}),
      };
    },
    line: (from, to) => path(run([from, to])),
    run: (points) => path(run(points)),
    loop: (vertices) => path(outline(vertices)),
    circle: (x, y, radius) => {
      out.push(el('circle', { cx: mm(x), cy: mm(height - y), r: mm(radius), fill: 'none', stroke: INK, ...stroke }));
    },
    fill: (box, grey = 0) => {
      const share = Math.round(255 * grey)
        .toString(16)
        .padStart(2, '0');
      out.push(el('path', { d: corners(box), fill: `#${share.repeat(3)}`, stroke: 'none' }));
    },
    box: (box) => path(corners(box)),
    text: (text, [x, y], capital, { angle = 0, anchor = 'start' } = {}) => {
      if (text === '') return;
      const turn = angle === 0 ? {} : { transform: `rotate(${mm(-toDegrees(angle))} ${at(x, y)})` };
      const place = { x: mm(x), y: mm(height - y), 'text-anchor': anchor, ...turn };
      out.push(
        el('text', { ...place, 'font-family': FONT, 'font-size': mm(capital / CAPITAL), fill: INK, stroke: 'none' }, [
          text,
        ]),
      );
    },
    within: ({ x, y, width, height: high }, draw) => {
      const before = out;
      out = [];
      draw();
      const frame = { x: mm(x), y: mm(height - y - high), width: mm(width), height: mm(high) };
      const viewBox = [frame.x, frame.y, frame.width, frame.height].join(' ');
      out = [...before, el('svg', { ...frame, viewBox }, out)];
    },
    elements: () => out,
  };
}
