import { describe, expect, it } from 'vitest';
import { loadTables } from '../../src/tables/bundled';
import { gaugeThickness, minBendRatioFor, screwFor } from '../../src/tables/look-up';
import { boardSchema, gaugeTableSchema, metalSchema, screwSchema, shopRuleSchema } from '../../src/tables/schema';
import rules from '../../shared/shop-rules.json';

const tables = loadTables();

describe('reference tables', () => {
  it.each([
    ['metals', tables.metals, metalSchema],
    ['gauges', tables.gauges, gaugeTableSchema],
    ['boards', tables.boards, boardSchema],
    ['screws', tables.screws, screwSchema],
  ] as const)('%s: every row keeps its schema, ids are unique', (_, rows, schema) => {
    for (const row of rows) schema.parse(row);
    expect(new Set(rows.map(({ id }) => id)).size).toBe(rows.length);
  });

  it('shop rules: every row has unit and source, and is read', () => {
    for (const row of rules.rows) shopRuleSchema.parse(row);
    expect(rules.rows.map(({ id }) => id).sort()).toEqual(Object.keys(tables.rules).sort());
  });

  it('holds at least twenty metals and tempers, each plausible', () => {
    expect(tables.metals.length).toBeGreaterThanOrEqual(20);
    for (const metal of tables.metals) {
      expect(metal.yield, metal.id).toBeLessThan(metal.tensile);
      expect(metal.modulus / 1000, metal.id).toBeGreaterThan(60);
      expect(metal.modulus / 1000, metal.id).toBeLessThan(215);
      if (metal.gauge !== null) expect(tables.gauges.map(({ id }) => id)).toContain(metal.gauge);
      expect(metal.minBendRatio.map(({ upTo }) => upTo)).toEqual([...metal.minBendRatio.map(({ upTo }) => upTo)].sort((a, b) => a - b));
    }
  });

  it('hardening curves start at the yield with an initial strain small enough to be one', () => {
    for (const { id, hardening, yield: yieldStress } of tables.metals) {
      if (!hardening) continue;
      const initial = (yieldStress / hardening.strength) ** (1 / hardening.exponent);
      expect(hardening.strength, id).toBeGreaterThan(yieldStress);
      expect(initial, id).toBeLessThan(0.05);
      expect(initial, id).toBeGreaterThan(1e-6);
    }
  });

  it('screws come in rising lengths, each with its name, and for every spine one size of either system', () => {
    for (const screw of tables.screws) {
      expect(screw.lengthNames).toHaveLength(screw.lengths.length);
      expect(screw.lengths).toEqual([...screw.lengths].sort((a, b) => a - b));
      expect(screw.pilot).toBeLessThan(screw.diameter);
      expect(screw.clearance).toBeGreaterThan(screw.diameter);
      expect(screw.headDiameter).toBeGreaterThan(screw.clearance);
    }
    const chosen = (system: 'in' | 'mm', spine: number): string | undefined => screwFor(tables, system, spine)?.id;
    expect([12, 13, 18, 20, 25].map((spine) => chosen('in', spine))).toEqual(['#6', '#6', '#8', '#8', '#10']);
    expect([12, 13, 18, 20, 25].map((spine) => chosen('mm', spine))).toEqual(['3.5 mm', '3.5 mm', '4 mm', '4 mm', '5 mm']);
  });

  it('says null for a gauge or a thickness the tables do not hold', () => {
    const metal = tables.metals.find(({ id }) => id === 'aluminium-3003-h14');
    if (!metal) throw new Error('no such metal');
    expect(gaugeThickness(tables, metal, 9)).toBeNull();
    expect(minBendRatioFor(metal, 10)).toBeNull();
  });
});
