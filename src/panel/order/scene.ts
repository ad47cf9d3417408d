import { at } from '../../base/at';
import { radiusAt, type Cone } from '../../base/cone';
import { after, back, movedBy, plus, scaled, stay, type Motion, type Place3 } from '../../base/space';
import { flatOnLeg, type Bend } from '../flat/bend';
import type { Panel } from '../flat/panel';
import { distance } from '../flat/plane';
import { centreLine, frameMotion, legMotion, motionOf, type Wrapped } from '../fold/bend-motion';
import { heldFrame, type HeldSide } from '../form/hand';
import { boxBetween, convex, sphered, type Convex } from './gap';
import { carried, faceBodies, flatZoneBodies, leftBodies, zoneBodies, type XLimits } from './metal';
import type { ClampBody, FormUse, LeftMetal, YokeBody } from './work';

/** A thing in the scene: what it is called and its convex bodies, in the frame of the bend as seen from the held side. */
export interface Thing {
  readonly name: string;
  readonly bodies: readonly Convex[];
  /** Lies in the plane of the face it hangs on: the held side's flat, or the pulled side's. */
  readonly flat: boolean;
  /** Belongs to a bend that meets the one being made in a corner: seen without what lies past the corner. */
  readonly besideCorner: boolean;
}

/** Everything round one bend as it is about to be made; lengths mm, z out of the inside, the held face's middle at 0. */
export interface Scene {
  readonly thickness: number;
  readonly held: readonly Thing[];
  /** At the start of the pull. */
  readonly pulled: readonly Thing[];
  /** Where the pulled side has come to, wrapped so far. */
  readonly swing: (wrap: number) => Motion;
  /** The form's cone from end A of the bend, and where it is cut off. */
  readonly form: { readonly cone: Cone; readonly from: number; readonly to: number };
  /** Base line of the held side. */
  readonly length: number;
}

export interface SceneGiven {
  readonly bend: number;
  readonly held: HeldSide;
  readonly use: FormUse;
  /** Whether each bend has been made. */
  readonly done: readonly boolean[];
  /** Metal left on beyond the panel's edges; absent where there is none. */
  readonly leftOn?: readonly LeftMetal[] | undefined;
}

/** Metal within this of a corner is left to the corner's own design, mm. */
const CORNER = 3;

export function sceneOf(panel: Panel, given: SceneGiven): Scene | null {
  const own = panel.bends[given.bend];
  if (!own) return null;
  const frame = { frame: heldFrame(own, given.held), turn: own.turn };
  const home = back(frameMotion(frame));
  const [heldFace, pulledFace] = given.held === 'base' ? [own.base, own.leg] : [own.leg, own.base];
  const form = formAlong(given.use, own.finished.length);
  const side = (face: number): Thing[] => thingsFrom(panel, given, { face, home });
  const placed = { thickness: own.thickness, neutral: own.neutral };
  return {
    thickness: own.thickness,
    held: side(heldFace),
    pulled: side(pulledFace),
    swing: (wrap) => legMotion(placed, { cone: form.cone, wrap }),
    form,
    length: own.finished.length,
  };
}

/** The form's cone by the bend's own x, from A. */
function formAlong({ body, stretch }: FormUse, length: number): Scene['form'] {
  const { cone } = body;
  const [first, last] = stretch.startsAtA ? [stretch.from, stretch.to] : [stretch.to, stretch.from];
  const along = {
    radiusA: radiusAt(cone, first),
    radiusB: radiusAt(cone, last),
    length,
    halfAngle: stretch.startsAtA ? cone.halfAngle : -cone.halfAngle,
  };
  const [from, to] = stretch.startsAtA
    ? [-stretch.from, cone.length - stretch.from]
    : [stretch.to - cone.length, stretch.to];
  return { cone: along, from, to };
}

interface From {
  readonly face: number;
  readonly home: Motion;
}

/** All metal on one side of the bend, folded as far as it has been, about a face that lies flat. */
function thingsFrom(panel: Panel, { bend, done, leftOn = [] }: SceneGiven, { face, home }: From): Thing[] {
  const things: Thing[] = [];
  const beside = cornerPartners(panel, bend);
  const stillOn = leftOn.filter((left) => done[left.bend] !== true);
  const visit = (here: number, motion: Motion, cameBy: number, flat: boolean): void => {
    const hung = panel.faces[here]?.bend ?? null;
    const limits = hung !== null && hung !== bend && beside.has(hung) ? limitsOf(panel, hung, bend) : null;
    const metal = stillOn.filter((left) => left.face === here).flatMap((left) => leftBodies(panel, left, limits));
    const bodies = carried([...faceBodies(panel, here, limits), ...metal], after(home, motion));
    things.push({ name: at(panel.faces, here).name, bodies, flat, besideCorner: limits !== null });
    panel.bends.forEach((one, index) => {
      if (index === cameBy || index === bend || (one.base !== here && one.leg !== here)) return;
      const made = done[index] === true;
      const state: Wrapped = { cone: one.finished, wrap: made ? one.wrap : 0 };
      const across = made ? motionOf(one, state) : stay;
      const [next, onward] = one.base === here ? [one.leg, across] : [one.base, back(across)];
      const toBase = one.base === here ? motion : after(motion, back(across));
      const atCorner = beside.has(index) ? limitsOf(panel, index, bend) : null;
      const zone = made ? zoneBodies(one, atCorner) : flatZoneBodies(panel, one);
      const name = `bend ${one.name}`;
      things.push({
        name,
        bodies: carried(zone, after(home, toBase)),
        flat: flat && !made,
        besideCorner: atCorner !== null,
      });
      visit(next, after(motion, onward), index, flat && !made);
    });
  };
  visit(face, stay, bend, true);
  return things;
}

