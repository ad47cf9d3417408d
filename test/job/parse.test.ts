import fc from 'fast-check';
import { readFileSync, readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseJob } from '../../src/job/parse';
import { loadTables } from '../../src/tables/bundled';
import type { Finding } from '../../src/base/findings';

const tables = loadTables();

const GOOD = `title: Galley hood edge
units: mm
sheet: { material: aluminium-3003-h14, thickness: 1.6 }
bend:
  angle: 90
  length: 400
  radius: { from: 40, to: 50 }
  legs: { held: 30, free: 150 }
runs:
  - { name: long edge, from: 0, to: 400 }
board: { stock: mdf-18 }
`;

/** The findings of the good job with one thing changed. */
function broken(from: string, to: string): readonly Finding[] {
  expect(GOOD).toContain(from);
  const { job, findings } = parseJob(GOOD.replace(from, to), tables);
  expect(job, 'a wrong job must not be read').toBeNull();
  return findings;
}

const codes = (findings: readonly Finding[]): string[] => findings.map(({ code }) => code);

describe('a good job', () => {
  it('is read with every default filled in', () => {
    const { job, findings } = parseJob(GOOD, tables);
    expect(findings).toEqual([]);
    expect(job).toMatchObject({
      title: 'Galley hood edge',
      units: 'mm',
      sheet: { material: 'aluminium-3003-h14', thickness: 1.6, minBendRatio: null },
      bend: { length: 400, radius: { from: 40, to: 50 }, radiusOf: 'finished', legs: { held: 30, free: 150 } },
      stations: { maxSpan: 200, maxSag: 0.1 },
      screws: { size: null, cover: 6 },
      clamps: { hole: 38, wood: 12, rating: 900 },
      effort: { handForce: 200, safety: 1.5, maxLeverage: null },
      neutral: null,
    });
    expect(job?.bend.angle).toBeCloseTo(Math.PI / 2, 14);
    expect(job?.board.backing).toEqual({ stock: 'mdf-18', thickness: null });
  });

  it('may be JSON, with tabs', () => {
    const { job, findings } = parseJob(JSON.stringify({ title: 'A', sheet: { material: 'copper-c110-soft', thickness: '1/16 in' }, bend: { angle: 45, length: 300, radius: '2 in', legs: { held: 40, free: 90 } } }, null, '\t'), tables);
    expect(findings).toEqual([]);
    expect(job?.sheet.thickness).toBe(1.5875);
    expect(job?.runs).toEqual([{ name: 'whole length', from: 0, to: 300 }]);
  });

  it('takes gauges from the metal’s own table', () => {
    // Brown & Sharpe 14 ga .0641 in for aluminium; Manufacturers’ Standard 14 ga .0747 in for steel.
    expect(parseJob(GOOD.replace('1.6', '14 ga'), tables).job?.sheet.thickness).toBeCloseTo(0.0641 * 25.4, 12);
    expect(parseJob(GOOD.replace('1.6', '14 ga').replace('aluminium-3003-h14', 'steel-cold-rolled-cs'), tables).job?.sheet.thickness).toBeCloseTo(0.0747 * 25.4, 12);
  });

  it.each(readdirSync('templates'))('starter %s reads without a word', (name) => {
    const { job, findings } = parseJob(readFileSync(`templates/${name}`, 'utf8'), tables);
    expect(findings).toEqual([]);
    expect(job).not.toBeNull();
  });
});

