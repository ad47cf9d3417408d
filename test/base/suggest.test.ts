import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nearest, wordDistance } from '../../src/base/suggest';

const KNOWN = ['angle', 'length', 'radius', 'radiusOf', 'legs'];

describe('the distance of two words', () => {
  it.each([
    // Levenshtein's own example: k → s, e → i, g added.
    ['kitten', 'sitting', 3],
    ['ab', 'ba', 1],
    ['xab', 'xba', 1],
    ['abcd', 'badc', 2],
    // By optimal string alignment, which changes no letter twice: not 2.
    ['ca', 'abc', 3],
    // Half a swap is none: two letters changed.
    ['ab', 'bc', 2],
    ['ab', 'ca', 2],
    ['abc', '', 3],
    ['', 'ab', 2],
    ['same', 'same', 0],
  ])('%s, %s: %i', (a, b, distance) => {
    expect(wordDistance(a, b)).toBe(distance);
    expect(wordDistance(b, a)).toBe(distance);
  });
});

describe('the nearest known word', () => {
  it.each([
    ['angel', 'angle'], // two neighbours swapped
    ['lenght', 'length'],
    ['radus', 'radius'], // one dropped
    ['legss', 'legs'], // one added
    ['RADIUSOF', 'radiusOf'], // case alone
  ])('%s → %s', (word, wanted) => {
    expect(nearest(word, KNOWN)).toBe(wanted);
  });

  it('none where none is near', () => {
    expect(nearest('countersink', KNOWN)).toBeNull();
    expect(nearest('x', KNOWN)).toBeNull();
    expect(nearest('angle', [])).toBeNull();
    expect(nearest('a'.repeat(100_000), KNOWN)).toBeNull();
  });

  it('at most 45 % of the longer word away, rounded up, and no longer than 60 letters', () => {
    // Ten letters: five may differ, six may not.
    expect(nearest('abcdefghij', ['abcdeVWXYZ'])).toBe('abcdeVWXYZ');
    expect(nearest('abcdefghij', ['abcdUVWXYZ'])).toBeNull();
    expect(nearest('abcde', ['abcdeVWXYZ'])).toBe('abcdeVWXYZ');
    expect(nearest('a'.repeat(60), ['a'.repeat(60)])).toBe('a'.repeat(60));
    expect(nearest('a'.repeat(61), ['a'.repeat(60)])).toBeNull();
  });

  it('a known word is its own nearest, and one slip never loses a word of five letters', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('angle', 'length', 'radius'),
        fc.nat(4),
        fc.constantFrom('q', 'z', ''),
        (word, at, put) => {
          expect(nearest(word, KNOWN)).toBe(word);
          expect(nearest(word.slice(0, at) + put + word.slice(at + 1), KNOWN)).toBe(word);
        },
      ),
    );
  });

  it('any text gives a known word or none', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), (word) => {
        expect([null, ...KNOWN]).toContain(nearest(word, KNOWN));
      }),
    );
  });
});
