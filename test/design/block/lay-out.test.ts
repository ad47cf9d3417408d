import { describe, expect, it } from 'vitest';
import { coneThrough } from '../../../src/base/cone';
import { layerCorners } from '../../../src/design/block/block-shape';
import { layOutBlock } from '../../../src/design/block/finishing-block';
import { tablesIn } from '../../../src/tables/tables';
import { planStarter, tables } from '../../helpers/starters';

/** The block of a right-angled bend of 40 mm on a cylinder, laid out by hand: legs at 45 degrees either side of its arc. */

const { bend, job } = planStarter('plain-curve');
const ROOT = Math.SQRT1_2;
const stock = tables.boards.find(({ id }) => id === 'mdf-18');
if (!stock) throw new Error('no board');
const rules = { ...tables.rules, clampWood: 12 };
const own = (more: object) => ({
  ...tables,
  rules,
  boards: [{ ...stock, thickness: 20, length: 1000, width: 400, ...more }],
});

const lay = (
  block: { at?: number; length?: number; thickness?: number | null } = {},
  { radius = 40, legs = { held: 30, free: 50 }, length = 400, board = {}, wrap = Math.PI / 2 } = {},
) =>
  layOutBlock(
    {
      ...bend,
      finished: coneThrough(radius, radius, length),
      length,
      finishedWrap: wrap,
      legs: { ...bend.legs, ...legs },
    },
    {
      ...job,
      units: 'mm',
      cut: { ...job.cut, border: 10 },
      block: { at: 200, length: 60, board: { stock: 'mdf-18', thickness: null }, ...block },
    },
    own(board),
  );

describe('layers of the finishing block', () => {
  it('stand about the wanted place, whole boards that come to the wanted length', () => {
    const spans = (block: object, more: object = {}): unknown => {
      const { value } = lay(block, more);
      return value && [value.from, value.to, value.layers.length];
    };
    expect(spans({})).toEqual([170, 230, 3]);
    expect(spans({ length: 61 })).toEqual([160, 240, 4]);
    // Pushed back inside at either end.
    expect(spans({ at: 10 })).toEqual([0, 60, 3]);
    expect(spans({ at: 395 })).toEqual([340, 400, 3]);
    // No more than the bend is long: four boards of 90 mm, pushed to its far end.
    expect(spans({ length: 400 }, { length: 90 })).toEqual([10, 90, 4]);
    expect(
      lay({}).value?.layers.map(({ name, at, thickness, radius, contact }) => [name, at, thickness, radius, contact]),
    ).toEqual([
      ['block-1', 180, 20, 40, 'A'],
      ['block-2', 200, 20, 40, 'A'],
      ['block-3', 220, 20, 40, 'A'],
    ]);
    expect(layOutBlock(bend, { ...job, block: null }, tables)).toEqual({ value: null, findings: [] });
  });

  it('are told where none fits the bend, or more than sixty would be glued', () => {
    expect(lay({}, { length: 19 })).toMatchObject({
      value: null,
      findings: [{ code: 'block-too-thick', path: 'block', values: { thickness: 20 } }],
    });
    expect(lay({ at: 1000, length: 1200 }, { length: 2000 }).findings).toEqual([]);
    expect(lay({ at: 1000, length: 1201 }, { length: 2000 })).toMatchObject({
      value: null,
      findings: [{ code: 'block-too-many-layers', path: 'block.length', values: { most: 60, thickness: 20 } }],
    });
  });

  it('have their flat back 15 mm below the lower leg’s end, and 50 mm of wood behind the arc at least', () => {
    // Leg's end: 40·cos 45° − 50·sin 45° = −7.07; 40 − 50 = −10 is lower; less 15.
    expect(lay().value?.base).toBeCloseTo(-25, 9);
    expect(lay({}, { legs: { held: 80, free: 50 } }).value?.base).toBeCloseTo((40 - 80) * ROOT - 15, 9);
    // Straight edges of no more than 100 mm.
    expect(lay({}, { legs: { held: 300, free: 500 } }).value).toMatchObject({ legs: { held: 100, free: 100 } });
    expect(lay({}, { legs: { held: 30, free: 50 } }).value).toMatchObject({
      legs: { held: 30, free: 50 },
      wrap: Math.PI / 2,
    });
  });

  it('have two dowel holes of 8 mm, 12 mm from every edge', () => {
    const { value } = lay();
    // Seen from A the free leg lies left: its end (40 + 50)/√2 = 63.64 out, the held 49.50. Holes at −25 + 20 = −5; 12 + 4 = 16 off edges.
    // Under the legs' lines: (40 − 16 + 5·cos 45°)/sin 45° = 38.94; ends: 49.50 − 16 = 33.50 right, −47.64 left, cut to −38.94.
    const under = (24 + 5 * ROOT) / ROOT;
    const right = 70 * ROOT - 16;
    const [middle, out] = [(right - under) / 2, 0.7 * ((right + under) / 2)];
    const [one, two] = value?.holes ?? [];
    expect(one).toMatchObject({ diameter: 8 });
    expect(one?.x).toBeCloseTo(middle - out, 9);
    expect(two?.x).toBeCloseTo(middle + out, 9);
    expect(one?.y).toBeCloseTo(-5, 9);
    expect(two?.y).toBeCloseTo(-5, 9);
    const inch = layOutBlock(
      { ...bend, finished: coneThrough(40, 40, 400), length: 400 },
      { ...job, units: 'in', block: { at: 200, length: 60, board: { stock: 'mdf-18', thickness: null } } },
      tablesIn(own({}), 'in'),
    );
    // 5/16 in.
    expect(inch.value?.holes[0]?.diameter).toBeCloseTo((25.4 * 5) / 16, 12);
  });

  it('where the holes come high under a flat arc they keep from the arc as well', () => {
    // Half a turn's worth nearly flat: wrap 0.2, radius 100, no legs to speak of: base 100 − 50 − 15 = 35, holes at 55; arc room √(84² − 55²).
    const { value } = lay({}, { radius: 100, legs: { held: 200, free: 200 }, wrap: 0.2 });
    const [one, two] = value?.holes ?? [];
    const y = Math.min(100 * Math.cos(0.1) - 100 * Math.sin(0.1), 50) - 15 + 20;
    expect(one?.y).toBeCloseTo(y, 9);
    // y is below (100 − 16)·cos 0.1, so that the legs' lines limit, or the ends: 100·sin 0.1 + 100·cos 0.1 − 16.
    const end = 100 * Math.sin(0.1) + 100 * Math.cos(0.1) - 16;
    const under = (84 - y * Math.cos(0.1)) / Math.sin(0.1);
    expect(two?.x).toBeCloseTo(0.7 * Math.min(end, under), 9);
    expect(one?.x).toBeCloseTo(-0.7 * Math.min(end, under), 9);
  });

  it('without room for two holes are refused', () => {
    const [found] = lay({}, { radius: 12, legs: { held: 5, free: 5 } }).findings;
    expect(found).toMatchObject({ code: 'block-without-room-for-dowels', path: 'block', values: { needed: 12 } });
  });

  it('fit their board just within its border', () => {
    // Width: (40 + 30)/√2 + (40 + 50)/√2 = 113.14; height 40 + 25 = 65.
    const room = (length: number, width: number) => lay({}, { board: { length, width } });
    const wide = 160 * ROOT;
    expect(room(wide + 20.01, 85.01).findings).toEqual([]);
    expect(room(85.01, wide + 20.01).findings).toEqual([]);
    const [found] = room(wide + 19.99, 85.01).findings;
    expect(found).toMatchObject({ code: 'block-larger-than-board', path: 'block' });
    expect(room(wide + 19.99, 85.01).value).toBeNull();
    const [size, left] = [found?.values['size'], found?.values['room']];
    if (!Array.isArray(size) || !Array.isArray(left)) throw new Error('no sizes');
    expect(size[0]).toBeCloseTo(wide, 9);
    expect(size[1]).toBeCloseTo(65, 9);
    expect(left[0]).toBeCloseTo(wide - 0.01, 9);
    expect(left[1]).toBeCloseTo(65.01, 9);
    expect(room(wide + 20.01, 84.99).findings).toMatchObject([{ code: 'block-larger-than-board' }]);
  });
});

