import { pointOnSide, radiusFromBulge, sagittaFromBulge, sidesOf, sweepFromBulge } from '../base/arc';
import { boundsOf, type Bounds } from '../base/bounds';
import { toDegrees } from '../base/angle';
import {
  cutOrder,
  type Drawing,
  type Loop,
  type Operation,
  type Shape,
  type Stroke,
  type Vertex,
} from '../base/drawing';
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
/**
 * A wider arc is written as equal pieces. Of a half circle the printed radius fixes the middle badly: a radius 10⁻⁵ mm too large
 * flattens a disc of 35 mm by 0.03 mm (√(2·r·error)); up to a right angle the error stays as small as it is.
 */
const WIDEST_ARC = Math.PI / 2;
/** A side that swells less than this, mm, is drawn straight: nobody can cut it, and its radius grows without bound. */
const FLATTEST = 1e-4;
const COLOUR = /^#[0-9a-f]{6}$/iu;

export interface SvgOptions {
  readonly title: string;
  /** Blank border round the drawing, mm. */
  readonly margin?: number;
  /** Overrides of single groups' colours, `#rrggbb`. */
  readonly colours?: Readonly<Partial<Record<Operation, string>>>;
}

/**
 * A drawing as a whole SVG file, y turned to point down. Throws InternalError on a number that cannot be drawn, a loop of fewer than
 * two corners, a stroke of fewer than two points, a colour that is none, an empty drawing.
 */
export function writeSvg(drawing: Drawing, { title, margin = 5, colours = {} }: SvgOptions): string {
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
    [
      el('title', {}, [title]),
      el('desc', {}, ['Unit: mm. Drawn at 1:1; print or cut at 100 %.']),
      ...drawingGroups(drawing, bounds, margin, colours),
    ],
  );
  return `<?xml version="1.0" encoding="UTF-8"?>\n${write(root)}\n`;
}

/** One named group an operation, in the order they are cut; what a page puts into a picture of its own. */
export function drawingGroups(
  drawing: Drawing,
  bounds: Bounds,
  margin: number,
  colours: Readonly<Partial<Record<Operation, string>>> = {},
): Element[] {
  const frame: Frame = { x: (x) => x - bounds.minX + margin, y: (y) => bounds.maxY - y + margin };
  return cutOrder.flatMap((operation) => {
    const shapes = drawing.shapes.filter((shape) => shape.operation === operation);
    if (shapes.length === 0) return [];
    const colour = colourText(colours[operation] ?? SVG_COLOURS[operation]);
    const drawn: Paint = { fill: 'none', stroke: colour, 'stroke-width': mm(LINE_WIDTH) };
    const written: Paint = { fill: colour, stroke: 'none' };
    // A group that holds texts is painted for them; strokes among them are painted on their own.
    const texts = shapes.some(({ kind }) => kind === 'text');
    return [
      el(
        'g',
        { id: operation, ...(texts ? written : drawn) },
        shapes.map((shape) => draw(shape, frame, texts && shape.kind !== 'text' ? drawn : {})),
      ),
    ];
  });
}

type Paint = Pick<Element['attributes'], 'fill' | 'stroke' | 'stroke-width'>;

function colourText(colour: string): string {
  if (!COLOUR.test(colour)) throw new InternalError(`a colour must be written #rrggbb, not ${colour}`);
  return colour;
}

/** Drawing coordinates (y up) to the page's (y down). */
interface Frame {
  readonly x: (x: number) => number;
  readonly y: (y: number) => number;
}

function mm(value: number): string {
  return fixed(value, DECIMALS);
}

function draw(shape: Shape, frame: Frame, paint: Paint): Element {
  switch (shape.kind) {
    case 'loop':
      return el('path', { d: loopPath(shape, frame), ...paint });
    case 'circle':
      return el('circle', { cx: mm(frame.x(shape.x)), cy: mm(frame.y(shape.y)), r: mm(shape.radius), ...paint });
    case 'line':
      return el('path', { d: runPath([shape.from, shape.to], frame), ...paint });
    case 'stroke':
      return el('path', { d: runPath(shape.points, frame), ...paint });
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

function point([x, y]: readonly [number, number], frame: Frame): string {
  return `${mm(frame.x(x))} ${mm(frame.y(y))}`;
}

function runPath(points: Stroke['points'], frame: Frame): string {
  if (points.length < 2) throw new InternalError('a stroke needs two points at least');
  return `M${points.map((place) => point(place, frame)).join('L')}`;
}

function loopPath({ vertices }: Loop, frame: Frame): string {
  const [first] = vertices;
  if (!first || vertices.length < 2) throw new InternalError('a loop needs two corners at least');
  return `M${point([first.x, first.y], frame)}${sidesOf(vertices)
    .map(([from, to]) => sidePath(from, to, frame))
    .join('')}Z`;
}

function sidePath(from: Vertex, to: Vertex, frame: Frame): string {
  const chord = Math.hypot(to.x - from.x, to.y - from.y);
  if (!Number.isFinite(from.bulge)) throw new InternalError(`a loop has a bulge that is none: ${from.bulge}`);
  if (Math.abs(sagittaFromBulge(chord, from.bulge)) < FLATTEST) return `L${point([to.x, to.y], frame)}`;
  const radius = mm(radiusFromBulge(chord, from.bulge));
  // Turning y over makes a counter-clockwise arc (positive bulge) clockwise on paper: sweep flag 0. No piece is a large arc.
  const flags = from.bulge > 0 ? '0 0' : '0 1';
  const pieces = Math.ceil(Math.abs(sweepFromBulge(from.bulge)) / WIDEST_ARC - 1e-9);
  return Array.from({ length: pieces }, (_, index) => {
    const end = index === pieces - 1 ? ([to.x, to.y] as const) : pointOnSide(from, to, (index + 1) / pieces);
    return `A${radius} ${radius} 0 ${flags} ${point(end, frame)}`;
  }).join('');
}
