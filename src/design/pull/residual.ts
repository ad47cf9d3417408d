import type { BendingCurve } from '../bend/curve';
import { momentNodes } from './moment-nodes';
import { lengthOf } from './pulled-leg';

/** A piece of leg after release, from the bend outward: its length, mm, how far it turned while loaded and what of that stays, radians. */
export interface LegPiece {
  readonly length: number;
  readonly loaded: number;
  readonly stays: number;
}

/** Pieces a yielded stretch is cut into to lay it out: its tail's place is then good to about a thousandth of a mm. */
const PIECES = 32;

/**
 * A leg as a beam, piece by piece from parameter `from` of the curve (at the take-off) down to parameter `to` (at the yoke's nose; 0 at
 * the hands), pulled with `force` N per mm square to the leg at its end. What has not yielded is one straight piece at the end.
 */
export function beamPieces(curve: BendingCurve, from: number, to: number, force: number): LegPiece[] {
  const offset = curve.at(to).complementary;
  return cut(from, to).map(([high, low]) => {
    const nodes = momentNodes(curve, low, high, 1);
    const { length, released } = lengthOf(nodes, force, offset);
    const turnAt = (parameter: number): number =>
      Math.asin(Math.min(1, (curve.at(parameter).complementary - offset) / force));
    const loaded = turnAt(high) - turnAt(low);
    return { length, loaded, stays: high <= 1 ? 0 : loaded - released / curve.stiffness };
  });
}

/** A leg whose moment falls steadily to nothing over `length` mm (under a yoke, or held beneath the spine), piece by piece from its start. */
export function steadyPieces(curve: BendingCurve, from: number, length: number): LegPiece[] {
  const { moment } = curve.at(from);
  return cut(from, 0).map(([high, low]) => {
    const [start, end] = [curve.at(high), curve.at(low)];
    const loaded = (length / moment) * (start.complementary - end.complementary);
    const released = ((length / moment) * (start.moment ** 2 - end.moment ** 2)) / 2 / curve.stiffness;
    return {
      length: (length * (start.moment - end.moment)) / moment,
      loaded,
      stays: high <= 1 ? 0 : loaded - released,
    };
  });
}

/** Parameters from high to low: even steps of the logarithm where it has yielded, one step below. */
function cut(from: number, to: number): [number, number][] {
  const edge = Math.max(1, to);
  const steps =
    from > edge ? Array.from({ length: PIECES + 1 }, (_, k) => from * (edge / from) ** (k / PIECES)) : [from];
  if (to < 1) steps.push(to);
  return steps.slice(1).map((low, index) => [steps[index] ?? from, low]);
}
