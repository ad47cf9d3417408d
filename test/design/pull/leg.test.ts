import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bendingCurve, parameterAt, parameterForMoment } from '../../../src/design/bend/curve';
import { sectionOf } from '../../../src/design/bend/section';
import { finishedShape } from '../../../src/design/pull/finished-shape';
import { grippedLeg } from '../../../src/design/pull/gripped-leg';
import { bareLeg } from '../../../src/design/pull/pulled-leg';
import type { LegPiece } from '../../../src/design/bend/bend-plan';
import { beamPieces, steadyPieces } from '../../../src/design/pull/residual';
import { liftPerSquare, tailPerLength } from '../../../src/design/pull/tail';

const QUARTER = Math.PI / 2;

const curves = fc
  .record({
    modulus: fc.double({ min: 60_000, max: 210_000, noNaN: true }),
    poisson: fc.double({ min: 0.25, max: 0.36, noNaN: true }),
    first: fc.double({ min: 25, max: 700, noNaN: true }),
    hardening: fc.option(
      fc.record({
        exponent: fc.double({ min: 0.03, max: 0.5, noNaN: true }),
        initialStrain: fc.double({ min: 4e-4, max: 0.1, noNaN: true }),
      }),
    ),
    thickness: fc.double({ min: 0.4, max: 5, noNaN: true }),
  })
  .map(({ first, hardening, thickness, ...metal }) =>
    bendingCurve(
      sectionOf(
        {
          ...metal,
          yield: first,
          hardening: hardening && { ...hardening, strength: first * hardening.initialStrain ** -hardening.exponent },
        },
        thickness,
        1,
      ),
    ),
  );
/** How many times the curvature of first yield. */
const tightness = fc.double({ min: 1.2, max: 25, noNaN: true });
const total = (pieces: readonly LegPiece[], what: keyof LegPiece): number =>
  pieces.reduce((sum, piece) => sum + piece[what], 0);
const close = (got: number, wanted: number, share: number): void =>
  expect(Math.abs(got - wanted) / Math.max(Math.abs(wanted), 1e-12), `${got} for ${wanted}`).toBeLessThan(share);

describe('the bending curve', () => {
  it('has the moment’s slope and κ dm as what its energy grows by, looked at in small steps', () => {
    fc.assert(
      fc.property(curves, fc.double({ min: 0.2, max: 30, noNaN: true }), (curve, parameter) => {
        fc.pre(Math.abs(parameter - 1) > 0.01);
        const step = 1e-4 * parameter;
        const [before, here, after] = [parameter - step, parameter, parameter + step].map((at) => curve.at(at));
        if (!before || !here || !after) throw new Error('three looks');
        close((after.moment - before.moment) / (2 * step), here.slope, 1e-4);
        close((after.complementary - before.complementary) / (after.moment - before.moment), here.curvature, 1e-4);
      }),
    );
  });

  it('is found again by curvature and by moment', () => {
    fc.assert(
      fc.property(curves, fc.double({ min: 0.01, max: 20, noNaN: true }), (curve, parameter) => {
        const { curvature, moment } = curve.at(parameter);
        close(parameterAt(curve, curvature), parameter, 1e-9);
        close(curve.at(parameterForMoment(curve, moment)).moment, moment, 1e-10);
      }),
    );
  });

  it('carries no more than Y′t²/4 where nothing hardens', () => {
    const section = sectionOf({ modulus: 70_000, poisson: 0.33, yield: 100, hardening: null }, 2, 1);
    expect(parameterForMoment(bendingCurve(section), section.planeYield * 1.0001)).toBe(Infinity);
  });
});

