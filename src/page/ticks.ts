import { MM_PER_INCH, toFractionalInches, type LengthUnit } from '../base/units';
import { ROUNDING } from '../base/tolerance';

/** A round value on an axis. */
export interface Tick {
  readonly value: number;
  readonly text: string;
}

/** Finest graduation of an inch rule, parts. */
const FINEST = 32;

/** Round values from `low` to `high` at steps of 1, 2 or 5 times a power of ten, about `wanted` of them. Valid for low < high. */
export function ticks(low: number, high: number, wanted: number): Tick[] {
  const step = roundStep((high - low) / wanted);
  const decimals = Math.max(0, -Math.floor(Math.log10(step) + ROUNDING));
  return at(low, high, step, (value) => value.toFixed(decimals));
}

/** The same for lengths, mm: round mm, or whole inches and the halvings of an inch, which is how a rule is divided. */
export function lengthTicks(low: number, high: number, wanted: number, unit: LengthUnit): Tick[] {
  if (unit === 'mm') return ticks(low, high, wanted);
  const rough = (high - low) / MM_PER_INCH / wanted;
  const step =
    rough >= 1 ? Math.max(1, roundStep(rough)) : Math.max(1 / FINEST, 2 ** Math.ceil(Math.log2(rough) - ROUNDING));
  return at(
    low / MM_PER_INCH,
    high / MM_PER_INCH,
    step,
    (value) => toFractionalInches(value * MM_PER_INCH, FINEST).text,
  ).map(({ value, text }) => ({ value: value * MM_PER_INCH, text }));
}

/** The next of 1, 2, 5, 10, 20 … (or 0.5, 0.2 …) at or above `rough`. */
function roundStep(rough: number): number {
  const ten = 10 ** Math.floor(Math.log10(rough) + ROUNDING);
  return ten * ([1, 2, 5].find((step) => step * ten >= rough * (1 - ROUNDING)) ?? 10);
}

function at(low: number, high: number, step: number, text: (value: number) => string): Tick[] {
  const first = Math.ceil(low / step - ROUNDING);
  const count = Math.floor(high / step + ROUNDING) - first + 1;
  return Array.from({ length: Math.max(0, count) }, (_, index) => {
    const value = (first + index) * step;
    return { value, text: text(value).replace(/^-/u, '−') };
  });
}
