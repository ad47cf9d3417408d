import { describe, expect, it } from 'vitest';
import { el } from '../../../src/output/xml';
import {
  isDimension,
  LEAST,
  meant,
  MOST,
  onScreen,
  shownWords,
  wordsOf,
  type Lying,
} from '../../../src/page/drawing/legible';

const text = (words: string, x: number, y: number, more = {}): ReturnType<typeof el> =>
  el('text', { x: String(x), y: String(y), 'font-size': '3', ...more }, [words]);
const lying = (scale: number, turned = false): Lying => ({
  place: { scale, x: 0, y: 0 },
  size: { width: 200, height: 100 },
  turned,
  letters: 'measures',
});

describe('the words of a drawing', () => {
  it('are found in groups that are moved, and turned about their own point', () => {
    const [first, second] = wordsOf([
      el('g', { transform: 'translate(10 20)' }, [
        text('120 mm', 1, 2),
        text('40 mm', 5, 6, { transform: 'rotate(-90 5 4)', 'text-anchor': 'end' }),
      ]),
    ]);
    expect(first).toMatchObject({ text: '120 mm', x: 11, y: 22, angle: 0, anchor: 'start' });
    expect(second).toMatchObject({ text: '40 mm', x: 15, y: 26, angle: -90, about: [15, 24], anchor: 'end' });
  });

  it.each([0.05, 0.5, 2, 4.3, 40])('are never smaller on the screen than can be read, at %d px a mm', (scale) => {
    const words = wordsOf([text('120 mm', 0, 10), text('7 mm', 0, 90)]);
    for (const { size } of shownWords(words, lying(scale))) expect(size * scale).toBeGreaterThanOrEqual(LEAST - 1e-9);
  });

  it('of dimensions are never larger than they need be; letters to be cut are as large as they are', () => {
    const words = wordsOf([text('120 mm', 0, 10)]);
    expect(shownWords(words, lying(40))[0]?.size).toBeCloseTo(MOST / 40);
    expect(shownWords(words, { ...lying(40), letters: 'cut' })[0]?.size).toBe(3);
  });

  it('on paper are as they come out of the printer, near and far', () => {
    const words = wordsOf([text('120 mm', 0, 10), text('7 mm', 1, 10)]);
    for (const scale of [0.2, 1, 40])
      expect(
        shownWords(words, { ...lying(scale), letters: 'print' }).map(({ size, hasRoom }) => [size, hasRoom]),
      ).toEqual(words.map(({ size }) => [size, true]));
  });

  it('that would lie on another wait until there is room for both', () => {
    const words = wordsOf([text('120 mm', 0, 10), text('125 mm', 0, 14)]);
    expect(shownWords(words, lying(1)).map(({ hasRoom }) => hasRoom)).toEqual([true, false]);
    expect(shownWords(words, lying(8)).map(({ hasRoom }) => hasRoom)).toEqual([true, true]);
  });

  it('turned a quarter, the upper left corner is at the upper right', () => {
    expect(onScreen([0, 0], lying(2, true))).toEqual([200, 0]);
    expect(onScreen([200, 0], lying(2, true))).toEqual([200, 400]);
  });

  it('a finger means the nearest dimension within reach, never a name or one out of sight', () => {
    const words = wordsOf([text('S1', 0, 10), text('120 mm', 0, 30), text('55 mm', 0, 60)]);
    const shown = shownWords(words, lying(5));
    expect(meant(shown, [5, 45], 24)).toBeNull();
    expect(meant(shown, [5, 165], 24)?.text).toBe('120 mm');
    expect(meant(shown, [5, 280], 24)?.text).toBe('55 mm');
  });

  it('tells measures from names', () => {
    expect(['120 mm', 'S1  300 mm', '⌀ 6 mm', '≈ 3-1/2 in', 'A: 80 mm wide'].every(isDimension)).toBe(true);
    expect(['S1', 'BS2', 'A', 'FRONT', 'screws-in'].some(isDimension)).toBe(false);
  });
});