describe('a slice of the block', () => {
  it('runs round: back, right leg’s end, arc, left leg’s end', () => {
    const corners = layerCorners({
      radius: 40,
      wrap: Math.PI / 2,
      legs: { held: 30, free: 50 },
      base: -25,
      contact: 'A',
    });
    const expected = [
      [-90 * ROOT, -25, 0],
      [70 * ROOT, -25, 0],
      [70 * ROOT, 10 * ROOT, 0],
      [40 * ROOT, 40 * ROOT, Math.tan(Math.PI / 8)],
      [-40 * ROOT, 40 * ROOT, 0],
      [-90 * ROOT, -10 * ROOT, 0],
    ];
    expect(corners).toHaveLength(6);
    corners.forEach(({ x, y, bulge }, index) => {
      const [ex = NaN, ey = NaN, eb = NaN] = expected[index] ?? [];
      expect([x - ex, y - ey, bulge - eb].every((off) => Math.abs(off) < 1e-9)).toBe(true);
    });
    // Seen from B the free leg lies right.
    const mirrored = layerCorners({
      radius: 40,
      wrap: Math.PI / 2,
      legs: { held: 30, free: 50 },
      base: -25,
      contact: 'B',
    });
    expect(mirrored[0]?.x).toBeCloseTo(-70 * ROOT, 9);
    expect(mirrored[1]?.x).toBeCloseTo(90 * ROOT, 9);
    // Without legs four corners are left, and each place is named once.
    expect(
      layerCorners({ radius: 40, wrap: Math.PI / 2, legs: { held: 0, free: 0 }, base: -25, contact: 'A' }),
    ).toHaveLength(4);
  });
});
