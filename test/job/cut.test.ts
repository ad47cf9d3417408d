import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse, stringify } from 'yaml';
import type { Finding } from '../../src/base/findings';
import type { Job } from '../../src/job/job';
import { parseJob } from '../../src/job/parse';
import { tables } from '../helpers/starters';

/** The plain starter, which has no `cut` block, with one, and with no board named. */
function read(cut: unknown, units = 'mm'): { job: Job | null; findings: readonly Finding[] } {
  const starter = parse(readFileSync(`templates/plain-curve${units === 'in' ? '-inch' : ''}.yaml`, 'utf8')) as Record<
    string,
    unknown
  >;
  delete starter['board'];
  return parseJob(stringify({ ...starter, ...(cut === undefined ? {} : { cut }) }), tables);
}

describe('the cut block', () => {
  it('is a jigsaw’s, with the usual spacing and boards, where nothing is said', () => {
    for (const cut of [undefined, {}, { with: 'jigsaw' }]) {
      const { job } = read(cut);
      expect(job?.cut).toEqual({ with: 'jigsaw', turn: 20, gap: 8, border: 10, colours: {} });
      expect(job?.board.spine.stock).toBe('mdf-18');
    }
  });

  it('fills in what a router and a laser need', () => {
    expect(read({ with: 'router' }).job?.cut).toEqual({
      with: 'router',
      bit: 6,
      groove: null,
      fit: 0.2,
      bridges: false,
      gap: 10,
      border: 10,
      colours: {},
    });
    const { job } = read({ with: 'laser' });
    expect(job?.cut).toEqual({
      with: 'laser',
      kerf: 0.2,
      fit: 0.1,
      layers: null,
      dowel: 6,
      gap: 4,
      border: 6,
      colours: {},
    });
    expect(job?.board.spine.stock).toBe('mdf-6');
  });

  it('reads lengths in the job’s unit and in their own, and colours by name and number', () => {
    expect(
      read(
        { with: 'router', bit: '1/4', fit: '0.1 mm', bridges: true, colours: { outline: 'Red', label: '#00FF7f' } },
        'in',
      ).job?.cut,
    ).toMatchObject({
      bit: 6.35,
      fit: 0.1,
      bridges: true,
      // The bit and 5/32 in.
      gap: 6.35 + 3.96875,
      colours: { outline: '#ff0000', label: '#00ff7f' },
    });
  });

  it.each([
    ['another tool’s setting', { with: 'laser', bit: 6 }, 'not-for-this-tool', 'cut.bit'],
    ['a jigsaw’s kerf, where no tool is named', { kerf: 0.2 }, 'not-for-this-tool', 'cut.kerf'],
    ['an unknown tool', { with: 'plasma' }, 'bad-value', 'cut.with'],
    ['an unknown key', { with: 'laser', kerff: 0.2 }, 'unknown-key', 'cut.kerff'],
    ['half a layer', { with: 'laser', layers: 2.5 }, 'not-whole', 'cut.layers'],
    ['no layers', { with: 'laser', layers: 0 }, 'out-of-range', 'cut.layers'],
    ['a beam as wide as a saw', { with: 'laser', kerf: 4 }, 'out-of-range', 'cut.kerf'],
    ['a negative fit', { with: 'router', fit: -0.1 }, 'out-of-range', 'cut.fit'],
    ['no room for the bit between parts', { with: 'router', bit: 6, gap: 4 }, 'gap-too-narrow', 'cut.gap'],
    ['parts nearer than the beam is wide', { with: 'laser', kerf: 1.5, gap: 1.2 }, 'gap-too-narrow', 'cut.gap'],
    ['no wood between parts', { gap: 0 }, 'out-of-range', 'cut.gap'],
    ['a beam there is none of', { with: 'laser', kerf: 1e-9 }, 'kerf-too-narrow', 'cut.kerf'],
    ['a colour nobody knows', { colours: { hole: 'mauve' } }, 'unknown-colour', 'cut.colours.hole'],
    [
      'a colour that breaks out of its attribute',
      { colours: { hole: '"/><script>' } },
      'unknown-colour',
      'cut.colours.hole',
    ],
    ['a colour of no operation', { colours: { holes: 'red' } }, 'unknown-key', 'cut.colours.holes'],
    ['a length that is none', { with: 'router', bit: 'six' }, 'bad-length', 'cut.bit'],
    ['bridges that are a word', { with: 'router', bridges: 'many' }, 'wrong-kind', 'cut.bridges'],
  ])('refuses %s', (_, cut, code, path) => {
    const { job, findings } = read(cut);
    expect(job).toBeNull();
    expect(findings.map((finding) => [finding.level, finding.path, finding.code])).toContainEqual([
      'error',
      path,
      code,
    ]);
  });
});