describe('the tail of a leg turning little', () => {
  it('stays nowhere in a sheet that has not yielded: λ is κ/2 and τ nothing', () => {
    fc.assert(
      fc.property(curves, fc.double({ min: 0.05, max: 1, noNaN: true }), (curve, share) => {
        const curvature = share * curve.yieldCurvature;
        const { loaded, stays } = tailPerLength(curve, curvature);
        const lift = liftPerSquare(curve, curvature);
        close(loaded, curvature / 2, 1e-9);
        expect(Math.abs(stays) / curvature).toBeLessThan(1e-9);
        // A steadily falling moment: c̄ = κ·∫(1 − u)·u du = κ/6.
        close(lift, curvature / 6, 1e-9);
      }),
    );
  });

  it('perfectly plastic: λ = κ_e·(1 − ⅔x)/(1 − ⅓x²), x = κ_e/κ, and the lift by the middle rule on 20,000 strips', () => {
    const section = sectionOf({ modulus: 68_950, poisson: 0.33, yield: 144.8, hardening: null }, 1.6, 1);
    const curve = bendingCurve(section);
    for (const tight of [1.5, 4, 12]) {
      const x = 1 / tight;
      const { loaded, stays, moment } = tailPerLength(curve, tight * curve.yieldCurvature);
      const lift = liftPerSquare(curve, tight * curve.yieldCurvature);
      const full = (section.planeYield * section.thickness ** 2) / 4;
      close(moment, full * (1 - x ** 2 / 3), 1e-12);
      close(loaded, (curve.yieldCurvature * (1 - (2 / 3) * x)) / (1 - x ** 2 / 3), 1e-9);
      close(stays, loaded - moment / (2 * curve.stiffness), 1e-9);
      const strips = 20_000;
      let sum = 0;
      for (let strip = 0; strip < strips; strip++) {
        const u = (strip + 0.5) / strips;
        const m = moment * (1 - u);
        // m = m_p·(1 − x²/3) turned over, or the elastic line.
        const curvature =
          m <= (2 / 3) * full ? m / curve.stiffness : curve.yieldCurvature / Math.sqrt(3 * (1 - m / full));
        sum += (curvature * u) / strips;
      }
      close(lift, sum, 1e-6);
    }
  });
});

describe('a leg as a beam', () => {
  it('pulled close to the take-off turns λ·a and keeps τ·a, to a millionth', () => {
    fc.assert(
      fc.property(curves, tightness, (curve, tight) => {
        const curvature = tight * curve.yieldCurvature;
        const { loaded, stays, moment } = tailPerLength(curve, curvature);
        const lever = 1e-4 / curvature;
        const leg = bareLeg(curve, curvature, QUARTER).at(lever);
        if (!leg) throw new Error('too limp');
        close(leg.loaded, loaded * lever, 1e-6);
        expect(Math.abs(leg.stays - stays * lever) / (loaded * lever)).toBeLessThan(1e-6);
        close(leg.force * lever, moment, 1e-6);
      }),
    );
  });

  it('elastic, keeps nothing at any lever', () => {
    fc.assert(
      fc.property(
        curves,
        fc.double({ min: 0.1, max: 1, noNaN: true }),
        fc.double({ min: 0.05, max: 1.2, noNaN: true }),
        (curve, share, turn) => {
          const legs = bareLeg(curve, share * curve.yieldCurvature, QUARTER);
          const leg = legs.at(legs.leverAt(turn));
          close(leg?.loaded ?? NaN, turn, 1e-9);
          expect(leg?.stays).toBe(0);
        },
      ),
    );
  });

  it('is longer the more it turns, up to a longest one; beyond it there is none', () => {
    fc.assert(
      fc.property(curves, tightness, (curve, tight) => {
        const legs = bareLeg(curve, tight * curve.yieldCurvature, Math.PI / 3);
        const longest = legs.leverAt(Math.PI / 3);
        const levers = [0.1, 0.4, 0.8, 1].map((turn) => legs.leverAt(turn));
        expect(levers).toEqual([...levers].sort((a, b) => a - b));
        expect(legs.at(longest * (1 + 1e-9))).toBeNull();
        close(legs.at(longest)?.loaded ?? NaN, Math.PI / 3, 1e-9);
      }),
    );
  });

  it('its pieces add up to it: length, turn, what stays', () => {
    fc.assert(
      fc.property(curves, tightness, fc.double({ min: 0.05, max: 1, noNaN: true }), (curve, tight, turn) => {
        const curvature = tight * curve.yieldCurvature;
        const legs = bareLeg(curve, curvature, QUARTER);
        const lever = legs.leverAt(turn);
        const leg = legs.at(lever);
        if (!leg) throw new Error('too limp');
        const pieces = beamPieces(curve, parameterAt(curve, curvature), 0, leg.force);
        close(total(pieces, 'length'), lever, 1e-4);
        close(total(pieces, 'loaded'), leg.loaded, 1e-9);
        expect(Math.abs(total(pieces, 'stays') - leg.stays)).toBeLessThan(1e-4);
      }),
    );
  });

  it('balances: moments about the hands of what is cut free at the take-off, along the leg in its loaded shape', () => {
    fc.assert(
      fc.property(curves, tightness, fc.double({ min: 0.05, max: 1, noNaN: true }), (curve, tight, turn) => {
        const curvature = tight * curve.yieldCurvature;
        const legs = bareLeg(curve, curvature, QUARTER);
        const leg = legs.at(legs.leverAt(turn));
        if (!leg) throw new Error('too limp');
        const pieces = beamPieces(curve, parameterAt(curve, curvature), 0, leg.force);
        // Arm of the pull about the take-off: the leg laid out in pieces, seen along the leg at the hands.
        let [angle, arm] = [-leg.loaded, 0];
        for (const piece of pieces.slice(0, -1)) {
          arm += piece.length * Math.cos(angle + piece.loaded / 2);
          angle += piece.loaded;
        }
        // The last piece is elastic: ∫cos θ ds = ∫dm/F.
        arm += curve.at(1).moment / leg.force;
        close(leg.force * arm, curve.at(parameterAt(curve, curvature)).moment, 1e-3);
      }),
      { numRuns: 50 },
    );
  });
});

