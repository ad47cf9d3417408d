import type { AssemblyPlan } from '../panel/assembly/assembly-plan';
import type { PanelPlan } from '../panel/panel-plan';
import type { Plan } from './plan';

/**
 * Digits a printed number keeps: a millionth of a millimetre on a bench-long form. The last bits of a double are not the same on every
 * machine (a power may be off by one bit from one browser to the next), and the same job must give the same bytes.
 */
const DIGITS = 10;

/** Decimals no printed number goes beyond, however small: what sums that cancel leave over is not the same on every machine either. */
const DECIMALS = 11;

/** The plan as JSON text, as `plan --json` prints it and `plan.json` holds it. */
export function planText(plan: Plan | PanelPlan | AssemblyPlan): string {
  return `${JSON.stringify(plan, (_, value: unknown) => (typeof value === 'number' ? printed(value) : value), 2)}\n`;
}

function printed(value: number): number {
  const finest = Number(value.toFixed(DECIMALS));
  return finest === 0 ? 0 : Number(finest.toPrecision(DIGITS));
}
