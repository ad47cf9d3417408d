import { describe, expect, it } from 'vitest';
import { bendAllowance, setback } from '../../src/design/bend/allowance';
import { neutralFactor } from '../../src/design/bend/neutral';
import { elasticRadius, sectionOf, type Section } from '../../src/design/bend/section';
import { finishedRadius, formRadiusFor } from '../../src/design/bend/springback';
import { toRadians } from '../../src/base/angle';

/**
 * Published values, each with where it stands. “from memory”: the value is known from the named book but the book was not at
 * hand when it was typed. Inch where the source is in inches: the formulas have no unit of their own.
 */

/** Handbook examples ignore plane strain: E and Y as they are. */
const uniaxial = (thickness: number, modulus: number, yieldStress: number): Section => ({
  thickness,
  planeModulus: modulus,
  planeYield: yieldStress,
  hardening: null,
});

describe('bend allowance', () => {
  // k that the empirical aviation rule (0.01743·R + 0.0078·T)·N implies: 0.0078 ÷ (π/180).
  const aviationK = 0.0078 / (Math.PI / 180);

  it.each([
    // FAA-H-8083-31 ch. 4, bend-allowance table, 60° L-bracket, fig. 4-130: T .040, R .156 → .18204 in (read).
    { thickness: 0.04, radius: 0.156, degrees: 60, published: 0.18204, within: 0.0005 },
    // Sheet-metal shop workbook, 6th ed., 90°: T .050, R .032 → .085 in (read).
    { thickness: 0.05, radius: 0.032, degrees: 90, published: 0.085, within: 0.001 },
    // FAA-H-8083-31 fig. 4-128, per-degree cells ×90 (from memory but the first, which was read).
    { thickness: 0.04, radius: 0.156, degrees: 90, published: 0.003034 * 90, within: 0.0015 },
    { thickness: 0.02, radius: 0.031, degrees: 90, published: 0.000693 * 90, within: 0.0015 },
    { thickness: 0.025, radius: 0.125, degrees: 90, published: 0.002376 * 90, within: 0.0015 },
    { thickness: 0.032, radius: 0.25, degrees: 90, published: 0.004608 * 90, within: 0.0015 },
    { thickness: 0.038, radius: 0.5, degrees: 90, published: 0.009021 * 90, within: 0.0015 },
    { thickness: 0.04, radius: 0.375, degrees: 90, published: 0.006856 * 90, within: 0.0015 },
  ])(
    'FAA table and shop workbook: T $thickness, R $radius, $degrees°',
    ({ thickness, radius, degrees, published, within }) => {
      expect(
        Math.abs(bendAllowance(toRadians(degrees), radius, { thickness, neutral: aviationK }) - published),
      ).toBeLessThan(within);
    },
  );

  it('FAA-H-8083-31 U-channel (read): mold lines 1/2/1 in, T .040, R .16, two right angles → setback .20, total 3.74 in', () => {
    const back = setback(Math.PI / 2, 0.16, 0.04, 0);
    expect(back).toBeCloseTo(0.2, 10);
    const total =
      1 -
      back +
      (2 - 2 * back) +
      (1 - back) +
      2 * bendAllowance(Math.PI / 2, 0.16, { thickness: 0.04, neutral: aviationK });
    expect(Math.abs(total - 3.74)).toBeLessThan(0.02);
  });

  it('Sheet-metal shop workbook (read): four legs, three bends of T .050, R .032 → stretch-out 2.973 in', () => {
    const legs = 0.74 + 0.42 + 1.05 + 1.0;
    const deduction =
      2 * setback(Math.PI / 2, 0.032, 0.05, 0) -
      bendAllowance(Math.PI / 2, 0.032, { thickness: 0.05, neutral: aviationK });
    expect(Math.abs(deduction - 0.079)).toBeLessThan(0.001);
    expect(Math.abs(legs - 3 * deduction - 2.973)).toBeLessThan(0.003);
  });

  it('Machinery’s Handbook (from memory): soft steel (0.64T + 1.57R)·N/90, two bends → 1.338 and .707 in', () => {
    const softSteel = 0.64 / (Math.PI / 2);
    expect(Math.abs(bendAllowance(Math.PI, 0.375, { thickness: 0.125, neutral: softSteel }) - 1.338)).toBeLessThan(
      0.001,
    );
    expect(Math.abs(bendAllowance(Math.PI / 3, 0.625, { thickness: 0.125, neutral: softSteel }) - 0.707)).toBeLessThan(
      0.001,
    );
  });

  it('Groover, Fundamentals of Modern Manufacturing, ex. 20.2 (from memory): t 3.2, R 4.75, 60°, K .33 → 6.08 mm', () => {
    expect(Math.abs(bendAllowance(Math.PI / 3, 4.75, { thickness: 3.2, neutral: 0.33 }) - 6.08)).toBeLessThan(0.005);
  });

  it.each([
    // DIN 6935, compensation −v in mm at 90° (published to 0.1, from memory).
    { r: 1, s: 1, v: 1.9 },
    { r: 2.5, s: 2, v: 4.0 },
    { r: 4, s: 1, v: 3.0 },
    { r: 4, s: 2, v: 4.5 },
    { r: 6, s: 1, v: 3.8 },
    { r: 6, s: 2, v: 5.2 },
    { r: 10, s: 1, v: 5.5 },
    { r: 10, s: 2, v: 6.7 },
  ])('DIN 6935: r $r, s $s → −v $v mm', ({ r, s, v }) => {
    const compensation =
      2 * setback(Math.PI / 2, r, s, 0) -
      bendAllowance(Math.PI / 2, r, { thickness: s, neutral: neutralFactor(r / s) });
    expect(Math.abs(compensation - v)).toBeLessThan(0.051);
  });

  it('German metal-trades table book (from memory): Z-profile s 2, r 4, legs 25 + 20 + 15 → 51 mm', () => {
    const v =
      2 * setback(Math.PI / 2, 4, 2, 0) - bendAllowance(Math.PI / 2, 4, { thickness: 2, neutral: neutralFactor(2) });
    expect(Math.abs(25 + 20 + 15 - 2 * v - 51)).toBeLessThan(0.15);
  });

  it('German metal-trades table book (from memory): 60° opening, s 5, r 6, k .7, legs 16 + 21 → 31.2 mm', () => {
    // Beyond a right angle of turn DIN measures legs to the outside tangent, so 2·(r + s), not the setback.
    const v = 2 * (6 + 5) - bendAllowance(toRadians(120), 6, { thickness: 5, neutral: 0.35 });
    expect(Math.abs(v - 5.77)).toBeLessThan(0.01);
    expect(Math.abs(16 + 21 - v - 31.2)).toBeLessThan(0.05);
  });

  it('DIN 6935: K = k/2, k = .65 + .5·log₁₀(r/s) up to r/s 5, then the middle', () => {
    expect(neutralFactor(1)).toBeCloseTo(0.325, 12);
    expect(neutralFactor(5)).toBeCloseTo(0.5, 3);
    expect(neutralFactor(5.01)).toBe(0.5);
    expect(neutralFactor(100)).toBe(0.5);
  });
});

