import polygonClipping from 'polygon-clipping';
import { describe, expect, it } from 'vitest';
import type { Vertex } from '../../../src/base/drawing';
import { moveDrawing } from '../../../src/base/transform';
import { layOutMetal, blankMass, type Blank, type MetalSupply } from '../../../src/drawing/boards/lay-out-metal';
import type { LaidOut } from '../../../src/drawing/boards/laid-out';
import { mirrored, outlineOf } from '../../../src/panel/trace/outline';

const loop = (...points: readonly (readonly [number, number])[]): Vertex[] =>
  points.map(([x, y]) => ({ x, y, bulge: 0 }));
const blank = (id: string, ...points: readonly (readonly [number, number])[]): Blank => ({
  id,
  name: id,
  outline: outlineOf(loop(...points), []),
});

const steel: MetalSupply = {
  metal: 'steel',
  thickness: 1,
  density: 7850,
  sheet: { width: 1250, length: 2500 },
  offcuts: [],
  grain: 'any',
  gap: 5,
  border: 3,
};

/** Each blank’s corners where the sheet has it, from its own drawing and its placement. */
function places(sheet: LaidOut, blanks: readonly Blank[]): [number, number][][] {
  return sheet.placements.map((placement) => {
    const found = blanks.find(({ id }) => id === placement.part);
    if (!found) throw new Error(placement.part);
    const [shape] = moveDrawing(
      { shapes: [{ kind: 'loop', operation: 'outline', vertices: found.outline.vertices }] },
      placement,
    ).shapes;
    return shape?.kind === 'loop' ? shape.vertices.map(({ x, y }): [number, number] => [x, y]) : [];
  });
}

describe('blanks on metal sheet', () => {
  it('a square metre of 1 mm steel of 7850 kg/m³ weighs 7.85 kg, a hole taken off', () => {
    const square = loop([0, 0], [1000, 0], [1000, 1000], [0, 1000]);
    expect(blankMass(outlineOf(square, []), steel)).toBeCloseTo(7.85, 12);
    const hole: Vertex[] = [
      { x: 400, y: 500, bulge: 1 },
      { x: 600, y: 500, bulge: 1 },
    ];
    expect(blankMass(outlineOf(square, [hole]), steel)).toBeCloseTo(7.85 * (1 - 0.01 * Math.PI), 12);
  });

  it('left and right, L-shaped, lie in one another on one sheet: no overlap by polygon-clipping, inside the border', () => {
    const left = blank('left', [0, 0], [900, 0], [900, 250], [300, 250], [300, 800], [0, 800]);
    const right: Blank = { id: 'right', name: 'right', outline: mirrored(left.outline) };
    const { value } = layOutMetal([left, right], { ...steel, sheet: { width: 1220, length: 2440 } }, 'sheet.stock');
    expect(value?.sheets).toHaveLength(1);
    const [sheet] = value?.sheets ?? [];
    if (!sheet) throw new Error('no sheet');
    const [a = [], b = []] = places(sheet, [left, right]);
    expect(polygonClipping.intersection([a], [b])).toEqual([]);
    const all = [...a, ...b];
    expect(Math.min(...all.flat())).toBeGreaterThanOrEqual(3 - 1e-6);
    expect(Math.max(...all.map(([x]) => x))).toBeLessThanOrEqual(2437 + 1e-6);
    expect(Math.max(...all.map(([, y]) => y))).toBeLessThanOrEqual(1217 + 1e-6);
    expect(value?.used).toBeCloseTo((2 * (900 * 250 + 300 * 550)) / (1220 * 2440), 9);
  });

  it('the grain runs along the sheet: with the blank’s x, with its y, or either way', () => {
    const strip = blank('strip', [0, 0], [2000, 0], [2000, 1000], [0, 900]);
    const along = layOutMetal([strip], { ...steel, grain: 'x' }, 'sheet.stock').value?.sheets[0]?.placements[0];
    expect(Math.abs(Math.sin(along?.angle ?? NaN))).toBeLessThan(1e-9);
    const tall = blank('tall', [0, 0], [1000, 0], [900, 2000], [0, 2000]);
    const turned = layOutMetal([tall], { ...steel, grain: 'y' }, 'sheet.stock').value?.sheets[0];
    expect(Math.abs(Math.cos(turned?.placements[0]?.angle ?? NaN))).toBeLessThan(1e-9);
    const [corners = []] = turned ? places(turned, [tall]) : [];
    expect(Math.max(...corners.map(([x]) => x)) - Math.min(...corners.map(([x]) => x))).toBeCloseTo(2000, 6);
    expect(layOutMetal([tall], steel, 'sheet.stock').value?.sheets).toHaveLength(1);
  });

  it('what would fit only across the grain is refused, with its size', () => {
    const strip = blank('strip', [0, 0], [2000, 0], [2000, 1000], [0, 1000]);
    const { value, findings } = layOutMetal([strip], { ...steel, grain: 'y' }, 'sheet.stock');
    expect(value).toBeNull();
    expect(findings).toEqual([
      {
        code: 'metal-too-small',
        level: 'error',
        path: 'sheet.stock',
        values: { blank: 'strip', size: [2000, 1000], sheet: [2500, 1250] },
      },
    ]);
  });

  it('offcuts are taken first', () => {
    const small = blank('small', [0, 0], [300, 0], [300, 200], [0, 200]);
    const offcuts = [
      { width: 100, length: 100 },
      { width: 250, length: 400 },
    ];
    const { value } = layOutMetal([small], { ...steel, offcuts }, 'sheet.stock');
    expect(value?.sheets.map(({ id, offcut }) => [id, offcut])).toEqual([['metal-offcut-2', 1]]);
  });
});
