import Fraction from 'fraction.js';
import { MM_PER_INCH } from './inch';

export { MM_PER_INCH } from './inch';

/** Quantity text to mm and back: the only conversion factors, the only grammar of lengths. Exact fractions until the last step. */

/** Pound-force: 0.45359237 kg × 9.80665 m/s². */
export const NEWTONS_PER_POUND = 4.4482216152605;

const INCH = String(MM_PER_INCH);

/** mm in one of each unit a length may be written in. */
const LENGTH_UNITS: Readonly<Record<string, string>> = {
  mm: '1',
  cm: '10',
  m: '1000',
  in: INCH,
  inch: INCH,
  inches: INCH,
  '"': INCH,
  '″': INCH,
  '”': INCH,
  ft: '304.8',
  foot: '304.8',
  feet: '304.8',
  "'": '304.8',
  '′': '304.8',
  '’': '304.8',
};

/** N in one of each unit a force may be written in. */
export const NEWTONS_PER = {
  N: 1,
  kN: 1000,
  lbf: NEWTONS_PER_POUND,
  lb: NEWTONS_PER_POUND,
  lbs: NEWTONS_PER_POUND,
  pounds: NEWTONS_PER_POUND,
  kgf: 9.80665,
  kg: 9.80665,
} as const;

/** ½ ¼ ⅞ and their like, each of one character, with the digit before it. No digit may follow, or `½2` would read as 1/22. */
const VULGAR = /(\d?)\s*([\u00BC-\u00BE\u2150-\u215E])(?!\d)/gu;

/** Longer than any length a person writes. */
const LONGEST = 64;

export type LengthUnit = 'mm' | 'in';

export type ParsedLength =
  | { readonly ok: true; readonly mm: number }
  | { readonly ok: true; readonly gauge: number }
  | { readonly ok: false; readonly reason: LengthTrouble };

/** Why a text is no length. */
export const lengthTroubles = ['too long', 'missing', 'comma', 'no length', 'zero under the line'] as const;
export type LengthTrouble = (typeof lengthTroubles)[number];

