import type { Place } from '../../../base/side';
import { circleCurve, lineCurve, type Curve, type EllipseCurve } from '../curve';
import { readLength, readNumbers } from './numbers';
import { readPathData } from './path-data';
import type { XmlElement } from './xml-tree';

/** Elements that draw edges. */
export const DRAWN: readonly string[] = ['path', 'rect', 'circle', 'ellipse', 'line', 'polyline', 'polygon'];

/** What lengths in an element are measured by: px to the inch, and the viewport that per cent are of, user units. */
export interface Measure {
  readonly dpi: number;
  readonly width: number;
  readonly height: number;
}

/** The connected lines an element draws, in its own units; throws SyntaxError where its numbers cannot be read. */
export function shapeCurves(element: XmlElement, measure: Measure): Curve[][] {
  switch (element.name) {
    case 'path':
      return readPathData(element.attributes['d'] ?? '');
    case 'rect':
      return [rectangle(element, measure)];
    case 'circle':
    case 'ellipse':
      return [roundShape(element, measure)];
    case 'line':
      return [straightLine(element, measure)];
    default:
      return [pointList(element)];
  }
}

type Axis = 'x' | 'y' | 'both';

function length(element: XmlElement, name: string, axis: Axis, measure: Measure): number {
  const text = element.attributes[name];
  if (text === undefined || (text === 'auto' && name.startsWith('r'))) return 0;
  const whole = { x: measure.width, y: measure.height, both: Math.hypot(measure.width, measure.height) / Math.SQRT2 }[
    axis
  ];
  const read = readLength(text, measure.dpi, whole);
  if (!read || !Number.isFinite(read.px)) throw new SyntaxError(`${name} is no length: ${text.slice(0, 40)}`);
  return read.px;
}

function straightLine(element: XmlElement, measure: Measure): Curve[] {
  const from = { x: length(element, 'x1', 'x', measure), y: length(element, 'y1', 'y', measure) };
  return [lineCurve(from, { x: length(element, 'x2', 'x', measure), y: length(element, 'y2', 'y', measure) })];
}

function roundShape(element: XmlElement, measure: Measure): Curve[] {
  const centre = { x: length(element, 'cx', 'x', measure), y: length(element, 'cy', 'y', measure) };
  const [rx, ry] =
    element.name === 'circle' ? twice(length(element, 'r', 'both', measure)) : bothRadii(element, measure);
  if (!(rx > 0 && ry > 0)) return [];
  return [{ ...circleCurve(centre, rx), v: { x: 0, y: ry } }];
}

function twice(radius: number): [number, number] {
  return [radius, radius];
}

/** One radius not given is as the other. */
function bothRadii(element: XmlElement, measure: Measure): [number, number] {
  const isGiven = (name: string): boolean => (element.attributes[name] ?? 'auto') !== 'auto';
  const [rx, ry] = [length(element, 'rx', 'x', measure), length(element, 'ry', 'y', measure)];
  return [isGiven('rx') ? rx : ry, isGiven('ry') ? ry : rx];
}

function rectangle(element: XmlElement, measure: Measure): Curve[] {
  const [x, y] = [length(element, 'x', 'x', measure), length(element, 'y', 'y', measure)];
  const [width, height] = [length(element, 'width', 'x', measure), length(element, 'height', 'y', measure)];
  if (!(width > 0 && height > 0)) return [];
  const [roundX, roundY] = bothRadii(element, measure);
  const [rx, ry] = [Math.min(Math.max(0, roundX), width / 2), Math.min(Math.max(0, roundY), height / 2)];
  const corner = (cx: number, cy: number, quarter: number): EllipseCurve => ({
    ...circleCurve({ x: cx, y: cy }, rx, (quarter * Math.PI) / 2, Math.PI / 2),
    v: { x: 0, y: ry },
  });
  const [left, right, top, bottom] = [x + rx, x + width - rx, y + ry, y + height - ry];
  const round = rx > 0 && ry > 0;
  if (!round)
    return joined(
      [
        { x, y },
        { x: x + width, y },
        { x: x + width, y: y + height },
        { x, y: y + height },
      ],
      true,
    );
  return [
    lineCurve({ x: left, y }, { x: right, y }),
    corner(right, top, 3),
    lineCurve({ x: x + width, y: top }, { x: x + width, y: bottom }),
    corner(right, bottom, 0),
    lineCurve({ x: right, y: y + height }, { x: left, y: y + height }),
    corner(left, bottom, 1),
    lineCurve({ x, y: bottom }, { x, y: top }),
    corner(left, top, 2),
  ];
}

function pointList(element: XmlElement): Curve[] {
  const numbers = readNumbers(element.attributes['points'] ?? '');
  if (!numbers || numbers.length % 2 === 1) throw new SyntaxError('points are no pairs of numbers');
  const places = numbers.flatMap((x, index) => (index % 2 === 0 ? [{ x, y: numbers[index + 1] ?? 0 }] : []));
  return joined(places, element.name === 'polygon');
}

function joined(places: readonly Place[], closed: boolean): Curve[] {
  const pairs = places.map((place, index) => [place, places[index + 1] ?? (closed ? places[0] : undefined)] as const);
  return pairs.flatMap(([from, to]) => (to ? [lineCurve(from, to)] : []));
}
