import { bendingCurve, parameterAt, type BendingCurve } from '../../src/design/bend/curve';
import { sectionOf, type Section } from '../../src/design/bend/section';
import { formRadiusFor } from '../../src/design/bend/springback';

/** A flow curve typed by hand: MPa; `strength` and `exponent` with the yield as the curve's first, ε₀ = (Y/K)^(1/n). */
export interface FlowCurve {
  readonly modulus: number;
  readonly poisson: number;
  readonly yield: number;
  readonly strength?: number;
  readonly exponent?: number;
}

export const CS: FlowCurve = { modulus: 205_000, poisson: 0.29, yield: 206.8, strength: 530, exponent: 0.26 };
export const ALUMINIUM: FlowCurve = { modulus: 68_950, poisson: 0.33, yield: 144.8 };
export const DDS: FlowCurve = { modulus: 205_000, poisson: 0.29, yield: 158.6 };

export function sectionFrom({ strength, exponent, ...curve }: FlowCurve, thickness: number): Section {
  const hardening =
    strength === undefined || exponent === undefined
      ? null
      : { strength, exponent, initialStrain: (curve.yield / strength) ** (1 / exponent) };
  return sectionOf({ ...curve, hardening }, thickness, 1);
}

/** A sheet on its form: the curve, the form's mid radius (mm), and where on the curve that is. */
export interface OnForm {
  readonly curve: BendingCurve;
  readonly mid: number;
  readonly parameter: number;
}

/** The sheet on a form of inside radius `form`. */
export function onForm(flow: FlowCurve, thickness: number, form: number): OnForm {
  const curve = bendingCurve(sectionFrom(flow, thickness));
  const mid = form + thickness / 2;
  return { curve, mid, parameter: parameterAt(curve, 1 / mid) };
}

/** The sheet on the form that leaves inside radius `finished`. */
export function onFormFor(flow: FlowCurve, thickness: number, finished: number): OnForm {
  const mid = formRadiusFor(sectionFrom(flow, thickness), finished + thickness / 2);
  return onForm(flow, thickness, mid - thickness / 2);
}
