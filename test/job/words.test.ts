import { describe, expect, it } from 'vitest';
import { sayFindings, type SaidFinding } from '../../src/findings/say';
import { parseJob } from '../../src/job/parse';
import { metalNameSchema } from '../../src/tables/schema';
import { tables } from '../helpers/starters';

const JOB = `title: Galley hood edge
units: in
sheet: { material: steel-cold-rolled-cs, thickness: 18 ga }
bend: { angle: 90, length: 20, radius: 2, legs: { held: 1, free: 5 } }
`;

const read = (from: string, to: string): { job: ReturnType<typeof parseJob>['job']; findings: SaidFinding[] } => {
  expect(JOB).toContain(from);
  const { job, findings, units } = parseJob(JOB.replace(from, to), tables);
  return { job, findings: sayFindings(findings, { units }) };
};

/** Ids a hint offers, in its order. */
const offered = (hint: string | undefined): string[] =>
  [...(hint ?? '').matchAll(/“([^”]+)”/gu)].map(([, id]) => id ?? '');

describe('metals by the names people use', () => {
  it('every other name leads to rows there are, and to the same wherever it stands', () => {
    const ids = tables.metals.map(({ id }) => id);
    for (const row of tables.metalNames) metalNameSchema.parse(row);
    expect(tables.metalNames.flatMap(({ fits }) => fits).filter((id) => !ids.includes(id))).toEqual([]);
    const names = tables.metalNames.flatMap((row) => row.names);
    expect(names.filter((name, index) => names.indexOf(name) !== index)).toEqual([]);
    expect(
      ids.filter((id) => !tables.metalNames.some(({ fits }) => fits.includes(id)) && !/stainless|steel-dc/u.test(id)),
    ).toEqual([]);
  });

  it.each([
    ['mild steel', 'steel-cold-rolled-cs'],
    ['CRS', 'steel-cold-rolled-cs'],
    ['cold rolled', 'steel-cold-rolled-cs'],
    ['Cold-Rolled Steel', 'steel-cold-rolled-cs'],
    ['hot rolled', 'steel-hot-rolled-cs'],
    ['galvanized', 'steel-galvanised-cs'],
    ['galvanized steel', 'steel-galvanised-cs'],
    ['stainless', 'stainless-304-annealed'],
    ['stainless 316', 'stainless-316-annealed'],
    ['304', 'stainless-304-annealed'],
    ['aluminum', 'aluminium-3003-h14'],
    ['aluminum 6061', 'aluminium-6061-o'],
    ['6061-T6', 'aluminium-6061-t6'],
    ['5052', 'aluminium-5052-o'],
    ['aluminum-3003-h14', 'aluminium-3003-h14'],
    ['aluminium-3003-h41', 'aluminium-3003-h14'],
    ['brass', 'brass-c260-soft'],
    ['copper', 'copper-c110-soft'],
    ['chromoly', 'steel-4130-normalised'],
  ])('%s: %s is offered first, and stands first in the list of all', (name, first) => {
    const [finding] = read('steel-cold-rolled-cs', name).findings;
    expect(finding?.code).toBe('unknown-metal');
    expect(offered(finding?.hint)[0]).toBe(first);
    const allowed = finding?.allowed?.split(', ') ?? [];
    expect(allowed[0]).toBe(first);
    expect([...allowed].sort()).toEqual(tables.metals.map(({ id }) => id).sort());
  });

  it('every temper that fits is offered, not the likeliest alone', () => {
    expect(offered(read('steel-cold-rolled-cs', 'aluminum 6061').findings[0]?.hint).sort()).toEqual([
      'aluminium-6061-o',
      'aluminium-6061-t4',
      'aluminium-6061-t6',
    ]);
    expect(offered(read('steel-cold-rolled-cs', 'stainless').findings[0]?.hint)).toContain('stainless-316-annealed');
  });

  it('where nothing comes near, where to look is said', () => {
    expect(read('steel-cold-rolled-cs', 'unobtainium').findings[0]?.hint).toBe('bendbuck metals lists what there is');
  });
});

