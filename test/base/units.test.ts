import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  formatDiameter,
  formatForce,
  formatLength,
  parseAngle,
  parseForce,
  parseLength,
  toFractionalInches,
} from '../../src/base/units';
import { cases } from '../helpers/cases';

const mm = (text: string, bare: 'mm' | 'in' = 'mm'): number => {
  const read = parseLength(text, bare);
  if (!read.ok || !('mm' in read)) throw new Error(`${text} is no length`);
  return read.mm;
};

describe('lengths as people write them', () => {
  // 1 in = 25.4 mm and 1 ft = 12 in exactly (international yard and pound agreement, 1959).
  it.each([
    ['38 mm', 38],
    ['38mm', 38],
    ['3.8 cm', 38],
    ['0.62 m', 620],
    ['1-1/2 in', 38.1],
    ['1 1/2"', 38.1],
    ['1 - 1/2 in', 38.1],
    ['3/4"', 19.05],
    ['.063 in', 1.6002],
    ['½ in', 12.7],
    ['1½"', 38.1],
    ['1-½ in', 38.1],
    ['1⁄2 in', 12.7],
    ['⅗ m', 600],
    [`5'-3"`, 1600.2],
    [`5' - 3 1/2"`, 1612.9],
    ['5’ 3”', 1600.2],
    ['2 ⅜ in', 60.325],
    [`5' 3 1/2"`, 1612.9],
    ['2 ft 3 in', 685.8],
    [`5'`, 1524],
    ['1/32 in', 0.79375],
    ['+4 mm', 4],
    ['-4 mm', -4],
    ['12', 12],
  ])('%s is %d mm', (text, expected) => {
    expect(mm(text)).toBe(expected);
  });

  it('bare numbers take the job’s unit', () => {
    expect(mm('3/4', 'in')).toBe(19.05);
    expect(mm('3/4', 'mm')).toBe(0.75);
  });

  it('reads gauges', () => {
    expect(parseLength('18 ga', 'mm')).toEqual({ ok: true, gauge: 18 });
    expect(parseLength('20 gauge', 'in')).toEqual({ ok: true, gauge: 20 });
    for (const text of ['18 GA', '#18', 'no. 18', '18-gage'])
      expect(parseLength(text, 'in')).toEqual({ ok: true, gauge: 18 });
    expect(parseLength('18 swg', 'in').ok, 'Standard Wire Gauge is another table').toBe(false);
  });

  it.each([
    '',
    ' ',
    '3,5 mm',
    '1/0 in',
    '1 1/0"',
    'NaN',
    'Infinity',
    '1e3 mm',
    '10 MM',
    '10 M',
    'inch',
    '1 2 3 mm',
    '1/2/3 in',
    '--3',
    '3 mm mm',
    '0x10',
    '9'.repeat(80),
    '٣ mm',
    '1"2',
    '½2 in',
    '1½2 in',
    '½½ in',
    '1/½ in',
    '1 -1/2 in',
    `5' -3"`,
    '5 ft 3',
    '1.5 1/2 in',
    '.',
    '1_000',
    '−5 mm',
  ])('refuses %j', (text) => {
    expect(parseLength(text, 'mm').ok).toBe(false);
  });

  it('any whole and fraction, however spelled, is the same length', () => {
    const whole = fc.integer({ min: 0, max: 500 });
    const bits = fc
      .constantFrom(2, 4, 8, 16, 32, 64)
      .chain((under) => fc.tuple(fc.integer({ min: 1, max: under - 1 }), fc.constant(under)));
    fc.assert(
      fc.property(
        whole,
        bits,
        fc.constantFrom(' ', '-', ' - '),
        fc.constantFrom('in', ' in', ' inches', '"'),
        (count, [over, under], joint, unit) => {
          // Halves to sixty-fourths are exact in binary, 25.4 is not: one rounding each way.
          expect(mm(`${count}${joint}${over}/${under}${unit}`)).toBeCloseTo((count + over / under) * 25.4, 9);
        },
      ),
    );
  });

  it('never throws, whatever the text', () => {
    fc.assert(
      fc.property(
        fc.oneof(fc.string(), fc.string({ unit: 'grapheme' }), fc.stringMatching(/^[-+0-9 ./'"inmft½]{0,20}$/)),
        (text) => {
          const read = parseLength(text, 'in');
          if (read.ok && 'mm' in read) expect(Number.isFinite(read.mm)).toBe(true);
        },
      ),
      { numRuns: cases(2000) },
    );
  });

  it('a fraction printed and read again is itself', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 5000 }), (count) => {
        const exact = (count * 25.4) / 32;
        const { text, leftover } = toFractionalInches(exact);
        expect(Math.abs(leftover)).toBeLessThan(1e-9);
        expect(mm(`${text} in`)).toBeCloseTo(exact, 9);
      }),
    );
  });

  it('the nearest 1/32 and what is left over make the length', () => {
    fc.assert(
      fc.property(fc.double({ min: -500, max: 500, noNaN: true }), (value) => {
        const { text, leftover } = toFractionalInches(value);
        expect(mm(`${text.startsWith('-') ? '-' : ''}${text.replace(/^-/u, '')} in`) + leftover).toBeCloseTo(value, 9);
        expect(Math.abs(leftover)).toBeLessThanOrEqual(25.4 / 64 + 1e-9);
      }),
    );
    expect(toFractionalInches(38.1).text).toBe('1-1/2');
    expect(toFractionalInches(0).text).toBe('0');
    expect(formatLength(19.05, 'in')).toBe('3/4 in');
    // 11/64 in = 4.3656 mm, 3/16 in = 4.7625 mm, 1-1/2 in = 38.1 mm; a #8 head is .332 in (8.4328 mm), no 1/64.
    expect([4.3656, 4.7625, 38.1, 8.4328, 4.5].map((mm) => formatDiameter(mm, 'in'))).toEqual([
      '11/64 in',
      '3/16 in',
      '1-1/2 in',
      '0.332 in',
      '0.177 in',
    ]);
    expect([4.5, 38, 8.4328].map((mm) => formatDiameter(mm, 'mm'))).toEqual(['4.5 mm', '38 mm', '8.43 mm']);
    expect(formatLength(19.05, 'mm', 2)).toBe('19.05 mm');
  });
});

