import { describe, expect, it } from 'vitest';
import { parse, stringify } from 'yaml';
import { bendAllowance, setback } from '../../src/design/bend/allowance';
import { offcutPlay } from '../../src/design/fixture/board-fit';
import { openingFor } from '../../src/design/joints/opening';
import { routerJoints } from '../../src/design/joints/router';
import { reliefCuts } from '../../src/drawing/tooling/relief-cuts';
import type { Planned } from '../../src/output/pipeline';
import { planStarter, tryStarter, tables } from '../helpers/starters';
import { cutWith } from '../helpers/for-tool';

/** The rules at the very place where they begin to hold: each expectation is worked out by hand beside it. */

/** A starter with parts of its job replaced, one level deep. */
function plan(changes: Record<string, object>, name = 'tapered-curve'): Planned {
  return tryStarter(name, (text) => {
    const job = parse(text) as Record<string, object>;
    for (const [key, value] of Object.entries(changes)) job[key] = { ...job[key], ...value };
    return stringify(job);
  });
}

const has = ({ plan: { findings } }: Planned, code: string): boolean => findings.some((found) => found.code === code);

describe('sums at their limits', () => {
  it('allowance on a cone: the neutral line lies K·t·cos β outside the inside radius', () => {
    // 90° · (40 + 0.5·2·cos 60°)
    expect(bendAllowance(Math.PI / 2, 40, { thickness: 2, neutral: 0.5, halfAngle: Math.PI / 3 })).toBeCloseTo(
      (Math.PI / 2) * 40.5,
      12,
    );
  });

  it('setback on a cone: the thickness counts by the cosine of its half-angle', () => {
    // tan 45° · (40 + 2·cos 60°) = 41
    expect(setback(Math.PI / 2, 40, 2, Math.PI / 3)).toBeCloseTo(41, 12);
    expect(setback(Math.PI / 2, 40, 2, 0)).toBeCloseTo(42, 12);
  });

  it('a taper is called twisted just where an end is off by more than one degree', () => {
    const seen = { under: 0, over: 0 };
    for (let to = 38; to <= 52; to += 0.25) {
      const planned = plan({ bend: { radius: { from: 38, to } } });
      const twist = planned.plan.bend?.twist ?? { from: NaN, to: NaN };
      const worst = Math.max(Math.abs(twist.from), Math.abs(twist.to));
      expect(has(planned, 'twist'), `${worst}° at an end`).toBe(worst > 1);
      if (worst > 0.85 && worst <= 1) seen.under++;
      if (worst > 1 && worst < 1.15) seen.over++;
    }
    expect(seen.under).toBeGreaterThan(0);
    expect(seen.over).toBeGreaterThan(0);
  });

  it('table data is doubted just where more than half of the limit radius is reached', () => {
    const seen = { under: 0, over: 0 };
    for (let radius = 60; radius <= 400; radius += 10) {
      const planned = plan({ bend: { radius: radius, radiusOf: 'form' } }, 'plain-curve');
      const { sheet } = planned.plan;
      if (!sheet) continue;
      // First yield at the outer fibre: t/(2ρ) = Y'/E'; a hardening curve begins to yield at K·ε₀ⁿ.
      const { hardening } = sheet;
      const first = hardening ? hardening.strength * hardening.initialStrain ** hardening.exponent : sheet.yield;
      const none = ((sheet.modulus / (1 - sheet.poisson ** 2)) * sheet.thickness) / (2 * ((2 / Math.sqrt(3)) * first));
      const share = (radius + sheet.thickness / 2) / none;
      expect(has(planned, 'mostly-springback'), `form at ${share} of the limit`).toBe(share >= 0.5);
      if (share < 0.5 && share > 0.4) seen.under++;
      if (share >= 0.5 && share < 0.6) seen.over++;
    }
    expect(seen.under).toBeGreaterThan(0);
    expect(seen.over).toBeGreaterThan(0);
  });

  it('the published smallest bend radius forbids a tighter form and allows its own', () => {
    const tight = (ratio: number): Planned =>
      plan({ bend: { radius: 40, radiusOf: 'form' }, sheet: { minBendRatio: ratio } });
    // 40 mm round 1.6 mm is 25 times the thickness.
    expect(has(tight(25), 'would-crack')).toBe(false);
    expect(has(tight(25.01), 'would-crack')).toBe(true);
  });
});