/** The bends that meet one in a corner. */
function cornerPartners(panel: Panel, bend: number): Set<number> {
  const others = panel.corners.flatMap(({ between: [a, b] }) => (a === bend ? [b] : b === bend ? [a] : []));
  return new Set(others);
}

/** What of a bend is looked at beside a corner it shares with another: not what lies past it. */
function limitsOf(panel: Panel, partner: number, bend: number): XLimits | null {
  const one = panel.bends[partner];
  const shared = panel.corners.filter(({ between }) => between.includes(bend) && between.includes(partner));
  if (!one || shared.length === 0) return null;
  let limits: XLimits = one.run;
  for (const { at } of shared) {
    const atA = distance(one.frame.at, at) < one.finished.length / 2;
    limits = atA ? { ...limits, from: CORNER } : { ...limits, to: one.finished.length - CORNER };
  }
  return limits;
}

const AROUND = 12;

/** The form's own parts in the scene: stations as one half-cone, spine, backing stations. `flush` draws its ends in by so much, mm. */
export function formThings({ form, thickness }: Scene, use: FormUse, flush: number): Thing[] {
  const { body, stretch } = use;
  const { cone } = form;
  const axis = centreLine(cone, thickness);
  const out: Place3 = [-axis.along[2], 0, axis.along[0]];
  const at = (x: number, ahead: number, up: number): Place3 =>
    plus(plus(plus(axis.at, axis.along, x * Math.cos(cone.halfAngle)), [0, 1, 0], ahead), out, up);
  const [from, to] = [form.from + flush, form.to - flush];
  const disc = (x: number): Place3[] =>
    Array.from({ length: AROUND + 1 }, (_, step) => {
      const turned = (Math.PI * step) / AROUND;
      const radius = radiusAt(cone, x);
      return at(x, radius * Math.sin(turned), -radius * Math.cos(turned));
    });
  const slab = (low: number, high: number, behind: readonly [number, number]): Convex =>
    convex(
      [low, high].flatMap((x) =>
        behind.flatMap((y) =>
          [-1, 1].map((side) => at(x, -y, side * radiusAt(cone, Math.min(Math.max(x, form.from), form.to)))),
        ),
      ),
    );
  const [earA, earB] = stretch.startsAtA ? [body.ears.small, body.ears.large] : [body.ears.large, body.ears.small];
  const place = (along: number): number => (stretch.startsAtA ? along - stretch.from : stretch.to - along);
  const thing = (name: string, bodies: Convex[]): Thing => ({ name, bodies, flat: false, besideCorner: false });
  return [
    thing('stations', [convex([...disc(from), ...disc(to)])]),
    thing('spine', [slab(from - earA, to + earB, [0, body.spine])]),
    thing(
      'backing stations',
      body.backings.map(({ at: along, thickness: wide }) =>
        slab(place(along) - wide / 2, place(along) + wide / 2, [body.spine, body.spine + body.foot]),
      ),
    ),
  ];
}

/** Clamps at places along the bend, from behind, each round the far edge of what is held there. */
export function clampThings(
  scene: Scene,
  {
    clamp,
    spine,
    at,
  }: { clamp: ClampBody; spine: number; at: readonly { readonly x: number; readonly depth: number }[] },
): Thing[] {
  const bodies = at.flatMap(({ x, depth }) => {
    const far = depth + clamp.frame;
    const top = scene.thickness / 2 + radiusAt(scene.form.cone, x) + clamp.frame / 2;
    const [low, high] = [x - clamp.width / 2, x + clamp.width / 2];
    const arm = boxBetween([low, -far, top - clamp.frame], [high, -spine, top]);
    const frame = boxBetween([low, -far - clamp.frame, -scene.thickness], [high, -far, top]);
    return [arm, frame];
  });
  return [{ name: 'clamps', bodies, flat: false, besideCorner: false }];
}

/** The yoke on the pulled side, before the pull: along the far tangent line. */
export function yokeThings(bend: Bend, yoke: YokeBody | null): Thing[] {
  if (!yoke) return [];
  const seen = { ...bend, frame: { at: [0, 0], along: [1, 0], toLeg: [0, 1] } as const };
  const half = bend.thickness / 2;
  const member = ([near, far]: readonly [number, number], low: number, high: number): Convex =>
    convex(
      [yoke.from, yoke.to].flatMap((x) =>
        [near, far].flatMap((y) => {
          const [u, v] = flatOnLeg(seen, [x, y]);
          return [low, high].map((z): Place3 => [u, v, z]);
        }),
      ),
    );
  const { near, inner, outer } = yoke;
  const far = near + inner.width;
  const bodies = [
    member([near, far], half, half + inner.thickness),
    member([far - inner.thickness, far], half, half + inner.height),
    member([near, near + outer.width], -half - outer.depth, -half),
  ];
  return [{ name: 'yoke', bodies, flat: false, besideCorner: false }];
}

/** A thing moved. */
export function movedThing(thing: Thing, motion: Motion): Thing {
  return { ...thing, bodies: thing.bodies.map((body) => movedBody(body, motion)) };
}

/** A body moved. */
export function movedBody({ corners, centre, radius }: Convex, motion: Motion): Convex {
  return sphered(() => corners.map((corner) => movedBy(motion, corner)), { centre: movedBy(motion, centre), radius });
}

/** A thing shifted. */
export function shifted(thing: Thing, way: Place3, by: number): Thing {
  return movedThing(thing, { ...stay, at: scaled(way, by) });
}
