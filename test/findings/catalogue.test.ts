import { stringify } from 'yaml';
import { describe, expect, it } from 'vitest';
import { catalogue } from '../../src/findings/catalogue';
import { sayFindings, type SaidFinding } from '../../src/findings/say';
import { parseJob } from '../../src/job/parse';
import { planJob } from '../../src/output/pipeline';
import { loadTables } from '../../src/tables/bundled';
import { BASE, producing, type Change } from './producing';
import { producingPanel } from './producing-panel';
import { raising as raisingSeams } from './raising-panels';

const tables = loadTables();

function isBlock(value: unknown): value is Change {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** The base job with some of its values changed, block by block. */
function changed(base: Change, change: Change): Change {
  return Object.entries(change).reduce<Change>((job, [key, value]) => {
    const held = job[key];
    return { ...job, [key]: isBlock(held) && isBlock(value) ? changed(held, value) : value };
  }, base);
}

function textOf(code: string): string {
  const job = producing[code];
  if (job === undefined) throw new Error(`no job raises ${code}`);
  return typeof job === 'string' ? job : stringify(changed(BASE, job));
}

/** Boards of like thickness, as sold in inches. */
const INCH_BOARDS: Readonly<Record<string, string>> = { 3: '1/8', 6: '1/4', 12: '1/2', 18: '3/4', 25: '1' };

/** The same job in inches and pounds, on boards sold in inches. */
function inInches(text: string): string {
  return text
    .replace('units: mm', 'units: in')
    .replaceAll(/([\d.]+) mm/gu, (_, mm: string) => `${Number((Number(mm) / 25.4).toPrecision(7))} in`)
    .replaceAll(/mdf-(\d+)/gu, (_, mm: string) => `mdf-${INCH_BOARDS[mm] ?? mm}`);
}

function found(text: string): SaidFinding[] {
  const { job, findings, units } = parseJob(text, tables);
  return sayFindings(job ? planJob(job, tables, findings).findings : findings, { units });
}

/** What a reader of mm, or of inches, is never told; nor any slip of ours. */
const NOT_METRIC = /\d\s*(?:in|lbf|ksi|")(?![a-z])|undefined|NaN|null|\[object/u;
const NOT_INCH = /\d\s*(?:mm|N|MPa)(?![a-z])|\bmm\b|undefined|NaN|null|\[object/u;

/** All a reader is told. */
const words = ({ message, hint, got = '', allowed = '' }: SaidFinding): string =>
  [message, hint, got, allowed].join('\n');

const all = Object.keys(catalogue);
/** What stages of panels and drawings raise, with what raises it. */
const raising = { ...raisingSeams, ...producingPanel };
/** Those that a job raises. */
const codes = all.filter((code) => !Object.hasOwn(raising, code));

describe('the catalogue of findings', () => {
  it('knows every code that a producing job is written for', () => {
    expect(Object.keys({ ...producing, ...raising }).filter((code) => !all.includes(code))).toEqual([]);
  });

  it.each(codes)('%s is raised by a job, in its own unit', (code) => {
    const all = found(textOf(code));
    const metric = all.filter((finding) => finding.code === code);
    expect(metric.length, JSON.stringify(all.map((one) => one.code))).toBeGreaterThan(0);
    for (const finding of metric) {
      expect(finding.level).toBe(catalogue[code as keyof typeof catalogue].level);
      expect(words(finding)).not.toMatch(NOT_METRIC);
    }
  });

  it.each(codes.filter((code) => textOf(code).includes('units: mm')))('%s never shows mm in an inch job', (code) => {
    const inch = found(inInches(textOf(code)));
    expect(inch.map((finding) => finding.code)).toContain(code);
    // The tables' names of metric rows are names, not sizes of this job.
    for (const finding of inch.filter((one) => one.code !== 'unknown-screw'))
      expect(words(finding)).not.toMatch(NOT_INCH);
  });

  it.each(Object.keys(raising))('%s is raised by a stage of a panel, told in mm alone or in inches alone', (code) => {
    const raised = (raising[code]?.() ?? []).filter((finding) => finding.code === code);
    expect(raised.length).toBeGreaterThan(0);
    const [metric, inch] = (['mm', 'in'] as const).map((units) => sayFindings(raised, { units }).map(words).join('\n'));
    expect(metric).not.toMatch(NOT_METRIC);
    expect(inch).not.toMatch(NOT_INCH);
  });
});
