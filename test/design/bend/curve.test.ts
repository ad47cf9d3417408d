import { describe, expect, it } from 'vitest';
import { bendingCurve, parameterAt, parameterForMoment, type CurvePoint } from '../../../src/design/bend/curve';
import { sectionOf, type Section } from '../../../src/design/bend/section';
import { finishedRadius, formRadiusFor } from '../../../src/design/bend/springback';

/** The strip's own curve against what is added up layer by layer, and against the closed forms of an elastic and of a perfectly plastic strip. */

const steel = { modulus: 200_000, poisson: 0.3, yield: 200 };
const sections: readonly (readonly [string, Section])[] = [
  ['perfectly plastic', sectionOf({ ...steel, hardening: null }, 1.5, 1)],
  ['hardening', sectionOf({ ...steel, hardening: { strength: 530, exponent: 0.26, initialStrain: 0.02 } }, 1.5, 1)],
  [
    'hardening from early on',
    sectionOf({ ...steel, hardening: { strength: 700, exponent: 0.4, initialStrain: 4e-4 } }, 0.8, 1.2),
  ],
];

/** Stress, MPa, in a layer strained so: plastic strain by bisection on σ/E′ + ε_p = ε with σ = S·(ε₀ + 2/√3·ε_p)ⁿ. */
function stressAt({ planeModulus, planeYield, hardening }: Section, strain: number): number {
  if (planeModulus * strain <= planeYield) return planeModulus * strain;
  if (!hardening) return planeYield;
  const flow = (plastic: number): number =>
    hardening.planeStrength * (hardening.initialStrain + (2 / Math.sqrt(3)) * plastic) ** hardening.exponent;
  let [low, high] = [0, strain];
  for (let step = 0; step < 50; step++) {
    const middle = (low + high) / 2;
    if (flow(middle) / planeModulus + middle < strain) low = middle;
    else high = middle;
  }
  return flow(low);
}

/** 2∫σ·z dz over 1,500 layers. */
function momentByLayers(section: Section, curvature: number): number {
  const layers = 1500;
  const thick = section.thickness / 2 / layers;
  let sum = 0;
  for (let k = 0; k < layers; k++) sum += stressAt(section, (k + 0.5) * thick * curvature) * (k + 0.5) * thick * thick;
  return 2 * sum;
}

const PARAMETERS = [0.4, 1, 1.5, 3, 12, 60];

describe.each(sections)('a strip that is %s', (_, section) => {
  const curve = bendingCurve(section);
  const { thickness: t, planeModulus, planeYield } = section;

  it('carries the moment that its layers add up to', () => {
    for (const parameter of PARAMETERS) {
      const { curvature, moment } = curve.at(parameter);
      expect(Math.abs(moment / momentByLayers(section, curvature) - 1)).toBeLessThan(1e-5);
    }
  });

  it('has the energy and the slope that go with its moment', () => {
    for (const parameter of [1.5, 3, 12, 60]) {
      // W_c = ∫κ dm from first yield, where it is m·κ/2, by trapezoids in the logarithm of the parameter.
      const steps = 2000;
      const along = Array.from({ length: steps + 1 }, (_x, k) => curve.at(parameter ** (k / steps)));
      const start = curve.at(1);
      let energy = (start.moment * start.curvature) / 2;
      along.slice(1).forEach((point, k) => {
        const before: CurvePoint = along[k] ?? start;
        energy += ((point.curvature + before.curvature) / 2) * (point.moment - before.moment);
      });
      const point = curve.at(parameter);
      expect(Math.abs(point.complementary / energy - 1)).toBeLessThan(4e-5);
      const h = 1e-5 * parameter;
      const slope = (curve.at(parameter + h).moment - curve.at(parameter - h).moment) / (2 * h);
      expect(Math.abs(point.slope / slope - 1)).toBeLessThan(1e-5);
    }
  });

  it('is an elastic strip up to first yield: m = E′t³κ/12, W_c = m·κ/2', () => {
    expect(curve.stiffness).toBeCloseTo((planeModulus * t ** 3) / 12, 6);
    expect(curve.yieldCurvature).toBeCloseTo((2 * planeYield) / (planeModulus * t), 12);
    for (const share of [0.3, 1]) {
      const { curvature, moment, complementary, slope } = curve.at(share);
      expect(curvature / ((share * 2 * planeYield) / (planeModulus * t))).toBeCloseTo(1, 12);
      expect(moment / ((share * planeYield * t * t) / 6)).toBeCloseTo(1, 12);
      expect(complementary / ((moment * curvature) / 2)).toBeCloseTo(1, 12);
      expect(slope / ((planeYield * t * t) / 6)).toBeCloseTo(1, 12);
    }
    // No step where it begins to yield.
    const [below, above] = [curve.at(1), curve.at(1 + 1e-9)];
    for (const key of ['curvature', 'moment', 'complementary'] as const)
      expect(above[key] / below[key]).toBeCloseTo(1, 7);
  });

  it('is found again by its curvature and by its moment', () => {
    for (const parameter of PARAMETERS) {
      const { curvature, moment } = curve.at(parameter);
      expect(parameterAt(curve, curvature) / parameter).toBeCloseTo(1, 9);
      expect(parameterForMoment(curve, moment) / parameter).toBeCloseTo(1, 7);
    }
    expect(parameterAt(curve, 0)).toBe(0);
  });

  it('springs back by its moment over its stiffness, and by no less than nothing', () => {
    for (const parameter of [1.5, 3, 12, 60]) {
      const { curvature } = curve.at(parameter);
      const left = curvature - (12 * momentByLayers(section, curvature)) / (planeModulus * t ** 3);
      expect(Math.abs(1 / finishedRadius(section, 1 / curvature) / left - 1)).toBeLessThan(1e-4);
      expect(Math.abs(formRadiusFor(section, 1 / left) * curvature - 1)).toBeLessThan(1e-4);
    }
    // First yield: κ_e = 2Y′/(E′t).
    const edge = (planeModulus * t) / (2 * planeYield);
    expect(finishedRadius(section, edge * (1 + 1e-12))).toBe(Infinity);
    expect(formRadiusFor(section, Infinity) / edge).toBeCloseTo(1, 12);
  });
});

describe('a perfectly plastic strip', () => {
  const section = sectionOf({ ...steel, hardening: null }, 1.5, 1);
  const curve = bendingCurve(section);
  const full = (section.planeYield * section.thickness ** 2) / 4;

  it('carries m_p·(1 − x²/3), has W_c = m_p·κ_e·(1 − ⅔x), x = κ_e/κ', () => {
    for (const [x, share] of [
      [0.5, 1 - 0.25 / 3],
      [0.1, 1 - 0.01 / 3],
    ] as const) {
      const { moment, complementary } = curve.at(1 / x);
      expect(moment / full).toBeCloseTo(share, 12);
      expect(complementary / (full * curve.yieldCurvature)).toBeCloseTo(1 - (2 / 3) * x, 12);
    }
  });

  it('carries no more than its full plastic moment, however far it is bent', () => {
    expect(parameterForMoment(curve, full * 1.01)).toBe(Infinity);
    expect(parameterForMoment(curve, full * 0.99)).toBeCloseTo(Math.sqrt(1 / 0.03), 6);
  });
});