describe('a wrong job', () => {
  it('unknown metal: path, line, got, nearest match', () => {
    const [finding] = broken('aluminium-3003-h14', 'aluminum-3003-h14');
    expect(finding).toMatchObject({ code: 'unknown-metal', level: 'error', path: 'sheet.material', line: 3, got: 'aluminum-3003-h14', hint: 'did you mean “aluminium-3003-h14”?' });
    expect(finding?.allowed).toContain('copper-c110-soft');
  });

  it('unknown key: nearest match', () => {
    expect(broken('  angle: 90', '  angel: 90')).toEqual(
      expect.arrayContaining([expect.objectContaining({ code: 'unknown-key', path: 'bend.angel', line: 5, hint: 'did you mean “angle”?' }), expect.objectContaining({ code: 'missing', path: 'bend.angle' })]),
    );
    expect(broken('stock: mdf-18', 'stok: mdf-18')[0]).toMatchObject({ code: 'unknown-key', path: 'board.stok', hint: 'did you mean “stock”?' });
    expect(broken('{ from: 40, to: 50 }', '{ from: 40, too: 50 }').map(({ path }) => path)).toContain('bend.radius.too');
  });

  it.each([
    ['units: mm', 'units: furlong', 'bad-value', 'units'],
    ['stock: mdf-18', 'stock: mdf-81', 'unknown-board', 'board.stock'],
    ['thickness: 1.6', 'thickness: -1.6', 'out-of-range', 'sheet.thickness'],
    ['thickness: 1.6', 'thickness: 99 ga', 'unknown-gauge', 'sheet.thickness'],
    ['thickness: 1.6', 'thickness: .nan', 'wrong-kind', 'sheet.thickness'],
    ['thickness: 1.6', 'thickness: thin', 'bad-length', 'sheet.thickness'],
    ['length: 400', 'length: -400', 'out-of-range', 'bend.length'],
    ['length: 400', 'length: 4e9', 'out-of-range', 'bend.length'],
    ['length: 400', 'length: .inf', 'wrong-kind', 'bend.length'],
    ['length: 400', 'length: 18 ga', 'gauge-for-length', 'bend.length'],
    ['length: 400', 'length: "1,5 m"', 'bad-length', 'bend.length'],
    ['length: 400', 'length: [400]', 'wrong-kind', 'bend.length'],
    ['angle: 90', 'angle: 400', 'out-of-range', 'bend.angle'],
    ['angle: 90', 'angle: right', 'wrong-kind', 'bend.angle'],
    ['{ from: 40, to: 50 }', '{ from: 40, to: 440 }', 'taper-too-steep', 'bend.radius'],
    ['{ from: 40, to: 50 }', '0', 'out-of-range', 'bend.radius'],
    ['free: 150', 'free: 0', 'out-of-range', 'bend.legs.free'],
    ['from: 0, to: 400 }', 'from: 0, to: 401 }', 'run-outside-form', 'runs[0].to'],
    ['from: 0, to: 400 }', 'from: -1, to: 400 }', 'out-of-range', 'runs[0].from'],
    ['from: 0, to: 400 }', 'from: 300, to: 200 }', 'run-backward', 'runs[0]'],
    ['name: long edge', 'name: ""', 'empty-name', 'runs[0].name'],
    ['Galley hood edge', 'Galley/hood', 'title-with-slash', 'title'],
    ['Galley hood edge', 'Galley\\hood', 'title-with-slash', 'title'],
    ['Galley hood edge', '"Galley\\u0007hood"', 'control-characters', 'title'],
    ['Galley hood edge', '"Galley\\nhood"', 'control-characters', 'title'],
    ['Galley hood edge', '..', 'title-of-dots', 'title'],
    ['Galley hood edge', '"  "', 'empty-name', 'title'],
    ['Galley hood edge', 'x'.repeat(201), 'name-too-long', 'title'],
    ['Galley hood edge', '12', 'wrong-kind', 'title'],
  ])('%s → %s: %s at %s', (from, to, code, path) => {
    expect(broken(from, to)).toEqual(expect.arrayContaining([expect.objectContaining({ code, path, level: 'error' })]));
  });

  it('reports all mistakes at once, in the order of the file', () => {
    const { findings } = parseJob(GOOD.replace('aluminium-3003-h14', 'unobtainium').replace('angle: 90', 'angle: 900').replace('free: 150', 'free: -1').replace('stock: mdf-18', 'stock: oak'), tables);
    expect(codes(findings)).toEqual(['unknown-metal', 'out-of-range', 'out-of-range', 'unknown-board']);
    expect(findings.map(({ line }) => line)).toEqual([3, 5, 8, 11]);
  });

  it('two runs of one name', () => {
    expect(codes(broken('board:', '  - { name: long edge, from: 0, to: 200 }\nboard:'))).toContain('run-named-twice');
  });
});

describe('hostile text', () => {
  const only = (text: string): string[] => {
    const { job, findings } = parseJob(text, tables);
    expect(job).toBeNull();
    return codes(findings);
  };

  it('10 MB of YAML is refused before it is read', () => {
    expect(only('a: b\n'.repeat(2_000_000))).toEqual(['job-too-long']);
  });

  it('an alias bomb is refused', () => {
    const bomb = ['a: &a [x,x,x,x,x,x,x,x,x]', ...Array.from({ length: 9 }, (_, index) => `${'bcdefghij'[index]}: &${'bcdefghij'[index]} [${Array(9).fill(`*${'abcdefghi'[index]}`).join(',')}]`)].join('\n');
    expect(only(bomb)).toContain('yaml-anchor');
  });

  it.each([
    ['deep brackets', '['.repeat(20_000)],
    ['deep dashes', '- '.repeat(20_000)],
    ['deep blocks', Array.from({ length: 600 }, (_, index) => `${' '.repeat(index)}a:`).join('\n')],
    ['a tag', `${GOOD}neutral: !!js/function 'x'\n`],
    ['an unknown tag', `${GOOD}neutral: !boom 3\n`],
    ['a merge key', `${GOOD}<<: { neutral: 0.4 }\n`],
    ['a key twice', `${GOOD}title: again\n`],
    ['two documents', `${GOOD}---\n${GOOD}`],
    ['nothing', ''],
    ['a list', '- a\n- b\n'],
    ['a number', '42'],
    ['a prototype key', `${GOOD}__proto__: { neutral: 0.4 }\n`],
    ['a constructor key', `${GOOD}constructor: 1\n`],
    ['half a surrogate', GOOD.replace('Galley', '"\\ud800"')],
    ['binary', '\u0000\u0001\u0002'],
  ])('%s gives findings, not a job and not a crash', (_, text) => {
    expect(only(text).length).toBeGreaterThan(0);
  });

  it('any text and any mutilated job gives a job or an error, never an exception', () => {
    const mutilated = fc.tuple(fc.integer({ min: 0, max: GOOD.length }), fc.integer({ min: 0, max: 12 }), fc.string({ maxLength: 12 })).map(([at, drop, put]) => GOOD.slice(0, at) + put + GOOD.slice(at + drop));
    fc.assert(
      fc.property(fc.oneof({ weight: 1, arbitrary: fc.string({ maxLength: 200 }) }, { weight: 4, arbitrary: mutilated }), (text) => {
        const { job, findings } = parseJob(text, tables);
        expect(job === null).toBe(findings.some(({ level }) => level === 'error'));
      }),
      { numRuns: 3000 },
    );
  });
});
