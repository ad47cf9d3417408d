import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { folderName } from '../../src/cli/folder-name';

describe('folder names', () => {
  it('are plain where the title is', () => {
    expect(folderName('Rowing-skiff splash coaming')).toBe('rowing-skiff-splash-coaming');
  });

  it('stay inside their folder and safe on every system, whatever the title', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', minLength: 1, maxLength: 200 }), (title) => {
        expect(folderName(title)).toMatch(/^[a-z0-9][a-z0-9-]{0,69}$/u);
      }),
    );
    for (const title of ['CON', 'nul', 'com1', '..', '中文', 'a'.repeat(200), '-', 'Ø']) expect(folderName(title)).toMatch(/^(?!(?:con|nul|com\d)$)[a-z0-9][a-z0-9-]+$/u);
  });

  it('two titles that differ by more than capitals and spaces never share one', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', minLength: 1, maxLength: 90 }), fc.string({ unit: 'grapheme', minLength: 1, maxLength: 90 }), (a, b) => {
        const same = (title: string): string => title.toLowerCase().replaceAll(' ', '-');
        if (same(a) !== same(b)) expect(folderName(a)).not.toBe(folderName(b));
      }),
    );
    expect(folderName('A/B')).not.toBe(folderName('A B'));
  });
});
