import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import face from '../../../shared/stroke-font.json';
import { CAPITAL, DESCENDER, glyphsOf, type Glyph } from '../../../src/drawing/engrave/face';

const ascii = Array.from({ length: 0x7f - 0x20 }, (_, index) => String.fromCharCode(0x20 + index));
const ours = [...'°×–’‘“”·…±−—′″ØøÆæŒœßŁłĐđ'];
const accented = [
  ...'ÀÁÂÃÄÅÇÈÉÊËÌÍÎÏÑÒÓÔÕÖÙÚÛÜÝàáâãäåçèéêëìíîïñòóôõöùúûüýÿĀāĂăĄąĆćČčĎďĒēĖėĘęĚěĞğĢģİĪīĶķĻļŃńŇňŐőŘřŚśŞşŠšŢţŤťŪūŮůŰűŹźŻżŽžȘșȚț',
];
const one = (character: string): Glyph => {
  const [glyph, ...more] = glyphsOf(character);
  if (!glyph || more.length > 0) throw new Error(`not one glyph: ${character}`);
  return glyph;
};
const box = one('\ufffd');

describe('the stroke font’s table', () => {
  const pair = z.tuple([z.int(), z.int()]);
  const row = z.strictObject({
    character: z.string(),
    advance: z.int().nonnegative(),
    strokes: z.array(z.array(pair).min(2)),
    source: z.string().min(3),
  });
  const table = z.strictObject({
    about: z.string(),
    source: z.array(z.string()),
    capitalHeight: z.int().positive(),
    descender: z.int().positive(),
    rows: z.array(row),
  });

  it('keeps its schema, and no character stands twice', () => {
    const { rows } = table.parse(face);
    expect(rows.every(({ character }) => [...character].length === 1)).toBe(true);
    expect(new Set(rows.map(({ character }) => character)).size).toBe(rows.length);
  });

  it('goes with the acknowledgements its licence asks for (use restriction of the Hershey font distribution, point 1)', () => {
    const source = face.source.join(' ');
    expect(source).toContain(
      'The Hershey Fonts were originally created by Dr. A. V. Hershey while working at the U. S. National Bureau of Standards.',
    );
    expect(source).toContain(
      'originally created by James Hurt, Cognition, Inc., 900 Technology Park Drive, Billerica, MA 01821',
    );
  });

  it('takes the room of the published simplex roman face, futural.jhf (right less left of its records for A to Z, read in a conversion by others)', () => {
    const published = [
      18, 21, 21, 21, 19, 18, 21, 22, 8, 16, 21, 17, 24, 22, 22, 21, 22, 21, 20, 16, 22, 18, 24, 20, 18, 20,
    ];
    expect([...'ABCDEFGHIJKLMNOPQRSTUVWXYZ'].map((capital) => one(capital).advance)).toEqual(published);
  });

  it('has that face’s A and H: records I[RFJ[ RRFZ[ RMTWT and G]KFK[ RYFY[ RKPYP (from memory), R is 0, baseline [, y turned over', () => {
    expect(one('A').strokes).toEqual([
      [
        [9, 21],
        [1, 0],
      ],
      [
        [9, 21],
        [17, 0],
      ],
      [
        [4, 7],
        [14, 7],
      ],
    ]);
    expect(one('H').strokes).toEqual([
      [
        [4, 21],
        [4, 0],
      ],
      [
        [18, 21],
        [18, 0],
      ],
      [
        [4, 11],
        [18, 11],
      ],
    ]);
  });
});

describe('glyphs', () => {
  it('every printable ASCII character, and every other we write, has strokes of its own; the space has room', () => {
    for (const character of [...ascii.slice(1), ...ours, ...accented]) {
      expect(one(character).strokes.length, character).toBeGreaterThan(0);
      expect(one(character), character).not.toEqual(box);
    }
    expect(one(' ')).toEqual({ advance: 16, strokes: [] });
    // A minus is an en dash, a small l a capital I, as in other plain faces; no other two look alike.
    const drawn = [...ascii, ...ours]
      .filter((character) => character !== '−' && character !== 'l')
      .map((character) => JSON.stringify(one(character)));
    expect(new Set(drawn).size).toBe(drawn.length);
  });

  it('none leaves its room: from the descender to the height of a capital, from its left edge to its right', () => {
    for (const character of [...ascii, ...ours, ...accented, '中']) {
      const { advance, strokes } = one(character);
      for (const [x, y] of strokes.flat()) {
        expect(y, character).toBeGreaterThanOrEqual(-DESCENDER);
        expect(y, character).toBeLessThanOrEqual(CAPITAL + 1e-9);
        expect(x, character).toBeGreaterThanOrEqual(0);
        expect(x, character).toBeLessThanOrEqual(advance);
      }
    }
  });

  it('capitals and digits are of one height, standing on the baseline', () => {
    for (const character of 'ABCDEFGHIJKLMNOPRSTUVWXYZ0123456789') {
      const heights = one(character)
        .strokes.flat()
        .map(([, y]) => y);
      expect([Math.min(...heights), Math.max(...heights)], character).toEqual([0, CAPITAL]);
    }
  });

  it('letters with accents are their letter and more strokes, however they are encoded; i loses its dot', () => {
    for (const character of accented) {
      const [base = ''] = character.normalize('NFD');
      if (base !== 'i') expect(one(character).strokes.length, character).toBeGreaterThan(one(base).strokes.length);
      expect(one(character.normalize('NFD')), character).toEqual(one(character));
    }
    expect(one('í').strokes).toHaveLength(2);
    expect(one('é').strokes.slice(0, 1)).toEqual(one('e').strokes);
    // An accent the face lacks (a hook above): the letter alone.
    expect(one('ả')).toEqual(one('a'));
  });

  it.each(['中', 'λ', '한', '😀', '\ud83d', '½', 'ª'])('%j, which the face lacks, is one empty box', (character) => {
    expect(glyphsOf(character)).toEqual([box]);
    expect(box.strokes).toHaveLength(1);
    expect(box.strokes[0]?.[0]).toEqual(box.strokes[0]?.at(-1));
  });

  it('spaces and controls are a space; what is never shown, and an accent without a letter, is nothing', () => {
    for (const space of ['\u00a0', '\u2009', '\n', '\t', '\u2028', '\u0000'])
      expect(glyphsOf(space)).toEqual([one(' ')]);
    expect(glyphsOf('')).toEqual([]);
    expect(glyphsOf('\u0301\u200d\ufeffA')).toEqual([one('A')]);
  });
});
