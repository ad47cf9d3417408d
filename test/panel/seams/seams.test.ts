import { describe, expect, it } from 'vitest';
import fastenersFile from '../../../shared/fasteners.json';
import type { Vertex } from '../../../src/base/drawing';
import type { Finding } from '../../../src/base/findings';
import { acrossBend } from '../../../src/panel/seams/across-bend';
import { checkClearOfBends } from '../../../src/panel/seams/clear-of-bends';
import { checkJoin } from '../../../src/panel/seams/join';
import { layOutSeam } from '../../../src/panel/seams/lay-out-seam';
import { rivetCount, rivetsPerInch, widthForLoad } from '../../../src/panel/seams/rivet-count';
import type { Seam, SeamLayout } from '../../../src/panel/seams/seam';
import { loadFasteners } from '../../../src/tables/fasteners';
import { inWords } from '../../helpers/in-words';
import { near } from '../../helpers/near';

const table = loadFasteners();
const IN = 25.4;

function fastener(id: string) {
  const found = table.fasteners.find((row) => row.id === id);
  if (!found) throw new Error(`no ${id}`);
  return found;
}

const seam = (more: Partial<Seam> = {}): Seam => ({
  on: 'top',
  lap: 1.25 * IN,
  fastener: fastener('rivet-5/32'),
  countersunk: false,
  ends: 0.625 * IN,
  spacing: { count: 7 },
  rows: 1,
  drill: 'now',
  ...more,
});

/** An edge along y 0 to the right, the sheet above it, mm. */
const straight = (length: number): Vertex[] => [
  { x: 0, y: 0, bulge: 0 },
  { x: length, y: 0, bulge: 0 },
];
const sheet = { thickness: 1.4, mating: 1.4 };

function lay(asked: Seam, run: readonly Vertex[]): SeamLayout {
  const { value, findings } = layOutSeam(asked, { run, ...sheet }, table.rules, 'seams[0]');
  if (!value)
    throw new Error(
      inWords(findings)
        .map(({ message }) => message)
        .join('\n'),
    );
  return value;
}

const codes = (findings: readonly Finding[]): string[] => findings.map(({ code, path }) => `${code} ${path}`);
const errors = (asked: Partial<Seam>, run = straight(22 * IN)): string[] =>
  codes(layOutSeam(seam(asked), { run, ...sheet }, table.rules, 'seams[0]').findings);

describe('the table of fasteners', () => {
  it('every row has a source, a hole larger than its fastener, and an id of its own', () => {
    const rows = [...fastenersFile.rows, ...fastenersFile.rules, ...fastenersFile.strength];
    expect(rows.every(({ source }) => source.length > 10)).toBe(true);
    expect(new Set(rows.map(({ id }) => id)).size).toBe(rows.length);
    for (const { id, diameter, hole } of table.fasteners) {
      expect(hole / diameter, id).toBeGreaterThan(1);
      expect(hole / diameter, id).toBeLessThan(1.25);
    }
  });

  // reference-facts-2.md 1.2 and 1.3: repair manual, Machinery's Handbook 31 p. 1741, ISO 273.
  it.each([
    ['rivet-1/8', 0.125 * IN, 0.1285 * IN],
    ['rivet-5/32', (5 / 32) * IN, 0.159 * IN],
    ['screw-10', 0.19 * IN, 0.221 * IN],
    ['screw-8', 0.164 * IN, 0.196 * IN],
    ['M4', 4, 4.5],
    ['M6', 6, 6.6],
    ['M8', 8, 9],
  ])('%s', (id, diameter, hole) => {
    expect(fastener(id)).toMatchObject({ diameter: near(diameter, 3), hole: near(hole, 3) });
  });
});

