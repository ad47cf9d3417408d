import type { Metal } from '../../tables/schema';

/** 2/√3: von Mises yield in plane strain over yield in simple tension, and equivalent over plane-strain plastic strain. */
export const PLANE_STRAIN = 2 / Math.sqrt(3);

/**
 * What a unit width of the sheet is to bending: mm and MPa, plane strain (a bend wide against its thickness).
 * Source: Marciniak, Duncan & Hu, Mechanics of Sheet Metal Forming, ch. 6 (from memory); design section 3.
 */
export interface Section {
  readonly thickness: number;
  /** E/(1 − ν²), MPa. */
  readonly planeModulus: number;
  /** First yield in plane strain, MPa: 2/√3 of the stress the curve starts from, K·ε₀ⁿ, or Y where nothing hardens. */
  readonly planeYield: number;
  /** Swift curve in plane strain: σ = strength·(initialStrain + 2/√3·ε_plastic)^exponent; null for perfectly plastic. */
  readonly hardening: {
    readonly planeStrength: number;
    readonly exponent: number;
    readonly initialStrain: number;
  } | null;
}

/** What a section is made from: of the sheet's row in the tables. */
export type SheetMetal = Pick<Metal, 'modulus' | 'poisson' | 'yield' | 'hardening'>;

/**
 * The section of a sheet of this metal. `factor` scales the whole flow curve (1 by the table, another from trial strips).
 * Thickness in mm, > 0.
 */
export function sectionOf(metal: SheetMetal, thickness: number, factor: number): Section {
  const hardening = metal.hardening;
  const first = hardening ? hardening.strength * hardening.initialStrain ** hardening.exponent : metal.yield;
  return {
    thickness,
    planeModulus: metal.modulus / (1 - metal.poisson ** 2),
    planeYield: PLANE_STRAIN * first * factor,
    hardening: hardening && {
      planeStrength: PLANE_STRAIN * hardening.strength * factor,
      exponent: hardening.exponent,
      initialStrain: hardening.initialStrain,
    },
  };
}

/** The mid-surface radius, mm, at which the outer fibre just yields: wrapped no tighter than this, the sheet comes back flat. */
export function elasticRadius(section: Section): number {
  return (section.planeModulus * section.thickness) / (2 * section.planeYield);
}
