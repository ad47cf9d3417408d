/** Numbers and lengths as SVG writes them. Source: SVG 1.1, "Basic data types"; CSS values for the units. */

const NUMBER = String.raw`[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?`;
const LENGTH = new RegExp(String.raw`^\s*(${NUMBER})\s*(mm|cm|in|pt|pc|px|q|%)?\s*$`, 'iu');
const LIST = new RegExp(String.raw`^\s*(?:${NUMBER}(?:\s*,\s*|\s+|(?=[+-.]))?)*\s*$`, 'u');

/** Inches in one of each absolute unit. */
const INCHES: Readonly<Record<string, number>> = {
  mm: 1 / 25.4,
  cm: 1 / 2.54,
  q: 1 / 101.6,
  in: 1,
  pt: 1 / 72,
  pc: 1 / 6,
};

/** A length in px, `whole` (px) being what per cent are of; null where it is none. `physical`: given in mm, inches and their like. */
export function readLength(
  text: string,
  dpi: number,
  whole: number,
): { readonly px: number; readonly physical: boolean } | null {
  const match = LENGTH.exec(text);
  if (!match) return null;
  const value = Number(match[1]);
  const unit = (match[2] ?? 'px').toLowerCase();
  if (unit === '%') return { px: (value / 100) * whole, physical: false };
  const inches = INCHES[unit];
  return { px: inches === undefined ? value : value * inches * dpi, physical: inches !== undefined };
}

/** A list of plain numbers parted by commas or blanks; null where there is anything else in it. */
export function readNumbers(text: string): number[] | null {
  if (text.length > LONGEST || !isList(text)) return null;
  const numbers = (text.match(new RegExp(NUMBER, 'gu')) ?? []).map(Number);
  return numbers.every(Number.isFinite) ? numbers : null;
}

const LONGEST = 5_000_000;

/** In pieces, so that no long list keeps the expression busy. */
function isList(text: string): boolean {
  return text.length < 2000 ? LIST.test(text) : /^[\d\s,.eE+-]*$/u.test(text);
}
