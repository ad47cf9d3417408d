import type { Finding } from '../../src/base/findings';
import type { LengthUnit } from '../../src/base/units';
import { sayFindings, type SaidFinding } from '../../src/findings/say';

/** Findings with their words, as a reader of `units` gets them. */
export function inWords(findings: readonly Finding[], units: LengthUnit = 'mm'): SaidFinding[] {
  return sayFindings(findings, { units });
}
