import { pointOnSide, radiusFromBulge, sagittaFromBulge, sidesOf, sweepFromBulge } from '../base/arc';
import { boundsOf, type Bounds } from '../base/bounds';
import { toDegrees } from '../base/angle';
import { lineColours } from '../base/colour';
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
import { MM_PER_INCH, type LengthUnit } from '../base/units';
import { el, write, type Element } from './xml';
import { fixed } from './number';
import { ROUNDING } from '../base/tolerance';

/** SVG 1.1 at true size: width and height in mm and a viewBox in the same numbers, so that one user unit is one mm. */

/** Wide enough to trace, narrow enough to cut to, mm. */
const LINE_WIDTH = 0.25;
/** Capital height over font size of the plain sans faces browsers fall back to (Helvetica 0.72, Arial 0.716, DejaVu Sans 0.729). */
const CAPITAL_HEIGHT = 0.72;
const FONT = 'Helvetica, Arial, sans-serif';
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
  /** Draws a bar of 100 mm, or of 4 in, below the drawing to check the scale by; none where not said. */
  readonly check?: LengthUnit;
  /** Overrides of single groups' colours, `#rrggbb`. */
  readonly colours?: Readonly<Partial<Record<Operation, string>>>;
  /** Of every place in the drawing; 5 where not said. */
  readonly decimals?: number;
}

/**
 * A drawing as a whole SVG file, y turned to point down. Throws InternalError on a number that cannot be drawn, a loop of fewer than
 * two corners, a stroke of fewer than two points, a colour that is none, an empty drawing.
 */
export function writeSvg(
  drawing: Drawing,
  { title, margin = 5, check, colours = {}, decimals = DECIMALS }: SvgOptions,
): string {
  const bounds = boundsOf(drawing);
  const below = bounds.maxY - bounds.minY + 2 * margin;
  const bar = check === undefined ? null : checkBar(check, margin, below);
  const width = Math.max(bounds.maxX - bounds.minX + 2 * margin, bar?.width ?? 0);
  const height = bar?.height ?? below;
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
      el('desc', {}, ['Drawn at 1:1; print or cut at 100 %.']),
      ...groups(drawing, frameOf(bounds, margin, decimals), colours),
      ...(bar ? [bar.group] : []),
    ],
  );
  return `<?xml version="1.0" encoding="UTF-8"?>\n${write(root)}\n`;
}

/** What the bar below a drawing must measure, mm, and how it is called. */
const CHECK_BAR = { mm: { length: 100, name: '100 mm' }, in: { length: 4 * MM_PER_INCH, name: '4 in' } } as const;
const CHECK_COLOUR = '#999999';
/** Below the drawing's own page, mm: where the bar lies, how far its ends stand out, and where the page ends. */
const CHECK_AT = { bar: 4, ends: 1.5, end: 8, letters: 2 };

/** A bar to lay a rule on, below everything that is cut: in a group of its own, to leave out at the machine. */
function checkBar(
  units: LengthUnit,
  margin: number,
  below: number,
): { readonly group: Element; readonly width: number; readonly height: number } {
  const { length, name } = CHECK_BAR[units];
  const [y, ends] = [below + CHECK_AT.bar, CHECK_AT.ends];
  const line = (x1: number, y1: number, x2: number, y2: number): string => `M${mm(x1)} ${mm(y1)}L${mm(x2)} ${mm(y2)}`;
  const bar = line(margin, y, margin + length, y);
  const stops = [margin, margin + length].map((x) => line(x, y - ends, x, y + ends)).join('');
  const words = `${name}. Measure it: if it is not, the scale was lost. Do not cut.`;
  const group = el('g', { id: 'check', fill: 'none', stroke: CHECK_COLOUR, 'stroke-width': mm(LINE_WIDTH) }, [
    el('path', { d: bar + stops }),
    el(
      'text',
      {
        x: mm(margin + 1),
        y: mm(y - 1),
        'font-family': FONT,
        'font-size': mm(CHECK_AT.letters / CAPITAL_HEIGHT),
        fill: CHECK_COLOUR,
        stroke: 'none',
      },
      [words],
    ),
  ]);
  return { group, width: length + 2 * margin, height: below + CHECK_AT.end };
}

/** One named group an operation, in the order they are cut; what a page puts into a picture of its own. */
export function drawingGroups(
  drawing: Drawing,
  bounds: Bounds,
  margin: number,
  colours: Readonly<Partial<Record<Operation, string>>> = {},
): Element[] {
  return groups(drawing, frameOf(bounds, margin, DECIMALS), colours);
}

function frameOf(bounds: Bounds, margin: number, decimals: number): Frame {
  return {
    x: (x) => x - bounds.minX + margin,
    y: (y) => bounds.maxY - y + margin,
    mm: (value) => fixed(value, decimals),
  };
}

function groups(drawing: Drawing, frame: Frame, colours: Readonly<Partial<Record<Operation, string>>>): Element[] {
  return cutOrder.flatMap((operation) => {
    const shapes = drawing.shapes.filter((shape) => shape.operation === operation);
    if (shapes.length === 0) return [];
    const colour = colourText(colours[operation] ?? lineColours[operation]);
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
  /** A length as it is written. */
  readonly mm: (value: number) => string;
}

function mm(value: number): string {
  return fixed(value, DECIMALS);
}

function draw(shape: Shape, frame: Frame, paint: Paint): Element {
  switch (shape.kind) {
    case 'loop':
      return el('path', { d: loopPath(shape, frame), ...paint });
    case 'circle':
      return el('circle', {
        cx: frame.mm(frame.x(shape.x)),
        cy: frame.mm(frame.y(shape.y)),
        r: frame.mm(shape.radius),
        ...paint,
      });
    case 'line':
      return el('path', { d: runPath([shape.from, shape.to], frame), ...paint });
    case 'stroke':
      return el('path', { d: runPath(shape.points, frame), ...paint });
    case 'text': {
      const [x, y] = [frame.mm(frame.x(shape.x)), frame.mm(frame.y(shape.y))];
      return el(
        'text',
        {
          x,
          y,
          'font-family': FONT,
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
  return `${frame.mm(frame.x(x))} ${frame.mm(frame.y(y))}`;
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
  const radius = frame.mm(radiusFromBulge(chord, from.bulge));
  // Turning y over makes a counter-clockwise arc (positive bulge) clockwise on paper: sweep flag 0. No piece is a large arc.
  const flags = from.bulge > 0 ? '0 0' : '0 1';
  const pieces = Math.ceil(Math.abs(sweepFromBulge(from.bulge)) / WIDEST_ARC - ROUNDING);
  return Array.from({ length: pieces }, (_, index) => {
    const end = index === pieces - 1 ? ([to.x, to.y] as const) : pointOnSide(from, to, (index + 1) / pieces);
    return `A${radius} ${radius} 0 ${flags} ${point(end, frame)}`;
  }).join('');
}
