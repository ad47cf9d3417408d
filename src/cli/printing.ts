import { formatForce, type LengthUnit } from '../base/units';
import type { Printers } from '../output/plan/figures';
import { inches } from '../output/shop-sheet/measures';

/** How a plan is printed: its units, and the terminal's width in columns. */
export interface Printing {
  readonly units: LengthUnit;
  readonly width: number;
  readonly length: (mm: number) => string;
  readonly drill: (mm: number) => string;
}

/** Numbers as the table prints them. */
export function printersFor(units: LengthUnit): Printers {
  return {
    length: (mm) => printLength(mm, units),
    angle: degrees,
    force: (newtons) => formatForce(newtons, units),
    share: percent,
    ratio: (ratio) => ratio.toFixed(3),
  };
}

/** Whoever searches the text types plain spaces. */
export function plainSpaces(text: string): string {
  return text.replaceAll('\u00a0', ' ');
}

/** mm to a hundredth; or thousandths of an inch with the nearest 1/32 in brackets. */
export function printLength(mm: number, units: LengthUnit): string {
  return units === 'mm' ? `${mm.toFixed(2)} mm` : plainSpaces(inches(mm));
}

/** Degrees to a tenth. */
export function degrees(value: number): string {
  return `${value.toFixed(1).replace(/^-0\.0$/u, '0.0')}°`;
}

function percent(value: number): string {
  return `${(100 * value).toFixed(1)} %`;
}
