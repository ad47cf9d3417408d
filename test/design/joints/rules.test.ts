import { describe, expect, it } from 'vitest';
import { coneThrough } from '../../../src/base/cone';
import type { DrivenScrew, FixtureLayout, Station } from '../../../src/design/fixture/fixture';
import { layOutJoints } from '../../../src/design/joints';
import { dowelsFor, halfDiscRoom, rectangleRoom } from '../../../src/design/joints/dowels';
import { laserJoints } from '../../../src/design/joints/laser';
import { checkWalls } from '../../../src/design/joints/opening';
import { grooveOverrun } from '../../../src/design/joints/overrun';
import { routerJoints } from '../../../src/design/joints/router';
import type { LaserCut, RouterCut } from '../../../src/job/job';
import type { Screw } from '../../../src/tables/schema';
import { planStarter, tables } from '../../helpers/starters';

/** What joints there is room for, by hand, at the place where each rule begins to hold. */

const { bend, job, layout } = planStarter('plain-curve');
const tools = {
  ...tables.tools,
  jointWood: 4,
  tabLeast: 8,
  tabMost: 40,
  tabShort: 0.5,
  tabRelief: 1.5,
  grooveLeast: 1,
  grooveMost: 0.5,
  underHead: 2,
  grooveOverrun: 0.5,
  dowelLeast: 3,
};
const [someScrew] = tables.screws;
if (!someScrew) throw new Error('no screws');
const kind: Screw = { ...someScrew, diameter: 4, clearance: 4.5, headDiameter: 8 };
const screw = (offset: number, pilotDepth = 33): DrivenScrew => ({
  offset,
  length: 50,
  lengthName: '50',
  pilotDepth,
  kind,
});
const station = (name: string, at: number, screws: readonly DrivenScrew[] = [screw(-25), screw(25)]): Station => ({
  ...{ name, at, thickness: 18, contact: 'A', radius: 50, farRadius: 50, ends: [], screws },
});
const cylinder = { ...bend, form: coneThrough(50, 50, 400), length: 400 };
const plain: FixtureLayout = {
  ...layout,
  stations: [station('S1', 100), station('S2', 300)],
  spine: { length: 400, thickness: 18, ears: 0 },
  backings: [],
  clampHoles: [],
  layers: { spine: 1, stations: 1, backing: 1 },
};
const any = { gap: 4, border: 6, colours: {} } as const;
const router: RouterCut = { with: 'router', bit: 4, groove: 4, fit: 0.2, bridges: false, ...any };
const laser: LaserCut = { with: 'laser', kerf: 0.2, fit: 0.1, layers: null, dowel: 6, ...any };