describe('joints at their limits', () => {
  const spine = { length: 600, thickness: 18, ears: 50 };

  it('an opening is wider than its board by the fit, half on either side', () => {
    expect(openingFor({ name: 'S', low: 100, high: 118 }, spine, 0.4, 4)).toEqual({
      low: 99.8,
      high: 118.2,
      open: null,
    });
  });

  it('it runs out of the end where less than the wood asked for would be left beside its play', () => {
    const at = (low: number): unknown => openingFor({ name: 'S', low, high: low + 18 }, spine, 0.4, 4);
    expect(at(-45.8)).toMatchObject({ open: null });
    expect(at(-45.9)).toEqual({ low: -50, high: -27.9, open: 'A' });
    expect(at(650 - 18 - 4.2)).toMatchObject({ open: null });
    expect(at(650 - 18 - 4.1)).toEqual({ low: 627.9, high: 650, open: 'B' });
  });

  it('an offcut may be off by half the fit, shared among the layers of a stack', () => {
    const any = { gap: 4, border: 6, colours: {} } as const;
    const one = { spine: 1, stations: 1, backing: 1 };
    const router = { with: 'router', bit: 6, groove: null, fit: 0.2, bridges: false, ...any } as const;
    const laser = { with: 'laser', kerf: 0.2, fit: 0.12, layers: null, dowel: 6, ...any } as const;
    expect(offcutPlay(router, one, tables.tools)).toBeCloseTo(0.1, 12);
    expect(offcutPlay(laser, { ...one, stations: 3 }, tables.tools)).toBeCloseTo(0.02, 12);
    expect(offcutPlay({ with: 'jigsaw', turn: 20, ...any }, one, tables.tools)).toBe(tables.tools.sameThickness);
  });

  it('a groove leaves wood under the screw heads behind it', () => {
    const { layout } = planStarter('tapered-curve', cutWith('router'));
    const [screw] = layout.stations[0]?.screws ?? [];
    if (!screw) throw new Error('no screw');
    // A head sinks half of what it is wider than its hole (82–90° flat heads); 2 mm stay under it.
    const most = 6 - (screw.kind.headDiameter - screw.kind.clearance) / 2 - 2;
    expect(most).toBeLessThan(3);
    const at = (groove: number): boolean =>
      routerJoints(
        { ...layout, spine: { ...layout.spine, thickness: 6 } },
        { with: 'router', bit: 3, groove, fit: 0.2, bridges: false, gap: 8, border: 10, colours: {} },
        tables.tools,
      ).findings.some(({ code }) => code === 'groove-depth');
    expect(at(most)).toBe(false);
    expect(at(most + 0.01)).toBe(true);
  });

  it('a bit goes into a hole of its own size and into no smaller one', () => {
    const drilled = (bit: number): boolean => has(plan({ cut: { with: 'router', bit } }), 'smaller-than-bit');
    const { layout } = planStarter('tapered-curve');
    const holes = [...layout.stations, ...layout.backings].flatMap(({ screws }) =>
      screws.map(({ kind }) => kind.clearance),
    );
    const least = Math.min(...holes);
    expect(drilled(least)).toBe(false);
    expect(drilled(least + 0.01)).toBe(true);
  });

  it('a board as thick as a small laser cuts is not doubted, a thicker one is', () => {
    const doubted = (thickness: number): boolean =>
      has(plan({ cut: { with: 'laser' }, board: { stock: 'mdf-9', thickness } }), 'thick-for-laser');
    expect(doubted(10)).toBe(false);
    expect(doubted(10.01)).toBe(true);
  });

  it('the blade goes round corners of less than 20 degrees, and into sharper ones only by a relief cut', () => {
    const cuts = (degrees: number): number => {
      const turn = (degrees * Math.PI) / 180;
      // A strip whose upper edge has one inside corner that turns by so much.
      const corners = [
        [0, 0],
        [200, 0],
        [200, 60 + 100 * Math.tan(turn)],
        [100, 60],
        [0, 60],
      ].map(([x = 0, y = 0]) => ({ x, y, bulge: 0 }));
      const cut = { with: 'jigsaw', turn: 20, gap: 8, border: 10, colours: {} } as const;
      return reliefCuts([{ kind: 'loop', operation: 'outline', vertices: corners }], cut, tables.tools).length;
    };
    expect(cuts(19)).toBe(0);
    expect(cuts(21)).toBe(1);
    expect(cuts(45)).toBe(1);
  });
});
