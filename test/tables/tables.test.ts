import { build } from 'esbuild';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { parseLength } from '../../src/base/units';
import { loadTables } from '../../src/tables/bundled';
import { findBoard, findMetal, findScrew, gaugeThickness, minBendRatioFor, screwFor } from '../../src/tables/look-up';
import {
  boardSchema,
  clampKindSchema,
  gaugeTableSchema,
  handForceSchema,
  metalSchema,
  screwSchema,
  shopRuleSchema,
  toolRuleSchema,
  yokeBoltSchema,
  yokeStockSchema,
} from '../../src/tables/schema';
import rules from '../../shared/shop-rules.json';
import tools from '../../shared/tools.json';

const tables = loadTables();

/** What a name says, mm: `1-1/4 in`, `3.5 mm`. */
function millimetres(name: string): number {
  const read = parseLength(name, 'mm');
  if (!read.ok || !('mm' in read)) throw new Error(`not a length: ${name}`);
  return read.mm;
}

afterEach(() => {
  vi.doUnmock('../../shared/shop-rules.json');
  vi.resetModules();
});

describe('reference tables', () => {
  it.each([
    ['metals', tables.metals, metalSchema],
    ['gauges', tables.gauges, gaugeTableSchema],
    ['boards', tables.boards, boardSchema],
    ['screws', tables.screws, screwSchema],
    ['clamps', tables.clamps, clampKindSchema],
    ['hand forces', tables.handForces, handForceSchema],
    ['yoke stock', tables.yokeStock, yokeStockSchema],
    ['yoke bolts', tables.yokeBolts, yokeBoltSchema],
  ] as const)('%s: every row keeps its schema, ids are unique', (_, rows, schema) => {
    for (const row of rows) schema.parse(row);
    expect(new Set(rows.map(({ id }) => id)).size).toBe(rows.length);
  });

  it('shop rules: every row has unit and source, and is read', () => {
    for (const row of rules.rows) shopRuleSchema.parse(row);
    expect(rules.rows.map(({ id }) => id).sort()).toEqual(Object.keys(tables.rules).sort());
  });

  it('tool rules: every row has unit and source, and is read', () => {
    for (const row of tools.rows) toolRuleSchema.parse(row);
    // A row of the dowels sold in mm, and one of those in inches.
    const read = Object.keys(tables.tools).flatMap((id) => (id === 'dowelSizes' ? [`${id}Mm`, `${id}Inch`] : [id]));
    expect(tools.rows.map(({ id }) => id).sort()).toEqual(read.sort());
  });

  it('holds at least twenty metals and tempers, each plausible', () => {
    expect(tables.metals.length).toBeGreaterThanOrEqual(20);
    for (const metal of tables.metals) {
      expect(metal.yield, metal.id).toBeLessThan(metal.tensile);
      expect(metal.modulus / 1000, metal.id).toBeGreaterThan(60);
      expect(metal.modulus / 1000, metal.id).toBeLessThan(215);
      if (metal.gauge !== null) expect(tables.gauges.map(({ id }) => id)).toContain(metal.gauge);
      expect(metal.minBendRatio.map(({ upTo }) => upTo)).toEqual(
        [...metal.minBendRatio.map(({ upTo }) => upTo)].sort((a, b) => a - b),
      );
    }
  });

  it('a metal whose tensile strength is more than a tenth above its yield hardens, the others do not', () => {
    for (const { id, hardening, yield: proof, tensile } of tables.metals) {
      expect(hardening !== null, id).toBe(tensile > 1.1 * proof);
    }
  });

  it('hardening curves meet the yield at 0.2 % within 5 %, and yield first below it', () => {
    for (const { id, hardening, yield: proof } of tables.metals) {
      if (!hardening) continue;
      const { strength, exponent, initialStrain } = hardening;
      expect(Math.abs((strength * (initialStrain + 0.002) ** exponent) / proof - 1), id).toBeLessThan(0.05);
      const first = strength * initialStrain ** exponent;
      expect(first / proof, id).toBeLessThan(1);
      expect(first / proof, id).toBeGreaterThan(0.6);
      expect(initialStrain, id).toBeGreaterThanOrEqual(0.0004);
    }
  });

  it('hardening curves peak within 3 % of the tensile strength (Considère: true stress equals its slope)', () => {
    for (const { id, hardening, tensile } of tables.metals) {
      if (!hardening) continue;
      const { strength, exponent, initialStrain } = hardening;
      // Nominal stress K·(ε₀ + ε)ⁿ·exp(−ε) looked at along the curve, no formula for its peak.
      const nominal = Array.from({ length: 20_000 }, (_, step) => step / 25_000).map(
        (strain) => strength * (initialStrain + strain) ** exponent * Math.exp(-strain),
      );
      expect(Math.abs(Math.max(...nominal) / tensile - 1), id).toBeLessThan(0.03);
    }
  });

  it('battens are as stiff and strong as a rectangle of softwood, angles as the hollow L of their flanges, within 5 %', () => {
    for (const { id, kind, width, depth, thickness, stiffness, sectionModulus } of tables.yokeStock) {
      // Two rectangles of an L about its centroid; the root's fillet, which the tables count, adds a little.
      const parts =
        kind === 'batten'
          ? [{ wide: width, high: depth, at: depth / 2 }]
          : [
              { wide: width, high: thickness, at: thickness / 2 },
              { wide: thickness, high: depth - thickness, at: (depth + thickness) / 2 },
            ];
      const area = parts.reduce((sum, { wide, high }) => sum + wide * high, 0);
      const centroid = parts.reduce((sum, { wide, high, at }) => sum + wide * high * at, 0) / area;
      const inertia = parts.reduce(
        (sum, { wide, high, at }) => sum + (wide * high ** 3) / 12 + wide * high * (at - centroid) ** 2,
        0,
      );
      expect(Math.abs(stiffness / ((kind === 'batten' ? 9000 : 205_000) * inertia) - 1), id).toBeLessThan(0.05);
      expect(Math.abs(sectionModulus / (inertia / (depth - centroid)) - 1), id).toBeLessThan(0.05);
    }
  });

  it('gauge tables run from 10 to 28 without a gap, each number thinner than the one before', () => {
    const numbers = Array.from({ length: 19 }, (_, index) => String(10 + index));
    expect(tables.gauges.map(({ id }) => id).sort()).toEqual(['browne-sharpe', 'galvanised', 'stainless', 'steel']);
    for (const { id, inches } of tables.gauges) {
      expect(Object.keys(inches), id).toEqual(numbers);
      const thicknesses = Object.values(inches);
      expect(thicknesses, id).toEqual([...new Set(thicknesses)].sort((a, b) => b - a));
    }
  });

  it('boards are as thick as they are called; sanded plywood up to 1/32 in thinner', () => {
    for (const { id, thickness, system, modulus, density, width, length } of tables.boards) {
      const nominal = millimetres(`${id.slice(id.lastIndexOf('-') + 1)} ${system}`);
      const sanded = /^ply-\d/.test(id) ? 25.4 / 32 : 0;
      expect(nominal - thickness, id).toBeCloseTo(sanded, 3);
      expect(width, id).toBeLessThanOrEqual(length);
      expect(modulus, id).toBeGreaterThanOrEqual(1900);
      expect(modulus, id).toBeLessThan(12_500);
      expect(density, id).toBeGreaterThan(400);
      expect(density, id).toBeLessThan(900);
    }
  });

  it('screws come in rising lengths, each with its name, and for every spine one size of either system', () => {
    for (const screw of tables.screws) {
      expect(screw.lengthNames).toHaveLength(screw.lengths.length);
      expect(screw.lengths).toEqual([...screw.lengths].sort((a, b) => a - b));
      screw.lengths.forEach((length, index) =>
        expect(length, screw.id).toBeCloseTo(millimetres(screw.lengthNames[index] ?? ''), 6),
      );
      expect(screw.pilot, screw.id).toBeCloseTo(millimetres(screw.pilotDrill), 3);
      expect(screw.clearance, screw.id).toBeCloseTo(millimetres(screw.clearanceDrill), 3);
      expect(screw.pilot).toBeLessThan(screw.diameter);
      expect(screw.clearance).toBeGreaterThan(screw.diameter);
      expect(screw.headDiameter).toBeGreaterThan(screw.clearance);
    }
    const chosen = (system: 'in' | 'mm', spine: number): string | undefined => screwFor(tables, system, spine)?.id;
    expect([12, 13, 18, 20, 25].map((spine) => chosen('in', spine))).toEqual(['#6', '#6', '#8', '#8', '#10']);
    expect([12, 13, 18, 20, 25].map((spine) => chosen('mm', spine))).toEqual([
      '3.5 mm',
      '3.5 mm',
      '4 mm',
      '4 mm',
      '5 mm',
    ]);
  });

  it('says null for a gauge or a thickness the tables do not hold', () => {
    const metal = tables.metals.find(({ id }) => id === 'aluminium-3003-h14');
    if (!metal) throw new Error('no such metal');
    expect(gaugeThickness(tables, metal, 9)).toBeNull();
    expect(gaugeThickness(tables, { ...metal, gauge: null }, 16)).toBeNull();
    expect(gaugeThickness(tables, metal, NaN)).toBeNull();
    expect(minBendRatioFor(metal, 10)).toBeNull();
  });

  it('finds nothing under an id no row has, were it a word every object knows', () => {
    for (const id of ['', 'unobtainium', 'constructor', '__proto__']) {
      expect([findMetal(tables, id), findBoard(tables, id), findScrew(tables, id)]).toEqual([
        undefined,
        undefined,
        undefined,
      ]);
    }
  });

  it.each([
    ['is missing', rules.rows.filter(({ id }) => id !== 'maxSag')],
    ['has a list for a number', rules.rows.map((row) => (row.id === 'maxSag' ? { ...row, value: [0.1] } : row))],
  ])('a shop rule that %s is a fault of ours', async (_, rows) => {
    vi.resetModules();
    vi.doMock('../../shared/shop-rules.json', () => ({ default: { rows } }));
    const { loadTables: load } = await import('../../src/tables/bundled');
    expect(load).toThrow(
      expect.objectContaining({
        name: 'InternalError',
        message: expect.stringContaining('shop rule maxSag') as string,
      }) as Error,
    );
  });

  it('are read without the schema library, which would cost every command its start-up', async () => {
    const { metafile } = await build({
      entryPoints: ['src/tables/bundled.ts', 'src/tables/look-up.ts'],
      bundle: true,
      write: false,
      metafile: true,
      outdir: 'out',
      format: 'esm',
    });
    const inputs = Object.keys(metafile.inputs);
    expect(inputs).toContain('shared/sheet-metals.json');
    expect(inputs.filter((path) => path.includes('node_modules'))).toEqual([]);
  });
});
