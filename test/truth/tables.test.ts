import { describe, expect, it } from 'vitest';
import { loadTables } from '../../src/tables/bundled';
import { findBoard, findMetal, findScrew, gaugeThickness, minBendRatioFor } from '../../src/tables/look-up';
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
    expect([10, 18, 20].map((gauge) => inches('steel-cold-rolled-cs', gauge))).toEqual(
      [0.1345, 0.0478, 0.0359].map((value) => expect.closeTo(value, 10) as number),
    );
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
      expect(
        Math.abs(inches('aluminium-3003-h14', gauge) - 0.005 * 92 ** ((36 - gauge) / 39)),
        `${gauge} ga`,
      ).toBeLessThan(0.00006);
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
    ['aluminium-3003-o', 6, 16],
    ['aluminium-2024-o', 11, 27],
    // Aluminium and copper, typical values (from memory).
    ['aluminium-5052-h32', 28, 33],
    ['aluminium-6061-t6', 40, 45],
    ['copper-c110-half-hard', 36, 42],
    // ASTM A36 minimum; 4130 sheet to .187 in, minimum (from memory).
    ['steel-a36', 36, 58],
    ['steel-4130-normalised', 75, 95],
  ])('%s: yield %d, strength %d ksi', (id, yieldStress, tensile) => {
    expect(Math.abs(metal(id).yield / KSI - yieldStress)).toBeLessThan(0.01);
    expect(Math.abs(metal(id).tensile / KSI - tensile)).toBeLessThan(0.01);
  });

  it.each([
    // Mill data sheet C26000 (read): yield, range of the ultimate, ksi.
    ['brass-c260-soft', 21, 45, 61],
    ['brass-c260-half-hard', 51, 57, 67],
  ])('%s: yield %d, strength %d to %d ksi', (id, yieldStress, from, to) => {
    expect(Math.abs(metal(id).yield / KSI - yieldStress)).toBeLessThan(0.01);
    expect(metal(id).tensile / KSI).toBeGreaterThan(from);
    expect(metal(id).tensile / KSI).toBeLessThan(to);
  });

  it.each([
    // ASTM A1008 and A1011 typical ranges of yield; 304 sheet, typical (from memory), ksi.
    ['steel-cold-rolled-cs', 20, 40],
    ['steel-cold-rolled-ds', 22, 35],
    ['steel-cold-rolled-dds', 17, 29],
    ['steel-hot-rolled-cs', 30, 50],
    ['stainless-304-annealed', 35, 42],
  ])('%s yields between %d and %d ksi', (id, from, to) => {
    expect(metal(id).yield / KSI).toBeGreaterThan(from);
    expect(metal(id).yield / KSI).toBeLessThan(to);
  });

  it.each([
    // Strain hardening exponent table of a public encyclopaedia (read).
    ['aluminium-5052-h32', 0.13],
    ['aluminium-2024-t3', 0.16],
    ['brass-c260-soft', 0.49],
    // Callister, as quoted (read).
    ['copper-c110-soft', 0.44],
    // Kalpakjian (read).
    ['stainless-304-annealed', 0.45],
    // EN 10130, n90 (read).
    ['steel-dc04', 0.18],
  ])('%s hardens with exponent %d', (id, exponent) => {
    expect(metal(id).hardening?.exponent).toBe(exponent);
  });

  it.each([
    // Hosford & Caddell, table 19.1 (read): classes of metals.
    ['steel-cold-rolled-cs', 0.2, 0.25],
    ['steel-a36', 0.2, 0.25],
    ['stainless-316-annealed', 0.4, 0.55],
    ['aluminium-3003-o', 0.2, 0.3],
    ['aluminium-6061-o', 0.2, 0.3],
    ['aluminium-2024-o', 0.2, 0.3],
  ])('%s hardens with an exponent of its class, %d to %d', (id, low, high) => {
    expect(metal(id).hardening?.exponent).toBeGreaterThanOrEqual(low);
    expect(metal(id).hardening?.exponent).toBeLessThanOrEqual(high);
  });

  it.each([
    // Supplier’s temper table (read): 110/150 ksi minimum; suppliers’ tables (read); EN 10130 (read): ranges of the strength.
    ['stainless-304-half-hard', 758, 758, 1034, 1034],
    ['titanium-grade-2', 340, 345, 430, 480],
    ['steel-dc01', 140, 280, 270, 410],
    ['steel-dc04', 140, 210, 270, 350],
    ['steel-weathering', 310, 310, 445, 445],
  ])('%s: yield %d to %d, strength %d to %d MPa', (...[id, yieldLow, yieldHigh, low, high]) => {
    expect(metal(id).yield).toBeGreaterThanOrEqual(yieldLow);
    expect(metal(id).yield).toBeLessThanOrEqual(yieldHigh);
    expect(metal(id).tensile).toBeGreaterThanOrEqual(low);
    expect(metal(id).tensile).toBeLessThanOrEqual(high);
  });

  it.each([
    // Supplier’s table of aluminium densities and mill data sheet C26000 (read); steel and copper from memory; lb/in³.
    ['aluminium-3003-h14', 0.099],
    ['aluminium-5052-h32', 0.097],
    ['aluminium-6061-t6', 0.098],
    ['aluminium-2024-t3', 0.1],
    ['brass-c260-soft', 0.308],
    ['steel-cold-rolled-cs', 0.284],
    ['copper-c110-soft', 0.322],
  ])('%s weighs %d lb/in³', (id, density) => {
    expect(Math.abs(metal(id).density / ((0.45359237 * 1e9) / INCH ** 3) - density)).toBeLessThan(0.0005);
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
    expect([kind.pilot / INCH, kind.headDiameter / INCH, kind.clearance / INCH]).toEqual(
      [pilot, head, clearance].map((value) => expect.closeTo(value, 4) as number),
    );
    // 3/16 in is below a #10 shank of .190: a clearance drill must clear.
    expect(kind.clearance).toBeGreaterThan(kind.diameter);
  });
});