describe('forces', () => {
  it('reads newtons and pounds-force', () => {
    expect(parseForce('200 N', 'in')).toBe(200);
    expect(parseForce('1.5 kN', 'mm')).toBe(1500);
    // 1 lbf = 0.45359237 kg × 9.80665 m/s².
    expect(parseForce('45 lbf', 'mm')).toBeCloseTo(45 * 0.45359237 * 9.80665, 9);
    // Bare: newtons beside mm, pounds beside inches.
    expect(parseForce('45', 'mm')).toBe(45);
    expect(parseForce('45', 'in')).toBeCloseTo(45 * 0.45359237 * 9.80665, 9);
    expect(parseForce('strong', 'mm')).toBeNull();
    expect(parseForce('-3 N', 'mm')).toBeNull();
  });
});

// NIST SP 811, appendix B.8: 1 lbf = 4.448 222 N.
it('forces for reading: whole newtons, or whole pounds-force beside inches', () => {
  expect(formatForce(199.6, 'mm')).toBe('200 N');
  expect(formatForce(45 * 4.448222, 'in')).toBe('45 lbf');
});

describe('angles as people write them', () => {
  it.each([
    ['90', 90],
    ['90°', 90],
    [' 45.5 deg ', 45.5],
    ['-3 degrees', -3],
    ['+.5 degree', 0.5],
    ['7.', 7],
    [`90${' '.repeat(62)}`, 90],
    [`90${' '.repeat(63)}`, null],
    ['90 rad', null],
    ['x90', null],
    ['', null],
  ])('%s is %s', (text, expected) => {
    expect(parseAngle(text)).toBe(expected);
  });

  it('a text of 64 characters may be a quantity, a longer one is none', () => {
    const [fits, long] = [`1${'0'.repeat(60)} mm`, `1${'0'.repeat(61)} mm`];
    expect(parseLength(fits, 'mm')).toEqual({ ok: true, mm: 1e60 });
    expect(parseLength(long, 'mm')).toEqual({ ok: false, reason: 'too long' });
    expect(parseForce(`1${'0'.repeat(61)} N`, 'mm')).toBe(1e61);
    expect(parseForce(`1${'0'.repeat(62)} N`, 'mm')).toBeNull();
  });

  it('millimetres are never a fraction of an inch, and a diameter of no 64th is in thousandths', () => {
    expect(formatLength(25.4, 'mm')).toBe('25.4 mm');
    expect(formatDiameter(25.4 / 64, 'in')).toBe('1/64 in');
    expect(formatDiameter(-25.4 / 64, 'in')).toBe('-1/64 in');
    expect(formatDiameter(0.45, 'in')).toBe('0.018 in');
  });
});
