import fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { parse as parseYaml } from 'yaml';
import { describe, expect, it } from 'vitest';
import { parseFile, parseJob } from '../../src/job/parse';
import { loadTables } from '../../src/tables/bundled';
import { sayFindings, type SaidFinding } from '../../src/findings/say';
import { cases } from '../helpers/cases';
import { starters } from '../helpers/starters';

const tables = loadTables();

const GOOD = `title: Galley hood edge
units: mm
sheet: { material: aluminium-3003-h14, thickness: 1.6 }
bend:
  angle: 90
  length: 400
  radius: { from: 40, to: 50 }
  legs: { held: 30, free: 150 }
board: { stock: mdf-18 }
offcuts:
  - { stock: mdf-18, width: 300, length: 400 }
`;

/** The findings of the good job with one thing changed. */
function broken(from: string, to: string): readonly SaidFinding[] {
  expect(GOOD).toContain(from);
  const { job, findings, units } = parseJob(GOOD.replace(from, to), tables);
  expect(job, 'a wrong job must not be read').toBeNull();
  return sayFindings(findings, { units });
}

const codes = (findings: readonly { code: string }[]): string[] => findings.map(({ code }) => code);

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
      effort: { handForce: 110, safety: 1.5, maxLeverage: null },
      neutral: null,
    });
    expect(job?.bend.angle).toBeCloseTo(Math.PI / 2, 14);
    expect(job?.board.backing).toEqual({ stock: 'mdf-18', thickness: null });
  });

  it('may be JSON, with tabs', () => {
    const { job, findings } = parseJob(
      JSON.stringify(
        {
          title: 'A',
          sheet: { material: 'copper-c110-soft', thickness: '1/16 in' },
          bend: { angle: 45, length: 300, radius: '2 in', legs: { held: 40, free: 90 } },
        },
        null,
        '\t',
      ),
      tables,
    );
    expect(findings).toEqual([]);
    expect(job?.sheet.thickness).toBe(1.5875);
    expect(job?.runs).toEqual([{ name: 'whole length', from: 0, to: 300 }]);
  });

  it('takes gauges from the metal’s own table', () => {
    // Brown & Sharpe 14 ga .0641 in for aluminium; Manufacturers’ Standard 14 ga .0747 in for steel.
    expect(parseJob(GOOD.replace('1.6', '14 ga'), tables).job?.sheet.thickness).toBeCloseTo(0.0641 * 25.4, 12);
    expect(
      parseJob(GOOD.replace('1.6', '14 ga').replace('aluminium-3003-h14', 'steel-cold-rolled-cs'), tables).job?.sheet
        .thickness,
    ).toBeCloseTo(0.0747 * 25.4, 12);
  });

  it.each(starters.map((name) => `${name}.yaml`))('starter %s reads without a word', (name) => {
    const { job, findings } = parseJob(readFileSync(`templates/${name}`, 'utf8'), tables);
    expect(findings).toEqual([]);
    expect(job?.title).toBe(/^title: (.*)$/mu.exec(readFileSync(`templates/${name}`, 'utf8'))?.[1]);
  });
});

