import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseLength } from '../../src/base/units';
import { lengthTicks, ticks } from '../../src/page/ticks';

const texts = (list: readonly { readonly text: string }[]): string[] => list.map(({ text }) => text);

describe('round values on an axis', () => {
  it.each([
    [0, 620, 4, ['0', '200', '400', '600']],
    [32.7, 50, 4, ['35', '40', '45', '50']],
    [-1.8, 1.9, 4, ['−1', '0', '1']],
    [104.1, 108.5, 4, ['106', '108']],
    [0.02, 0.11, 4, ['0.05', '0.10']],
  ])('from %d to %d, about %d', (low, high, wanted, expected) => {
    expect(texts(ticks(low, high, wanted))).toEqual(expected);
  });

  it('inches are halved as a rule is, and whole above', () => {
    expect(texts(lengthTicks(1.3 * 25.4, 2.2 * 25.4, 4, 'in'))).toEqual(['1-1/2', '1-3/4', '2']);
    expect(texts(lengthTicks(0, 18 * 25.4, 4, 'in'))).toEqual(['0', '5', '10', '15']);
    expect(texts(lengthTicks(0, 3 * 25.4, 3, 'in'))).toEqual(['0', '1', '2', '3']);
    expect(texts(lengthTicks(0, 25.4 / 8, 8, 'in'))).toEqual(['0', '1/32', '1/16', '3/32', '1/8']);
  });

  it('stand inside their range, evenly, no more than were wanted and one, and say what they are', () => {
    const range = fc.tuple(
      fc.double({ min: -500, max: 5000, noNaN: true }),
      fc.double({ min: 0.5, max: 3000, noNaN: true }),
      fc.integer({ min: 2, max: 8 }),
    );
    fc.assert(
      fc.property(range, fc.constantFrom('mm' as const, 'in' as const), ([low, span, wanted], unit) => {
        const list = lengthTicks(low, low + span, wanted, unit);
        expect(list.length).toBeLessThanOrEqual(wanted + 1);
        list.forEach(({ value, text }, index) => {
          expect(value).toBeGreaterThanOrEqual(low - 1e-6);
          expect(value).toBeLessThanOrEqual(low + span + 1e-6);
          const read = parseLength(text.replace('−', '-'), unit);
          expect(read.ok && 'mm' in read ? read.mm : NaN).toBeCloseTo(value, 6);
          const [before, next] = [list[index - 1], list[index + 1]];
          if (before && next) expect(next.value - value).toBeCloseTo(value - before.value, 6);
        });
      }),
    );
  });
});