describe('grooves', () => {
  const found = (of: Partial<FixtureLayout>, cut: Partial<RouterCut> = {}) =>
    routerJoints({ ...plain, ...of }, { ...router, ...cut }, tools);

  it('stand round their stations, wider by the fit', () => {
    expect(found({})).toEqual({
      value: {
        with: 'router',
        depth: 4,
        grooves: [
          { holds: 'S1', low: 90.9, high: 109.1, open: null },
          { holds: 'S2', low: 290.9, high: 309.1, open: null },
        ],
      },
      findings: [],
    });
    expect(grooveOverrun(router, tools)).toBe(2.5);
    expect(grooveOverrun({ with: 'jigsaw', turn: 20, ...any }, tools)).toBe(0);
  });

  it('are as deep as holds and no deeper than half the spine or the wood under the heads', () => {
    const codes = (groove: number, thickness = 18) =>
      found({ spine: { ...plain.spine, thickness } }, { groove }).findings;
    expect(codes(1)).toEqual([]);
    expect(codes(9)).toEqual([]);
    expect(codes(0.9)).toMatchObject([
      {
        code: 'groove-depth',
        path: 'cut.groove',
        values: { depth: 0.9, spine: 18, trouble: 'shallow', least: 1, most: 9, mend: 'change depth' },
      },
    ]);
    expect(codes(9.1)).toMatchObject([{ values: { depth: 9.1, trouble: 'deep', most: 9 } }]);
    // 6 mm less half of (8 − 4.5) under the head less 2: 2.25, where half would be 3.
    expect(codes(2.25, 6)).toEqual([]);
    expect(codes(2.3, 6)).toMatchObject([{ values: { most: 2.25, mend: 'change depth' } }]);
    // 4.75 mm: 1 mm left, no more than the least.
    expect(codes(2, 4.75)).toMatchObject([{ values: { most: 1, mend: 'change board' } }]);
    // As deep as the least, in a board of which 0.5 mm would be left: that is too deep, not too shallow.
    expect(
      found({ stations: [station('S1', 100, [])], spine: { ...plain.spine, thickness: 2.5 } }, { groove: 1 }).findings,
    ).toMatchObject([{ values: { depth: 1, most: 0.5, trouble: 'deep', mend: 'change board' } }]);
    const screwless = { stations: [station('S1', 100, [])], spine: { ...plain.spine, thickness: 3 } };
    expect(found(screwless, { groove: 1 }).findings).toEqual([]);
    expect(found(screwless, { groove: 1.1 }).findings).toMatchObject([{ values: { most: 1 } }]);
  });

  it('let the bit in, and small holes are named once each', () => {
    expect(found({}, { bit: 4.5 }).findings).toEqual([]);
    expect(found({ clampHoles: [{ at: 200, diameter: 4.7 }] }, { bit: 4.6 }).findings).toMatchObject([
      { code: 'smaller-than-bit', path: 'cut.bit', values: { bit: 4.6, holes: [{ name: 'screw holes', mm: 4.5 }] } },
    ]);
    const [wide] = found(
      {
        clampHoles: [
          { at: 200, diameter: 10 },
          { at: 250, diameter: 10 },
        ],
      },
      { bit: 12 },
    ).findings;
    expect(wide?.values['holes']).toEqual([
      { name: 'screw holes', mm: 4.5 },
      { name: 'clamp holes', mm: 10 },
    ]);
    const backing = {
      name: 'BS1',
      at: 200,
      thickness: 18,
      width: 100,
      depth: 80,
      screws: [{ ...screw(0), kind: { ...kind, clearance: 5 } }],
    };
    expect(found({ backings: [backing] }, { bit: 12 }).findings[0]?.values['holes']).toEqual([
      { name: 'screw holes', mm: 4.5 },
      { name: 'screw holes', mm: 5 },
    ]);
    // Grooves are 18.2 wide.
    expect(found({ stations: [station('S1', 100, [])] }, { bit: 18.2 }).findings).toEqual([]);
    const [narrow] = found({ stations: [station('S1', 100, [])] }, { bit: 18.3 }).findings;
    expect(narrow).toMatchObject({ code: 'groove-narrower-than-bit', path: 'cut.bit', values: { bit: 18.3 } });
    expect(narrow?.values['groove']).toBeCloseTo(18.2, 9);
  });
});

describe('wood between openings', () => {
  const opening = (holds: string, low: number, high: number) => ({ holds, low, high, open: null });

  it('is asked for between neighbours, in whatever order they come', () => {
    expect(checkWalls([opening('b', 24, 30), opening('a', 10, 20)], 4, 'grooves')).toEqual([]);
    expect(checkWalls([opening('b', 23, 30), opening('a', 10, 20), opening('c', 50, 60)], 4, 'grooves')).toMatchObject([
      { code: 'grooves-too-close', path: 'bend', values: { first: 'a', second: 'b', wall: 3, least: 4 } },
    ]);
    expect(checkWalls([opening('a', 10, 20), opening('b', 18, 30)], 4, 'slots')).toMatchObject([
      { code: 'slots-too-close', values: { wall: 0 } },
    ]);
    expect(checkWalls([], 4, 'slots')).toEqual([]);
  });
});

