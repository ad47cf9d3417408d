import { at } from '../base/at';
import { toDegrees } from '../base/angle';
import { InternalError } from '../base/errors';
import type { Box, Measure, Placed, Value } from '../base/findings';
import { formatForce, MM_PER_INCH, toFractionalInches, type LengthUnit } from '../base/units';
import type { Kind, Quantity } from './kinds';

/** Who is told: the unit of the job, or both where the maker asks for both; and what a field is called there (its path in a file, its label on the page). */
export interface Listener {
  readonly units: LengthUnit | 'both';
  readonly field?: (path: string) => string;
}

/** A value as its kind is said to the listener; null stays null where the kind allows it. Throws where value and kind do not fit. */
export function sayValue(kind: Kind, value: Value | undefined, to: Listener): string | number | null {
  if (typeof kind !== 'string') return text(value);
  if (value === null && kind.endsWith('?')) return null;
  const quantity = kind.replace(/\?$/u, '');
  if (!isQuantity(quantity)) throw new InternalError(`no such kind of value: ${kind}`);
  return SAYERS[quantity](value, to);
}

const SAYERS: Readonly<Record<Quantity, (value: Value | undefined, to: Listener) => string | number>> = {
  length: (value, to) => inUnits(to, (unit) => sayLength(number(value), unit)),
  fine: (value, to) => inUnits(to, (unit) => sayFine(number(value), unit)),
  given: (value, to) => inUnits(to, (unit) => sayGiven(number(value), unit)),
  bound: (value, to) => inUnits(to, (unit) => sayBound(number(value), unit)),
  measure: (value, to) => {
    const { of, value: amount } = measured(value);
    return of === 'degrees' ? `${sayNumber(amount)}°` : SAYERS[of](amount, to);
  },
  size: (value, to) => inUnits(to, (unit) => saySize(pair(value), unit)),
  angle: (value) => `${rounded(toDegrees(number(value)), 1)}°`,
  reading: (value) => `${rounded(toDegrees(number(value)), 2)}°`,
  force: (value, to) => inUnits(to, (unit) => formatForce(number(value), unit)),
  stress: (value, to) => inUnits(to, (unit) => sayStress(number(value), unit)),
  ratio: (value) => rounded(number(value), 2),
  percent: (value) => `${rounded(100 * number(value), 1)} %`,
  number: (value) => sayNumber(number(value)),
  count: (value) => number(value),
  text,
  names: (value) => joined(texts(value)),
  choices: (value) =>
    joined(
      texts(value).map((each) => `“${each}”`),
      'or',
    ),
  list: (value) => texts(value).join(', '),
  point: (value, to) => inUnits(to, (unit) => sayPoint(pair(value), unit)),
  boxes: (value, to) =>
    boxes(value)
      .map(({ name, size, at }, index) => {
        const where = inUnits(to, (unit) => `${saySize(size, unit)} at ${sayPoint(at, unit)}`);
        return `${index + 1}: ${where}, ${name}`;
      })
      .join('; '),
  place: (value, to) => {
    const { name, mm } = placed(value);
    return mm === null ? name : `${name} at ${inUnits(to, (unit) => sayLength(mm, unit))}`;
  },
  sized: (value, to) =>
    joined(
      things(value).map(({ name, mm }) =>
        mm === null ? name : `${name} (${inUnits(to, (unit) => sayLength(mm, unit))})`,
      ),
    ),
  field: (value, { field }) => (field ? field(text(value)) : text(value)),
};

/** In the one unit, or in both: `41.3 mm / 1.626 in`. */
function inUnits({ units }: Listener, say: (unit: LengthUnit) => string): string {
  return units === 'both' ? `${say('mm')} / ${say('in')}` : say(units);
}

function isQuantity(kind: string): kind is Quantity {
  return Object.hasOwn(SAYERS, kind);
}

/** `41.3 mm`; an inch fraction where the length is one, else thousandths. */
function sayLength(mm: number, units: LengthUnit): string {
  return units === 'mm' ? `${rounded(mm, 1)} mm` : inches(mm, 3);
}

/** `0.15 mm`; an inch fraction where the length is one, else tenths of a thousandth. */
export function sayFine(mm: number, units: LengthUnit): string {
  return units === 'mm' ? `${rounded(mm, 2)} mm` : inches(mm, 4);
}

