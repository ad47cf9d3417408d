import { describe, expect, it } from 'vitest';
import { checkLaidOut } from '../../../src/drawing/boards/check-laid-out';
import type { LaidOut } from '../../../src/drawing/boards/laid-out';
import { halfDisc, partOf } from '../../helpers/part-shapes';

const parts = [partOf('S1', halfDisc(50)), partOf('S2', halfDisc(50))];

/** Two half-discs on a board of 400 × 300 mm, the first with its middle at 100, 50. */
const board = (...placements: LaidOut['placements']): LaidOut => ({
  id: 'board-1',
  stock: 'mdf-18',
  thickness: 18,
  width: 300,
  length: 400,
  offcut: null,
  used: { length: 0, width: 0, share: 0 },
  placements,
  drawing: { shapes: [] },
});
const first = { part: 'S1', dx: 100, dy: 50, angle: 0 };
const check =
  (...placements: LaidOut['placements']) =>
  (): void => {
    checkLaidOut([board(...placements)], parts, 8, 10);
  };

describe('the last look at a layout', () => {
  it('lets pass what keeps the gap, though the boxes round the parts overlap', () => {
    // Round edges face each other: middles 80 aside and 72.1 up are 107.7 apart, a hair short of 2·50 + 8; 72.6 up they are 108.03 apart.
    expect(check(first, { part: 'S2', dx: 180, dy: 122.6, angle: Math.PI })).not.toThrow();
    expect(check(first, { part: 'S2', dx: 180, dy: 122.1, angle: Math.PI })).toThrow(/too near/u);
  });

  it('throws where a part lies inside another, crosses it, or leaves the border', () => {
    expect(check(first, { part: 'S2', dx: 100, dy: 50, angle: 0 })).toThrow(/too near/u);
    expect(check(first, { part: 'S2', dx: 130, dy: 60, angle: 0 })).toThrow(/too near/u);
    expect(check(first, { part: 'S2', dx: 345, dy: 50, angle: 0 })).toThrow(/border/u);
  });

  it('throws where a part is placed twice, not at all, or unasked for', () => {
    const second = { part: 'S2', dx: 250, dy: 50, angle: 0 };
    expect(check(first, second)).not.toThrow();
    expect(check(first)).toThrow(/S2 is placed 0 times/u);
    expect(check(first, second, { part: 'S2', dx: 250, dy: 150, angle: 0 })).toThrow(/S2 is placed 2 times/u);
    expect(check(first, second, { part: 'S3', dx: 250, dy: 150, angle: 0 })).toThrow(/not asked for/u);
  });
});
