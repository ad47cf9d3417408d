import { toDegrees, toRadians } from '../../base/angle';
import { formatDiameter, MM_PER_INCH, NEWTONS_PER_POUND, toFractionalInches } from '../../base/units';
import { ROUNDING } from '../../base/tolerance';
import type { Printers } from '../plan/figures';

export type SheetUnits = 'mm' | 'in' | 'both';

const NEWTON_PER_KILOGRAM = 9.80665;
/** A thousand pounds-force on a square inch, as newtons on a square mm. */
const MEGAPASCALS_PER_KSI = (1000 * NEWTONS_PER_POUND) / MM_PER_INCH ** 2;
/** Keeps a number and its unit on one line. */
const JOIN = '\u00a0';

/** Numbers as the sheet says them, in the units it is written in. Lengths in mm, angles in radians, forces in N. */
export interface Measures {
  readonly units: SheetUnits;
  /** To cut and measure by: 0.1 mm, or thousandths of an inch with the nearest 1/32 in brackets. */
  readonly length: (mm: number) => string;
  /** The least that will do: rounded up to whole mm, or 1/16 in. */
  readonly atLeast: (mm: number) => string;
  /** A sheet's or board's thickness: 0.01 mm, or thousandths of an inch. */
  readonly thickness: (mm: number) => string;
  /** The diameter of a hole, its drill or a screw's head, as {@link formatDiameter} has it everywhere. */
  readonly tool: (mm: number) => string;
  /** A width that has to be met as it is: 0.01 mm; a fraction of an inch where it is one, else thousandths. */
  readonly exact: (mm: number) => string;
  readonly force: (newton: number) => string;
  /** A strength or a modulus: MPa, or thousands of pounds a square inch. */
  readonly stress: (megapascal: number) => string;
  /** kg, or pounds. */
  readonly mass: (kilogram: number) => string;
  readonly angle: (radians: number) => string;
}

/** Key figures as the sheet says numbers. */
export function printersIn({ length, force, angle }: Measures): Printers {
  return {
    length,
    force,
    angle: (inDegrees) => angle(toRadians(inDegrees)),
    share: (share) => `${(100 * share).toFixed(2)}\u00a0%`,
    ratio: (ratio) => ratio.toFixed(3),
  };
}

/** The way to say numbers in `units`. */
export function measuresIn(units: SheetUnits): Measures {
  const choose = (metric: string, inch: string): string =>
    ({ mm: metric, in: inch, both: `${metric} / ${inch}` })[units];
  return {
    units,
    length: (mm) => choose(metric(mm), inches(mm)),
    atLeast: (mm) =>
      choose(`${roundUp(mm, 1)}${JOIN}mm`, `${toFractionalInches(roundUp(mm, MM_PER_INCH / 16), 16).text}${JOIN}in`),
    thickness: (mm) => choose(`${trimmed(mm, 2)}${JOIN}mm`, `${(mm / MM_PER_INCH).toFixed(3)}${JOIN}in`),
    tool: (mm) => choose(joined(formatDiameter(mm, 'mm')), joined(formatDiameter(mm, 'in'))),
    exact: (mm) => choose(`${trimmed(mm, 2)}${JOIN}mm`, exactInches(mm)),
    force: (newton) =>
      choose(
        `${newton.toFixed(0)}${JOIN}N (${(newton / NEWTON_PER_KILOGRAM).toFixed(0)}${JOIN}kg)`,
        `${(newton / NEWTONS_PER_POUND).toFixed(0)}${JOIN}lbf`,
      ),
    mass: (kilogram) =>
      choose(
        `${kilogram.toFixed(2)}${JOIN}kg`,
        `${((kilogram * NEWTON_PER_KILOGRAM) / NEWTONS_PER_POUND).toFixed(1)}${JOIN}lb`,
      ),
    stress: (megapascal) =>
      choose(
        `${trimmed(megapascal, 1)}${JOIN}MPa`,
        `${String(Number((megapascal / MEGAPASCALS_PER_KSI).toPrecision(3)))}${JOIN}ksi`,
      ),
    angle: (radians) => degrees(toDegrees(radians)),
  };
}

/** `41.3 mm`. */
export function metric(mm: number): string {
  return `${mm.toFixed(1).replace(/^-0\.0$/u, '0.0')}${JOIN}mm`;
}

/** `1.628 in (1-5/8)`: thousandths of an inch as drawings and callipers have them, then the nearest 1/32 as a rule has it. */
export function inches(mm: number): string {
  const decimal = (mm / MM_PER_INCH).toFixed(3).replace(/^-0\.000$/u, '0.000');
  const { text } = toFractionalInches(mm);
  // Less than a rule shows: thousandths alone.
  return text === '0' && decimal !== '0.000' ? `${decimal}${JOIN}in` : `${decimal}${JOIN}in${JOIN}(${text})`;
}

/** `3/16 in`, or `0.236 in` where no fraction is it. */
function exactInches(mm: number): string {
  const { text, leftover } = toFractionalInches(mm, 64);
  return `${Math.abs(leftover) < SAME ? text : (mm / MM_PER_INCH).toFixed(3)}${JOIN}in`;
}

function joined(text: string): string {
  return text.replaceAll(' ', JOIN);
}

/** Two sizes are one, mm. */
const SAME = 1e-3;

/** `97.3°`. */
export function degrees(value: number): string {
  return `${value.toFixed(1).replace(/^-0\.0$/u, '0.0')}°`;
}

/** Up to a whole number of steps; what is a whole number already, but for rounding, stays. */
function roundUp(mm: number, step: number): number {
  return Math.ceil(mm / step - ROUNDING) * step;
}

function trimmed(value: number, decimals: number): string {
  return String(Number(value.toFixed(decimals)));
}