describe('a leg gripped by a yoke', () => {
  it('is a bare leg from the hands’ point of view as the arm grows short against the gap', () => {
    fc.assert(
      fc.property(curves, tightness, (curve, tight) => {
        const curvature = tight * curve.yieldCurvature;
        const gap = 0.2 / curvature;
        const bare = bareLeg(curve, curvature, QUARTER).at(gap);
        const gripped = grippedLeg(curve, curvature, { gap, arm: gap * 1e-7 }, 1.5);
        close(gripped?.loaded ?? NaN, bare?.loaded ?? NaN, 1e-5);
        close(gripped?.force ?? NaN, bare?.force ?? NaN, 1e-5);
      }),
    );
  });

  it('bends through κ·gap as the arm grows long: the whole stretch carries the moment of the form', () => {
    fc.assert(
      fc.property(curves, tightness, (curve, tight) => {
        const curvature = tight * curve.yieldCurvature;
        const gap = 0.2 / curvature;
        const gripped = grippedLeg(curve, curvature, { gap, arm: gap * 1e6 }, 1.5);
        close(gripped?.loaded ?? NaN, curvature * gap, 2e-3);
        expect(gripped?.moment).toBeLessThanOrEqual(curve.at(parameterAt(curve, curvature)).moment);
      }),
    );
  });

  it('is refused where the stretch would turn too far', () => {
    const curve = bendingCurve(sectionOf({ modulus: 70_000, poisson: 0.33, yield: 100, hardening: null }, 1, 1));
    expect(grippedLeg(curve, 1 / 20, { gap: 300, arm: 200 }, 0.6)).toBeNull();
  });
});

describe('the finished shape', () => {
  const straight = { length: 200, loaded: 0, stays: 0 };

  it('without tails is the ideal bend', () => {
    const shape = finishedShape({ angle: QUARTER, radius: 40, free: [straight], held: [straight] });
    expect(Math.max(shape.departure, shape.bow, Math.abs(shape.early))).toBeLessThan(1e-9);
    expect(shape.line[shape.line.length - 1]).toEqual({
      x: expect.closeTo(40, 9) as number,
      y: expect.closeTo(240, 9) as number,
    });
  });

  it('with the same tail on both legs is the same either way round: as far from the middle of the bend', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.4, max: 2.4, noNaN: true }), (angle) => {
        const section = sectionOf({ modulus: 200_000, poisson: 0.3, yield: 200, hardening: null }, 1.2, 1);
        const curve = bendingCurve(section);
        const tail = [...steadyPieces(curve, 5, 30), straight];
        const { line } = finishedShape({ angle, radius: 40, free: tail, held: tail });
        const last = line.length - 1;
        // Mirror about the line from the ideal arc's centre (0, 40) through its middle.
        const [nx, ny] = [Math.cos(angle / 2), Math.sin(angle / 2)];
        line.forEach(({ x, y }, index) => {
          const off = x * nx + (y - 40) * ny;
          const other = line[last - index];
          expect(other?.x).toBeCloseTo(x - 2 * off * nx, 6);
          expect(other?.y).toBeCloseTo(y - 2 * off * ny, 6);
        });
      }),
    );
  });

  it('a single kink at the take-off: early by ρ·tan of the halves, the corner’s height departs', () => {
    // Arc of 60° and a sharp kink of 30° at its end, against an arc of 90°: all by the corner where the legs' planes meet.
    const [radius, arc, kink] = [40, Math.PI / 3, Math.PI / 6];
    const shape = finishedShape({
      angle: QUARTER,
      radius,
      free: [{ length: 1e-9, loaded: 0, stays: kink }, straight],
      held: [straight],
    });
    // The kink lies on the ideal free plane x = 40: the arc's end is 40·sin 60° past its start.
    expect(shape.early).toBeCloseTo(radius * Math.sin(arc) - radius, 6);
    expect(shape.departure).toBeGreaterThan(1);
  });
});
