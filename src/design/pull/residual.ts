import type { LegPiece } from '../bend/bend-plan';
import type { BendingCurve } from '../bend/curve';
import { momentNodes } from './moment-nodes';
import { lengthOf } from './pulled-leg';

/** The yielded side of first yield, where the curve's parameter changes its meaning. */
const JUST_YIELDED = 1 + 1e-12;
/** Pieces a yielded stretch is cut into to lay it out: its tail's place is then good to about a thousandth of a mm. */
const PIECES = 40;

/**
 * A leg as a beam, piece by piece from parameter `from` of the curve (at the take-off) down to parameter `to` (at the yoke's nose; 0 at
 * the hands), pulled with `force` N per mm square to the leg at its end. What has not yielded is one straight piece at the end. Lengths
 * by Simpson's rule on each piece, over the logarithm of the parameter.
 */
export function beamPieces(curve: BendingCurve, from: number, to: number, force: number): LegPiece[] {
  const offset = curve.at(to).complementary;
  const look = (parameter: number) => {
    const { moment, complementary, slope } = curve.at(parameter);
    const sine = Math.min(1, (complementary - offset) / force);
    return { moment, turn: Math.asin(sine), ahead: (slope * parameter) / (force * Math.sqrt(1 - sine * sine)) };
  };
  const edge = Math.max(1, to);
  const step = Math.log(from / edge) / PIECES;
  const pieces: LegPiece[] = [];
  let high = look(from);
  for (let piece = 0; from > edge && piece < PIECES; piece++) {
    const [middle, low] = [0.5, 1].map((share) =>
      look(Math.max(from * Math.exp(-step * (piece + share)), JUST_YIELDED)),
    );
    if (!middle || !low) break;
    const length = (step * (high.ahead + 4 * middle.ahead + low.ahead)) / 6;
    const released =
      (step * (high.ahead * high.moment + 4 * middle.ahead * middle.moment + low.ahead * low.moment)) / 6;
    const loaded = high.turn - low.turn;
    pieces.push({ length, loaded, stays: loaded - released / curve.stiffness });
    high = low;
  }
  if (to >= 1) return pieces;
  const { length } = lengthOf(momentNodes(curve, to, Math.min(1, from)), force, offset);
  return [...pieces, { length, loaded: high.turn, stays: 0 }];
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
