import { InternalError } from '../base/errors';

/** Beyond this a number's digits run out, and its text would turn to an exponent. No drawing is a thousand kilometres wide. */
const LARGEST = 1e9;

/** The one rule by which numbers leave the program: fixed decimals (0…12), no exponent, no minus zero, trailing zeros dropped. Throws on NaN, infinity and beyond ±10⁹. */
export function fixed(value: number, decimals: number): string {
  if (!(Math.abs(value) <= LARGEST)) throw new InternalError(`a drawing holds a number that cannot be drawn: ${value}`);
  const digits = value.toFixed(decimals);
  const text = digits.includes('.') ? digits.replace(/\.?0+$/u, '') : digits;
  return text === '-0' ? '0' : text;
}
