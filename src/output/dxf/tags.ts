import { MM_PER_INCH } from '../../base/units';
import { fixed } from '../number';

/** A group as it is written: its code on a line, its value on the next. */
export function tag(code: number, value: string): string {
  return `${code}\r\n${value}\r\n`;
}

/** Hundredths of 10⁻⁴ mm, to which drawings are checked against the plan; in inches two more, which is finer still. */
const COORDINATE_DECIMALS = { mm: 6, in: 8 } as const;
/** A bulge is a tangent of a quarter angle, and an arc's middle is found from its ends: at radii of metres both need more digits than a coordinate to say as much. */
export const FINE_DECIMALS = 12;

export type DxfUnits = keyof typeof COORDINATE_DECIMALS;

/** mm in one of each. */
export const UNIT_SIZE: Readonly<Record<DxfUnits, number>> = { mm: 1, in: MM_PER_INCH };

/** A real always has its decimal point: some readers go by lines, and take a bare `0` for the next group's code. */
export function real(value: number, decimals: number): string {
  const text = fixed(value, decimals);
  return text.includes('.') ? text : `${text}.0`;
}

export function coordinate(value: number, units: DxfUnits): string {
  return real(value, COORDINATE_DECIMALS[units]);
}

/** As it will be read again. */
export function asWritten(value: number, units: DxfUnits): number {
  return Number(coordinate(value, units));
}

/** A place in the plane, as the groups `first`, `first` + 10 and + 20. */
export function place(x: number, y: number, units: DxfUnits, first = 10): string {
  return tag(first, coordinate(x, units)) + tag(first + 10, coordinate(y, units)) + tag(first + 20, '0.0');
}
