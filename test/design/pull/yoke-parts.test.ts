import { describe, expect, it } from 'vitest';
import type { BendPlan, Yoke } from '../../../src/design/bend/bend-plan';
import { handlePlaces, yokeDepth, yokeFrom, yokeHoles } from '../../../src/design/pull/yoke-parts';
import { planStarter, tables } from '../../helpers/starters';

/** A yoke's parts along its members, by hand: 500 mm long over a span of 400. */

const { bend } = planStarter('thick-steel');
const pulled = bend.pull.yoke;
if (!pulled) throw new Error('no yoke');
const yoke: Yoke = {
  ...pulled,
  length: 500,
  span: 400,
  handles: 2,
  outer: { ...pulled.outer, depth: 60 },
  handle: { ...pulled.handle, depth: 45 },
};

describe('a yoke’s parts', () => {
  it('reach as deep as the outer member and the handle on it', () => {
    expect(yokeDepth(yoke)).toBe(105);
  });

  it('begin the same beyond both ends of the run that asks most', () => {
    const [run] = bend.runs;
    if (!run) throw new Error('no run');
    const from = (
      ...runs: readonly { readonly from: number; readonly to: number; readonly moment: number }[]
    ): number => {
      const asked: BendPlan = { ...bend, runs: runs.map((one) => ({ ...run, ...one })), pull: { ...bend.pull, yoke } };
      return yokeFrom(asked);
    };
    // The middle of 100 … 400 is 250, and half the yoke 250; of 300 … 420 it is 360.
    const [long, short] = [
      { from: 100, to: 400, moment: 9 },
      { from: 300, to: 420, moment: 8 },
    ];
    expect(from(long)).toBe(0);
    expect(from(long, short)).toBe(0);
    expect(from(short, long)).toBe(0);
    expect(from(long, { ...short, moment: 10 })).toBe(110);
    // Of two that ask the same, the first.
    expect(from(long, { ...short, moment: 9 })).toBe(0);
  });

  it('have a pair of bolts about each end of the span', () => {
    const rules = { ...tables.rules, yokeBoltBehind: 14, yokeBoltPast: 30 };
    expect(yokeHoles(yoke, rules)).toEqual([
      { at: 35, behind: 14 },
      { at: 65, behind: 14 },
      { at: 435, behind: 14 },
      { at: 465, behind: 14 },
    ]);
  });

  it('have their handles evenly over the span, two at its quarter points', () => {
    expect(handlePlaces(yoke)).toEqual([150, 350]);
    expect(handlePlaces({ ...yoke, handles: 1 })).toEqual([250]);
    expect(handlePlaces({ ...yoke, handles: 4 })).toEqual([100, 200, 300, 400]);
  });
});
