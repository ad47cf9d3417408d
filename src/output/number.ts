import { InternalError } from '../base/errors';

/** Far beyond any length or radius here; a larger number is a mistake, and would come out as an exponent. */
const LARGEST = 1e12;

/** The one rule by which numbers leave the program: fixed decimals (0…12), no exponent, no minus zero, trailing zeros dropped. Throws on NaN, infinity and beyond ±10¹². */
export function fixed(value: number, decimals: number): string {
  if (!(Math.abs(value) <= LARGEST)) throw new InternalError(`a drawing holds a number that cannot be drawn: ${value}`);
  const digits = value.toFixed(decimals);
  const text = decimals > 0 ? withoutZeros(digits) : digits;
  return text === '-0' ? '0' : text;
}

/** Without the zeros after the last digit behind the point, nor a point after which nothing stands. */
function withoutZeros(digits: string): string {
  let end = digits.length;
  while (digits[end - 1] === '0') end -= 1;
  if (digits[end - 1] === '.') end -= 1;
  return digits.slice(0, end);
}
