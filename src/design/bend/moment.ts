import { bendingCurve, parameterAt } from './curve';
import type { Section } from './section';

/**
 * Bending moment per unit width, N (N·mm per mm), of the sheet held to mid-surface radius `radius` (mm, > 0):
 * m = 2∫₀^{t/2} σ(z/ρ)·z dz, in closed form. Design section 3; derivation in DEVELOPERS.md, "Moment".
 */
export function momentPerWidth(section: Section, radius: number): number {
  const before = last.get(section);
  if (before?.radius === radius) return before.moment;
  const curve = bendingCurve(section);
  const moment = curve.at(parameterAt(curve, 1 / radius)).moment;
  last.set(section, { radius, moment });
  return moment;
}

/** What was asked last of a section: a form of one radius asks the same all along. */
const last = new WeakMap<Section, { readonly radius: number; readonly moment: number }>();
