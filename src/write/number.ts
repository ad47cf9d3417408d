import { InternalError } from '../base/errors';

/** The one rule by which numbers leave the program: fixed decimals, no exponent, no minus zero, trailing zeros dropped. Throws on NaN and infinity. */
export function fixed(value: number, decimals: number): string {
  if (!Number.isFinite(value)) throw new InternalError(`a drawing holds a number that is none: ${value}`);
  const text = value.toFixed(decimals).replace(/(\.\d*?)0+$/u, '$1').replace(/\.$/u, '');
  return text === '-0' ? '0' : text;
}
