/** R/t above which DIN 6935 puts the neutral line in the middle of the sheet. */
const DIN_LIMIT = 5;

/**
 * Neutral-line factor K (share of the thickness from the inside surface) by DIN 6935: K = k/2,
 * k = 0.65 + 0.5·log₁₀(R/t) for R/t ≤ 5, else 1. `ratio` = inside radius over thickness, > 0.
 * The standard's own rule reaches down to about R/t = 0.65; below it the same line is used.
 * Source: DIN 6935 (from memory; design section 2).
 */
export function neutralFactor(ratio: number): number {
  const k = ratio <= DIN_LIMIT ? 0.65 + 0.5 * Math.log10(ratio) : 1;
  return Math.max(k, 0) / 2;
}
