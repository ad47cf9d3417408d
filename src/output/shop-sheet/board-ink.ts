import { fixed } from '../number';
import { el, type Element } from '../xml';

/** Strokes and words of a board's drawing. All in mm on paper, y down. */

export type PaperPoint = readonly [number, number];

export const PEN = { board: '#222222', part: '#222222', thin: '#555555' } as const;

/** Capital height over font size, as in `write/svg.ts`. */
const CAPITAL = 0.72;
/** Below what a printer resolves, mm. */
const DECIMALS = 2;

/**
 * Advance of a character over the height of capitals, rather wide for names and measures: in Helvetica (Adobe's core font metrics)
 * digits and small letters take 0.56 of the font size or less, an S 0.67, a B 0.67; over 0.72 that is 0.78 and 0.93.
 */
const ADVANCE = 0.85;

/** The width a word takes, mm, its capitals `height` mm high: an upper estimate. */
export function wordWidth(text: string, height: number): number {
  return [...text].length * ADVANCE * height;
}

/** A word about its middle (or from its start or end), half-way up its capitals. */
export function word(
  text: string,
  [x, y]: PaperPoint,
  height: number,
  {
    anchor = 'middle',
    upright = false,
  }: { readonly anchor?: 'start' | 'middle' | 'end'; readonly upright?: boolean } = {},
): Element {
  return el(
    'text',
    {
      x: num(x),
      y: num(y + height / 2),
      'font-size': num(height / CAPITAL),
      'font-family': 'Helvetica, Arial, sans-serif',
      'text-anchor': anchor,
      fill: '#111111',
      ...(upright ? { transform: `rotate(-90 ${num(x)} ${num(y)})` } : {}),
    },
    [text],
  );
}

export function line(from: PaperPoint, to: PaperPoint, width: number, colour: string): Element {
  return el('path', { d: path([from, to], false), fill: 'none', stroke: colour, 'stroke-width': num(width) });
}

export function path(points: readonly PaperPoint[], closed: boolean): string {
  return `M${points.map(([x, y]) => `${num(x)} ${num(y)}`).join('L')}${closed ? 'Z' : ''}`;
}

export function num(value: number): string {
  return fixed(value, DECIMALS);
}
