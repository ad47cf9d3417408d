/** Whether every case is tried (BENDBUCK_FULL=1, as .ci/run does) or a share of them, for a quick look. */
export const FULL = process.env['BENDBUCK_FULL'] === '1';

/** How many of a test's random cases are tried: all, or an eighth. What a test counts among them is scaled alike. */
export function cases(full: number): number {
  return FULL ? full : Math.ceil(full / 8);
}
