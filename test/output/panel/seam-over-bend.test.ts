import { describe, expect, it } from 'vitest';
import { joinWords } from '../../../src/output/panel/assembly/words';
import { toAssemblyPlan } from '../../../src/output/panel/assembly/assembly-plan';
import { measuresIn } from '../../../src/output/shop-sheet/measures';
import { coverOverFrame, type OverBend } from '../../helpers/over-bend';

const codes = (cover: OverBend, drill?: string, frame?: OverBend): string[] =>
  coverOverFrame(cover, drill, frame).findings.map(({ code }) => code);

describe('a seam of two panels over a bend', () => {
  it('fits where the outer radius is the inner one and its sheet, R + t, and says how much longer its flat is', () => {
    const planned = coverOverFrame({});
    expect(planned.findings).toEqual([]);
    if (!planned.buildable) throw new Error('cannot be made');
    const [join] = toAssemblyPlan(planned, []).joins;
    expect(join?.bends).toHaveLength(1);
    // 90° round: π/2·(t₁ + K·(t₂ − t₁)) = π/2·1.2 = 1.885 mm, whatever the radius and K.
    expect(join?.bends[0]).toMatchObject({ outer: 'knee', inner: 'knee' });
    expect(join?.bends[0]?.radius).toBeCloseTo(31.2, 9);
    expect(join?.bends[0]?.wanted).toBeCloseTo(31.2, 9);
    expect(join?.bends[0]?.longer).toBeCloseTo((Math.PI / 2) * 1.2, 3);
    const [first] = planned.joins;
    expect(first && joinWords(first, measuresIn('mm'))).toContain(
      'inside radius 31.2\u00a0mm where the seam crosses, its flat 1.88\u00a0mm longer',
    );
  });

  it('on a taper goes by the radius where the middle of the lap crosses', () => {
    // From 30 at the far end (x 180 of the sheet's depth) to 39 at the side: 15 mm in from it 38.25.
    const planned = coverOverFrame({ radius: '{ from: 31.2, to: 40.2 }' }, 'inner', {
      radius: '{ from: 30, to: 39 }',
    });
    const [join] = planned.buildable ? planned.joins : [];
    // The rulings fan by 4.5° over some 57 mm, so that the seam comes 2.3 mm further along them: half of that at 9 mm in 180 is 0.06 more.
    expect(join?.bends[0]?.wanted).toBeCloseTo(39.45 + 0.06, 2);
  });

  it.each<[string, OverBend, string]>([
    ['the same radius as the inner', { radius: 30 }, 'join-bend-radius'],
    ['a radius half a sheet too large', { radius: 31.8 }, 'join-bend-radius'],
    ['an edge no longer than the inner', { long: 300 }, 'join-length-over-bends'],
    ['a bend 4 mm off', { line: 86 }, 'join-bend-place'],
    ['another angle', { angle: 85 }, 'join-bend-angle'],
    ['another sheet than the seam was made for', { thickness: 1.6 }, 'join-mating'],
  ])('is refused with %s', (_, cover, code) => {
    const planned = coverOverFrame(cover);
    expect(planned.buildable).toBe(false);
    expect(planned.findings.map((one) => one.code)).toContain(code);
  });

  it('within 0.3 mm of the radius will do', () => {
    expect(codes({ radius: 31.45 })).toEqual([]);
    expect(codes({ radius: 30.95 })).toEqual([]);
  });

  it('drilled in both before the bend is refused; by one alone is said', () => {
    expect(codes({ drill: 'now' }, 'both')).toContain('join-over-bend');
  });

  it('against an edge without a bend is refused', () => {
    expect(codes({ bends: false })).toContain('join-bends');
  });
});
