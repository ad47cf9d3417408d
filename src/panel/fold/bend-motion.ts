import { radiusAt, type Cone } from '../../base/cone';
import { after, back, plus, scaled, turnAbout, type Motion, type Place3 } from '../../base/space';
import { toFlat } from '../../design/form/development';
import type { Bend } from '../flat/bend';

/** How far a bend is wrapped, and on which inside surface: its own finished one, or the form's. */
export interface Wrapped {
  readonly cone: Cone;
  readonly wrap: number;
}

type Placed = Pick<Bend, 'frame' | 'turn' | 'thickness' | 'neutral' | 'base'>;

/**
 * The bend's frame in the space of its base face: x along the base line from A, y toward the leg, z out of the face that becomes the
 * inside, 0 in the middle of the sheet. Left-handed for half of all bends.
 */
export function frameMotion({ frame, turn }: Pick<Bend, 'frame' | 'turn'>): Motion {
  const { at, along, toLeg } = frame;
  return {
    x: [along[0], along[1], 0],
    y: [toLeg[0], toLeg[1], 0],
    z: [0, 0, turn === 'up' ? 1 : -1],
    at: [at[0], at[1], 0],
  };
}

/** The cone's centre line in the bend's frame, from where it passes end A; the unit vector points toward B. */
export function centreLine(cone: Cone, thickness: number): { readonly at: Place3; readonly along: Place3 } {
  const [cosine, sine] = [Math.cos(cone.halfAngle), Math.sin(cone.halfAngle)];
  return {
    at: [-sine * cone.radiusA, 0, thickness / 2 + cosine * cone.radiusA],
    along: [cosine, 0, sine],
  };
}

/** In the bend's frame: a place on the base line carried round the centre line by `angle`. */
export function roundCentre(cone: Cone, thickness: number, angle: number): Motion {
  const { at, along } = centreLine(cone, thickness);
  return turnAbout(at, along, angle);
}

/** In the bend's frame: the flat beyond the ruling at `wrap`, carried to where the sheet leaves the cone there. */
export function legMotion({ thickness, neutral }: Pick<Bend, 'thickness' | 'neutral'>, wrapped: Wrapped): Motion {
  const { cone, wrap } = wrapped;
  const surface = { cone, offset: neutral * thickness };
  const fan = wrap * Math.sin(cone.halfAngle);
  const [x, y] = toFlat(surface, { x: 0, wrap });
  const home = turnAbout([0, 0, 0], [0, 0, 1], -fan);
  const toBaseLine = after(home, { x: [1, 0, 0], y: [0, 1, 0], z: [0, 0, 1], at: [-x, -y, 0] });
  return after(roundCentre(cone, thickness, wrap), toBaseLine);
}

/** The rigid motion that a bend gives its leg, in the space of its base face. */
export function motionOf(bend: Placed, wrapped: Wrapped): Motion {
  const frame = frameMotion(bend);
  return after(frame, after(legMotion(bend, wrapped), back(frame)));
}

/** A place of the zone, on ruling `x` wrapped by `wrap`, `inward` mm inside the middle of the sheet; in the bend's frame. */
export function zonePlace(cone: Cone, thickness: number, place: { x: number; wrap: number; inward: number }): Place3 {
  const { at, along } = centreLine(cone, thickness);
  const [cosine, sine] = [Math.cos(cone.halfAngle), Math.sin(cone.halfAngle)];
  // From the centre line square to the surface: the base line's side of it is −z′.
  const radius = radiusAt(cone, place.x) + (thickness / 2 - place.inward) * cosine;
  const foot = plus(at, along, place.x * cosine - (thickness / 2 - place.inward) * sine);
  const down: Place3 = [sine, 0, -cosine];
  return plus(plus(foot, scaled(down, Math.cos(place.wrap)), radius), [0, 1, 0], radius * Math.sin(place.wrap));
}
