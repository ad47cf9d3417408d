import type { Cone } from '../../base/cone';
import { after, plus, scaled, sideOf, type Motion, type Place3 } from '../../base/space';
import { fanOf, flatOnLeg, sideOfLeg, type Bend, type BendFrame, type BendSurface } from '../flat/bend';
import { turned } from '../flat/plane';
import { centreLine, frameMotion } from '../fold/bend-motion';

/** Which side of a bend lies clamped under the form; the other is pulled. */
export type HeldSide = 'base' | 'leg';

/**
 * Which way up the form stands. +1: standing behind it and looking toward the side that rises, its small end is on your left; −1: on your right, the form
 * turned over on the spine's other long edge.
 */
export type Hand = 1 | -1;

/** The form's hand, by the rule of panel design section 2; a form of one radius may be used either way, and is then taken as it lies. */
export function handOf(bend: Pick<Bend, 'turn' | 'frame' | 'finished'>, held: HeldSide): Hand {
  if (bend.finished.halfAngle === 0) return 1;
  const growsToB = bend.finished.halfAngle > 0 ? 1 : -1;
  const product = growsToB * sideOfLeg(bend.frame) * (bend.turn === 'up' ? 1 : -1) * (held === 'base' ? 1 : -1);
  return product > 0 ? 1 : -1;
}

/** Where the small end of the form is, for someone behind it who looks toward the side that rises. */
export function smallEnd(bend: Pick<Bend, 'turn' | 'frame' | 'finished'>, held: HeldSide): 'left' | 'right' | 'either' {
  if (bend.finished.halfAngle === 0) return 'either';
  return handOf(bend, held) > 0 ? 'left' : 'right';
}

/** The bend's frame as seen from the side that is held: the form stands on that side's tangent line, and the other side is its leg. */
export function heldFrame(bend: BendSurface, held: HeldSide): BendFrame {
  if (held === 'base') return bend.frame;
  const fan = fanOf(bend);
  const { along, toLeg } = bend.frame;
  const [x, y] = turned([1, 0], fan);
  const [u, v] = turned([0, -1], fan);
  return {
    at: flatOnLeg(bend, [0, 0]),
    along: [x * along[0] + y * toLeg[0], x * along[1] + y * toLeg[1]],
    toLeg: [u * along[0] + v * toLeg[0], u * along[1] + v * toLeg[1]],
  };
}

/**
 * How a form comes to stand on its bend: from the form's own space (x along its centre line from the small end's side, where the radius is the form's at `start`;
 * y ahead of the spine's front face; z square to both by the right hand; the centre line at y = z = 0) into the space of the held face. A proper motion.
 */
export function formPlacement(bend: Pick<Bend, 'turn'> & BendSurface, form: Cone, held: HeldSide): Motion {
  const frame = frameMotion({ frame: heldFrame(bend, held), turn: bend.turn });
  const { at, along } = centreLine(form, bend.thickness);
  const grows = form.halfAngle >= 0 ? 1 : -1;
  const smallest = grows > 0 ? at : plus(at, along, form.length * Math.cos(form.halfAngle));
  // Square to the centre line, away from the sheet; a form turned over has its z toward it.
  const away: Place3 = [-along[2], 0, along[0]];
  const inFrame = {
    x: scaled(along, grows),
    y: [0, 1, 0],
    z: scaled(away, grows * sideOf(frame)),
    at: smallest,
  } as const;
  return after(frame, inFrame);
}
