import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseJob } from '../../src/job/parse';
import { planJob } from '../../src/output/pipeline';
import { figureIn, keyFigures, nameOf, sayFigure, type FigureId, type Printers } from '../../src/output/plan/figures';
import { starters, tables } from '../helpers/starters';

/** Every amount as it is, with a letter for its kind. */
const plain: Printers = {
  length: (value) => `L${value}`,
  angle: (value) => `A${value}`,
  force: (value) => `F${value}`,
  share: (value) => `S${value}`,
  ratio: (value) => `R${value}`,
};

const planOf = (name: string) => {
  const { job } = parseJob(readFileSync(`templates/${name}.yaml`, 'utf8'), tables);
  if (!job) throw new Error(`${name} is not read`);
  return planJob(job, tables).plan;
};

describe('the plan’s key figures', () => {
  it.each(starters)('%s: each has a name and a reason of its own, and the plan’s own numbers', (name) => {
    const plan = planOf(name);
    const figures = keyFigures(plan);
    expect(figures.length).toBeGreaterThanOrEqual(12);
    for (const key of ['id', 'name', 'why'] as const)
      expect(new Set(figures.map((figure) => figure[key])).size).toBe(figures.length);
    // Each against the number in the plan that plan.json prints.
    const said = (id: FigureId): string | undefined => {
      const figure = figureIn(figures, id);
      return figure && sayFigure(figure, plain);
    };
    expect(said('wrap')).toBe(`A${plan.bend?.wrap.chosen}`);
    expect(said('form-radius')).toBe(`L${plan.bend?.form.from} / L${plan.bend?.form.to}`);
    expect(said('twist')).toBe(`A${plan.bend?.twist.from} / A${plan.bend?.twist.to}`);
    expect(said('bend-lines')).toBe(`L${plan.bend?.allowance.from} / L${plan.bend?.allowance.to}`);
    expect(said('pull')).toBe(`F${plan.effort?.handForce} at L${plan.effort?.lever}`);
    expect(said('clamps')).toBe(`${plan.effort?.clamps}, F${plan.effort?.clampForce} together`);
    expect(said('foot')).toBe(`L${plan.effort?.foot}`);
    expect(said('stations')).toBe(`${plan.stations.length} and ${plan.backings.length} backing`);
    expect(said('factor')).toBeUndefined();
  });

  it('one with an amount an end says so', () => {
    const figures = keyFigures(planOf('tapered-curve'));
    expect(figures.filter(({ perEnd }) => perEnd).map(({ id }) => id)).toEqual([
      'form-radius',
      'finished-radius',
      'wrap-needed',
      'twist',
      'bend-lines',
      'strain',
      'leg-angle',
      'tail',
      'departure',
      'held',
    ]);
    const radius = figureIn(figures, 'form-radius');
    expect(radius && nameOf(radius)).toBe('Form radius, A / B');
  });

  it('says none where there is none', () => {
    const plan = planOf('plain-curve');
    expect(plan.effort?.leverage).toBe(0);
    const leverage = figureIn(keyFigures(plan), 'leverage');
    expect(leverage && sayFigure(leverage, plain)).toBe('none');
  });

  it('a plan that errors left empty has none', () => {
    const plan = {
      ...planOf('plain-curve'),
      bend: null,
      effort: null,
      pull: null,
      hold: null,
      stations: [],
      trials: null,
    };
    expect(keyFigures(plan)).toEqual([]);
  });
});
