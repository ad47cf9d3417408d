/** Whether every case is tried (BENDBUCK_FULL=1, as .ci/run does) or a share of them, for a quick look. */
export const FULL = process.env['BENDBUCK_FULL'] === '1';

/** The share of its random cases a test tries: an eighth, or fewer where every mutant is tried against them. */
const SHARE = FULL ? 1 : Number(process.env['BENDBUCK_SHARE'] ?? 1 / 8);

/** How many of a test's random cases are tried. What a test counts among them is scaled alike. */
export function cases(full: number): number {
  return Math.ceil(full * SHARE);
}
