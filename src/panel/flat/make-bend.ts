import { coneThrough, curvatureRadiusAt, wrapFromAngle } from '../../base/cone';
import type { Ends } from '../../base/ends';
import type { Finding } from '../../base/findings';
import { finding } from '../../findings/finding';
import type { Point } from '../../base/polygon';
import { neutralFactor } from '../../design/bend/neutral';
import type { BendSurface } from './bend';
import { direction, distance, leftOf } from './plane';

/** What makes a bend between two places of the flat: its base line from A to B. */
export interface BendGiven {
  readonly from: Point;
  readonly to: Point;
  /** Whether the leg lies to the left, walking from A to B. */
  readonly legOnLeft: boolean;
  readonly angle: number;
  readonly radius: Ends;
  readonly thickness: number;
  /** Null for DIN 6935. */
  readonly neutral: number | null;
}

/** The bend's surface and where it stands; or why there is none. */
export function bendSurface(given: BendGiven, path: string): BendSurface | Finding {
  const { from, to, angle, radius, thickness } = given;
  const length = distance(from, to);
  if (!(radius.A > 0 && radius.B > 0)) {
    return finding('radius-not-positive', `${path}.radius`, { from: radius.A, to: radius.B });
  }
  if (!(Math.abs(radius.B - radius.A) < length)) {
    return finding('taper-too-steep', `${path}.radius`, { growth: Math.abs(radius.B - radius.A), length });
  }
  const finished = coneThrough(radius.A, radius.B, length);
  const wrap = wrapFromAngle(angle, finished.halfAngle);
  if (!(wrap > 0 && wrap < Math.PI)) {
    return finding('taper-too-steep-for-angle', `${path}.angle`, {
      angle,
      most: 2 * Math.asin(Math.cos(finished.halfAngle)),
    });
  }
  const along = direction(from, to);
  const left = leftOf(along);
  const toLeg: Point = given.legOnLeft ? left : [-left[0], -left[1]];
  const tightest = Math.min(curvatureRadiusAt(finished, 0), curvatureRadiusAt(finished, length));
  const neutral = given.neutral ?? neutralFactor(tightest / thickness);
  return { finished, wrap, thickness, neutral, frame: { at: from, along, toLeg } };
}
