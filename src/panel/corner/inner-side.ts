import { InternalError } from '../../base/errors';
import { after, back, movedBy, type Motion, type Place3 } from '../../base/space';
import { centreLine, frameMotion, roundCentre, zonePlace } from '../fold/bend-motion';
import { flatAt, flatOnLeg, type BendSurface, type Bend } from '../flat/bend';
import type { Point } from '../../base/polygon';

/** A bend as a corner needs it. */
export type CornerBend = BendSurface & Pick<Bend, 'turn'>;

/** How far round a bend and out on its leg: a ruling of the zone at `wrap`, or a line of the leg `beyond` its leg line; mm, radians. */
export interface Station {
  readonly wrap: number;
  readonly beyond: number;
}

/** A place on a bend's zone or leg: `x` along its rulings (or along the leg line) from end A. */
export interface SurfacePlace extends Station {
  readonly x: number;
}

/** A place of the inside surface in the space of the base face. */
export function insideSurface(bend: CornerBend, place: SurfacePlace): Place3 {
  const { finished: cone, thickness } = bend;
  return movedBy(frameMotion(bend), inFrame(bend, roundCentre(cone, thickness, bend.wrap), place));
}

function inFrame({ finished: cone, thickness }: CornerBend, toLeg: Motion, place: SurfacePlace): Place3 {
  if (place.beyond > 0) return movedBy(toLeg, [place.x, place.beyond, thickness / 2]);
  return zonePlace(cone, thickness, { x: place.x, wrap: place.wrap, inward: thickness / 2 });
}

/** Places of one bend's inside surface as seen from another's centre line. */
export function viewOf(bend: CornerBend, from: CornerBend): (place: SurfacePlace) => FromCentre {
  const toLeg = roundCentre(bend.finished, bend.thickness, bend.wrap);
  const toFrom = after(back(frameMotion(from)), frameMotion(bend));
  return (place) => fromCentre(from, movedBy(toFrom, inFrame(bend, toLeg, place)));
}

/** The same place on the flat: carried to the neutral surface by its ruling. */
export function flatOf(bend: BendSurface, place: SurfacePlace): Point {
  return place.beyond <= 0 ? flatAt(bend, place) : flatOnLeg(bend, [place.x, place.beyond]);
}

/**
 * How far inside a bend's inside surface the places of a line lie, mm, below 0 outside; the line by where it is at 0 and at 1. Base plane, cone and leg plane
 * run on without end; what lies inside all their tangent planes is convex, and so the distance, the least of those to the planes, has along a line one way in
 * and one way out.
 */
export function innerAlong(bend: CornerBend, line: readonly FromCentre[]): (share: number) => number {
  const [from, to] = line;
  if (!from || !to) throw new InternalError('a line has two places');
  const { halfAngle, radiusA } = bend.finished;
  const [sine, cosine] = [Math.sin(halfAngle), Math.cos(halfAngle)];
  const [legCosine, legSine] = [Math.cos(bend.wrap), Math.sin(bend.wrap)];
  return (share) => {
    const along = from.along + share * (to.along - from.along);
    const ahead = from.ahead + share * (to.ahead - from.ahead);
    const down = from.down + share * (to.down - from.down);
    // Square to the centre line, how far out toward the nearest of the tangent lines.
    const byLeg = down * legCosine + ahead * legSine;
    const round = ahead >= 0 && ahead * legCosine - down * legSine <= 0;
    const out = round ? Math.sqrt(down * down + ahead * ahead) : Math.max(down, byLeg);
    return along * sine + cosine * (radiusA - out);
  };
}

/** How far inside a bend's inside surface a place of the base's space lies, as {@link innerAlong} has it: above the base's inside face at the most its height. */
export function depthInside(bend: CornerBend, place: Place3): number {
  const seen = fromCentre(bend, movedBy(back(frameMotion(bend)), place));
  return innerAlong(bend, [seen, seen])(0);
}

/** A place along a bend's centre line from end A, ahead of it toward the leg, and from it toward the base line; mm. */
export interface FromCentre {
  readonly along: number;
  readonly ahead: number;
  readonly down: number;
}

/** Of a place in the bend's frame. */
function fromCentre({ finished, thickness }: CornerBend, [x, y, z]: Place3): FromCentre {
  const { at } = centreLine(finished, thickness);
  const [cosine, sine] = [Math.cos(finished.halfAngle), Math.sin(finished.halfAngle)];
  const [dx, dz] = [x - at[0], z - at[2]];
  return { along: dx * cosine + dz * sine, ahead: y, down: dx * sine - dz * cosine };
}

/** Where on a bend's inside surface a place of the base's space lies: on the leg where it is beyond the leg line. */
export function surfacePlace(bend: CornerBend, place: Place3): SurfacePlace {
  const inOwn = movedBy(back(frameMotion(bend)), place);
  const { along, ahead, down } = fromCentre(bend, inOwn);
  const [radius, angle] = [Math.hypot(down, ahead), Math.atan2(ahead, down)];
  const { halfAngle, radiusA } = bend.finished;
  if (angle >= 0 && angle <= bend.wrap) {
    const x = along * Math.cos(halfAngle) + (radius - radiusA) * Math.sin(halfAngle);
    return { x, wrap: angle, beyond: 0 };
  }
  const home = back(roundCentre(bend.finished, bend.thickness, bend.wrap));
  const [x, y] = movedBy(home, inOwn);
  return { x, wrap: bend.wrap, beyond: y };
}
