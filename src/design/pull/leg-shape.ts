import { midRadiusAt } from '../../base/cone';
import type { End } from '../../base/ends';
import type { BentSheet, LegPiece, PulledEnd } from '../bend/bend-plan';
import { bendingCurve, parameterAt } from '../bend/curve';
import { finishedRadius } from '../bend/springback';
import { finishedShape, type FinishedShape } from './finished-shape';
import { steadyPieces } from './residual';

/** Where along the bend an end is, mm. */
export function placeOf(bend: Pick<BentSheet, 'length'>, end: End): number {
  return end === 'A' ? 0 : bend.length;
}

/**
 * The finished bend at an end against one round arc: its free leg as pulled, its held leg bearing on the bench `bearing` mm back (0: held
 * flat at the tangent line), both drawn out to their trims.
 */
export function legShape(bend: BentSheet, end: End, leg: PulledEnd, bearing: number): FinishedShape {
  const mid = midRadiusAt(bend.form, bend.section.thickness, placeOf(bend, end));
  return finishedShape({
    angle: bend.angle,
    radius: finishedRadius(bend.section, mid),
    free: drawnOut(leg.pieces, bend.legs.free),
    held: drawnOut(heldPieces(bend, mid, bearing), bend.legs.held),
  });
}

function heldPieces({ section }: BentSheet, mid: number, bearing: number): readonly LegPiece[] {
  if (bearing === 0) return [];
  const curve = bendingCurve(section);
  return steadyPieces(curve, parameterAt(curve, 1 / mid), bearing);
}

/** The pieces, and what is straight from their end on. */
function drawnOut(pieces: readonly LegPiece[], length: number): readonly LegPiece[] {
  const bent = pieces.reduce((sum, piece) => sum + piece.length, 0);
  return bent >= length ? pieces : [...pieces, { length: length - bent, loaded: 0, stays: 0 }];
}
