import { describe, expect, it } from 'vitest';
import { planText } from '../../src/output/plan/plan-text';
import { planStarter } from '../helpers/starters';

const { plan } = planStarter('plain-curve');
const effortOf = (moment: number): unknown =>
  (JSON.parse(planText({ ...plan, effort: { ...plan.effort, moment } })) as { effort: { moment: unknown } }).effort
    .moment;

describe('numbers in plan.json', () => {
  it('keep ten digits, and no more than eleven decimals, so that no machine’s last bits are in them', () => {
    expect(effortOf(1234.567890123)).toBe(1234.56789);
    expect(effortOf(0.1234567890123)).toBe(0.123456789);
    // Two browsers' results of one sum that all but cancels.
    expect(effortOf(0.00004978833729)).toBe(0.00004978834);
    expect(effortOf(0.00004978833728)).toBe(0.00004978834);
    expect(Object.is(effortOf(-3e-13), 0)).toBe(true);
  });
});