describe('a wrong job', () => {
  it('unknown metal: path, line, got, nearest match', () => {
    const [finding] = broken('aluminium-3003-h14', 'aluminum-3003-h14');
    expect(finding).toMatchObject({
      code: 'unknown-metal',
      level: 'error',
      path: 'sheet.material',
      line: 3,
      got: 'aluminum-3003-h14',
      hint: 'did you mean “aluminium-3003-h14”?',
    });
    expect(finding?.allowed).toContain('copper-c110-soft');
  });

  it('unknown key: nearest match', () => {
    expect(broken('  angle: 90', '  angel: 90')).toEqual(
      expect.arrayContaining([
        expect.objectContaining({ code: 'unknown-key', path: 'bend.angel', line: 5, hint: 'did you mean “angle”?' }),
        expect.objectContaining({ code: 'missing', path: 'bend.angle' }),
      ]),
    );
    expect(broken('stock: mdf-18', 'stok: mdf-18')[0]).toMatchObject({
      code: 'unknown-key',
      path: 'board.stok',
      hint: 'did you mean “stock”?',
    });
    expect(broken('{ from: 40, to: 50 }', '{ from: 40, too: 50 }').map(({ path }) => path)).toContain(
      'bend.radius.too',
    );
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
    ['width: 300, length: 400 }', 'width: -1, length: 400 }', 'out-of-range', 'offcuts[0].width'],
    ['Galley hood edge', 'Galley/hood', 'title-with-slash', 'title'],
    ['Galley hood edge', 'Galley\\hood', 'title-with-slash', 'title'],
    ['Galley hood edge', '"Galley\\u0007hood"', 'control-characters', 'title'],
    ['Galley hood edge', '"Galley\\nhood"', 'control-characters', 'title'],
    ['Galley hood edge', '"Galley \\u202Eegde"', 'control-characters', 'title'],
    ['Galley hood edge', '"\\u200b"', 'empty-name', 'title'],
    ['Galley hood edge', '..', 'title-of-dots', 'title'],
    ['Galley hood edge', '"  "', 'empty-name', 'title'],
    ['Galley hood edge', 'x'.repeat(201), 'name-too-long', 'title'],
    ['Galley hood edge', '12', 'wrong-kind', 'title'],
  ])('%s → %s: %s at %s', (from, to, code, path) => {
    expect(broken(from, to)).toEqual(expect.arrayContaining([expect.objectContaining({ code, path, level: 'error' })]));
  });

  it('reports all mistakes at once, in the order of the file', () => {
    const { findings } = parseJob(
      GOOD.replace('aluminium-3003-h14', 'unobtainium')
        .replace('angle: 90', 'angle: 900')
        .replace('free: 150', 'free: -1')
        .replace('stock: mdf-18', 'stock: oak'),
      tables,
    );
    expect(codes(findings)).toEqual(['unknown-metal', 'out-of-range', 'out-of-range', 'unknown-board']);
    expect(findings.map(({ line }) => line)).toEqual([3, 5, 8, 9]);
  });

  it('every mistake is given its own line, also under a key with dots in its name', () => {
    const dotted = broken('board:', 'bend.angle: 45\nboard:');
    expect(dotted).toEqual([
      expect.objectContaining({ code: 'unknown-key', path: '["bend.angle"]', got: 'bend.angle', line: 9 }),
    ]);
    expect(broken('length: 400 }', 'length: 400 }\n  - { stock: mdf-18, width: 300, length: 1 }')).toEqual([
      expect.objectContaining({ code: 'out-of-range', path: 'offcuts[1].length', line: 12 }),
    ]);
    expect(broken('  legs: { held: 30, free: 150 }\n', '')).toEqual([
      expect.objectContaining({ code: 'missing', path: 'bend.legs', line: 4 }),
    ]);
  });

  it('says what kind of value is wanted, and how to write it', () => {
    expect(broken('Galley hood edge', '12')[0]).toMatchObject({
      allowed: 'text',
      got: '12',
      hint: 'put it in quotes: "12"',
    });
    expect(broken('angle: 90', 'angle: square')[0]).toMatchObject({
      allowed: 'a number',
      hint: 'write the number alone, without unit or quotes',
    });
    expect(broken('{ from: 40, to: 50 }', '[40, 50]')[0]).toMatchObject({
      path: 'bend.radius',
      allowed: 'a number, or text with its unit, or a block with from, to',
    });
    expect(broken('stock: mdf-18', 'spine: 18')[0]).toMatchObject({
      path: 'board.spine',
      allowed: 'a name, or a block with stock, thickness',
    });
    expect(broken('legs: { held: 30, free: 150 }', 'legs: 30')[0]?.hint).toBe('write it as a block with held, free');
  });

  it.each([
    ['thickness: 1.6', 'thickness: 12.8', 'sheet.thickness'],
    ['thickness: 1.6', 'thickness: 0.09', 'sheet.thickness'],
    ['{ from: 40, to: 50 }', '3001', 'bend.radius'],
    ['{ from: 40, to: 50 }', '0.9', 'bend.radius'],
    ['length: 400', 'length: 19', 'bend.length'],
    ['length: 400', 'length: 6001', 'bend.length'],
    ['held: 30', 'held: 3001', 'bend.legs.held'],
    ['angle: 90', 'angle: 0.5', 'bend.angle'],
    ['angle: 90', 'angle: 180', 'bend.angle'],
    ['board:', 'neutral: 0.51\nboard:', 'neutral'],
    ['board:', 'neutral: 0\nboard:', 'neutral'],
    ['board:', 'effort: { safety: 0.5 }\nboard:', 'effort.safety'],
    ['board:', 'effort: { handForce: 3 N }\nboard:', 'effort.handForce'],
    ['board:', 'clamps: { rating: -1 }\nboard:', 'clamps.rating'],
    ['board:', 'screws: { cover: 0 }\nboard:', 'screws.cover'],
    ['board:', 'stations: { maxSpan: -5 }\nboard:', 'stations.maxSpan'],
    ['stock: mdf-18', 'spine: { stock: mdf-18, thickness: 101 }', 'board.spine.thickness'],
  ])('absurd: %s → %s names what was got and what is allowed', (from, to, path) => {
    const found = broken(from, to).find((finding) => finding.path === path);
    expect(found).toMatchObject({ code: 'out-of-range', level: 'error' });
    expect(found?.got).toMatch(/\d/u);
    expect(found?.allowed).toMatch(/\d.* to .*\d/u);
  });

  it.each([
    ['stock: mdf-18', 'stations: mdf-81', 'unknown-board', 'board.stations'],
    ['stock: mdf-18', 'backing: { stock: ply }', 'unknown-board', 'board.backing.stock'],
    ['board:', 'screws: { size: "#7" }\nboard:', 'unknown-screw', 'screws.size'],
    ['board:', 'effort: { handForce: strong }\nboard:', 'bad-force', 'effort.handForce'],
    ['thickness: 1.6', 'thickness: 1/0 in', 'bad-length', 'sheet.thickness'],
    ['thickness: 1.6', 'thickness: ½2 in', 'bad-length', 'sheet.thickness'],
    ['thickness: 1.6', 'thickness: "1e0"', 'bad-length', 'sheet.thickness'],
    ['radius: { from: 40, to: 50 }', 'radius: { from: 40 }', 'missing', 'bend.radius.to'],
    ['units: mm', 'units: MM', 'bad-value', 'units'],
    ['board:', 'runs2: []\nboard:', 'unknown-key', 'runs2'],
  ])('%s → %s: %s', (from, to, code, path) => {
    expect(broken(from, to)).toEqual(expect.arrayContaining([expect.objectContaining({ code, path, level: 'error' })]));
  });

  it('a hair too long is told apart from just right', () => {
    expect(broken('board:', 'block: { at: 200.004, length: 400 }\nboard:')[0]).toMatchObject({
      code: 'block-outside-bend',
      got: '0.004 mm to 400.004 mm',
      allowed: '0 to 400 mm',
    });
  });

  it('a metal that is not sold by gauge, or not by that gauge', () => {
    const bare = { ...tables, metals: tables.metals.map((metal) => ({ ...metal, gauge: null })) };
    expect(sayFindings(parseJob(GOOD.replace('1.6', '14 ga'), bare).findings, { units: 'mm' })).toEqual([
      expect.objectContaining({
        code: 'unknown-gauge',
        path: 'sheet.thickness',
        line: 3,
        got: '14 ga',
        allowed: 'a length',
      }),
    ]);
  });
});

