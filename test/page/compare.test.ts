import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { changed, draftFrom } from '../../src/page/draft';
import { differences } from '../../src/page/compare/differences';
import { figureRows } from '../../src/page/compare/figure-rows';
import { printersFor } from '../../src/page/know';
import { planStarter } from '../helpers/starters';

const plain = draftFrom(readFileSync('templates/plain-curve.yaml', 'utf8'));

describe('two jobs beside one another', () => {
  it('alike differ in nothing', () => {
    expect(differences(plain, plain)).toEqual([]);
    const { plan } = planStarter('plain-curve');
    for (const { pinned, now } of figureRows(plan, plan, printersFor('mm'))) expect(now).toBe(pinned);
  });

  it('tell the fields that were changed, filled in and emptied, by their labels', () => {
    const metal = changed(plain, ['sheet', 'material'], 'aluminium-5052-h32');
    const titled = changed(changed(metal, ['title'], undefined), ['board', 'stations', 'stock'], 'ply-18');
    expect(differences(plain, titled)).toEqual([
      { path: 'title', label: 'Title', pinned: 'Workshop shelf front edge', now: '' },
      { path: 'sheet.material', label: 'Metal', pinned: 'steel-cold-rolled-cs', now: 'aluminium-5052-h32' },
      { path: 'board.stations.stock', label: 'Stations', pinned: '', now: 'ply-18' },
    ]);
  });

  it('tell each key figure once, and what only one of them has', () => {
    const [pinned, now] = ['plain-curve', 'thick-steel'].map((name) => planStarter(name).plan);
    if (!pinned || !now) throw new Error('two plans');
    const rows = figureRows(pinned, { ...now, hold: null }, printersFor('mm'));
    expect(new Set(rows.map(({ id }) => id)).size).toBe(rows.length);
    const radius = rows.find(({ id }) => id === 'form-radius');
    expect(radius?.pinned).toContain(`${pinned.bend.form.from.toFixed(1)} mm`);
    expect(radius?.now).toContain(`${now.bend.form.from.toFixed(1)} mm`);
    expect(rows.find(({ id }) => id === 'held')?.now).toBe('');
  });
});
