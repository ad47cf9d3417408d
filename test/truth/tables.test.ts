import { describe, expect, it } from 'vitest';
import { loadTables } from '../../src/tables/bundled';
import { findMetal, findScrew, gaugeThickness, minBendRatioFor } from '../../src/tables/look-up';
import type { Metal, Screw } from '../../src/tables/schema';

/** Published values typed by hand, each with where it stands; “from memory” where the source was not at hand. Inches, psi. */

const tables = loadTables();
const INCH = 25.4;
const KSI = 6.894757;

function metal(id: string): Metal {
  const found = findMetal(tables, id);
  if (!found) throw new Error(`no metal ${id}`);
  return found;
}

function screw(id: string): Screw {
  const found = findScrew(tables, id);
  if (!found) throw new Error(`no screw ${id}`);
  return found;
}

const inches = (id: string, gauge: number): number => (gaugeThickness(tables, metal(id), gauge) ?? NaN) / INCH;

describe('gauges', () => {
  it.each([
    // Manufacturers’ Standard Gauge: thickness = lb/ft² ÷ 41.82 (rule read; weights of 10, 16 and 18 ga read, the rest from memory).
    [10, 5.625],
    [12, 4.375],
    [14, 3.125],
    [16, 2.5],
    [18, 2.0],
    [20, 1.5],
    [22, 1.25],
    [24, 1.0],
    [28, 0.625],
  ])('Manufacturers’ Standard: %d ga is %d lb/ft² ÷ 41.82', (gauge, weight) => {
    expect(Math.abs(inches('steel-cold-rolled-cs', gauge) - weight / 41.82)).toBeLessThan(0.000051);
  });

  it('Manufacturers’ Standard, cells read: 10 ga .1345, 18 ga .0478, 20 ga .0359', () => {
    expect([10, 18, 20].map((gauge) => inches('steel-cold-rolled-cs', gauge))).toEqual([0.1345, 0.0478, 0.0359].map((value) => expect.closeTo(value, 10) as number));
  });

  it.each([
    // US Standard Gauge for stainless: lb/ft² ÷ 40 (from memory).
    [10, 5.625],
    [16, 2.5],
    [20, 1.5],
    [24, 1.0],
  ])('stainless: %d ga is %d lb/ft² ÷ 40', (gauge, weight) => {
    expect(Math.abs(inches('stainless-304-annealed', gauge) - weight / 40)).toBeLessThan(0.000051);
  });

  it('Brown & Sharpe: .005·92^((36 − n)/39) in, every gauge (from memory)', () => {
    for (let gauge = 10; gauge <= 28; gauge++) {
      expect(Math.abs(inches('aluminium-3003-h14', gauge) - 0.005 * 92 ** ((36 - gauge) / 39)), `${gauge} ga`).toBeLessThan(0.00006);
    }
  });

  it('galvanised: 21 ga is .0366 in (read)', () => {
    expect(inches('steel-galvanised-cs', 21)).toBeCloseTo(0.0366, 10);
  });
});

describe('minimum bend radii, multiples of the thickness', () => {
  it.each([
    // Aluminum Standards & Data type table, 90° cold bend (read); 6061 row and 1/8 in column checked in a second table.
    ['aluminium-1100-o', 1 / 4, 1],
    ['aluminium-3003-h14', 1 / 16, 0],
    ['aluminium-3003-h14', 1 / 8, 1],
    ['aluminium-5052-h32', 1 / 16, 1],
    ['aluminium-5052-h32', 1 / 8, 1.5],
    ['aluminium-5052-h34', 1 / 16, 1.5],
    ['aluminium-6061-t4', 1 / 8, 1.5],
    ['aluminium-6061-t6', 1 / 16, 1.5],
    ['aluminium-6061-t6', 1 / 8, 2.5],
    ['aluminium-6061-t6', 1 / 4, 3.5],
    ['aluminium-2024-t3', 1 / 16, 4],
    ['aluminium-2024-o', 1 / 8, 0.5],
  ])('%s, %d in: %d', (id, thickness, ratio) => {
    expect(minBendRatioFor(metal(id), thickness * INCH)).toBe(ratio);
  });

  it.each([
    // Design handbook’s fixed radii, in (read).
    ['steel-4130-normalised', 0.063, 0.188],
    ['steel-4130-normalised', 0.04, 0.125],
    ['steel-4130-annealed', 0.063, 0.094],
    ['steel-4130-annealed', 0.125, 0.188],
  ])('%s, T %d in: R %d in', (id, thickness, radius) => {
    expect(Math.abs((minBendRatioFor(metal(id), thickness * INCH) ?? NaN) * thickness - radius)).toBeLessThan(0.0015);
  });
});

describe('metals', () => {
  it.each([
    // Kutz, Handbook of Materials Selection, table 5 (read): yield, ultimate, ksi.
    ['aluminium-1100-o', 5, 13],
    ['aluminium-1100-h14', 17, 18],
    ['aluminium-3003-h14', 21, 22],
    ['aluminium-2024-t3', 50, 70],
    // Mill data sheet C26000 (read).
    ['brass-c260-half-hard', 51, 62],
  ])('%s: yield %d, strength %d ksi', (id, yieldStress, tensile) => {
    expect(Math.abs(metal(id).yield / KSI - yieldStress)).toBeLessThan(0.01);
    expect(Math.abs(metal(id).tensile / KSI - tensile)).toBeLessThan(0.01);
  });

  it('5052-H32: E 70.3 GPa (Aluminum Design Manual, read)', () => {
    expect(Math.abs(metal('aluminium-5052-h32').modulus / 70_300 - 1)).toBeLessThan(0.001);
  });
});

describe('screws', () => {
  it.each([6, 8, 10])('#%d: D = .060 + .013·n in (ASME B18.6.1, from memory)', (number) => {
    expect(Math.abs(screw(`#${number}`).diameter / INCH - (0.06 + 0.013 * number))).toBeLessThan(1e-5);
  });

  it.each([
    // Pilot in MDF (read), head of an 82° flat head (read), clearance drill (from memory), in.
    [6, 3 / 32, 0.279, 9 / 64],
    [8, 7 / 64, 0.332, 11 / 64],
    [10, 1 / 8, 0.385, 13 / 64],
  ])('#%d: pilot %d, head %d, clearance %d in', (number, pilot, head, clearance) => {
    const kind = screw(`#${number}`);
    expect([kind.pilot / INCH, kind.headDiameter / INCH, kind.clearance / INCH]).toEqual([pilot, head, clearance].map((value) => expect.closeTo(value, 4) as number));
    // 3/16 in is below a #10 shank of .190: a clearance drill must clear.
    expect(kind.clearance).toBeGreaterThan(kind.diameter);
  });
});