/** Every path in plain data, the whole itself left out. */
function placesIn(data: unknown, path: readonly string[] = []): (readonly string[])[] {
  if (typeof data !== 'object' || data === null) return [];
  return Object.entries(data).flatMap(([key, value]) => [[...path, key], ...placesIn(value, [...path, key])]);
}

function replaced(data: unknown, [step, ...rest]: readonly string[], put: unknown): unknown {
  if (step === undefined) return put;
  if (Array.isArray(data))
    return data.map((item: unknown, index) => (String(index) === step ? replaced(item, rest, put) : item));
  return { ...(data as object), [step]: replaced((data as Record<string, unknown>)[step], rest, put) };
}

function everyNumber(data: unknown): number[] {
  if (typeof data === 'number') return [data];
  return typeof data === 'object' && data !== null ? Object.values(data).flatMap(everyNumber) : [];
}

describe('hostile text', () => {
  const only = (text: string): string[] => {
    const { job, findings } = parseJob(text, tables);
    expect(job).toBeNull();
    return codes(findings);
  };

  it('10 MB of YAML is refused before it is read', () => {
    expect(only('a: b\n'.repeat(2_000_000))).toEqual(['job-too-long']);
  });

  it('thousands of keys are refused with one finding', () => {
    const keys = Array.from({ length: 5_500 }, (_, index) => `k${index}: 1`);
    expect(only(keys.join('\n'))).toEqual(['job-too-long']);
    expect(only(`{${keys.join(',')}}`)).toEqual(['job-too-long']);
  });

  it('thousands of mistakes are not read out one by one', () => {
    expect(only('! '.repeat(20_000))).toEqual(['unreadable']);
    expect(only('%a\n'.repeat(15_000)).length).toBeLessThanOrEqual(5);
    const found = only(Array.from({ length: 400 }, (_, index) => `k${index}: 1`).join('\n'));
    expect(found).toHaveLength(101);
    expect(found.at(-1)).toBe('more-mistakes');
  });

  it('an alias bomb is refused', () => {
    const bomb = [
      'a: &a [x,x,x,x,x,x,x,x,x]',
      ...Array.from(
        { length: 9 },
        (_, index) =>
          `${'bcdefghij'[index]}: &${'bcdefghij'[index]} [${Array(9).fill(`*${'abcdefghi'[index]}`).join(',')}]`,
      ),
    ].join('\n');
    expect(only(bomb)).toEqual(expect.arrayContaining(['yaml-anchor', 'yaml-alias']));
  });

  it.each([
    ['deep brackets', '['.repeat(20_000), 'job-too-deep'],
    ['deep dashes', '- '.repeat(20_000), 'job-too-deep'],
    ['deep blocks', Array.from({ length: 300 }, (_, index) => `${' '.repeat(index)}a:`).join('\n'), 'unknown-key'],
    ['an anchor', GOOD.replace('400', '&long 400'), 'yaml-anchor'],
    ['a tag', `${GOOD}neutral: !!js/function 'x'\n`, 'yaml-tag'],
    ['an unknown tag', `${GOOD}neutral: !boom 3\n`, 'yaml-tag'],
    ['a tag on a block', `${GOOD}effort: !!map { safety: 2 }\n`, 'yaml-tag'],
    ['a merge key', `${GOOD}<<: { neutral: 0.4 }\n`, 'unknown-key'],
    ['a key twice', `${GOOD}title: again\n`, 'key-twice'],
    ['a key twice, once in quotes', GOOD.replace('angle: 90', 'angle: 90\n  "angle": 45'), 'key-twice'],
    ['a list for a key', `${GOOD}? [a, b]\n: 1\n`, 'unreadable'],
    ['two documents', `${GOOD}---\n${GOOD}`, 'unreadable'],
    ['a tab for indent', GOOD.replace('  angle', '\tangle'), 'unreadable'],
    ['an open bracket', GOOD.replace('{ held: 30, free: 150 }', '{ held: 30, free: 150'), 'unreadable'],
    ['nothing', '', 'wrong-kind'],
    ['a comment alone', '# nothing yet\n', 'wrong-kind'],
    ['a list', '- a\n- b\n', 'wrong-kind'],
    ['a number', '42', 'wrong-kind'],
    ['a date', GOOD.replace('400', '2024-01-31'), 'bad-length'],
    ['a prototype key', `${GOOD}__proto__: { neutral: 0.4 }\n`, 'unknown-key'],
    ['a prototype key for a block', GOOD.replace('angle: 90', '__proto__: { angle: 90 }'), 'missing'],
    ['a constructor key', `${GOOD}constructor: 1\n`, 'unknown-key'],
    ['half a surrogate', GOOD.replace('Galley hood edge', '"\\ud800"'), 'control-characters'],
    ['binary', '\u0000\u0001\u0002', 'wrong-kind'],
  ])('%s gives findings, not a job and not a crash', (_, text, code) => {
    expect(only(text)).toContain(code);
    expect(({} as Record<string, unknown>)['neutral'], 'the prototype of all objects is left alone').toBeUndefined();
  });

  it('a line ruled across a comment is no nesting', () => {
    expect(parseJob(`# ${'- '.repeat(40)}\n${GOOD}`, tables).findings).toEqual([]);
  });

  it('BOM and CRLF are read past', () => {
    expect(parseJob(`\uFEFF${GOOD.replaceAll('\n', '\r\n')}`, tables).job).toEqual(parseJob(GOOD, tables).job);
  });

  it('any value anywhere in the job gives a sound job or an error on that line or another, never an exception', () => {
    const good = JSON.parse(JSON.stringify(parseYaml(GOOD))) as Record<string, unknown>;
    const places = placesIn(good);
    const value = fc.oneof(
      fc.jsonValue({ maxDepth: 2 }),
      fc.double(),
      fc.constantFrom(
        '1e3',
        '1-1/2 in',
        '18 ga',
        '1/0',
        '-3 mm',
        '45 lbf',
        '½2',
        '__proto__',
        '',
        null,
        -0,
        1e308,
        5e-324,
      ),
    );
    fc.assert(
      fc.property(fc.constantFrom(...places), value, (place, put) => {
        const { job, findings } = parseJob(JSON.stringify(replaced(good, place, put)), tables);
        expect(job === null).toBe(findings.some(({ level }) => level === 'error'));
        for (const finding of findings) expect(finding.line).toBe(1);
        if (job) expect(everyNumber(job).filter((number) => !Number.isFinite(number))).toEqual([]);
      }),
      { numRuns: cases(2000) },
    );
  });

  it('a panel’s places and corners of another kind are told in shop words', () => {
    const text = readFileSync('templates/panels/tray.yaml', 'utf8');
    const told = (from: string, to: string): string[] => {
      expect(text).toContain(from);
      return sayFindings(parseFile(text.replace(from, to), tables).findings, { units: 'mm' }).map(
        ({ message }) => message,
      );
    };
    expect(told('[0, 0]', 'here')).toEqual(['base.corners[0] should be a list, not “here”']);
    expect(told('\nboard:', '\ncorners: none\nboard:')).toEqual(['corners should be a block of keys, not “none”']);
  });

  it('any text and any mutilated job gives a job or an error, never an exception', () => {
    const mutilated = fc
      .tuple(fc.integer({ min: 0, max: GOOD.length }), fc.integer({ min: 0, max: 12 }), fc.string({ maxLength: 12 }))
      .map(([at, drop, put]) => GOOD.slice(0, at) + put + GOOD.slice(at + drop));
    fc.assert(
      fc.property(
        fc.oneof({ weight: 1, arbitrary: fc.string({ maxLength: 200 }) }, { weight: 4, arbitrary: mutilated }),
        (text) => {
          const { job, findings } = parseJob(text, tables);
          expect(job === null).toBe(findings.some(({ level }) => level === 'error'));
        },
      ),
      { numRuns: cases(3000) },
    );
  });
});
