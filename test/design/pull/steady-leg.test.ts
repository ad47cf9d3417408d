import { describe, expect, it } from 'vitest';
import { bendingCurve, parameterForMoment } from '../../../src/design/bend/curve';
import { sectionOf } from '../../../src/design/bend/section';
import { steadyPieces } from '../../../src/design/pull/residual';

/** A leg of 40 mm whose moment falls steadily to nothing, piece by piece, against small steps along it. */

const curve = bendingCurve(sectionOf({ modulus: 200_000, poisson: 0.3, yield: 200, hardening: null }, 1, 1));
const sum = (values: readonly number[]): number => values.reduce((total, one) => total + one, 0);

describe('a leg whose moment falls steadily', () => {
  it('turns under load and keeps what small steps along it add up to, its yielded part in many pieces', () => {
    const from = 3;
    const { moment } = curve.at(from);
    const pieces = steadyPieces(curve, from, 40);
    expect(sum(pieces.map(({ length }) => length))).toBeCloseTo(40, 9);
    let [turned, kept] = [0, 0];
    const steps = 20_000;
    for (let k = 0; k < steps; k++) {
      const m = moment * (1 - (k + 0.5) / steps);
      const { curvature } = curve.at(parameterForMoment(curve, m));
      turned += (curvature * 40) / steps;
      kept += ((curvature - m / curve.stiffness) * 40) / steps;
    }
    expect(Math.abs(sum(pieces.map(({ loaded }) => loaded)) / turned - 1)).toBeLessThan(1e-5);
    expect(Math.abs(sum(pieces.map(({ stays }) => stays)) / kept - 1)).toBeLessThan(1e-4);
    // The last piece yields nowhere: half its greatest curvature over its length, and nothing stays.
    const last = pieces.at(-1);
    const edge = curve.at(1);
    expect(pieces).toHaveLength(41);
    expect(last?.length).toBeCloseTo((40 * edge.moment) / moment, 9);
    expect(last?.loaded).toBeCloseTo(((last?.length ?? NaN) * edge.moment) / curve.stiffness / 2, 9);
    expect(last?.stays).toBe(0);
    // Even steps of the parameter's logarithm: moments of its powers.
    const count = pieces.length - 1;
    const [first] = pieces;
    expect(first?.length).toBeCloseTo((40 * (moment - curve.at(from * (1 / from) ** (1 / count)).moment)) / moment, 9);
  });

  it('that nowhere yields is one piece that keeps nothing', () => {
    const { moment } = curve.at(0.8);
    const [piece, ...more] = steadyPieces(curve, 0.8, 40);
    expect(more).toEqual([]);
    expect(piece).toMatchObject({ length: 40, stays: 0 });
    expect(piece?.loaded).toBeCloseTo((40 * moment) / curve.stiffness / 2, 9);
  });
});
