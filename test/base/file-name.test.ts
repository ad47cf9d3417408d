import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fileName, shortHash } from '../../src/base/file-name';

describe('names for files and folders', () => {
  it('are plain where the title is', () => {
    expect(fileName('Rowing-skiff splash coaming')).toBe('rowing-skiff-splash-coaming');
  });

  it('stay inside their folder and safe on every system, whatever the title', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', minLength: 1, maxLength: 200 }), (title) => {
        expect(fileName(title)).toMatch(/^[a-z0-9][a-z0-9-]{0,69}$/u);
      }),
    );
    for (const title of ['CON', 'nul', 'com1', '..', '中文', 'a'.repeat(200), '-', 'Ø'])
      expect(fileName(title)).toMatch(/^(?!(?:con|nul|com\d)$)[a-z0-9][a-z0-9-]+$/u);
  });

  it('two titles that differ by more than capitals and spaces never share one', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: 'grapheme', minLength: 1, maxLength: 90 }),
        fc.string({ unit: 'grapheme', minLength: 1, maxLength: 90 }),
        (a, b) => {
          const same = (title: string): string => title.toLowerCase().replaceAll(' ', '-');
          if (same(a) !== same(b)) expect(fileName(a)).not.toBe(fileName(b));
        },
      ),
    );
    expect(fileName('A/B')).not.toBe(fileName('A B'));
  });
});

// Test vectors of the hash's authors: IETF draft-eastlake-fnv, appendix C, FNV-1a of 32 bits.
it.each([
  ['', '811c9dc5'],
  ['a', 'e40c292c'],
  ['foobar', 'bf9cf968'],
])('the hash of %j is %s', (text, expected) => {
  expect(shortHash(text)).toBe(expected);
});