describe('dowels', () => {
  it('a half-disc of 50 with no screws: as far out as 3 + 4 mm of it go, on half millimetres', () => {
    // A disc of 7 round the hole, at depth 7 at least: √(43² − 7²) = 42.43 → 42 out, and the first half millimetre deep enough is 7.
    expect(dowelsFor(halfDiscRoom(50, []), 6, [5, 4, 3], tools)).toEqual([
      { offset: -42, depth: 7, diameter: 6 },
      { offset: 42, depth: 7, diameter: 6 },
    ]);
  });

  it('a rectangle: 7 mm from its sides', () => {
    expect(dowelsFor(rectangleRoom(30, 14, []), 6, [5], tools)).toEqual([
      { offset: -23, depth: 7, diameter: 6 },
      { offset: 23, depth: 7, diameter: 6 },
    ]);
    // 13 mm deep takes 5 mm (2.5 + 4 twice), no more; 9.9 mm deep takes none down to 3 mm.
    expect(dowelsFor(rectangleRoom(30, 13, []), 6, [5, 4, 3], tools).map(({ diameter }) => diameter)).toEqual([5, 5]);
    expect(dowelsFor(rectangleRoom(30, 10, []), 6, [5, 4, 3], tools)).toEqual([]);
    expect(dowelsFor(rectangleRoom(30, 13, []), 6, [4, 2], { ...tools, dowelLeast: 5 })).toEqual([]);
  });

  it('two of them keep wood between one another', () => {
    // 3 + 4/2 = 5 from the middle at least; the room ends at 7 from its side.
    expect(dowelsFor(rectangleRoom(12, 20, []), 6, [], tools)).toEqual([
      { offset: -5, depth: 7, diameter: 6 },
      { offset: 5, depth: 7, diameter: 6 },
    ]);
    expect(dowelsFor(rectangleRoom(11.5, 20, []), 6, [], tools)).toEqual([]);
  });

  it('beside a screw by its half and the wood, outside it where there is room, else within, else past its end', () => {
    // A screw at 10, 4 thick: 2 + 7 = 9 off: 19 or more, or 1 or less; the side leaves 23.
    expect(dowelsFor(rectangleRoom(30, 14, [screw(-10), screw(10)]), 6, [], tools)[1]).toMatchObject({ offset: 23 });
    // At 16 there is no room outside (25 > 23): within, at 7.
    expect(dowelsFor(rectangleRoom(30, 14, [screw(-16), screw(16)]), 6, [], tools)[1]).toEqual({
      offset: 7,
      depth: 7,
      diameter: 6,
    });
    // A thinner one outside the screws rather than the wanted one between them: 16 + 2 + 6 = 24 = 30 − 6.
    expect(dowelsFor(rectangleRoom(30, 14, [screw(-16), screw(16)]), 6, [4, 3], tools)[1]).toEqual({
      offset: 24,
      depth: 6,
      diameter: 4,
    });
    // Deeper than its pilot of 12 by 7: at 19.
    expect(dowelsFor(rectangleRoom(30, 30, [screw(-16, 12), screw(16, 12)]), 6, [], tools)[1]).toEqual({
      offset: 23,
      depth: 19,
      diameter: 6,
    });
  });
});