describe('a row along an edge', () => {
  it('the hood side’s: seven holes on a 22 in edge, 5/8 in from its ends, on the middle of the lap', () => {
    const { rows, pitch, count, length, fromEdge } = lay(seam(), straight(22 * IN));
    expect([count, length, fromEdge]).toEqual([7, 22 * IN, [0.625 * IN]]);
    // (22 − 1.25)/6 in.
    expect(pitch).toBeCloseTo((20.75 / 6) * IN, 9);
    expect(rows[0]?.map(({ x, y }) => [x, y])).toEqual(
      Array.from({ length: 7 }, (_, i) => [near((0.625 + (i * 20.75) / 6) * IN), near(0.625 * IN)]),
    );
  });

  // n = ⌈(L − 2e)/p⌉ + 1: 10 in with 1/2 in ends.
  it.each([
    [1, 10],
    [0.9, 11],
    [9, 2],
    [20, 2],
  ])('a pitch of %f in at most gives %i holes', (pitch, count) => {
    const made = lay(seam({ spacing: { pitch: pitch * IN }, ends: 0.5 * IN }), straight(10 * IN));
    expect(made.count).toBe(count);
    expect(made.pitch).toBeCloseTo((9 / (count - 1)) * IN, 9);
    expect(made.pitch).toBeLessThanOrEqual(Math.max(9, pitch) * IN + 1e-9);
  });

  it('on an arc the row lies inside it by half the lap and its holes are equally far apart', () => {
    // A quarter of 400, sheet on the left: toward the centre.
    const made = lay(seam({ lap: 40, spacing: { count: 5 }, ends: 20 }), [
      { x: 400, y: 0, bulge: Math.tan(Math.PI / 8) },
      { x: 0, y: 400, bulge: 0 },
    ]);
    const [row = []] = made.rows;
    expect(row.every(({ x, y }) => Math.abs(Math.hypot(x, y) - 380) < 1e-9)).toBe(true);
    const angles = row.map(({ x, y }) => Math.atan2(y, x) * 380);
    expect(angles[0]).toBeCloseTo(20, 9);
    expect(angles.slice(1).map((angle, i) => angle - (angles[i] ?? 0))).toEqual(
      Array.from({ length: 4 }, () => near((380 * Math.PI) / 8 - 10, 9)),
    );
    expect(made.lapLine.every(({ x, y }) => Math.abs(Math.hypot(x, y) - 360) < 1e-9)).toBe(true);
  });

  it('two rows share the lap; at 6.5 diameters edge 2, rows 2.5 apart', () => {
    const d = fastener('M4').diameter;
    const made = lay(
      seam({ fastener: fastener('M4'), lap: 6.5 * d, rows: 2, ends: 20, spacing: { count: 9 } }),
      straight(400),
    );
    expect(made.fromEdge).toEqual([near(2 * d), near(4.5 * d)]);
    expect(made.rows.map((row) => row.length)).toEqual([9, 9]);
  });
});

describe('seams that are refused', () => {
  it.each([
    ['a lap below 4 diameters', { lap: 0.6 * IN }, ['seam-lap seams[0].lap']],
    ['as much is enough', { lap: 0.625 * IN }, []],
    ['countersunk heads need 5', { lap: 0.7 * IN, countersunk: true }, ['seam-lap seams[0].lap']],
    ['two rows need 6.5', { lap: 1 * IN, rows: 2 }, ['seam-lap seams[0].lap']],
    ['ends below 2 diameters', { ends: 0.3 * IN }, ['seam-ends seams[0].ends']],
    ['a pitch below 3 diameters', { spacing: { count: 60 } }, ['seam-pitch seams[0].count']],
    ['two rows: below 4', { spacing: { pitch: 0.6 * IN }, rows: 2, lap: 1.25 * IN }, ['seam-pitch seams[0].pitch']],
    ['one hole', { spacing: { count: 1 } }, ['seam-count seams[0].count']],
    ['half a hole', { spacing: { count: 2.5 } }, ['seam-count seams[0].count']],
    ['no room between the ends', { ends: 11 * IN }, ['seam-short seams[0].ends']],
    ['too thick for its sheet', { fastener: fastener('rivet-1/4') }, ['seam-diameter seams[0].fastener']],
  ] as const)('%s', (_, asked, expected) => {
    expect(errors(asked)).toEqual(expected);
  });

  it('an edge with a corner', () => {
    const corner = [...straight(200).slice(0, 1), { x: 200, y: 0, bulge: 0 }, { x: 200, y: 200, bulge: 0 }];
    expect(errors({}, corner)).toEqual(['seam-corner seams[0].on']);
    // An arc tighter than the lap.
    expect(
      errors({}, [
        { x: 20, y: 0, bulge: 1 },
        { x: -20, y: 0, bulge: 0 },
      ]),
    ).toContain('seam-corner seams[0].on');
  });

  it('a seam over a bend, unless it is match-drilled', () => {
    const zone = {
      name: 'long',
      outline: [
        { x: 200, y: -5, bulge: 0 },
        { x: 250, y: -5, bulge: 0 },
        { x: 250, y: 300, bulge: 0 },
        { x: 200, y: 300, bulge: 0 },
      ],
    };
    expect(codes(checkClearOfBends(lay(seam(), straight(22 * IN)), [zone], 'seams[0]'))).toEqual([
      'seam-over-bend seams[0].on',
    ]);
    expect(checkClearOfBends(lay(seam({ drill: 'match' }), straight(22 * IN)), [zone], 'seams[0]')).toEqual([]);
    expect(checkClearOfBends(lay(seam(), straight(7 * IN)), [zone], 'seams[0]')).toEqual([]);
  });
});

