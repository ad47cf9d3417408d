import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { momentPerWidth } from '../../../src/design/bend/moment';
import { elasticRadius, sectionOf, type Section } from '../../../src/design/bend/section';
import { finishedRadius, formRadiusFor } from '../../../src/design/bend/springback';
import { cases } from '../../helpers/cases';

const metals = fc.record({
  modulus: fc.double({ min: 40_000, max: 220_000, noNaN: true }),
  poisson: fc.double({ min: 0.25, max: 0.37, noNaN: true }),
  yield: fc.double({ min: 30, max: 700, noNaN: true }),
  hardening: fc.option(
    fc.record({
      initialStrain: fc.double({ min: 1e-5, max: 0.02, noNaN: true }),
      exponent: fc.double({ min: 0.02, max: 0.55, noNaN: true }),
    }),
  ),
});
const sections = fc
  .tuple(metals, fc.double({ min: 0.3, max: 6, noNaN: true }), fc.double({ min: 0.7, max: 1.4, noNaN: true }))
  .map(([metal, thickness, factor]) =>
    sectionOf(
      {
        ...metal,
        hardening: metal.hardening && {
          ...metal.hardening,
          strength: metal.yield * metal.hardening.initialStrain ** -metal.hardening.exponent,
        },
      },
      thickness,
      factor,
    ),
  );

/** Stress at a strain by bisection on σ/E′ + ε_plastic = ε: nothing shared with the closed form. */
function stressAt(section: Section, strain: number): number {
  const elastic = section.planeModulus * strain;
  if (elastic <= section.planeYield) return elastic;
  const hardening = section.hardening;
  if (!hardening) return section.planeYield;
  let [low, high] = [0, strain];
  for (;;) {
    const plastic = (low + high) / 2;
    // No number is left between the two.
    if (plastic === low || plastic === high) break;
    const stress =
      hardening.planeStrength * (hardening.initialStrain + (2 / Math.sqrt(3)) * plastic) ** hardening.exponent;
    if (stress / section.planeModulus + plastic < strain) low = plastic;
    else high = plastic;
  }
  return hardening.planeStrength * (hardening.initialStrain + (2 / Math.sqrt(3)) * low) ** hardening.exponent;
}

/** m = 2∫σ·z dz by Simpson's rule: elastic core and yielded part apart, the latter on a grid that crowds toward the core. */
function momentBySimpson(section: Section, radius: number): number {
  const surface = section.thickness / 2;
  const core = Math.min(surface, (radius * section.planeYield) / section.planeModulus);
  const simpson = (f: (z: number) => number, low: number, high: number, n: number): number => {
    const h = (high - low) / n;
    let sum = f(low) + f(high);
    for (let i = 1; i < n; i++) sum += (i % 2 ? 4 : 2) * f(low + i * h);
    return (sum * h) / 3;
  };
  const stress = (z: number): number => stressAt(section, z / radius);
  const inner = simpson((z) => stress(z) * z, 0, core, 2);
  if (core >= surface) return 2 * inner;
  // z = core + (surface − core)·v³ takes the steep start of the hardening curve out.
  const outer = simpson(
    (v) => stress(core + (surface - core) * v ** 3) * (core + (surface - core) * v ** 3) * 3 * (surface - core) * v * v,
    0,
    1,
    4000,
  );
  return 2 * (inner + outer);
}

describe('moment per width', () => {
  it('is the perfectly plastic closed form of the design where nothing hardens', () => {
    fc.assert(
      fc.property(sections, fc.double({ min: 0.01, max: 0.999, noNaN: true }), (section, share) => {
        const plastic: Section = { ...section, hardening: null };
        const radius = share * elasticRadius(plastic);
        const t = plastic.thickness;
        const closed =
          ((plastic.planeYield * t * t) / 4) *
          (1 - ((2 * radius * plastic.planeYield) / (plastic.planeModulus * t)) ** 2 / 3);
        expect(Math.abs(momentPerWidth(plastic, radius) / closed - 1)).toBeLessThan(1e-9);
      }),
    );
  });

  it('agrees with the integral done by Simpson’s rule on the stress found by bisection', () => {
    fc.assert(
      fc.property(sections, fc.double({ min: 0.02, max: 1.2, noNaN: true }), (section, share) => {
        const radius = share * elasticRadius(section);
        expect(Math.abs(momentPerWidth(section, radius) / momentBySimpson(section, radius) - 1)).toBeLessThan(1e-7);
      }),
      { numRuns: 60 },
    );
  });

  it('tends to the perfectly plastic one as the hardening exponent tends to zero', () => {
    const metal = { modulus: 70_000, poisson: 0.33, yield: 100 };
    const flat = sectionOf({ ...metal, hardening: null }, 1.5, 1);
    const nearly = sectionOf(
      { ...metal, hardening: { strength: 100.001, exponent: 1e-6, initialStrain: 5e-5 } },
      1.5,
      1,
    );
    expect(Math.abs(momentPerWidth(nearly, 40) / momentPerWidth(flat, 40) - 1)).toBeLessThan(2e-5);
  });

  it('meets the elastic beam at the radius where the outer fibre just yields', () => {
    const section = sectionOf(
      {
        modulus: 200_000,
        poisson: 0.29,
        yield: 200,
        hardening: { strength: 530, exponent: 0.26, initialStrain: 0.0268 },
      },
      1,
      1,
    );
    const edge = elasticRadius(section);
    expect(
      Math.abs(momentPerWidth(section, edge * (1 - 1e-9)) / momentPerWidth(section, edge * (1 + 1e-9)) - 1),
    ).toBeLessThan(1e-8);
  });
});

describe('springback', () => {
  it('there and back is the same radius within 1e-9', () => {
    fc.assert(
      fc.property(sections, fc.double({ min: 2, max: 400, noNaN: true }), (section, ratio) => {
        const finished = ratio * section.thickness;
        const form = formRadiusFor(section, finished);
        expect(form).toBeLessThan(finished);
        expect(Math.abs(finishedRadius(section, form) / finished - 1)).toBeLessThan(1e-9);
      }),
      { numRuns: cases(500) },
    );
  });

  it('comes back flat from any radius at which nothing yields, and sets just below it', () => {
    fc.assert(
      fc.property(sections, (section) => {
        const limit = elasticRadius(section);
        expect(finishedRadius(section, limit)).toBe(Infinity);
        expect(finishedRadius(section, limit * 3)).toBe(Infinity);
        expect(finishedRadius(section, limit * 0.98)).toBeLessThan(Infinity);
      }),
    );
  });

  it('a harder sheet asks for a tighter form', () => {
    fc.assert(
      fc.property(sections, fc.double({ min: 5, max: 200, noNaN: true }), (section, ratio) => {
        const harder: Section = {
          ...section,
          planeYield: section.planeYield * 1.2,
          hardening: section.hardening && {
            ...section.hardening,
            planeStrength: section.hardening.planeStrength * 1.2,
          },
        };
        const finished = ratio * section.thickness;
        expect(formRadiusFor(harder, finished)).toBeLessThan(formRadiusFor(section, finished));
      }),
    );
  });
});
