import face from '../../../shared/stroke-font.json';
import { InternalError } from '../../base/errors';

/** The single-stroke typeface of `shared/stroke-font.json`: which glyphs a text is written with. Units are the face's own. */

export type Point = readonly [x: number, y: number];

/** A letter: the room it takes along the baseline, and its strokes. */
export interface Glyph {
  readonly advance: number;
  readonly strokes: readonly (readonly Point[])[];
}

/** Height of a capital, and how far below the baseline a glyph may reach, in units of the face. */
export const CAPITAL = face.capitalHeight;
export const DESCENDER = face.descender;

/** Left between a letter and an accent above it, in units of the face. */
const ACCENT_GAP = 2;
/** Stands for every character the face lacks: an empty box. */
const UNKNOWN = '\ufffd';
/** Letters that lose their dot under an accent. */
const DOTLESS: Readonly<Record<string, string>> = { i: 'ı', j: 'ȷ' };

// Held to its schema by the tests, as the reference tables are.
const rows = face.rows as unknown as readonly (Glyph & { readonly character: string })[];
const glyphs: ReadonlyMap<string, Glyph> = new Map(
  rows.map(({ character, advance, strokes }) => [character, { advance, strokes }]),
);

/**
 * The glyphs of a text, one a letter with its accents, none higher than a capital. An accent the face lacks is left out; any other
 * character it lacks is an empty box; spaces of all kinds and control characters are a space, and what is never shown is left out.
 */
export function glyphsOf(text: string): Glyph[] {
  const shown = text
    .normalize('NFC')
    .replaceAll(/[\p{Cc}\p{Z}]/gu, ' ')
    .replaceAll(/\p{Cf}/gu, '');
  return (shown.match(/\P{M}\p{M}*/gu) ?? []).map((letter) => noHigherThanCapitals(accented(letter)));
}

/** A letter and its accents, taken apart and put together again from what the face has. */
function accented(letter: string): Glyph {
  const [base = UNKNOWN, ...rest] = letter.normalize('NFD');
  const accents = rest.flatMap((accent) => glyphs.get(accent) ?? []);
  const above = accents.some((accent) => !hangs(accent));
  const plain = glyphs.get((above ? DOTLESS[base] : undefined) ?? base);
  return plain ? accents.reduce(withAccent, plain) : glyph(UNKNOWN);
}

/** The accent over or under the middle of the letter, which makes room for it where it is narrower. */
function withAccent(letter: Glyph, accent: Glyph): Glyph {
  const advance = Math.max(letter.advance, 2 * Math.max(...accent.strokes.flat().map(([x]) => Math.abs(x))));
  const up = hangs(accent) ? 0 : topOf(letter.strokes) + ACCENT_GAP;
  return {
    advance,
    strokes: [...shifted(letter, (advance - letter.advance) / 2, 0), ...shifted(accent, advance / 2, up)],
  };
}

function shifted({ strokes }: Glyph, dx: number, dy: number): Point[][] {
  return strokes.map((stroke) => stroke.map(([x, y]): Point => [x + dx, y + dy]));
}

/** Whether an accent hangs from the baseline instead of standing on its letter. */
function hangs({ strokes }: Glyph): boolean {
  return topOf(strokes) <= 0;
}

/** Brackets and capitals with accents would rise above the rest: they are pressed down. */
function noHigherThanCapitals(glyph: Glyph): Glyph {
  const press = Math.min(1, CAPITAL / topOf(glyph.strokes));
  return press === 1
    ? glyph
    : { ...glyph, strokes: glyph.strokes.map((stroke) => stroke.map(([x, y]): Point => [x, y * press])) };
}

function topOf(strokes: Glyph['strokes']): number {
  return Math.max(0, ...strokes.flat().map(([, y]) => y));
}

function glyph(character: string): Glyph {
  const found = glyphs.get(character);
  if (!found) throw new InternalError(`the stroke font has no ${character}`);
  return found;
}
