import { at } from '../base/at';
import { colourNames, parseColour } from '../base/colour';
import { operations, type Operation } from '../base/drawing';
import { InternalError } from '../base/errors';

/** One colour as each format writes it. */
export interface Colour {
  /** `#rrggbb`. */
  readonly svg: string;
  /** Index, 1 to 7. */
  readonly dxf: number;
}

/** The basic colour indexes of a DXF; 7 is drawn black on white and white on black. Source: the format owner’s published colour index. */
const BASIC: readonly (readonly [index: number, colour: string])[] = [
  [1, colourNames.red],
  [2, colourNames.yellow],
  [3, colourNames.green],
  [4, colourNames.cyan],
  [5, colourNames.blue],
  [6, colourNames.magenta],
  [7, colourNames.black],
  [7, '#ffffff'],
];

/** A colour written as a name of `base/colour.ts` or `#rrggbb`, for both formats: in DXF the nearest of its basic colours, by red, green and blue. Null for anything else. */
export function colourOf(text: string): Colour | null {
  const svg = parseColour(text);
  return svg === null ? null : { svg, dxf: nearestIndex(svg) };
}

/** What the writers take, from a job’s colours by operation. Throws InternalError on a text that is no colour: the job reader has refused it. */
export function coloursFor(colours: Readonly<Partial<Record<Operation, string>>>): {
  readonly svg: Readonly<Partial<Record<Operation, string>>>;
  readonly dxf: Readonly<Partial<Record<Operation, number>>>;
} {
  const svg: Partial<Record<Operation, string>> = {};
  const dxf: Partial<Record<Operation, number>> = {};
  for (const operation of operations) {
    const text = colours[operation];
    if (text === undefined) continue;
    const colour = colourOf(text);
    if (!colour) throw new InternalError(`the ${operation} colour is none: ${text}`);
    svg[operation] = colour.svg;
    dxf[operation] = colour.dxf;
  }
  return { svg, dxf };
}

function nearestIndex(colour: string): number {
  const away = ([, basic]: readonly [number, string]): number =>
    Math.hypot(...channels(basic).map((value, index) => value - at(channels(colour), index)));
  return BASIC.reduce((best, basic) => (away(basic) < away(best) ? basic : best))[0];
}

/** Red, green and blue of `#rrggbb`, 0 to 255. */
function channels(colour: string): number[] {
  return [1, 3, 5].map((start) => Number.parseInt(colour.slice(start, start + 2), 16));
}
