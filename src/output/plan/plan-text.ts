import type { Plan } from './plan';

/**
 * Digits a printed number keeps: a millionth of a millimetre on a bench-long form. The last bits of a double are not the same on every
 * machine (a power may be off by one bit from one browser to the next), and the same job must give the same bytes.
 */
const DIGITS = 10;

/** Less than this is what sums that cancel leave over, and 0 is meant. */
const NOTHING = 1e-12;

/** The plan as JSON text, as `plan --json` prints it and `plan.json` holds it. */
export function planText(plan: Plan): string {
  return `${JSON.stringify(plan, (_, value: unknown) => (typeof value === 'number' ? printed(value) : value), 2)}\n`;
}

function printed(value: number): number {
  return Math.abs(value) < NOTHING ? 0 : Number(value.toPrecision(DIGITS));
}