describe('a seam across a bend', () => {
  it('reference-facts-2.md 1.4: 90° and two sheets of 1.6 differ by 2.51 mm, whatever the radius; R 40: pitch × 1.0392', () => {
    const sheets = { inner: 1.6, outer: 1.6, neutral: 0.5 };
    for (const radius of [20, 40, 200])
      expect(acrossBend({ ...sheets, radius }, Math.PI / 2).longer).toBeCloseTo(2.51, 2);
    expect(acrossBend({ ...sheets, radius: 40 }, Math.PI / 2).pitch).toBeCloseTo(1.0392, 4);
    expect(acrossBend({ ...sheets, radius: 40 }, 1).pitch).toBeCloseTo((40 + 1.5 * 1.6) / (40 + 0.5 * 1.6), 12);
  });

  it('sheets of two thicknesses: t₁ + K·(t₂ − t₁) between their neutral lines', () => {
    expect(acrossBend({ radius: 30, inner: 1, outer: 2, neutral: 0.4 }, 1).longer).toBeCloseTo(
      30 + 1 + 0.8 - (30 + 0.4),
      12,
    );
  });
});

describe('rivets for a joint (AC 43.13-1B)', () => {
  const rivets = ['rivet-3/32', 'rivet-1/8', 'rivet-5/32', 'rivet-3/16', 'rivet-1/4'];
  const rule = (id: string) => {
    const found = table.strength.find((row) => row.id === id);
    if (!found) throw new Error(id);
    return found;
  };

  // Published tables as read (reference-facts-2.md 1.4); null where they print none. Where a tenth is off it is the tables' own rounding.
  it.each([
    ['4-10', 0.032, [8.9, 4.9, 3.9, 3.3, null]],
    ['4-10', 0.04, [11.1, 6.2, 4.0, 3.3, 2.4]],
    ['4-10', 0.051, [null, 7.9, 5.1, 3.6, 2.4]],
    ['4-10', 0.064, [null, 9.9, 6.5, 4.5, 2.5]],
    ['4-10', 0.128, [null, null, 12.9, 8.9, 4.9]],
    ['4-11', 0.032, [6.3, 4.7, 3.8, 3.2, null]],
    ['4-11', 0.04, [7.9, 4.7, 3.8, 3.2, 2.4]],
    ['4-11', 0.064, [12.7, 7.0, 4.6, 3.2, 2.4]],
  ])('table %s, sheet of %f in', (id, inches, published) => {
    for (const [index, count] of published.entries()) {
      if (count === null) continue;
      const perInch = rivetsPerInch({ thickness: inches * IN, rivet: fastener(rivets[index] ?? ''), rule: rule(id) });
      expect(Math.abs(perInch - count), rivets[index]).toBeLessThan(0.11);
    }
  });

  it('the worked examples: p. 4-27 37 rivets, p. 4-41 4 and 3', () => {
    const rivet = fastener('rivet-1/8');
    expect(
      rivetCount({ thickness: 0.032 * IN, width: 10 * IN, rivet, rule: rule('4-10'), share: table.rules.singleLap }),
    ).toBe(37);
    expect(rivetCount({ thickness: 0.04 * IN, width: 0.6 * IN, rivet, rule: rule('4-10') })).toBe(4);
    expect(rivetCount({ thickness: 0.04 * IN, width: 0.6 * IN, rivet, rule: rule('4-10'), share: 0.6 })).toBe(3);
  });

  it('a load asks for the rivets of the width of sheet that carries it', () => {
    expect(widthForLoad(1000, 1, 200)).toBe(5);
  });
});

describe('panels that are joined', () => {
  const side = lay(seam(), straight(22 * IN));
  const middle = lay(seam(), straight(22 * IN));
  const join = (outer: SeamLayout, drill: 'outer' | 'inner' | 'both' = 'inner') =>
    codes(
      checkJoin(
        { outer: { name: 'middle.left', layout: outer }, inner: { name: 'left.top', layout: side }, drill },
        table.rules,
        'joins[0]',
      ),
    );

  it('alike they fit', () => {
    expect(join(middle, 'both')).toEqual([]);
  });

  it.each([
    ['another length', lay(seam(), straight(22 * IN + 1.5)), ['join-length joins[0]']],
    ['another lap', lay(seam({ lap: 1.5 * IN }), straight(22 * IN)), ['join-lap joins[0]']],
    ['another count', lay(seam({ spacing: { count: 8 } }), straight(22 * IN)), ['join-count joins[0]']],
    ['another fastener', lay(seam({ fastener: fastener('rivet-1/8') }), straight(22 * IN)), ['join-fastener joins[0]']],
  ])('%s is told', (_, outer, expected) => {
    expect(join(outer)).toEqual(expected);
  });

  it('drilled apart, holes may differ by no more than their play', () => {
    // A rivet's hole has 0.07 mm to spare: ends 0.2 mm further in move the outermost holes by so much.
    const shifted = lay(seam({ ends: 0.625 * IN + 0.2 }), straight(22 * IN));
    expect(join(shifted, 'both')).toEqual(['join-holes joins[0]']);
    expect(join(shifted, 'inner')).toEqual([]);
  });
});