describe('setback', () => {
  it.each([
    // AC 43.13-1B table 4-7, K-chart (read): K = tan(N/2). Its 86°, 159° and 176° rows are misprints and left out.
    [10, 0.0874],
    [15, 0.1316],
    [20, 0.1763],
    [30, 0.2679],
    [45, 0.4142],
    [60, 0.5773],
    [75, 0.7673],
    [90, 1.0],
    [100, 1.191],
    [110, 1.428],
    [120, 1.732],
    [125, 1.921],
    [130, 2.144],
    [135, 2.414],
    [140, 2.747],
    [150, 3.732],
    [160, 5.671],
    [170, 11.43],
    [175, 22.9],
  ])('AC 43.13-1B K-chart: %d° → %d', (degrees, published) => {
    const lastPlace = published >= 10 ? 0.01 : published >= 1 ? 0.001 : 0.0001;
    expect(Math.abs(setback(toRadians(degrees), 0.7, 0.3, 0) - published)).toBeLessThan(lastPlace);
  });
});

describe('springback', () => {
  it('MIT 2.008 (2004) homework 5 (read): 1200-O, Y 5075 psi, T 1/8, R 2 in, 90° → about 2°', () => {
    // The stored transcription lost the exponent of E; 10×10⁶ psi is meant.
    const section = uniaxial(0.125, 10e6, 5075);
    const after = finishedRadius(section, 2);
    expect(2 / after).toBeCloseTo(0.9756, 4);
    expect(90 * (1 - 2 / after)).toBeGreaterThan(1.9);
    expect(90 * (1 - 2 / after)).toBeLessThan(2.4);
  });

  it('Kalpakjian & Schmid, estimating springback (answers from memory): T .0359, R .5, Y 40 ksi, E 29×10⁶ → R_f .531 in', () => {
    const section = uniaxial(0.0359, 29e6, 40_000);
    expect(Math.abs(finishedRadius(section, 0.5) - 0.531)).toBeLessThan(0.0008);
    expect(Math.abs(formRadiusFor(section, 0.5) - 0.4728)).toBeLessThan(0.0001);
  });

  it.each([
    // Hosford & Caddell, Metal Forming, sheet springback (from memory): they neglect the elastic core, 1/r − 1/r′ = 3σ/(tE′).
    { thickness: 1, radius: 125, flow: 275, planeModulus: 215_000, published: 240, unit: 'mm' },
    { thickness: 0.036, radius: 5, flow: 35_000, planeModulus: 33e6, published: 8.96, unit: 'in' },
  ])(
    'Hosford & Caddell: r $radius $unit → r′ about $published $unit, less what the elastic core takes off',
    ({ thickness, radius, flow, planeModulus, published }) => {
      const section: Section = { thickness, planeModulus, planeYield: flow, hardening: null };
      const after = finishedRadius(section, radius);
      const withoutCore = 1 / (1 / after - (1 / radius) * 4 * ((radius * flow) / (planeModulus * thickness)) ** 3);
      expect(Math.abs(withoutCore / published - 1)).toBeLessThan(0.002);
      expect(after).toBeLessThan(published);
      expect(after / published).toBeGreaterThan(0.96);
    },
  );

  it.each([
    // Gardiner’s cubic R_i/R_f = 4x³ − 3x + 1, x = R_i·Y/(E·T) (read in MIT 2.008); the largest former that sets is E·T/2Y.
    { thickness: 0.0359, yieldStress: 30_000, modulus: 29.5e6, largest: 17.65, six: 11.77 },
    { thickness: 0.063, yieldStress: 21_000, modulus: 10e6, largest: 15.0, six: 13.89 },
    { thickness: 0.063, yieldStress: 28_000, modulus: 10.2e6, largest: 11.47, six: 20.89 },
    { thickness: 0.063, yieldStress: 40_000, modulus: 10e6, largest: 7.88, six: 76.64 },
  ])('Gardiner’s cubic: Y $yieldStress psi, T $thickness in', ({ thickness, yieldStress, modulus, largest, six }) => {
    const section = uniaxial(thickness, modulus, yieldStress);
    expect(Math.abs(elasticRadius(section) / largest - 1)).toBeLessThan(0.01);
    expect(Math.abs(finishedRadius(section, 6) / six - 1)).toBeLessThan(0.02);
    const x = (6 * yieldStress) / (modulus * thickness);
    expect(6 / finishedRadius(section, 6)).toBeCloseTo(4 * x ** 3 - 3 * x + 1, 12);
  });

  it('plane strain raises E by 1/(1 − ν²) and Y by 2/√3 (Marciniak, Duncan & Hu, ch. 6, from memory)', () => {
    const section = sectionOf({ modulus: 200_000, poisson: 0.3, yield: 100, hardening: null }, 1, 1);
    expect(section.planeModulus).toBeCloseTo(200_000 / 0.91, 6);
    expect(section.planeYield).toBeCloseTo(115.470054, 5);
    // Fully plastic over elastic-limit moment is 1.5 (same source).
    expect(elasticRadius(section)).toBeCloseTo(200_000 / 0.91 / (2 * 115.470054), 3);
  });
});