describe('tabs, slots and layers', () => {
  const lay = (of: Partial<FixtureLayout>, cut: Partial<LaserCut> = {}) =>
    laserJoints({ ...plain, ...of }, cylinder, { cut: { ...laser, ...cut }, units: 'mm' }, tools);
  const codes = (of: Partial<FixtureLayout>, cut: Partial<LaserCut> = {}): string[] =>
    lay(of, cut).findings.map(({ code }) => code);

  it('a tab of 34 mm between screws at ±25, its slot wider by the fit, reaching all but half a millimetre', () => {
    const { value, findings } = lay({});
    expect(findings).toEqual([]);
    expect(value).toMatchObject({ with: 'laser', tabLength: 17.5 });
    expect(value.relief).toBeCloseTo(0.3, 12);
    expect(value.boards.map(({ name, tabs, dowels }) => [name, tabs, dowels])).toEqual([
      ['S1', [{ offset: 0, width: 34 }], []],
      ['S2', [{ offset: 0, width: 34 }], []],
    ]);
    expect(value.boards[0]?.slots).toEqual([{ low: 90.95, high: 109.05, open: null, offset: 0, width: 34.1 }]);
    expect(value.boards[0]?.layers).toEqual([{ low: 91, high: 109, contact: 'A', radius: 50, farRadius: 50 }]);
  });

  it('three layers of a stack touch a taper each at its own lower face', () => {
    const { value } = laserJoints(
      { ...plain, layers: { spine: 1, stations: 3, backing: 1 } },
      { ...bend, form: coneThrough(40, 80, 50) },
      { cut: laser, units: 'mm' },
      tools,
    );
    // tan β = 40/30 along the centre line.
    const layers =
      value.boards[0]?.layers.map(({ low, high, radius, farRadius }) => [low, high, radius, farRadius]) ?? [];
    expect(layers).toHaveLength(3);
    [91, 97, 103].forEach((low, index) => {
      const [at = NaN, to = NaN, radius = NaN, far = NaN] = layers[index] ?? [];
      expect(at).toBeCloseTo(low, 9);
      expect(to).toBeCloseTo(low + 6, 9);
      expect(radius).toBeCloseTo(40 + (low * 4) / 3, 9);
      expect(far).toBeCloseTo(40 + ((low + 6) * 4) / 3, 9);
    });
  });

  it('dowels only through more than one layer; thinner or none are told', () => {
    const three = { layers: { spine: 1, stations: 3, backing: 1 } };
    expect(lay(three).value.boards[0]?.dowels).toHaveLength(2);
    expect(codes(three)).toEqual([]);
    const small = { ...three, stations: [{ ...station('S1', 100, []), radius: 18, farRadius: 18 }] };
    const [thinner] = lay(small, { dowel: 10 }).findings;
    // 8 mm: a disc of 4 + 4 round it at 6, 8 reaches 10 + 8 = 18, and 6 is 4 + 4/2 from the middle; 10 mm would be in the middle itself.
    expect(thinner).toMatchObject({
      ...{ code: 'dowels-thinner', path: 'cut.dowel' },
      values: { dowel: 10, thinner: [{ name: 'S1', mm: 8 }] },
    });
    const none = { ...three, stations: [{ ...station('S1', 100, []), radius: 10, farRadius: 10 }] };
    expect(lay(none).findings).toMatchObject([
      { code: 'no-room-for-dowels', path: 'cut.dowel', values: { boards: ['S1'] } },
    ]);
    expect(codes({ stations: none.stations })).toEqual([]);
  });

  it('a backing station’s tabs and dowels reach as far as its half, one slot a board counts for the wall beside it', () => {
    const backing = { name: 'BS1', at: 200, thickness: 18, width: 100, depth: 80 };
    // One screw: from its head's 4 + 4 mm to 4 mm from the side, 8 … 46.
    const single = lay({ backings: [{ ...backing, screws: [screw(0)] }] });
    expect(single.findings).toEqual([]);
    expect(single.value.boards[2]?.tabs).toEqual([
      { offset: -27, width: 38 },
      { offset: 27, width: 38 },
    ]);
    expect(single.value.boards[2]?.slots.map(({ offset, width }) => [offset, width])).toEqual([
      [-27, 38.1],
      [27, 38.1],
    ]);
    // 3 + 4 mm from the side, and from the edge: at 43, 7.
    const three = { layers: { spine: 1, stations: 1, backing: 3 } };
    expect(
      lay({ ...three, backings: [{ ...backing, screws: [screw(-25), screw(25)] }] }).value.boards[2]?.dowels,
    ).toEqual([
      { offset: -43, depth: 7, diameter: 6 },
      { offset: 43, depth: 7, diameter: 6 },
    ]);
    // Slots of 18.1 at 100 and 121: 2.9 mm between them.
    const [close, ...more] = lay({ stations: [station('S1', 100), station('S2', 121)] }).findings;
    expect(more).toEqual([]);
    expect(close).toMatchObject({ code: 'slots-too-close', values: { first: 'S1', second: 'S2', least: 4 } });
    expect(close?.values['wall']).toBeCloseTo(2.9, 9);
  });

  it('a board without room for a tab is told', () => {
    const bare = { ...station('S9', 100, [screw(-11), screw(11)]), radius: 30 };
    expect(lay({ stations: [bare] }).findings).toMatchObject([
      { code: 'no-room-for-tabs', path: 'cut', values: { boards: ['S9'] } },
    ]);
  });

  it('an even stack has its screws in the glue', () => {
    const even = (stations: number, backing: number, more: Partial<FixtureLayout> = {}) =>
      lay({ layers: { spine: 1, stations, backing }, ...more }).findings.flatMap(({ code, path, values }) =>
        code === 'screws-in-glue-line' ? [[path, values['boards']]] : [],
      );
    const backings = [{ name: 'BS1', at: 200, thickness: 18, width: 100, depth: 80, screws: [screw(-25), screw(25)] }];
    expect(even(2, 1)).toEqual([['cut.layers', ['stations']]]);
    expect(even(3, 2)).toEqual([]);
    expect(even(3, 2, { backings })).toEqual([['cut.layers', ['backing stations']]]);
    expect(even(2, 2, { backings })).toEqual([['cut.layers', ['stations', 'backing stations']]]);
    expect(even(2, 1, { stations: [] })).toEqual([]);
  });

  it('the beam’s round corners ask for (1 − 1/√2) of its width as play', () => {
    // 0.2929 of 1 mm.
    expect(codes({}, { kerf: 1, fit: 0.293 })).toEqual([]);
    const [tight] = lay({}, { kerf: 1, fit: 0.292 }).findings;
    expect(tight).toMatchObject({ code: 'fit-tighter-than-beam', path: 'cut.fit', values: { fit: 0.292, beam: 1 } });
    expect(tight?.values['least']).toBeCloseTo(1 - Math.sqrt(0.5), 12);
    const bare = { ...station('S1', 100, [screw(-11), screw(11)]), radius: 30 };
    expect(codes({ stations: [bare] }, { kerf: 1, fit: 0.1 })).not.toContain('fit-tighter-than-beam');
    expect(codes({ stations: [bare, station('S2', 300)] }, { kerf: 1, fit: 0.1 })).toContain('fit-tighter-than-beam');
  });

  it('the beam is no wider than half of what it cuts out, nor than the notches beside tabs allow', () => {
    const loose = { fit: 2 };
    // Notches: 4/2/1.5 = 1.333; screw holes 4.5/2.
    expect(codes({}, { ...loose, kerf: 1.33 })).toEqual([]);
    const [wide] = lay({}, { ...loose, kerf: 1.34 }).findings;
    expect(wide).toMatchObject({ code: 'kerf-too-wide', path: 'cut.kerf', values: { kerf: 1.34, opening: 4.5 } });
    expect(wide?.values['most']).toBeCloseTo(4 / 3, 12);
    const fine = { ...kind, clearance: 2 };
    const thin = {
      stations: [
        station('S1', 100, [
          { ...screw(-25), kind: fine },
          { ...screw(25), kind: fine },
        ]),
      ],
    };
    expect(codes(thin, { ...loose, kerf: 1 })).toEqual([]);
    expect(lay(thin, { ...loose, kerf: 1.01 }).findings).toMatchObject([{ values: { opening: 2, most: 1 } }]);
    const backings = [
      { name: 'BS1', at: 200, thickness: 18, width: 100, depth: 80, screws: thin.stations[0]?.screws ?? [] },
    ];
    expect(lay({ backings }, { ...loose, kerf: 1.01 }).findings).toMatchObject([{ values: { opening: 2, most: 1 } }]);
    // A slot of an 1 mm board: 1 + 0.1, with wide screw holes.
    const slim = { stations: [{ ...station('S1', 100), thickness: 1 }] };
    const [slot] = lay(slim, { fit: 0.4, kerf: 0.8 }).findings;
    expect(slot?.values['opening']).toBeCloseTo(1.4, 9);
    // And dowels of 3 mm.
    const stacked = { layers: { spine: 1, stations: 3, backing: 1 } };
    expect(lay(stacked, { ...loose, dowel: 2.5, kerf: 1.3 }).findings).toMatchObject([
      { values: { opening: 2.5, most: 1.25 } },
    ]);
  });
});

