import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nearest } from '../../src/base/suggest';

const KNOWN = ['angle', 'length', 'radius', 'radiusOf', 'legs'];

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
