import { pointOnSide, sidesOf, sweepFromBulge } from '../../base/arc';
import type { Vertex } from '../../base/drawing';
import { MM_PER_INCH } from '../../base/units';
import { fixed } from '../number';
import { CAPITAL, type Lettering } from './lettering';
import type { Rect } from './paper';
import { ROUNDING } from '../../base/tolerance';

/** Draws a page in mm, origin at the page's lower left corner, y up. */
export interface Pen {
  /** Width of the lines that follow, mm, and their dashes: drawn, left out, … */
  readonly style: (width: number, dash?: readonly number[]) => void;
  readonly line: (from: Point, to: Point) => void;
  /** An open run of straight strokes. */
  readonly run: (points: readonly Point[]) => void;
  readonly loop: (vertices: readonly Vertex[]) => void;
  readonly circle: (x: number, y: number, radius: number) => void;
  /** A filled box; grey 0 (black) to 1 (white). */
  readonly fill: (box: Rect, grey?: number) => void;
  readonly box: (box: Rect) => void;
  /** Text with capitals `height` mm high; `anchor` as in drawings. The text must be printable. */
  readonly text: (
    text: string,
    at: readonly [number, number],
    height: number,
    options?: { readonly angle?: number; readonly anchor?: 'start' | 'middle' | 'end' },
  ) => void;
  /** Draws with all outside a box cut off. */
  readonly within: (box: Rect, draw: () => void) => void;
}

/** A pen that writes a PDF page's content stream. */
interface StreamPen extends Pen {
  readonly content: () => string;
}

type Point = readonly [number, number];

/** Points of 1/72 in in a mm. */
export const POINTS = 72 / MM_PER_INCH;
/** Tenths of a micrometre. */
const DECIMALS = 4;
/** Widest arc drawn as one Bézier curve: it strays from the circle by 4 parts in 10⁷ of its radius. */
const WIDEST_ARC = Math.PI / 6;

/** Operators: ISO 32000-1, annex A. */
export function makePen(letters: Lettering, fontName: string): StreamPen {
  const out: string[] = [`${fixed(POINTS, 9)} 0 0 ${fixed(POINTS, 9)} 0 0 cm 1 J 1 j`];
  const numbers = (...values: readonly number[]): string => values.map((value) => fixed(value, DECIMALS)).join(' ');
  const write = (operator: string, ...values: readonly number[]): void => {
    out.push(values.length === 0 ? operator : `${numbers(...values)} ${operator}`);
  };
  const outline = (vertices: readonly Vertex[]): void => {
    const [first] = vertices;
    if (!first) return;
    write('m', first.x, first.y);
    for (const [from, to] of sidesOf(vertices))
      for (const curve of curvesOf(from, to)) write(curve.length === 2 ? 'l' : 'c', ...curve);
    write('h');
  };
  return {
    style: (width, dash = []) => {
      write('w', width);
      out.push(`[${numbers(...dash)}] 0 d`);
    },
    line: (from, to) => {
      write('m', ...from);
      write('l', ...to);
      write('S');
    },
    run: (points) => {
      for (const [index, point] of points.entries()) write(index === 0 ? 'm' : 'l', ...point);
      write('S');
    },
    loop: (vertices) => {
      outline(vertices);
      write('S');
    },
    circle: (x, y, radius) => {
      outline([
        { x: x - radius, y, bulge: 1 },
        { x: x + radius, y, bulge: 1 },
      ]);
      write('S');
    },
    fill: ({ x, y, width, height }, grey = 0) => {
      write('q');
      write('g', grey);
      write('re', x, y, width, height);
      write('f');
      write('Q');
    },
    box: ({ x, y, width, height }) => {
      write('re', x, y, width, height);
      write('S');
    },
    text: (text, [x, y], height, { angle = 0, anchor = 'start' } = {}) => {
      if (text === '') return;
      const back = { start: 0, middle: 1 / 2, end: 1 }[anchor] * letters.width(text, height);
      const [cosine, sine] = [Math.cos(angle), Math.sin(angle)];
      write('BT');
      out.push(`/${fontName} ${numbers(height / CAPITAL)} Tf`);
      write('Tm', cosine, sine, -sine, cosine, x - back * cosine, y - back * sine);
      out.push(`${letters.encode(text)} Tj`);
      write('ET');
    },
    within: ({ x, y, width, height }, draw) => {
      write('q');
      write('re', x, y, width, height);
      write('W n');
      draw();
      write('Q');
    },
    content: () => `${out.join('\n')}\n`,
  };
}

/**
 * A side of a loop as straight (x, y) and cubic Bézier pieces (two handles and the end). The handles of an arc of sweep θ over a chord c
 * are c/(3·cos²(θ/4)) long, along its tangents: the usual (4/3)·tan(θ/4)·r with r = c/(2·sin(θ/2)), kept exact for flat arcs.
 */
export function curvesOf(from: Vertex, to: Pick<Vertex, 'x' | 'y'>): number[][] {
  if (from.bulge === 0) return [[to.x, to.y]];
  const whole = sweepFromBulge(from.bulge);
  const pieces = Math.ceil(Math.abs(whole) / WIDEST_ARC - ROUNDING);
  const sweep = whole / pieces;
  const point = (index: number): Point => (index === pieces ? [to.x, to.y] : pointOnSide(from, to, index / pieces));
  return Array.from({ length: pieces }, (_, index) => {
    const [[x0, y0], [x1, y1]] = [point(index), point(index + 1)];
    const [heading, handle] = [
      Math.atan2(y1 - y0, x1 - x0),
      Math.hypot(x1 - x0, y1 - y0) / (3 * Math.cos(sweep / 4) ** 2),
    ];
    const [leave, arrive] = [heading - sweep / 2, heading + sweep / 2];
    return [
      x0 + handle * Math.cos(leave),
      y0 + handle * Math.sin(leave),
      x1 - handle * Math.cos(arrive),
      y1 - handle * Math.sin(arrive),
      x1,
      y1,
    ];
  });
}
