import { MM_PER_INCH, type LengthUnit } from '../../base/units';

/** A length (mm) as a label: hundredths of a mm, or thousandths of an inch; fractions are on the shop sheet. */
export function labelLength(length: number, unit: LengthUnit): string {
  return unit === 'mm' ? `${length.toFixed(2)} mm` : `${(length / MM_PER_INCH).toFixed(3)} in`;
}
