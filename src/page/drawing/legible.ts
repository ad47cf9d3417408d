import type { Element } from '../../output/xml';
import type { Place, Point, Size } from './pan';

/** The words of a drawing: where they stand, how large they must be shown to be read, and which there is room for. */

export interface Word {
  readonly text: string;
  /** Start, middle or end of the baseline, mm. */
  readonly x: number;
  readonly y: number;
  /** Of the font, mm. */
  readonly size: number;
  readonly anchor: 'start' | 'middle' | 'end';
  /** Clockwise on the screen, degrees. */
  readonly angle: number;
  /** About which it is turned, mm. */
  readonly about: Point;
}

/** A word as it is shown. */
export interface Shown {
  readonly word: Word;
  /** Of the font, mm of the drawing. */
  readonly size: number;
  /** Its box on the screen, px. */
  readonly box: Box;
  /** Whether it has room; a word without comes into sight as the drawing is drawn nearer. */
  readonly hasRoom: boolean;
}

interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Smallest font that is read at arm's length, px; and the largest a dimension needs, so that it stays whole in sight as one draws nearer. */
export const LEAST = 13;
export const MOST = 20;
/** Width of a character and height of capitals over the font size, as plain sans faces have them. */
const ADVANCE = 0.56;
const CAPITAL = 0.72;

/** Every word of a tree, in the order it is written in. Knows the transforms our drawings use: moved groups, turned words. */
export function wordsOf(elements: readonly Element[], from: Point = [0, 0]): Word[] {
  return elements.flatMap(({ name, attributes, children }) => {
    if (name === 'text')
      return [wordFrom(attributes, children.filter((child) => typeof child === 'string').join(''), from)];
    const [right, down] =
      /^translate\((\S+) (\S+)\)$/u
        .exec(attributes.transform ?? '')
        ?.slice(1)
        .map(Number) ?? [];
    return wordsOf(
      children.filter((child) => typeof child !== 'string'),
      [from[0] + (right ?? 0), from[1] + (down ?? 0)],
    );
  });
}

function wordFrom(attributes: Element['attributes'], text: string, [right, down]: Point): Word {
  const [x, y] = [Number(attributes.x ?? 0) + right, Number(attributes.y ?? 0) + down];
  const turn = /^rotate\((\S+) (\S+) (\S+)\)$/u.exec(attributes.transform ?? '');
  const anchor = attributes['text-anchor'];
  return {
    text,
    x,
    y,
    size: Number(attributes['font-size'] ?? 0),
    anchor: anchor === 'middle' || anchor === 'end' ? anchor : 'start',
    angle: Number(turn?.[1] ?? 0),
    about: turn ? [Number(turn[2]) + right, Number(turn[3]) + down] : [x, y],
  };
}

/**
 * A drawing's letters: `measures`, of any size that can be read; `cut`, to be cut or engraved, so never shown smaller than they are;
 * `print`, as they come out on paper, neither larger nor smaller.
 */
export type Letters = 'measures' | 'cut' | 'print';

/** How a drawing lies on the screen: its place, its own size, mm, and whether it is turned a quarter clockwise. */
export interface Lying {
  readonly place: Place;
  readonly size: Size;
  readonly turned: boolean;
  readonly letters: Letters;
}

/** Every word at a size to read it, larger print first; a word that would lie on another waits. */
export function shownWords(words: readonly Word[], lying: Lying): Shown[] {
  const taken: Box[] = [];
  const found = new Map<Word, Shown>();
  for (const word of [...words].sort((a, b) => b.size - a.size)) {
    const size = sizeOf(word, lying);
    const box = boxOf(word, size, lying);
    const hasRoom = lying.letters === 'print' || taken.every((other) => !overlap(box, other));
    if (hasRoom) taken.push(box);
    found.set(word, { word, size, box, hasRoom });
  }
  return words.flatMap((word) => found.get(word) ?? []);
}

function sizeOf({ size }: Word, { letters, place }: Lying): number {
  if (letters === 'print') return size;
  return Math.min(letters === 'cut' ? Infinity : MOST / place.scale, Math.max(LEAST / place.scale, size));
}

function boxOf({ text, x, y, anchor, angle, about }: Word, size: number, lying: Lying): Box {
  const width = ADVANCE * size * [...text].length;
  const left = x - { start: 0, middle: width / 2, end: width }[anchor];
  const corners = [
    [left, y],
    [left + width, y],
    [left, y - CAPITAL * size],
    [left + width, y - CAPITAL * size],
  ].map(([cornerX = 0, cornerY = 0]) => onScreen(rotated([cornerX, cornerY], about, angle), lying));
  const [xs, ys] = [corners.map(([across]) => across), corners.map(([, down]) => down)];
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}

function rotated([x, y]: Point, [aboutX, aboutY]: Point, degrees: number): Point {
  const [sin, cos] = [Math.sin((degrees * Math.PI) / 180), Math.cos((degrees * Math.PI) / 180)];
  const [dx, dy] = [x - aboutX, y - aboutY];
  return [aboutX + dx * cos - dy * sin, aboutY + dx * sin + dy * cos];
}

/** A point of the drawing, mm, on the screen, px. */
export function onScreen([x, y]: Point, { place, size, turned }: Lying): Point {
  const [across, down] = turned ? [size.height - y, x] : [x, y];
  return [place.x + place.scale * across, place.y + place.scale * down];
}

function overlap(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

/** The dimension a finger at `at` means: the nearest shown word with a number in it, no farther than `reach`, px. */
export function meant(shown: readonly Shown[], [x, y]: Point, reach: number): Word | null {
  const near = shown
    .filter(({ hasRoom, word }) => hasRoom && isDimension(word.text))
    .map(({ word, box }) => ({
      word,
      away: Math.hypot(Math.max(0, box.left - x, x - box.right), Math.max(0, box.top - y, y - box.bottom)),
    }))
    .filter(({ away }) => away <= reach)
    .sort((a, b) => a.away - b.away);
  return near[0]?.word ?? null;
}

/** Whether a word tells a measure: a number that is not just the number of a part, as in `S3`. */
export function isDimension(text: string): boolean {
  return /(?:^|[\s(⌀≈])\d/u.test(text);
}
