import { rootBetween } from '../../base/solve';
import { elasticRadius, PLANE_STRAIN, type Section } from './section';

/**
 * Bending moment per unit width, N (N·mm per mm), of the sheet held to mid-surface radius `radius` (mm, > 0):
 * m = 2∫₀^{t/2} σ(z/ρ)·z dz, in closed form. Design section 3; derivation in DEVELOPERS.md, "Moment".
 */
export function momentPerWidth(section: Section, radius: number): number {
  const { thickness, planeModulus, planeYield, hardening } = section;
  if (radius >= elasticRadius(section)) return (planeModulus * thickness ** 3) / (12 * radius);
  const coreHalf = (radius * planeYield) / planeModulus;
  const core = (2 * planeModulus * coreHalf ** 3) / (3 * radius);
  if (!hardening) return core + planeYield * ((thickness / 2) ** 2 - coreHalf ** 2);
  return core + hardenedMoment(section, hardening, radius);
}

/**
 * The yielded part, 2∫σ·z dz from the elastic core to the surface, with u = ε₀ + (2/√3)·ε_plastic as the variable:
 * σ = S·uⁿ and z = ρ·(a·uⁿ + q·(u − ε₀)), a = S/E′, q = √3/2. Every term is a power of u.
 */
function hardenedMoment(section: Section, hardening: NonNullable<Section['hardening']>, radius: number): number {
  const { planeStrength: S, exponent: n, initialStrain: e0 } = hardening;
  const a = S / section.planeModulus;
  const q = 1 / PLANE_STRAIN;
  const surfaceStrain = section.thickness / (2 * radius);
  const strainAt = (u: number): number => a * u ** n + q * (u - e0);
  // At the very edge of yielding rounding may put the surface a hair inside the elastic core.
  const surface =
    strainAt(e0) >= surfaceStrain ? e0 : rootBetween((u) => strainAt(u) - surfaceStrain, e0, e0 + surfaceStrain / q);
  const primitive = (u: number): number =>
    (a * a * u ** (3 * n)) / 3 +
    (a * q * (1 + n) * u ** (2 * n + 1)) / (2 * n + 1) +
    (q * q * u ** (n + 2)) / (n + 2) -
    (a * q * e0 * u ** (2 * n)) / 2 -
    (q * q * e0 * u ** (n + 1)) / (n + 1);
  return 2 * radius ** 2 * S * (primitive(surface) - primitive(e0));
}
