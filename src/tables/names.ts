import { nearest, wordDistance } from '../base/suggest';
import type { MetalName } from './schema';

/** A row that can be named. */
export interface Row {
  readonly id: string;
  readonly name: string;
}

/** The row with this id or name, however it is spaced and capitalised: `mdf-3/4`, `MDF 3/4 in`, `3/4" mdf`. */
export function rowNamed<Named extends Row>(text: string, rows: readonly Named[]): Named | undefined {
  const exact = rows.find(({ id }) => id === text);
  if (exact || text.length > LONGEST) return exact;
  const wanted = spelling(text);
  return rows.find(({ id, name }) => spelling(id) === wanted || spelling(name) === wanted);
}

/** Longer than any name. */
const LONGEST = 60;
/** A word of the text is one of a row's where at least this much of it fits. */
const FITS = 0.75;

/** Words in order of the alphabet, without units: a board's thickness is told by its number. */
function spelling(text: string): string {
  return wordsOf(text)
    .filter((word) => !['in', 'inch', 'mm'].includes(word))
    .sort()
    .join(' ');
}

/** Lower case, split where no letter, digit, `/` or `.` stands, and between a word and the number joined to it: `mdf18`. */
function wordsOf(text: string): string[] {
  return text
    .toLowerCase()
    .replaceAll(/(?<![a-z0-9])(\d+)([a-z]{2,})/gu, '$1 $2')
    .replaceAll(/([a-z]{3,})(\d)/gu, '$1 $2')
    .split(/[^a-z0-9/.]+/u)
    .filter((word) => word !== '');
}

/**
 * The rows that may be meant by a text that names none, nearest first: those it is another name of; else those that share most words
 * with it; else the one whose id is spelled most like it. Empty where nothing comes near.
 */
export function candidates<Named extends Row>(
  text: string,
  rows: readonly Named[],
  otherNames: readonly MetalName[],
): readonly Named[] {
  if (text.length > LONGEST) return [];
  const words = wordsOf(british(text));
  const fits = otherNames.filter(({ names }) => names.some((name) => wordsOf(name).join(' ') === words.join(' ')));
  if (fits.length > 0)
    return ordered(
      fits.flatMap((each) => each.fits),
      rows,
    );
  const near = nearest(
    text,
    rows.map(({ id }) => id),
  );
  const best = near === null ? undefined : rows.find(({ id }) => id === near);
  // A slip of a letter or two is told from a name that only looks like it.
  if (best && wordDistance(british(text), best.id) <= SLIP) return [best];
  const sharing = mostShared(words, rows, otherNames);
  return sharing.length > 0 ? sharing : best ? [best] : [];
}

/** Letters that a slip of the pen changes at most. */
const SLIP = 2;

function ordered<Named extends Row>(ids: readonly string[], rows: readonly Named[]): Named[] {
  return [...new Set(ids)].flatMap((id) => rows.find((row) => row.id === id) ?? []);
}

/** The rows with the most of the words, where that is at least half of them: in the order of other names where those fit, else of the table. */
function mostShared<Named extends Row>(
  words: readonly string[],
  rows: readonly Named[],
  otherNames: readonly MetalName[],
): Named[] {
  const scored = rows.map((row) => {
    const own = [...wordsOf(row.id), ...wordsOf(row.name)];
    const other = otherNames.filter(({ fits }) => fits.includes(row.id)).flatMap(({ names }) => names.flatMap(wordsOf));
    return { row, score: words.reduce((sum, word) => sum + Math.max(share(word, own), 0.9 * share(word, other)), 0) };
  });
  const most = Math.max(0, ...scored.map(({ score }) => score));
  if (most < words.length / 2 || most === 0) return [];
  const best = scored.filter(({ score }) => score > most - 0.2).sort((a, b) => b.score - a.score);
  return best.map(({ row }) => row);
}

/** 1 where the word is one of `words`, less where it nearly is, 0 where it is not. */
function share(word: string, words: readonly string[]): number {
  if (words.includes(word)) return 1;
  const near = Math.max(
    0,
    ...words.map((other) => 1 - wordDistance(word, other) / Math.max(word.length, other.length)),
  );
  return word.length >= 4 && near >= FITS ? near : 0;
}

/** The tables' spelling: aluminium, galvanised, normalised. */
function british(text: string): string {
  return text
    .toLowerCase()
    .replaceAll('aluminum', 'aluminium')
    .replaceAll(/(galvan|normal|anod)ize/gu, '$1ise');
}
