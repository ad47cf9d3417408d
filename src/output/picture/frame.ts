import type { Cone } from '../../base/cone';
import type { Point3 } from './vector';

/** A place on or about a cone, mm: along its centre line from end A, ahead of the spine's front face, up from the centre line. */
export interface ConePlace {
  readonly along: number;
  readonly ahead: number;
  readonly up: number;
}

/**
 * From a cone's own frame to the bench's: the tangent line lies along x with end A at the origin, the bench is level.
 * A turn by the cone's half-angle about the y axis. Works for the form's cone and the finished part's alike, which is how
 * both come to lie on the same tangent line.
 */
export function onBench(cone: Cone, { along, ahead, up }: ConePlace): Point3 {
  const [sine, cosine] = [Math.sin(cone.halfAngle), Math.cos(cone.halfAngle)];
  const fromEdge = up + cone.radiusA;
  return [along * cosine - fromEdge * sine, ahead, along * sine + fromEdge * cosine];
}
