import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { angleFromWrap, coneFromCurvatures, coneThrough, curvatureRadiusAt, wrapFromAngle } from '../../src/base/cone';

const halfAngles = fc.double({ min: -0.6, max: 0.6, noNaN: true });

describe('angle between the legs and wrap about the centre line', () => {
  it('obeys cos δ = 1 − (1 − cos ψ)·cos²β of the design', () => {
    fc.assert(
      fc.property(halfAngles, fc.double({ min: 0.01, max: 3.1, noNaN: true }), (halfAngle, wrap) => {
        const cosine = 1 - (1 - Math.cos(wrap)) * Math.cos(halfAngle) ** 2;
        expect(Math.cos(angleFromWrap(wrap, halfAngle))).toBeCloseTo(cosine, 12);
      }),
    );
  });

  it('is the angle between the normals of the two tangent planes of the cone', () => {
    fc.assert(
      fc.property(halfAngles, fc.double({ min: 0.01, max: 3.1, noNaN: true }), (halfAngle, wrap) => {
        // Outward normal of a cone about the x axis whose radius grows with x: (−sin β, cos β·(direction in the cross-section)).
        const normal = (angle: number): number[] => [
          -Math.sin(halfAngle),
          Math.cos(halfAngle) * Math.sin(angle),
          -Math.cos(halfAngle) * Math.cos(angle),
        ];
        const dot = normal(0).reduce((sum, value, index) => sum + value * (normal(wrap)[index] ?? 0), 0);
        expect(Math.cos(angleFromWrap(wrap, halfAngle))).toBeCloseTo(dot, 12);
      }),
    );
  });

  it('inverts, and says NaN where the taper is too steep for the angle', () => {
    fc.assert(
      fc.property(halfAngles, fc.double({ min: 0.01, max: 3, noNaN: true }), (halfAngle, wrap) => {
        expect(wrapFromAngle(angleFromWrap(wrap, halfAngle), halfAngle)).toBeCloseTo(wrap, 9);
      }),
    );
    expect(wrapFromAngle(3.1, 0.5)).toBeNaN();
  });

  it('is the wrap itself on a cylinder', () => {
    expect(angleFromWrap(1.2345, 0)).toBeCloseTo(1.2345, 14);
  });
});

describe('cone', () => {
  it('refuses to grow by as much as its length', () => {
    expect(() => coneThrough(10, 110, 100)).toThrow(RangeError);
    expect(() => coneThrough(110, 10, 100)).toThrow(RangeError);
  });

  it('is found again from its own radii of curvature', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 10, max: 200, noNaN: true }),
        fc.double({ min: 10, max: 200, noNaN: true }),
        fc.double({ min: 250, max: 900, noNaN: true }),
        (from, to, length) => {
          const cone = coneThrough(from, to, length);
          const again = coneFromCurvatures(curvatureRadiusAt(cone, 0), curvatureRadiusAt(cone, length), length);
          expect(again.radiusA).toBeCloseTo(from, 9);
          expect(again.radiusB).toBeCloseTo(to, 9);
          expect(again.halfAngle).toBeCloseTo(cone.halfAngle, 12);
        },
      ),
    );
  });
});