describe('numbers as people write them', () => {
  it.each([
    ['18 ga', '18 gage'],
    ['18 ga', '18 gauge'],
    ['18 ga', '18ga'],
    ['18 ga', '18-gauge'],
    ['18 ga', '"#18"'],
    ['18 ga', 'No. 18'],
  ])('%s may be written %s', (from, to) => {
    // Manufacturers’ Standard Gauge: 18 ga is .0478 in.
    expect(read(from, to).job?.sheet.thickness).toBeCloseTo(0.0478 * 25.4, 9);
  });

  it.each(['in', 'mm'])('a thickness of 18 %s is taken for a gauge forgotten', (units) => {
    const { findings } = parseJob(JOB.replace('units: in', `units: ${units}`).replace('18 ga', '18'), tables);
    const found = sayFindings(findings, { units: 'in' }).find(({ path }) => path === 'sheet.thickness');
    expect(found?.code).toBe('out-of-range');
    expect(found?.hint).toContain('18 ga');
  });

  it('so is one in quotes; one with a unit is not', () => {
    const hint = (written: string): string | undefined =>
      read('thickness: 18 ga', `thickness: ${written}`).findings.find(({ path }) => path === 'sheet.thickness')?.hint;
    expect(hint("'18'")).toBe('if you mean the gauge, write 18 ga');
    expect(hint('18 mm')).toBe('check the number and its unit');
  });

  it('what the job says nothing of has no line', () => {
    const { findings } = parseJob('title: Shelf\nunits: in\n', tables);
    expect(findings.map(({ path, line }) => [path, line])).toEqual([
      ['sheet', undefined],
      ['bend', undefined],
    ]);
  });

  it('a gauge or a screw after a bare #, where YAML begins a comment, is told from nothing', () => {
    const [gauge, ...more] = read('thickness: 18 ga', 'thickness: #18').findings;
    expect(more).toEqual([]);
    expect(gauge).toMatchObject({ line: 3, hint: 'if you mean the gauge, write 18 ga' });
    const screw = read('\nbend:', '\nscrews:\n  size: #8\nbend:').findings;
    expect(screw.map(({ hint }) => hint)).toEqual(['write it in quotes: "#8"']);
    expect(read('thickness: 18 ga }', 'thickness: 18 ga } # thickness: #18').findings).toEqual([]);
  });

  it('a decimal comma in braces is told from a key', () => {
    const { findings } = read('thickness: 18 ga', 'thickness: 1,5');
    const comma = findings.find(({ code }) => code === 'decimal-comma');
    expect(comma?.hint).toBe('write a decimal point, not a comma: thickness: 1.5');
    expect(findings.map(({ hint }) => hint)).not.toContain('remove it');
    expect(read('angle: 90', 'angle: "22,5"').findings[0]?.hint).toBe('write a decimal point, not a comma');
    expect(read('thickness: 18 ga', 'thickness: "1,5"').findings[0]?.message).toContain('decimal point');
  });

  it.each(['90°', '90 deg', '90 degrees', '"90"'])('an angle may be %s', (text) => {
    expect(read('angle: 90', `angle: ${text}`).job?.bend.angle).toBeCloseTo(Math.PI / 2, 14);
  });

  it.each([
    ['45 lbs', 45 * 4.4482216152605],
    ['45 lb', 45 * 4.4482216152605],
    ['20 kg', 20 * 9.80665],
  ])('a force may be %s', (text, newtons) => {
    expect(read('title:', `effort: { handForce: ${text} }\ntitle:`).job?.effort.handForce).toBeCloseTo(newtons, 9);
  });

  it.each([
    ['board: mdf-18', 'mdf-18'],
    ['board: mdf-3/4', 'mdf-3/4'],
    ['board: { stock: mdf-3/4 }', 'mdf-3/4'],
    ['board: { stock: MDF 3/4" }', 'mdf-3/4'],
    ['board: { stock: 3/4 in MDF }', 'mdf-3/4'],
    ['board: { stock: 18 mm MDF }', 'mdf-18'],
    ['board: { stock: mdf18 }', 'mdf-18'],
  ])('%s is understood', (text, id) => {
    const { job, findings } = read('title:', `${text}\ntitle:`);
    expect(findings).toEqual([]);
    expect(job?.board.spine.stock).toBe(id);
    expect(job?.board.backing.stock).toBe(id);
  });
});

describe('one wrong word is one mistake', () => {
  it.each(['inches', 'inch', 'furlong', 'millimetres'])('units: %s', (word) => {
    const { findings } = read('units: in', `units: ${word}`);
    expect(findings.map(({ code, path }) => [code, path])).toEqual([['bad-value', 'units']]);
    if (word.startsWith('inch')) expect(findings[0]?.hint).toBe('did you mean “in”?');
  });
});