describe('boards', () => {
  it.each([
    // EN 622-5, dry general-purpose MDF, modulus by thickness (from memory), MPa.
    ['mdf-6', 2700],
    ['mdf-9', 2700],
    ['mdf-12', 2500],
    ['mdf-18', 2200],
    ['mdf-25', 2100],
    // ANSI A208.2 MD grade, as in the USDA Wood Handbook (from memory), MPa.
    ['mdf-3/4', 2400],
  ])('%s: E %d MPa', (id, modulus) => {
    expect(findBoard(tables, id)?.modulus).toBe(modulus);
  });

  it.each([
    // Sanded plywood’s true thicknesses (from memory), in.
    ['ply-1/2', 15 / 32],
    ['ply-3/4', 23 / 32],
  ])('%s is %d in thick', (id, thickness) => {
    expect((findBoard(tables, id)?.thickness ?? NaN) / INCH).toBeCloseTo(thickness, 4);
  });
});

describe('shop rules', () => {
  it('two-handed pull: 110 N arms out (Kodak / CCOHS table, read), 300 N at high traction (MIL-STD-1472, from memory)', () => {
    expect([tables.rules.handForceLimit, tables.rules.handForceFinding]).toEqual([110, 300]);
  });

  it('a pilot is 1 mm deeper than the screw (MDF panel makers’ fixing guide, read)', () => {
    expect(tables.rules.pilotExtraDepth).toBe(1);
  });

  it('a clamp is trusted with less than the weakest average of a bench test, 370 lb less 40 % (magazine, read)', () => {
    expect(tables.rules.clampRating).toBeLessThan(370 * 0.6 * 4.4482216);
  });
});

describe('hands', () => {
  it.each([
    // Kodak / CCOHS table of upper limits for horizontal push and pull (read), N.
    ['standing', 225],
    ['arms-out', 110],
    ['kneeling', 188],
    ['seated', 130],
    // HSE push and pull assessment, starting a load, hands between knuckle and shoulder (read), N.
    ['knuckle-to-shoulder-men', 200],
    ['knuckle-to-shoulder-women', 150],
  ])('%s: %d N', (id, force) => {
    expect(tables.handForces.find((row) => row.id === id)?.force).toBe(force);
  });
});
