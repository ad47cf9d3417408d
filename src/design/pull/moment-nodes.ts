import { nodesBetween } from '../../base/integrate';
import type { BendingCurve, CurvePoint } from '../bend/curve';

/** A state of the strip, and the moment (N·mm per mm) its look counts for: Σ weight = m(to) − m(from). */
export interface MomentNode {
  readonly point: CurvePoint;
  readonly weight: number;
}

const ELASTIC_PIECES = 2;
const YIELDED_PIECES = 3;

/**
 * Looks at the strip between two parameters of its curve (0 ≤ from ≤ to), for integrals over the moment. The elastic part and the
 * yielded one apart; in the latter the logarithm of the parameter is the variable, crowded toward the end by 1 − w², so that an
 * integrand growing like 1/√(m_to − m) there, as where a leg turns square to its pull, is as smooth as any.
 */
export function momentNodes(
  curve: BendingCurve,
  from: number,
  to: number,
  pieces = YIELDED_PIECES,
): readonly MomentNode[] {
  const nodes: MomentNode[] = [];
  if (from < 1) {
    for (const { x, weight } of nodesBetween(from, Math.min(to, 1), ELASTIC_PIECES)) {
      const point = curve.at(x);
      nodes.push({ point, weight: weight * point.slope });
    }
  }
  if (to > 1) {
    const span = Math.log(to / Math.max(from, 1));
    for (const { x: w, weight } of nodesBetween(0, 1, pieces)) {
      const parameter = to * Math.exp(-span * w * w);
      const point = curve.at(parameter);
      nodes.push({ point, weight: weight * point.slope * parameter * 2 * span * w });
    }
  }
  return nodes;
}

/** ∫ f dm over the looks. */
export function overMoment(nodes: readonly MomentNode[], f: (point: CurvePoint) => number): number {
  let sum = 0;
  for (const { point, weight } of nodes) sum += weight * f(point);
  return sum;
}
