import { describe, expect, it } from 'vitest';
import { bendingCurve, parameterForMoment } from '../../../src/design/bend/curve';
import { sectionOf } from '../../../src/design/bend/section';
import { loadYoke } from '../../../src/design/pull/yoke';

const steel = sectionOf(
  {
    modulus: 203_400,
    poisson: 0.29,
    yield: 206.8,
    hardening: { strength: 554.7, exponent: 0.2, initialStrain: 0.0052 },
  },
  1.2141,
  1,
);
const curve = bendingCurve(steel);
const nose = { stiffness: 9.2e9, modulus: 1560, width: 40 };
const outer = { stiffness: 3.7e9, modulus: 21_400, width: 89 };

describe('a yoke', () => {
  it('opens as far as its members part, laid out again as two beams and a strip of sheet in small steps', () => {
    const moment = 85;
    const { grip, part, opens, loaded, stays } = loadYoke(curve, moment, { nose, outer }, { span: 660, bolts: 18 });
    // Two beams on their ends under the same even load part in the middle by the sum of their bows.
    let apart = 0;
    for (const { stiffness } of [nose, outer]) {
      // Slope and bow by steps from the middle out: m(x) = p·(L²/8 − x²/2).
      let [slope, bow] = [0, 0];
      const step = 660 / 2 / 20_000;
      for (let at = step / 2; at < 330; at += step) {
        bow += slope * step + ((part * (660 ** 2 / 8 - at ** 2 / 2)) / stiffness) * (step ** 2 / 2);
        slope += ((part * (660 ** 2 / 8 - at ** 2 / 2)) / stiffness) * step;
      }
      apart += bow;
    }
    expect(Math.abs(apart / opens - 1)).toBeLessThan(1e-3);
    // The sheet from the nose back, moment falling steadily to nothing over the grip.
    let [turned, kept, lifted] = [0, 0, 0];
    const steps = 20_000;
    for (let k = 0; k < steps; k++) {
      const along = ((k + 0.5) / steps) * grip;
      const m = moment * (1 - along / grip);
      const { curvature } = curve.at(parameterForMoment(curve, m));
      turned += (curvature * grip) / steps;
      kept += ((curvature - m / curve.stiffness) * grip) / steps;
      lifted += (curvature * along * grip) / steps;
    }
    expect(Math.abs(lifted / opens - 1)).toBeLessThan(1e-5);
    expect(Math.abs(turned / loaded - 1)).toBeLessThan(1e-5);
    expect(Math.abs(kept / stays - 1)).toBeLessThan(1e-4);
    expect(Math.abs((part * grip) / moment - 1)).toBeLessThan(1e-12);
  });

  it('stiffer members take a shorter grip, open less and pull harder on the bolts', () => {
    const soft = loadYoke(curve, 85, { nose, outer }, { span: 660, bolts: 18 });
    const stiff = loadYoke(
      curve,
      85,
      { nose: { ...nose, stiffness: 2.3e10 }, outer: { ...outer, stiffness: 2e10 } },
      { span: 660, bolts: 18 },
    );
    expect(stiff.grip).toBeLessThan(soft.grip);
    expect(stiff.opens).toBeLessThan(soft.opens);
    expect(stiff.stays).toBeLessThan(soft.stays);
    expect(stiff.bolts).toBeGreaterThan(soft.bolts);
  });

  it('its bolts hold the parting force about the flange’s heel', () => {
    const { part, bolts } = loadYoke(curve, 85, { nose, outer }, { span: 660, bolts: 18 });
    // The flange cut free at one end: half the parting force at the nose, the bolts 18 back, the heel 40 back.
    expect(Math.abs(bolts * (40 - 18) - ((part * 660) / 2) * 40)).toBeLessThan(1e-6);
  });

  it('bends its members as beams on two ends under an even load: p·L²/8 over the section modulus', () => {
    const { part, stress } = loadYoke(curve, 85, { nose, outer }, { span: 660, bolts: 18 });
    // The middle of the beam, cut: half the load up at the end, the other half of it back down, a quarter of the span from the cut.
    const half = (part * 660) / 2;
    const middle = half * 330 - half * 165;
    expect(stress.nose).toBeCloseTo(middle / 1560, 9);
    expect(stress.outer).toBeCloseTo(middle / 21_400, 9);
  });
});
