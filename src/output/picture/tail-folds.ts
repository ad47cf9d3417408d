import type { End, Ends } from '../../base/ends';
import type { LegPiece } from '../../design/bend/bend-plan';
import { ROUNDING } from '../../base/tolerance';

/** A line across a leg about which it turns: how far out it lies at either end, mm, and by how much, radians. */
export interface Fold extends Ends {
  readonly turn: number;
}

/** What a piece of leg turns by at the state to be drawn, radians. */
type TurnOf = (piece: LegPiece) => number;

/** How finely, and how far out at most: beyond lies a yoke, in which the sheet is shown flat. mm, radians. */
export interface Folding {
  readonly facet: number;
  readonly within: number;
}

/** Folds nearer than this to one another are one, mm. */
const SAME = 0.05;

/**
 * A leg's bend beyond the form as folds of equal turn, none more than `facet`: each end's own way of bending, and the mean of both
 * ends' turns, which is what the gauge is made for. None where it does not turn.
 */
export function foldsOf(pieces: Ends<readonly LegPiece[]>, turnOf: TurnOf, { facet, within }: Folding): Fold[] {
  const totals = { A: turnOver(pieces.A, turnOf), B: turnOver(pieces.B, turnOf) };
  const turn = mean(totals);
  if (turn < ROUNDING) return [];
  const count = Math.max(1, Math.ceil(turn / facet));
  const place = (end: End, share: number): number =>
    Math.min(within, placeAt(pieces[end], turnOf, share * totals[end]));
  const folds: Fold[] = [];
  for (let index = 0; index < count; index++) {
    const share = (index + 0.5) / count;
    const [A, B] = [place('A', share), place('B', share)];
    const last = folds.at(-1);
    const one = last && A - last.A < SAME && B - last.B < SAME;
    if (one) folds[folds.length - 1] = { ...last, turn: last.turn + turn / count };
    else folds.push({ A, B, turn: turn / count });
  }
  return folds;
}

/** Of both ends. */
export function mean({ A, B }: Ends): number {
  return (A + B) / 2;
}

function turnOver(pieces: readonly LegPiece[], turnOf: TurnOf): number {
  return pieces.reduce((sum, piece) => sum + turnOf(piece), 0);
}

/** Where along the leg it has turned by so much. */
function placeAt(pieces: readonly LegPiece[], turnOf: TurnOf, wanted: number): number {
  let [along, turned] = [0, 0];
  for (const piece of pieces) {
    const turn = turnOf(piece);
    if (turn > 0 && turned + turn >= wanted) return along + (piece.length * (wanted - turned)) / turn;
    turned += turn;
    along += piece.length;
  }
  return along;
}
