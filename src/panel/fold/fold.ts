import { flattenLoop } from '../../base/flatten';
import { isInside, type Point } from '../../base/polygon';
import { after, back, movedBy, stay, type Motion, type Place3 } from '../../base/space';
import { toBent } from '../../design/form/development';
import { flatAt, toFrame, type Bend } from '../flat/bend';
import type { Panel } from '../flat/panel';
import { frameMotion, motionOf, zonePlace, type Wrapped } from './bend-motion';
import { CHORD_STRAY } from '../../base/tolerance';

/** A panel with each bend wrapped some way: one rigid motion a face, into the space of the base. */
export interface Folded {
  readonly panel: Panel;
  readonly wrapped: readonly Wrapped[];
  readonly motions: readonly Motion[];
}

/** Which piece of the panel a place of the flat lies on. */
export type Piece = { readonly kind: 'face'; readonly face: number } | { readonly kind: 'zone'; readonly bend: number };

/** A place on the sheet: on the flat, and how far out of the marked face from the middle of the sheet, mm. */
export interface SheetPlace {
  readonly flat: Point;
  readonly up: number;
}

/** Every bend as it is to be finished. */
export function finishedWraps(panel: Panel): Wrapped[] {
  return panel.bends.map(({ finished, wrap }) => ({ cone: finished, wrap }));
}

/** Folds the panel: each bend wrapped as given, 0 for one still flat. */
export function foldPanel(panel: Panel, wrapped: readonly Wrapped[] = finishedWraps(panel)): Folded {
  const motions: (Motion | undefined)[] = panel.faces.map(() => undefined);
  const motionTo = (face: number): Motion => {
    const known = motions[face];
    if (known) return known;
    const from = panel.faces[face]?.bend ?? null;
    const bend = from === null ? undefined : panel.bends[from];
    const state = from === null ? undefined : wrapped[from];
    const found = bend && state ? after(motionTo(bend.base), motionOf(bend, state)) : stay;
    motions[face] = found;
    return found;
  };
  return { panel, wrapped, motions: panel.faces.map((_, face) => motionTo(face)) };
}

/** A look-up of which piece a place of the flat lies on; null off the panel (or on a corner left to be dressed). */
export function pieceFinder(panel: Panel): (place: Point) => Piece | null {
  const faces = panel.faces.map(({ outline }) => flattenLoop(outline, CHORD_STRAY));
  const zones = panel.bends.map(({ zone }) => flattenLoop(zone, CHORD_STRAY));
  return (place) => {
    const face = faces.findIndex((polygon) => isInside(place, polygon));
    if (face >= 0) return { kind: 'face', face };
    const bend = zones.findIndex((polygon) => isInside(place, polygon));
    return bend >= 0 ? { kind: 'zone', bend } : null;
  };
}

/** Where a place of the flat comes to lie, reckoned as part of the given piece. */
export function toSpace(folded: Folded, piece: Piece, { flat, up }: SheetPlace): Place3 {
  if (piece.kind === 'face') return movedBy(folded.motions[piece.face] ?? stay, [flat[0], flat[1], up]);
  const bend = folded.panel.bends[piece.bend];
  const state = folded.wrapped[piece.bend];
  if (!bend || !state) throw new RangeError(`no bend number ${piece.bend}`);
  return movedBy(folded.motions[bend.base] ?? stay, zoneInBase(bend, state, { flat, up }));
}

/** In the space of the bend's base face; what is beyond the wrapped part goes with the leg. */
function zoneInBase(bend: Bend, state: Wrapped, { flat, up }: SheetPlace): Place3 {
  const { x, wrap } = toBent({ cone: state.cone, offset: bend.neutral * bend.thickness }, toFrame(bend.frame, flat));
  if (wrap > state.wrap) return movedBy(motionOf(bend, state), [flat[0], flat[1], up]);
  const inward = bend.turn === 'up' ? up : -up;
  return movedBy(frameMotion(bend), zonePlace(state.cone, bend.thickness, { x, wrap, inward }));
}

/** The place of the flat that comes to lie at a place in space, reckoned as part of the given piece. Inverse: {@link toSpace} of a finished fold. */
export function toSheet(folded: Folded, piece: Piece, place: Place3): SheetPlace {
  if (piece.kind === 'face') {
    const [x, y, up] = movedBy(back(folded.motions[piece.face] ?? stay), place);
    return { flat: [x, y], up };
  }
  const bend = folded.panel.bends[piece.bend];
  const state = folded.wrapped[piece.bend];
  if (!bend || !state) throw new RangeError(`no bend number ${piece.bend}`);
  const inBase = movedBy(back(folded.motions[bend.base] ?? stay), place);
  const seen = aboutCentre(state.cone, bend.thickness, movedBy(back(frameMotion(bend)), inBase));
  const inward = seen.inside + bend.thickness / 2;
  return { flat: flatAt(bend, seen), up: bend.turn === 'up' ? inward : -inward };
}

/** A place of the bend's frame by ruling, wrap and distance inside the inside surface (below 0 in the metal), mm and radians. */
function aboutCentre(
  cone: Wrapped['cone'],
  thickness: number,
  place: Place3,
): { readonly x: number; readonly wrap: number; readonly inside: number } {
  const [cosine, sine] = [Math.cos(cone.halfAngle), Math.sin(cone.halfAngle)];
  // From where the centre line passes end A: along it, and square to it toward −z and y.
  const [dx, dz] = [place[0] + sine * cone.radiusA, place[2] - thickness / 2 - cosine * cone.radiusA];
  const along = dx * cosine + dz * sine;
  const down = dx * sine - dz * cosine;
  const radius = Math.hypot(down, place[1]);
  // On the ruling through (along, radius): the foot of the perpendicular on the inside surface, whose slope is β.
  const x = along * cosine + (radius - cone.radiusA) * sine;
  const inside = along * sine - (radius - cone.radiusA) * cosine;
  return { x, wrap: Math.atan2(place[1], down), inside };
}
