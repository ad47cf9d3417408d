import type { LegPiece, PulledEnd } from '../bend/bend-plan';
import { parameterAt, type BendingCurve } from '../bend/curve';
import { grippedLeg, type Grip, type GrippedLeg } from './gripped-leg';
import { bareLeg } from './pulled-leg';
import { beamPieces, steadyPieces } from './residual';
import { ROUNDING } from '../../base/tolerance';

/** The leg is solved up to this turn beyond the take-off, radians; what turns further is too limp. */
export interface Limits {
  readonly most: number;
}

/** A leg bent to `curvature` (1/mm) at the take-off, to be pulled by hands or pressed at any lever; null where it is too limp. */
export function barePull(curve: BendingCurve, curvature: number, most: number): (lever: number) => PulledEnd | null {
  const legs = bareLeg(curve, curvature, most);
  const parameter = parameterAt(curve, curvature);
  return (lever) => {
    const leg = legs.at(lever);
    return leg && { ...leg, pieces: beamPieces(curve, parameter, 0, leg.force) };
  };
}

/** Share of the turn inside a yoke, in the middle of its span, that the whole edge shows: it is nothing at the bolts. */
export const MEAN_OF_SPAN = 2 / 3;

/** A gripped leg; `inside` how far behind the nose the sheet lies flat in the yoke again, mm, in the middle. */
export function pulledByYoke(
  curve: BendingCurve,
  curvature: number,
  leg: GrippedLeg,
  inside: { readonly grip: number; readonly loaded: number; readonly stays: number },
): PulledEnd {
  const within = steadyPieces(curve, leg.parameter, inside.grip).map(({ length, loaded, stays }): LegPiece => ({
    length,
    loaded: MEAN_OF_SPAN * loaded,
    stays: MEAN_OF_SPAN * stays,
  }));
  return {
    force: leg.force,
    loaded: leg.loaded + MEAN_OF_SPAN * inside.loaded,
    stays: leg.stays + MEAN_OF_SPAN * inside.stays,
    pieces: [...piecesToNose(curve, curvature, leg), ...within],
  };
}

/** The gripped leg's pieces from the take-off, where it is bent to `curvature` (1/mm), to the nose. */
function piecesToNose(curve: BendingCurve, curvature: number, leg: GrippedLeg): LegPiece[] {
  return beamPieces(curve, parameterAt(curve, curvature), leg.parameter, leg.force);
}

/** The gripped leg, as {@link grippedLeg}. */
export function gripLeg(curve: BendingCurve, curvature: number, grip: Grip, { most }: Limits): GrippedLeg | null {
  return grippedLeg(curve, curvature, grip, most);
}

/** How far past the take-off a leg stays bent, mm. */
export function reachOf(pieces: readonly LegPiece[]): number {
  let [along, reach] = [0, 0];
  for (const { length, stays } of pieces) {
    along += length;
    if (stays > ROUNDING) reach = along;
  }
  return reach;
}

/** Turn of a loaded leg from the take-off to a place along it, mm and radians; the whole turn beyond its end. */
export function turnAt(pieces: readonly LegPiece[], place: number): number {
  let [along, turn] = [0, 0];
  for (const { length, loaded } of pieces) {
    if (along + length >= place) return turn + (length === 0 ? 0 : (loaded * (place - along)) / length);
    along += length;
    turn += loaded;
  }
  return turn;
}
