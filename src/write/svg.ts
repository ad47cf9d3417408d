import { arcBetween, sidesOf } from '../base/arc';
import { boundsOf, type Bounds } from '../base/bounds';
import { toDegrees } from '../base/angle';
import { operations, type Drawing, type Loop, type Operation, type Shape } from '../base/drawing';
import { InternalError } from '../base/errors';
import { el, write, type Element } from './xml';
import { fixed } from './number';

/** SVG 1.1 at true size: width and height in mm and a viewBox in the same numbers, so that one user unit is one mm. */

/** Stroke colours of the groups: ours, any of which a job may change. */
export const SVG_COLOURS: Readonly<Record<Operation, string>> = {
  outline: '#111111',
  hole: '#00708c',
  pilot: '#8a2be2',
  countersink: '#2e7d32',
  groove: '#b35900',
  mark: '#777777',
  label: '#1f3fbf',
};

/** Wide enough to trace, narrow enough to cut to, mm. */
const LINE_WIDTH = 0.25;
/** Capital height over font size of the plain sans faces browsers fall back to (Helvetica 0.72, Arial 0.716, DejaVu Sans 0.729). */
const CAPITAL_HEIGHT = 0.72;
const DECIMALS = 5;

export interface SvgOptions {
  readonly title: string;
  /** Blank border round the drawing, mm. */
  readonly margin?: number;
  readonly colours?: Readonly<Record<Operation, string>>;
}

/** A drawing as a whole SVG file. Throws where the drawing holds a number that is none. */
export function writeSvg(drawing: Drawing, { title, margin = 5, colours = SVG_COLOURS }: SvgOptions): string {
  const bounds = boundsOf(drawing);
  const width = bounds.maxX - bounds.minX + 2 * margin;
  const height = bounds.maxY - bounds.minY + 2 * margin;
  const root = el(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      width: `${mm(width)}mm`,
      height: `${mm(height)}mm`,
      viewBox: `0 0 ${mm(width)} ${mm(height)}`,
    },
    [el('title', {}, [title]), el('desc', {}, ['Unit: mm. Drawn at 1:1; print or cut at 100 %.']), ...drawingGroups(drawing, bounds, margin, colours)],
  );
  return `<?xml version="1.0" encoding="UTF-8"?>\n${write(root)}\n`;
}

/** One named group an operation, in the order of the operations; what a page puts into a picture of its own. */
export function drawingGroups(drawing: Drawing, bounds: Bounds, margin: number, colours: Readonly<Record<Operation, string>> = SVG_COLOURS): Element[] {
  const frame: Frame = { x: (x) => x - bounds.minX + margin, y: (y) => bounds.maxY - y + margin };
  return operations.flatMap((operation) => {
    const shapes = drawing.shapes.filter((shape) => shape.operation === operation);
    if (shapes.length === 0) return [];
    const paint = operation === 'label' ? { fill: colours[operation], stroke: 'none' } : { fill: 'none', stroke: colours[operation], 'stroke-width': String(LINE_WIDTH) };
    return [el('g', { id: operation, ...paint }, shapes.map((shape) => draw(shape, frame)))];
  });
}

/** Drawing coordinates (y up) to the page's (y down). */
interface Frame {
  readonly x: (x: number) => number;
  readonly y: (y: number) => number;
}

function mm(value: number): string {
  return fixed(value, DECIMALS);
}

function draw(shape: Shape, frame: Frame): Element {
  switch (shape.kind) {
    case 'loop':
      return el('path', { d: loopPath(shape, frame) });
    case 'circle':
      return el('circle', { cx: mm(frame.x(shape.x)), cy: mm(frame.y(shape.y)), r: mm(shape.radius) });
    case 'line':
      return el('path', { d: `M${mm(frame.x(shape.from[0]))} ${mm(frame.y(shape.from[1]))}L${mm(frame.x(shape.to[0]))} ${mm(frame.y(shape.to[1]))}` });
    case 'text': {
      const [x, y] = [mm(frame.x(shape.x)), mm(frame.y(shape.y))];
      return el(
        'text',
        {
          x,
          y,
          'font-family': 'Helvetica, Arial, sans-serif',
          'font-size': mm(shape.height / CAPITAL_HEIGHT),
          'text-anchor': shape.anchor,
          ...(shape.angle === 0 ? {} : { transform: `rotate(${mm(-toDegrees(shape.angle))} ${x} ${y})` }),
        },
        [shape.text],
      );
    }
  }
}

function loopPath({ vertices }: Loop, frame: Frame): string {
  const [first] = vertices;
  if (!first || vertices.length < 2) throw new InternalError('a loop needs two corners at least');
  const sides = sidesOf(vertices).map(([from, to]) => {
    const arc = arcBetween(from, to);
    const end = `${mm(frame.x(to.x))} ${mm(frame.y(to.y))}`;
    if (!arc) return `L${end}`;
    // Flipping y turns a counter-clockwise arc into a clockwise one: sweep flag 0.
    return `A${mm(arc.radius)} ${mm(arc.radius)} 0 ${Math.abs(arc.sweep) > Math.PI ? 1 : 0} ${arc.sweep > 0 ? 0 : 1} ${end}`;
  });
  return `M${mm(frame.x(first.x))} ${mm(frame.y(first.y))}${sides.join('')}Z`;
}
