import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { bendbuck } from '../helpers/program';

interface Rows {
  readonly rows: readonly { readonly id: string; readonly system?: string }[];
}
const rowsOf = (file: string): Rows['rows'] => (JSON.parse(readFileSync(`shared/${file}.json`, 'utf8')) as Rows).rows;
const listed = async (...args: string[]): Promise<string> => {
  const { code, out, err } = await bendbuck('/', args);
  expect([code, err]).toEqual([0, '']);
  return out;
};

describe('the lists of what a job may name', () => {
  it.each([
    ['metals', 'sheet-metals'],
    ['boards', 'boards'],
    ['screws', 'screws'],
  ])('%s: every row of the table, by its id', async (command, file) => {
    for (const units of ['mm', 'in']) {
      const names = (await listed(command, '--units', units)).split('\n').map((line) => line.trim().split(/ {2,}/u)[0]);
      for (const { id } of rowsOf(file)) expect(names).toContain(id);
    }
  });

  it('inches hold no mm and mm no inches but what things are called and the word for how they are sold', async () => {
    for (const command of ['metals', 'boards', 'screws', 'gauges']) {
      const inches = await listed(command, '--units', 'in');
      const values = inches
        .split('\n')
        .filter((line) => !line.startsWith('In a job') && !/ mm(?: |$)/u.test(line.slice(0, 60)));
      expect(values.join('\n'), command).not.toMatch(/\d mm\b(?! *$)/u);
    }
    expect(await listed('gauges')).not.toMatch(/\d in\b/u);
  });

  it('what is sold in the asked unit comes first', async () => {
    const inch = (await listed('boards', '--units', 'in')).split('\n').filter((line) => /(?:inches|mm)$/u.test(line));
    expect(inch[0]).toMatch(/inches$/u);
    expect(inch.at(-1)).toMatch(/mm$/u);
  });

  it('18 ga of steel is .0478 in, 1.21 mm; of stainless .05 in (Machinery’s Handbook, from memory)', async () => {
    const row = async (units: string): Promise<string[]> =>
      (await listed('gauges', '--units', units))
        .split('\n')
        .find((line) => line.trim().startsWith('18 ga'))
        ?.trim()
        .split(/ {2,}/u) ?? [];
    expect((await row('in')).slice(0, 3)).toEqual(['18 ga', '0.0478 in', '0.0500 in']);
    expect((await row('mm'))[1]).toBe('1.21 mm');
  });
});