/** As written, to eight digits. */
function sayGiven(mm: number, units: LengthUnit): string {
  return units === 'mm' ? `${Number(mm.toPrecision(8))} mm` : `${Number((mm / MM_PER_INCH).toPrecision(8))} in`;
}

/** `(100 mm, 50.1 mm)`. */
function sayPoint([x, y]: readonly [number, number], units: LengthUnit): string {
  return `(${sayLength(x, units)}, ${sayLength(y, units)})`;
}

/** As a round number: the ends of ranges are round in mm. */
function sayBound(mm: number, units: LengthUnit): string {
  return units === 'mm' ? `${rounded(mm, 3)} mm` : `${rounded(mm / MM_PER_INCH, 3)} in`;
}

function sayNumber(value: number): string {
  return String(Number(value.toPrecision(8)));
}

/** `600 × 400 mm`, `24 × 15.75 in`. */
function saySize([a, b]: readonly [number, number], units: LengthUnit): string {
  return units === 'mm'
    ? `${rounded(a, 0)} × ${rounded(b, 0)} mm`
    : `${rounded(a / MM_PER_INCH, 2)} × ${rounded(b / MM_PER_INCH, 2)} in`;
}

/** `250 MPa`, `36 ksi`: 1 ksi is 6.894757 MPa. */
function sayStress(mpa: number, units: LengthUnit): string {
  return units === 'mm' ? `${rounded(mpa, 0)} MPa` : `${rounded(mpa / MPA_PER_KSI, 1)} ksi`;
}

/** 1000 lbf (4448.2216 N) on a square inch (645.16 mm²). */
const MPA_PER_KSI = 6.894757;

/** Nearer than this a length is the fraction, mm. */
const SAME = 0.005;

function inches(mm: number, decimals: number): string {
  const { text: fraction, leftover } = toFractionalInches(mm, 64);
  return Math.abs(leftover) < SAME ? `${fraction} in` : `${rounded(mm / MM_PER_INCH, decimals)} in`;
}

/** To at most so many decimals, never −0. */
function rounded(value: number, decimals: number): string {
  return String(Number(value.toFixed(decimals)) + 0);
}

/** `S1, S2 and S3`. */
function joined(names: readonly string[], word = 'and'): string {
  return names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} ${word} ${at(names, -1)}`;
}

function misfit(value: Value | undefined, wanted: string): never {
  throw new InternalError(`a finding holds ${JSON.stringify(value)} where ${wanted} is said`);
}

function number(value: Value | undefined): number {
  return typeof value === 'number' ? value : misfit(value, 'a number');
}

function text(value: Value | undefined): string {
  return typeof value === 'string' ? value : misfit(value, 'text');
}

function texts(value: Value | undefined): readonly string[] {
  return Array.isArray(value) ? value.map((one: Value) => text(one)) : misfit(value, 'a list of names');
}

function pair(value: Value | undefined): readonly [number, number] {
  const [a, b] = Array.isArray(value) ? value.map((one: Value) => number(one)) : [];
  return a === undefined || b === undefined ? misfit(value, 'two lengths') : [a, b];
}

function placed(value: unknown): Placed {
  if (typeof value === 'object' && value !== null && 'name' in value && 'mm' in value) {
    const { name, mm } = value;
    if (typeof name === 'string' && (mm === null || typeof mm === 'number')) return { name, mm };
  }
  throw new InternalError(`a finding holds ${JSON.stringify(value)} where a thing and its place are said`);
}

function boxes(value: Value | undefined): readonly Box[] {
  const isBox = (one: unknown): one is Box => typeof one === 'object' && one !== null && 'size' in one && 'at' in one;
  return Array.isArray(value) && value.every(isBox) ? value : misfit(value, 'a list of shapes');
}

function measured(value: Value | undefined): Measure {
  return typeof value === 'object' && value !== null && 'of' in value && 'value' in value
    ? value
    : misfit(value, 'a measure');
}

function things(value: Value | undefined): readonly Placed[] {
  return Array.isArray(value) ? value.map((one: unknown) => placed(one)) : misfit(value, 'a list of things');
}
