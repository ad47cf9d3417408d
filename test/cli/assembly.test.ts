import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { bendbuck } from '../helpers/program';
import { freshFolder } from '../helpers/fresh-folder';

/** The starter copied, then one of its files changed. */
async function copied(file = 'dust-hood.yaml', change: (text: string) => string = (text) => text): Promise<string> {
  const folder = freshFolder();
  expect((await bendbuck(folder, ['new', 'dust-hood'])).code).toBe(0);
  const path = join(folder, file);
  writeFileSync(path, change(readFileSync(path, 'utf8')));
  return folder;
}

interface Printed {
  readonly panels: Record<string, { mirrors?: string; panel?: { seams: { on: string; holes: [number, number][] }[] } }>;
  readonly joins: { outer: string; inner: string; holes: number }[];
  readonly fasteners: { name: string; count: number }[];
}

describe('an assembly', () => {
  it('is copied with its panels, planned and made: a folder for each panel, the sheet and the plan', async () => {
    const folder = await copied();
    expect(readdirSync(join(folder, 'dust-hood')).sort()).toEqual(['middle.yaml', 'side.yaml']);
    const { code, out } = await bendbuck(folder, ['plan', 'dust-hood.yaml']);
    expect(code).toBe(0);
    expect(out).toContain('Lay middle.left over left.top.rim');
    // Two joins of eight.
    expect(out).toContain('To buy: 16 3.2 mm rivets');
    expect((await bendbuck(folder, ['make', 'dust-hood.yaml', '--out', 'made'])).code).toBe(0);
    const made = join(folder, 'made', 'grinder-dust-hood');
    expect(readdirSync(made).sort()).toEqual(expect.arrayContaining(['assembly.html', 'left', 'middle', 'plan.json']));
    // The right side is the left's pair.
    expect(readdirSync(made)).not.toContain('right');
    expect(readdirSync(join(made, 'left', 'blank'))).toEqual(
      expect.arrayContaining(['blank-left.svg', 'blank-right.svg']),
    );
    expect(readFileSync(join(made, 'assembly.html'), 'utf8')).toContain('Lay middle.right over right.top.rim');
  });

  it('has holes that meet: those of both seams as far from one another, hole for hole', async () => {
    const { out } = await bendbuck(await copied(), ['plan', 'dust-hood.yaml', '--json']);
    const { panels, joins, fasteners } = JSON.parse(out) as Printed;
    expect(panels['right']).toEqual({ mirrors: 'left' });
    const steps = (panel: string, on: string): number[] => {
      const holes = panels[panel]?.panel?.seams.find((seam) => seam.on === on)?.holes ?? [];
      return holes
        .slice(1)
        .map(([x, y], index) => Math.hypot(x - (holes[index]?.[0] ?? NaN), y - (holes[index]?.[1] ?? NaN)));
    };
    // 300 mm of edge, 15 mm from its ends, 8 holes: 270/7 apart.
    for (const [panel, on] of [
      ['left', 'top.rim'],
      ['middle', 'left'],
      ['middle', 'right'],
    ] as const)
      expect(steps(panel, on)).toEqual(Array.from({ length: 7 }, () => expect.closeTo(270 / 7, 6) as number));
    expect(joins.map(({ holes }) => holes)).toEqual([8, 8]);
    expect(fasteners).toEqual([{ name: '3.2 mm rivet', count: 16 }]);
  });

  it.each<[string, string, (text: string) => string, string[]]>([
    [
      'edges that differ in length',
      'dust-hood/middle.yaml',
      (text) => text.replaceAll('300]', '310]'),
      ['join-length', 'joins[0]'],
    ],
    [
      'laps that differ',
      'dust-hood/middle.yaml',
      (text) => text.replaceAll('lap: 30', 'lap: 24'),
      ['join-lap', 'joins[0]'],
    ],
    [
      'counts that differ',
      'dust-hood/side.yaml',
      (text) => text.replace('count: 8', 'count: 9'),
      ['join-count', 'joins[0]'],
    ],
    ['rivets that differ', 'dust-hood/side.yaml', (text) => text.replace('rivet-3.2', 'rivet-3'), ['join-fastener']],
    [
      'both drilled through the other',
      'dust-hood/side.yaml',
      (text) => text.replace('drill: now', 'drill: match'),
      ['join-drill'],
    ],
    [
      'a seam that is not there',
      'dust-hood.yaml',
      (text) => text.replace('middle.left', 'middle.lefd'),
      ['line 12, joins[0].outer', 'no-such-seam', 'middle.left'],
    ],
    [
      'a mirror of nothing',
      'dust-hood.yaml',
      (text) => text.replace('mirror: left', 'mirror: middel'),
      ['panels.right', 'mirror-of-none'],
    ],
    [
      'a panel that is wrong',
      'dust-hood/side.yaml',
      (text) => text.replace('angle: 90', 'angle: 900'),
      ['dust-hood/side.yaml: bends[0].angle', 'line 14', 'out-of-range'],
    ],
    [
      'a panel that cannot be',
      'dust-hood/middle.yaml',
      (text) => text.replace('[[0, 0], [400, 0]', '[[400, 0], [0, 0]'),
      ['dust-hood/middle.yaml: base', 'panels.middle', 'panel-refused'],
    ],
    [
      'a file that is not there',
      'dust-hood.yaml',
      (text) => text.replace('hood/side', 'hood/sides'),
      ['panels.left', 'panel-file-unread'],
    ],
    [
      'a file outside',
      'dust-hood.yaml',
      (text) => text.replace('dust-hood/side', '../side'),
      ['panels.left', 'panel-file-outside'],
    ],
    [
      'an assembly in an assembly',
      'dust-hood.yaml',
      (text) => text.replace('dust-hood/side.yaml', 'dust-hood.yaml'),
      ['panels.left', 'panel-file-unread'],
    ],
    [
      'a misspelt key',
      'dust-hood.yaml',
      (text) => text.replace('drill: inner', 'dril: inner'),
      ['joins[0].dril', 'unknown-key'],
    ],
  ])('with %s is refused, nothing written', async (_, file, change, words) => {
    const folder = await copied(file, change);
    const { code, err } = await bendbuck(folder, ['make', 'dust-hood.yaml', '--out', 'made']);
    expect(code).toBe(2);
    expect(existsSync(join(folder, 'made'))).toBe(false);
    for (const word of words) expect(err).toContain(word);
    expect(err).toContain('Nothing was written.');
  });
});
