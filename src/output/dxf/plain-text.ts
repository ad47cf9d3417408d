/** Longer strings make the format's own program refuse the file: "the maximum DXF file string length is 256 characters". */
const LONGEST_STRING = 255;
/** Ends a text that was cut. */
const DOTS = '...';

/**
 * Text as a DXF string that shows it literally. Control characters become spaces, so that none can end the string; a caret is
 * written caret, space; beyond ASCII and a backslash as \U+XXXX; what lies beyond the first plane as `?`, since readers decode code
 * by code and would be left with half characters. Percent signs are parted (`% %`): a pair begins a code, and readers
 * disagree on how to write a literal pair. Cut, with `...`, where the format allows no more.
 * Source: the format owner's reference, "ASCII control characters in DXF files" and "control codes and special characters".
 */
export function plainText(text: string): string {
  const shown = text.replaceAll(/[\p{Cc}\p{Zl}\p{Zp}]/gu, ' ').replaceAll(/%(?=%)/gu, '% ');
  let [whole, cut] = ['', ''];
  for (const character of shown) {
    whole += characterCode(character);
    if (whole.length <= LONGEST_STRING - DOTS.length) cut = whole;
    if (whole.length > LONGEST_STRING) return cut + DOTS;
  }
  return whole;
}

function characterCode(character: string): string {
  const code = character.codePointAt(0) ?? 0;
  if (character === '^') return '^ ';
  if (character !== '\\' && code < 0x7f) return character;
  if (code > 0xffff || (code >= 0xd800 && code <= 0xdfff)) return '?';
  return `\\U+${code.toString(16).toUpperCase().padStart(4, '0')}`;
}
