import type { PDFFont } from '@cantoo/pdf-lib';

/** Text on paper: what of it the typeface can show, how wide it is, how it is wrapped and shortened. Sizes mm, by the height of a capital. */
export interface Lettering {
  /** What is printed for a text: no control characters; a character the typeface lacks as its code point in brackets, `[U+1F600]`. */
  readonly printable: (text: string) => string;
  /** Width of a printable text, mm. */
  readonly width: (text: string, height: number) => number;
  /** Width of any text as it is printed, mm. */
  readonly measure: (text: string, height: number) => number;
  /** A printable text in the typeface's codes, for the page. */
  readonly encode: (text: string) => string;
}

/** Height of a capital over the size of the type in DejaVu Sans, plain and condensed alike (1493 of 2048 units in the face's OS/2 table). */
export const CAPITAL = 1493 / 2048;

/** Scripts whose letters stand side by side whatever their neighbours: Latin, Greek, Cyrillic, punctuation, signs; with ligatures switched off. */
const SIMPLE = /^[\u0020-\u02ff\u0370-\u0482\u048a-\u052f\u2010-\u2027\u2030-\u205e\u20a0-\u20bf\u2100-\u2bff]*$/u;
const UNPRINTABLE = /[\p{Cc}\p{Zl}\p{Zp}]/gu;

export function makeLettering(font: PDFFont): Lettering {
  const known = new Set(font.getCharacterSet());
  const show = (character: string): string => {
    const code = character.codePointAt(0) ?? 0;
    return known.has(code) ? character : `[U+${code.toString(16).toUpperCase().padStart(4, '0')}]`;
  };
  const printable = (text: string): string =>
    [...text.normalize('NFC').replaceAll(UNPRINTABLE, ' ')].map(show).join('');
  const cache = new Map<string, number>();
  // A text said again, on another page or along a ruler, keeps its codes: finding them is most of the work.
  const codes = new Map<string, string>();
  const laidOut = (text: string): number => {
    const width = cache.get(text) ?? font.widthOfTextAtSize(text, 1 / CAPITAL);
    cache.set(text, width);
    return width;
  };
  // Letters that do not join or stack are as wide together as one by one: shaping a whole line anew for every word would take seconds.
  const width = (text: string, height: number): number =>
    height * (SIMPLE.test(text) ? [...text].reduce((sum, character) => sum + laidOut(character), 0) : laidOut(text));
  return {
    printable,
    width,
    measure: (text, height) => width(printable(text), height),
    encode: (text) => {
      const code = codes.get(text) ?? font.encodeText(text).toString();
      codes.set(text, code);
      return code;
    },
  };
}

/** A text cut to a width, with an ellipsis where something is missing. */
export function shorten({ printable, width }: Lettering, text: string, height: number, room: number): string {
  const whole = printable(text);
  if (width(whole, height) <= room) return whole;
  const characters = [...whole];
  const cut = (length: number): string => `${characters.slice(0, length).join('').trimEnd()}…`;
  let [fits, tooLong] = [0, characters.length];
  while (tooLong - fits > 1) {
    const middle = Math.floor((fits + tooLong) / 2);
    if (width(cut(middle), height) <= room) fits = middle;
    else tooLong = middle;
  }
  return cut(fits);
}

/** The whole of a text on as many lines as it takes; a word wider than the line is broken. */
export function wrap({ printable, width }: Lettering, text: string, height: number, room: number): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of printable(text).split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (width(longer, height) <= room) {
      line = longer;
      continue;
    }
    if (line !== '') lines.push(line);
    line = '';
    for (const character of word) {
      if (line !== '' && width(line + character, height) > room) {
        lines.push(line);
        line = '';
      }
      line += character;
    }
  }
  return [...lines, line];
}