const NUMBER = String.raw`(?:\d+(?:\.\d*)?|\.\d+)`;
const SIMPLE = String.raw`\d+\s*\/\s*\d+`;
/** Joins a whole to its fraction, and feet to inches: a space, or a hyphen spaced alike on both sides. */
const JOINT = String.raw`(?:\s+-\s+|-|\s+)`;
/** Whole, decimal, fraction, or mixed. */
const AMOUNT = String.raw`(\d+${JOINT}${SIMPLE}|${SIMPLE}|${NUMBER})`;
const UNIT = String.raw`(mm|cm|m|inches|inch|in|feet|foot|ft|["″”'′’])`;
const ONE = new RegExp(String.raw`^([+-]?)\s*${AMOUNT}\s*${UNIT}?$`, 'u');
const FEET_AND_INCHES = new RegExp(
  String.raw`^([+-]?)\s*(\d+)\s*(?:['′’]|ft|feet|foot)${JOINT}?${AMOUNT}\s*(?:["″”]|in|inch|inches)$`,
  'u',
);
/** `18 ga`, `18 gauge`, `18 gage`, `#18`, `ga. 18`, `no. 18`. */
const GAUGE = /^(?:(\d{1,2})[\s-]*(?:ga|gauge|gage|g)\.?|(?:#|(?:ga|gauge|gage|no)\.?)\s*(\d{1,2}))$/iu;

/**
 * A length as people write it: `38 mm`, `1-1/2 in`, `1 1/2"`, `3/4`, `.063 in`, `5' 3 1/2"`, `½ in`, or a gauge, `18 ga`.
 * A bare number takes `bare`. Never throws.
 */
export function parseLength(text: string, bare: LengthUnit): ParsedLength {
  if (text.length > LONGEST) return refuse('too long');
  const plain = spellOutVulgar(text.trim());
  if (plain === '') return refuse('missing');
  if (plain.includes(',')) return refuse('comma');
  const gauge = GAUGE.exec(plain);
  if (gauge) return { ok: true, gauge: Number(gauge[1] ?? gauge[2]) };
  const both = FEET_AND_INCHES.exec(plain);
  if (both) return sum(both[1] ?? '', [both[2] ?? '', "'"], [both[3] ?? '', '"']);
  const one = ONE.exec(plain);
  if (!one) return refuse('no length');
  return sum(one[1] ?? '', [one[2] ?? '', one[3] ?? bare]);
}

/** What a force without a unit is in, by the unit of lengths. */
export const bareForce: Readonly<Record<LengthUnit, 'N' | 'lbf'>> = { mm: 'N', in: 'lbf' };

/** A force, N: `200 N`, `45 lbf`; a bare number is N, or lbf beside inches. Null where the text is none. */
export function parseForce(text: string, beside: LengthUnit): number | null {
  const match = new RegExp(String.raw`^(${NUMBER})\s*(N|kN|lbf|lbs|lb|pounds|kgf|kg)?$`, 'u').exec(
    text.length > LONGEST ? '' : text.trim(),
  );
  if (!match) return null;
  const units: Readonly<Record<string, number>> = NEWTONS_PER;
  return Number(match[1]) * (units[match[2] ?? bareForce[beside]] ?? NaN);
}

/** Degrees as text: `90`, `90°`, `90 deg`. */
export const ANGLE_TEXT = /^\s*[+-]?(\d+(\.\d*)?|\.\d+)\s*(°|deg|degrees?)?\s*$/;

/** An angle, degrees: `90`, `90°`, `90 deg`. Null where the text is none. */
export function parseAngle(text: string): number | null {
  return text.length <= LONGEST && ANGLE_TEXT.test(text) ? Number.parseFloat(text) : null;
}

function refuse(reason: LengthTrouble): ParsedLength {
  return { ok: false, reason };
}

/** `1½` → `1 1/2`; the fraction slash ⁄ of typesetters becomes the plain one. */
function spellOutVulgar(text: string): string {
  return text
    .replaceAll(
      VULGAR,
      (_, whole: string, sign: string) => `${whole === '' ? '' : `${whole} `}${sign.normalize('NFKC')}`,
    )
    .replaceAll('⁄', '/');
}

function sum(sign: string, ...terms: readonly (readonly [string, string])[]): ParsedLength {
  let total = new Fraction(0);
  for (const [amount, unit] of terms) {
    const value = readAmount(amount);
    if (!value) return refuse('zero under the line');
    total = total.add(value.mul(LENGTH_UNITS[unit] ?? '1'));
  }
  const mm = total.valueOf();
  return { ok: true, mm: sign === '-' ? -mm : mm };
}

function readAmount(text: string): Fraction | null {
  const match = /^(?:(\d+)[\s-]+)?(\d+)\s*\/\s*(\d+)$/u.exec(text);
  if (!match) return new Fraction(text.startsWith('.') ? `0${text}` : text.replace(/\.$/u, ''));
  if (BigInt(match[3] ?? '0') === 0n) return null;
  return new Fraction(BigInt(match[2] ?? '0'), BigInt(match[3] ?? '1')).add(new Fraction(match[1] ?? '0'));
}

/** A length as inches to the nearest 1/`parts`, `1-1/2`, with what is left over, mm (positive: the length is longer than the text says). */
export function toFractionalInches(mm: number, parts = 32): { readonly text: string; readonly leftover: number } {
  const count = Math.round((Math.abs(mm) / MM_PER_INCH) * parts);
  const [whole, rest] = [Math.floor(count / parts), count % parts];
  const fraction = rest === 0 ? '' : new Fraction(rest, parts).toFraction();
  const sign = mm < 0 && count > 0 ? '-' : '';
  const text = `${sign}${whole > 0 || rest === 0 ? String(whole) : ''}${whole > 0 && rest > 0 ? '-' : ''}${fraction}`;
  return { text, leftover: mm - (Math.sign(mm) * count * MM_PER_INCH) / parts };
}

/** A length for reading: `41.3 mm`, or `1-5/8 in`, nearest 1/32. */
export function formatLength(mm: number, unit: LengthUnit, decimals = 1): string {
  return unit === 'mm' ? `${mm.toFixed(decimals)} mm` : `${toFractionalInches(mm).text} in`;
}

/** A fraction of an inch is exact within this, mm: less than a drill's own tolerance. */
const EXACT = 0.02;

/**
 * The diameter (mm) of a hole, drill, bit or screw head, the same wherever it is said: hundredths of a mm; or the 1/64 in it is, else
 * thousandths of an inch.
 */
export function formatDiameter(mm: number, unit: LengthUnit): string {
  if (unit === 'mm') return `${Number(mm.toFixed(2))} mm`;
  const { text, leftover } = toFractionalInches(mm, 64);
  return Math.abs(leftover) <= EXACT ? `${text} in` : `${(mm / MM_PER_INCH).toFixed(3)} in`;
}

/** A force (N) for reading: whole N, or whole pounds-force beside inches. */
export function formatForce(newtons: number, unit: LengthUnit): string {
  return unit === 'mm' ? `${newtons.toFixed(0)} N` : `${(newtons / NEWTONS_PER_POUND).toFixed(0)} lbf`;
}