describe('the boards’ thickness', () => {
  const lay = (cut: RouterCut | LaserCut, board: object = {}) =>
    layOutJoints(
      plain,
      cylinder,
      { ...job, cut, board: { ...job.board, ...board } },
      { ...tables, tools: { ...tools, laserThickest: 10, looseFit: 0.5 } },
    ).findings;
  const of = (stock: string, thickness: number | null) => ({ stock, thickness });
  const all = (stock: string, thickness: number | null) => ({
    spine: of(stock, thickness),
    stations: of(stock, thickness),
    backing: of(stock, thickness),
  });

  it('is to be measured, each kind of board named once', () => {
    const named = (board: object, cut: RouterCut | LaserCut = router) =>
      lay(cut, board).flatMap(({ code, values }) => (code === 'board-not-measured' ? [values] : []));
    const names = ['mdf-18', 'mdf-9'].map((id) => tables.boards.find((board) => board.id === id)?.name ?? '');
    expect(named(all('mdf-18', 17.8))).toEqual([]);
    expect(named(all('mdf-18', null))).toEqual([{ openings: 'grooves', boards: names.slice(0, 1) }]);
    expect(named({ ...all('mdf-9', 9), spine: of('mdf-18', null), backing: of('mdf-9', null) }, laser)).toEqual([
      { openings: 'slots', boards: names },
    ]);
  });

  it('is more than a small laser cuts from 10 mm on; a router does not mind', () => {
    const thick = (cut: RouterCut | LaserCut, thickness: number) => lay(cut, all('mdf-9', thickness));
    expect(thick(laser, 10)).toEqual([]);
    expect(thick(laser, 10.1)).toMatchObject([
      {
        code: 'thick-for-laser',
        path: 'board',
        values: { boards: [tables.boards.find(({ id }) => id === 'mdf-9')?.name], most: 10 },
      },
    ]);
    expect(thick(router, 18)).toEqual([]);
  });

  it('and a fit of more than half a millimetre places nothing', () => {
    expect(lay({ ...router, fit: 0.5 }, all('mdf-9', 9))).toEqual([]);
    expect(lay({ ...router, fit: 0.51 }, all('mdf-9', 9))).toMatchObject([
      { code: 'loose-fit', path: 'cut.fit', values: { fit: 0.51, opening: 'groove', most: 0.5 } },
    ]);
    expect(lay({ ...laser, fit: 0.51 }, all('mdf-9', 9))).toMatchObject([
      { code: 'loose-fit', values: { opening: 'slot' } },
    ]);
  });
});
