import { rootBetween } from '../../base/solve';
import { PLANE_STRAIN, type Section } from './section';

/**
 * A state of the strip while it is bent further and further, per unit width. `parameter` runs through them: up to first yield the
 * curvature over that of first yield (0…1), beyond it the plastic strain at the surface in steps of the strain of first yield, or of the
 * initial strain where that is less (perfectly plastic: the curvature still). Every sum is explicit in it, and smooth in its logarithm.
 */
export interface CurvePoint {
  /** 1/mm. */
  readonly curvature: number;
  /** N·mm per mm. */
  readonly moment: number;
  /** W_c = ∫₀^m κ dm, N: what bends a leg as a beam. */
  readonly complementary: number;
  /** dm/dparameter, N·mm per mm. */
  readonly slope: number;
}

/** Moment against curvature of a unit width of sheet on the loading branch, with the energy it takes: mm, N. */
export interface BendingCurve {
  /** E′t³/12, N·mm² per mm: what springs back. */
  readonly stiffness: number;
  /** Curvature at which the outer fibre just yields, 1/mm. */
  readonly yieldCurvature: number;
  /** The state at a parameter ≥ 0. */
  readonly at: (parameter: number) => CurvePoint;
}

/** The curve of a section. Derivation in DEVELOPERS.md, “Moment” and “The leg as a beam”. */
export function bendingCurve(section: Section): BendingCurve {
  const { thickness, planeModulus, planeYield } = section;
  const stiffness = (planeModulus * thickness ** 3) / 12;
  const yieldCurvature = (2 * planeYield) / (planeModulus * thickness);
  const yielded = section.hardening ? hardened(section, section.hardening) : plastic(section, yieldCurvature);
  const elastic = (parameter: number): CurvePoint => {
    const curvature = parameter * yieldCurvature;
    const moment = stiffness * curvature;
    return { curvature, moment, complementary: (moment * curvature) / 2, slope: stiffness * yieldCurvature };
  };
  return {
    stiffness,
    yieldCurvature,
    at: (parameter) => (parameter <= 1 ? elastic(parameter) : yielded(parameter)),
  };
}

/** The parameter at which the strip has this curvature, 1/mm, ≥ 0. */
export function parameterAt(curve: BendingCurve, curvature: number): number {
  return parameterWhere(curve, 'curvature', curvature);
}

/**
 * The parameter at which the strip carries this moment, N·mm per mm, ≥ 0. A perfectly plastic strip carries no more than Y′t²/4: Infinity
 * from there on.
 */
export function parameterForMoment(curve: BendingCurve, moment: number): number {
  return parameterWhere(curve, 'moment', moment);
}

function parameterWhere(curve: BendingCurve, what: 'curvature' | 'moment', wanted: number): number {
  const first = curve.at(1)[what];
  if (wanted <= first) return wanted / first;
  let high = 2;
  while (curve.at(high)[what] < wanted) {
    if (high > 1e12) return Infinity;
    high *= 2;
  }
  return rootBetween((parameter) => curve.at(parameter)[what] - wanted, high / 2, high, 1e-15);
}

/** Perfectly plastic, x = κ_e/κ: m = m_p·(1 − x²/3), W_c = m_p·κ_e·(1 − ⅔x). */
function plastic({ planeYield, thickness }: Section, yieldCurvature: number): (parameter: number) => CurvePoint {
  const full = (planeYield * thickness ** 2) / 4;
  return (parameter) => {
    const x = 1 / parameter;
    return {
      curvature: parameter * yieldCurvature,
      moment: full * (1 - (x * x) / 3),
      complementary: full * yieldCurvature * (1 - (2 / 3) * x),
      slope: (2 / 3) * full * x ** 3,
    };
  };
}

/**
 * Hardening, with u = ε₀ + (2/√3)·ε_plastic at the surface as the variable (u = ε₀ + step·(parameter − 1)): σ = S·uⁿ and z = ρ·(a·uⁿ + q·(u − ε₀)),
 * a = S/E′, q = √3/2. Moment 2∫σ·z dz and complementary energy 2∫(σ²/2E′ + σ·ε_p − ∫σ dε_p) dz are sums of powers of u.
 */
function hardened(section: Section, hardening: NonNullable<Section['hardening']>): (parameter: number) => CurvePoint {
  const { thickness, planeModulus, planeYield } = section;
  const { planeStrength: S, exponent: n, initialStrain: e0 } = hardening;
  const a = S / planeModulus;
  const q = 1 / PLANE_STRAIN;
  const c = (a * q * e0 ** (n + 1)) / (n + 1);
  const coreStrain = planeYield / planeModulus;
  const step = Math.min(coreStrain, e0);
  const momentTo = (u: number, un: number): number =>
    (a * a * un ** 3) / 3 +
    (a * q * (1 + n) * un * un * u) / (2 * n + 1) +
    (q * q * un * u * u) / (n + 2) -
    (a * q * e0 * un * un) / 2 -
    (q * q * e0 * un * u) / (n + 1);
  const energyTo = (u: number, un: number): number =>
    (a ** 3 * un ** 3) / 6 +
    (a * a * q * (n ** 2 / (n + 1) + 0.5) * un * un * u) / (2 * n + 1) -
    (a * a * q * e0 * un * un) / 2 +
    c * a * un +
    (a * q * q * n * un * u * u) / ((n + 1) * (n + 2)) -
    (a * q * q * e0 * un * u) / (n + 1) +
    c * q * u;
  const first = e0 ** n;
  const [momentFirst, energyFirst] = [momentTo(e0, first), energyTo(e0, first)];
  return (parameter) => {
    const u = e0 + step * (parameter - 1);
    const un = u ** n;
    const curvature = (2 * (a * un + q * (u - e0))) / thickness;
    const radius = 1 / curvature;
    const core = planeModulus * radius ** 2 * coreStrain ** 3;
    const moment = (2 / 3) * core + 2 * radius ** 2 * S * (momentTo(u, un) - momentFirst);
    const stiffening = ((thickness ** 2 * S * un) / 2 - 2 * moment) * radius;
    return {
      curvature,
      moment,
      complementary: (core * curvature) / 3 + 2 * planeModulus * radius * (energyTo(u, un) - energyFirst),
      slope: (stiffening * 2 * step * ((a * n * un) / u + q)) / thickness,
    };
  };
}
