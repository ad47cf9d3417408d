import { describe, expect, it } from 'vitest';
import { sayFindings } from '../../../src/findings/say';
import { tryPanelStarter } from '../../helpers/starters';

/** A box of four legs in inches, its radii too small for clamp holes with the usual wood round them. */
const box = (more = ''): string => `
title: Oil drip box
units: in
sheet: { material: steel-cold-rolled-cs, thickness: 20 ga }
base:
  corners: [[0, 0], [14, 0], [14, 10], [0, 10]]
  edges: [front, right, back, left]
  measured: outside
bends:
  - { on: front, angle: 90, radius: 1, leg: 3 }
  - { on: back, angle: 90, radius: 1, leg: 3 }
  - { on: left, angle: 90, radius: 1, leg: 3 }
  - { on: right, angle: 90, radius: 1, leg: 3 }
board: { stock: mdf-18 }
${more}`;

describe('a form whose ears stand in the legs’ way', () => {
  it('says that they do, and what frees them', () => {
    const planned = tryPanelStarter('tray', () => box());
    const [said] = sayFindings(planned.findings, { units: 'in' }).filter(({ code }) => code === 'no-order');
    expect(planned.buildable).toBe(false);
    expect(said?.message).toMatch(/at left with its leg held, front strikes spine$/u);
    expect(said?.hint).toContain('clamps.wood');
    expect(said?.got).toBeUndefined();
  });

  it('is made where the holes find room with less wood, as said', () => {
    const planned = tryPanelStarter('tray', () => box('clamps: { wood: 7/16 }'));
    expect(planned.buildable && planned.order.map(({ bend }) => bend)).toEqual([0, 2, 3, 1]);
  });
});
