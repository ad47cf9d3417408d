import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  bearingArm,
  bearingWith,
  clampNeed,
  LEAST_BEARING,
  wholeMoment,
  type HeldForm,
} from '../../../src/design/pull/hold';

const forms: fc.Arbitrary<HeldForm> = fc
  .record({
    foot: fc.double({ min: 80, max: 300, noNaN: true }),
    spine: fc.double({ min: 12, max: 25, noNaN: true }),
    held: fc.double({ min: 15, max: 400, noNaN: true }),
    lever: fc.double({ min: 30, max: 600, noNaN: true }),
    wrap: fc.double({ min: 0.3, max: 2.9, noNaN: true }),
    moments: fc.array(fc.double({ min: 1000, max: 40_000, noNaN: true }), { minLength: 1, maxLength: 8 }),
    radius: fc.double({ min: 15, max: 200, noNaN: true }),
  })
  .map(({ moments, radius, ...form }) => ({
    ...form,
    slices: moments.map((moment, index) => ({ moment, radius: radius + 3 * index, mid: radius + 3 * index + 0.8 })),
  }));

/**
 * Sheet and form cut free, in plain vectors: x forward, y up, the held tangent line at the origin. The sheet is pulled square to its leg at
 * each slice's take-off (hands' couple included in the moment); it bears on the bench `arm` behind the tangent line and under the form's
 * front edge. What is left over of the form's moment about the foot's rear, N·mm: nothing where the clamps just hold.
 */
function leftOver(form: HeldForm, clamps: number, wrap: number, arm: number): number {
  const rear = { x: -(form.spine + form.foot), y: 0 };
  const about = (x: number, y: number, fx: number, fy: number): number => (x - rear.x) * fy - (y - rear.y) * fx;
  let sum = about(-form.spine / 2, 0, 0, -clamps);
  for (const { moment, radius, mid } of form.slices) {
    const force = moment / (form.lever + mid * (form.wrap - wrap));
    // Square to the leg, toward the disc, at the take-off.
    const [x, y] = [radius * Math.sin(wrap), radius * (1 - Math.cos(wrap))];
    sum += about(x, y, -force * Math.sin(wrap), force * Math.cos(wrap));
    // The bench's push at the bearing balances the moment of the sheet; the form's front edge takes the same force upward.
    const bearing = moment / arm;
    sum += about(0, 0, 0, bearing);
  }
  return sum;
}

describe('the hold', () => {
  it('balances at the worst moment: form and sheet cut free leave nothing over, and at no other moment more', () => {
    fc.assert(
      fc.property(forms, (form) => {
        const { force, wrap } = clampNeed(form);
        const scale = force * (form.foot + form.spine / 2);
        const arm = bearingArm(form);
        expect(Math.abs(leftOver(form, force, wrap, arm)) / scale).toBeLessThan(1e-9);
        for (let look = 0; look <= 40; look++) {
          expect(leftOver(form, force, (form.wrap * look) / 40, arm) / scale).toBeLessThan(1e-6);
        }
      }),
    );
  });

  it('needs no more than the closed bound √((b + f)² + R²) with the end’s pull', () => {
    fc.assert(
      fc.property(forms, (form) => {
        const reach = form.spine + form.foot;
        const bound = form.slices.reduce(
          (sum, { moment, radius }) =>
            sum + moment * (reach / bearingArm(form) + Math.hypot(reach, radius) / form.lever),
          0,
        );
        expect(clampNeed(form).force).toBeLessThanOrEqual((bound / (form.foot + form.spine / 2)) * (1 + 1e-12));
      }),
    );
  });

  it('with the clamps fitted balances at the end of the pull, on a bearing no shorter than the bench allows', () => {
    fc.assert(
      fc.property(forms, fc.double({ min: 1, max: 6, noNaN: true }), (form, over) => {
        const force = over * clampNeed(form).force;
        const arm = bearingWith(form, force);
        if (arm === null) throw new Error('more than needed holds');
        expect(arm).toBeGreaterThanOrEqual(LEAST_BEARING);
        expect(arm).toBeLessThanOrEqual(bearingArm(form) * (1 + 1e-9));
        if (arm > LEAST_BEARING) {
          expect(Math.abs(leftOver(form, force, form.wrap, arm)) / (force * form.foot)).toBeLessThan(1e-9);
        } else {
          expect(leftOver(form, force, form.wrap, arm)).toBeLessThanOrEqual(1e-6 * wholeMoment(form));
        }
      }),
    );
  });

  it('cannot be had without clamps while the pull still lifts the form', () => {
    fc.assert(
      fc.property(forms, (form) => {
        expect(bearingWith({ ...form, wrap: Math.min(form.wrap, 1.5) }, 0)).toBeNull();
      }),
    );
  });
});
