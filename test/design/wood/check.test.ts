import { describe, expect, it } from 'vitest';
import { checkWood } from '../../../src/design/wood/check';
import type { WoodLoads } from '../../../src/design/wood/loads';
import { tables } from '../../helpers/starters';

/** Loads on the wood against what bears them, at the very limits of `shared/shop-rules.json`. */

const rules = { ...tables.rules, edgeBeds: 2, screwUltimate: 4, edgeUltimate: 3 };
const light: WoodLoads = {
  frontEdge: { load: 10, strength: 8, beds: 1.25 },
  screws: { station: 'S1', load: 100, bears: 100 },
  roundEdge: { station: 'S2', load: 5, bears: 5 },
};
const found = (more: Partial<WoodLoads>) => checkWood({ ...light, ...more }, { spine: 18, length: 500 }, rules);
const edge = (beds: number): Partial<WoodLoads> => ({ frontEdge: { load: beds * 8, strength: 8, beds } });

describe('the form’s wood', () => {
  it('bears what it bears: nothing is said', () => {
    expect(found({})).toEqual([]);
  });

  it('the spine’s front edge beds in by more than two millimetres, and is crushed where all of its thickness would not do', () => {
    expect(found(edge(2))).toEqual([]);
    expect(found(edge(2.1))).toMatchObject([
      { code: 'front-edge-beds', path: 'board.spine', values: { beds: 2.1, most: 2 } },
    ]);
    expect(found(edge(18))).toMatchObject([{ code: 'front-edge-beds', values: { beds: 18 } }]);
    // 8 MPa over 18 × 500 mm.
    expect(found(edge(20))).toMatchObject([
      { code: 'front-edge-crushes', path: 'board.spine', values: { load: 160 * 500, bears: 8 * 18 * 500 } },
    ]);
  });

  it('screws are strained above their allowable load and shear at four times that', () => {
    const screws = (load: number) => found({ screws: { station: 'S3', load, bears: 100 } });
    expect(screws(101)).toMatchObject([
      { code: 'screws-strained', path: 'screws', values: { station: 'S3', load: 101, most: 100 } },
    ]);
    expect(screws(400)).toMatchObject([{ code: 'screws-strained', values: { load: 400, most: 100 } }]);
    expect(screws(401)).toMatchObject([
      { code: 'screws-shear', path: 'screws', values: { station: 'S3', load: 401, most: 400 } },
    ]);
  });

  it('round edges are strained above their strength and crush at three times that', () => {
    const round = (load: number) => found({ roundEdge: { station: 'S4', load, bears: 5 } });
    expect(round(5.1)).toMatchObject([
      { code: 'round-edge-strained', path: 'board.stations', values: { station: 'S4', pressure: 5.1, most: 5 } },
    ]);
    expect(round(15)).toMatchObject([{ code: 'round-edge-strained', values: { pressure: 15, most: 5 } }]);
    expect(round(15.1)).toMatchObject([
      { code: 'round-edge-crushes', path: 'board.stations', values: { station: 'S4', pressure: 15.1, most: 15 } },
    ]);
  });
});
