import { at } from '../../base/at';
import type { Cone } from '../../base/cone';
import { flattenLoop } from '../../base/flatten';
import { after, apart3, cross3, dot3, movedBy, stay, type Motion, type Place3 } from '../../base/space';
import type { Point } from '../../base/polygon';
import { buildModel } from '../../output/picture/model';
import type { BuildablePanel, PanelBend } from '../../output/panel/plan-panel';
import type { Buildable } from '../../output/pipeline';
import {
  flatAt,
  foldPanel,
  frameMotion,
  heldFrame,
  pieceFinder,
  toSpace,
  zoneEnds,
  type Folded,
  type Panel,
  type Piece,
  type Wrapped,
} from '../../panel';
import type { LookPart, LookScene, LookWord, Polygon } from '../look/scene';
import { SAME_PLACE } from '../../base/tolerance';

/** Chords may stray so far from the outlines in the view, mm. */
const STRAY = 0.3;
/** Strips that a bend is shown in. */
const STRIPS = 14;
/** The last part of a step is the letting go. */
export const LET_GO = 0.9;

/** How far the work has come: so many steps whole, and of the next one a share. */
export interface Progress {
  readonly done: number;
  readonly share: number;
}

/** The panel with some of its steps made, the form of the next one standing on it. */
export function panelScene(planned: BuildablePanel, progress: Progress): LookScene {
  const { panel } = planned;
  const folded = foldPanel(panel, wrapsAt(planned, progress));
  const current = planned.order[progress.done];
  const bend = current ? at(planned.bends, current.bend) : null;
  const reach = [...cornersOf(foldPanel(panel, flatWraps(panel))), ...cornersOf(foldPanel(panel))];
  return {
    parts: [...sheetParts(folded), ...(bend ? formParts(planned, folded, bend) : [])],
    words: [...panel.bends.map((_, index) => nameOf(folded, index)), ...(bend ? endsOf(folded, bend) : [])],
    pull: [],
    reach,
  };
}

function flatWraps(panel: Panel): Wrapped[] {
  return panel.bends.map(({ finished }) => ({ cone: finished, wrap: 0 }));
}

/** Each bend as it stands: flat, wrapped on its form so far, let go. */
function wrapsAt({ panel, order, bends }: BuildablePanel, { done, share }: Progress): Wrapped[] {
  return panel.bends.map(({ finished, wrap }, index): Wrapped => {
    const step = order.findIndex(({ bend }) => bend === index);
    if (step < done || (step === done && share > LET_GO)) return { cone: finished, wrap };
    if (step > done || share === 0) return { cone: finished, wrap: 0 };
    const { form, wrap: pulled } = at(bends, index).alone.bend;
    return { cone: form, wrap: (pulled.chosen * share) / LET_GO };
  });
}

/** Every flat part and every bend as a body with its thickness. */
function sheetParts(folded: Folded): LookPart[] {
  const { panel } = folded;
  const find = pieceFinder(panel);
  const holes = panel.holes.map((hole) => flattenLoop(hole, STRAY));
  const spotsOn = (wanted: Piece): Polygon[] =>
    holes.flatMap((hole) => {
      const piece = hole[0] && find(hole[0]);
      if (!piece || JSON.stringify(piece) !== JSON.stringify(wanted)) return [];
      return [panel.thickness / 2, -panel.thickness / 2].map((up) =>
        hole.map((flat) => toSpace(folded, piece, { flat, up })),
      );
    });
  return [
    ...panel.faces.map(({ name, outline }, face): LookPart => {
      const piece: Piece = { kind: 'face', face };
      return {
        ...SHEET,
        name: face === 0 ? name : `leg of ${name}`,
        polygons: slab(folded, piece, flattenLoop(outline, STRAY)),
        spots: spotsOn(piece),
      };
    }),
    ...panel.bends.map(({ name }, bend): LookPart => ({
      ...SHEET,
      name: `bend ${name}`,
      polygons: strips(folded, bend),
      spots: spotsOn({ kind: 'zone', bend }),
    })),
  ];
}

const SHEET = { kind: 'sheet', group: 'sheet', lines: [] } as const;

/** A flat polygon, counter-clockwise on the flat, with the sheet's thickness; `walls` are the sides that are seen. */
function slab(folded: Folded, piece: Piece, polygon: readonly Point[], walls?: readonly number[]): Polygon[] {
  const half = folded.panel.thickness / 2;
  const carried = (up: number): Place3[] => polygon.map((flat) => toSpace(folded, piece, { flat, up }));
  const [upper, lower] = [carried(half), carried(-half)];
  const sides = walls ?? polygon.map((_, index) => index);
  return [
    upper,
    [...lower].reverse(),
    ...sides.map((index) => {
      const next = (index + 1) % polygon.length;
      return [at(lower, index), at(lower, next), at(upper, next), at(upper, index)];
    }),
  ];
}

function strips(folded: Folded, index: number): Polygon[] {
  const bend = at(folded.panel.bends, index);
  const ends = zoneEnds(bend);
  const piece: Piece = { kind: 'zone', bend: index };
  const rulings = Array.from({ length: STRIPS + 1 }, (_, step): readonly [Point, Point] => {
    const wrap = (bend.wrap * step) / STRIPS;
    const [from, to] = ends(wrap);
    return [flatAt(bend, { x: from, wrap }), flatAt(bend, { x: to, wrap })];
  });
  return rulings.slice(1).flatMap(([c, d], step) => {
    const [a, b] = at(rulings, step);
    const turned = cross(a, b, d) < 0;
    // Walls stand at the ends of the rulings alone: elsewhere the sheet goes on.
    return turned ? slab(folded, piece, [a, c, d, b], [0, 2]) : slab(folded, piece, [a, b, d, c], [1, 3]);
  });
}

function cross(a: Point, b: Point, c: Point): number {
  return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
}

function cornersOf(folded: Folded): Place3[] {
  return folded.panel.faces.flatMap(({ outline }, face) =>
    outline.map(({ x, y }) => toSpace(folded, { kind: 'face', face }, { flat: [x, y], up: 0 })),
  );
}

function nameOf(folded: Folded, index: number): LookWord {
  const bend = at(folded.panel.bends, index);
  const flat = flatAt(bend, { x: bend.finished.length / 2, wrap: bend.wrap / 2 });
  return { text: bend.name, at: toSpace(folded, { kind: 'zone', bend: index }, { flat, up: 0 }), strong: false };
}

/** How far past the ends their letters stand, mm. */
const BEYOND = 25;

/** Where the held side lies, in space: the form stands on its tangent line, y ahead of it, z out of the face that becomes the inside. */
function standing(folded: Folded, { bend, step }: PanelBend): Motion {
  const face = step.held === 'base' ? bend.base : bend.leg;
  const frame = frameMotion({ frame: heldFrame(bend, step.held), turn: bend.turn });
  return after(folded.motions[face] ?? stay, frame);
}

function endsOf(folded: Folded, made: PanelBend): LookWord[] {
  const motion = standing(folded, made);
  const { length } = made.bend.finished;
  return [
    { text: 'A', at: movedBy(motion, [-BEYOND, 0, 0]), strong: true },
    { text: 'B', at: movedBy(motion, [length + BEYOND, 0, 0]), strong: true },
  ];
}

/** The boards of the form a bend is made on, in place. */
function formParts({ forms, panel }: BuildablePanel, folded: Folded, made: PanelBend): LookPart[] {
  const form = forms.find(({ name }) => name === made.step.use.body.name)?.planned;
  if (!form) return [];
  const place = placeOf(form.bend.form, made, panel.thickness);
  const motion = standing(folded, made);
  const carried = (polygon: Polygon): Polygon => polygon.map((point) => movedBy(motion, place(point)));
  return woodOf(form).map(({ name, kind, polygons }) => ({
    name: `form ${made.step.use.body.name}: ${name}`,
    kind,
    group: 'boards',
    polygons: outward(polygons.map(carried)),
    spots: [],
    lines: [],
  }));
}

/** A closed body's polygons, each counter-clockwise seen from outside: what was mirrored on the way is turned over. */
function outward(polygons: readonly Polygon[]): Polygon[] {
  const volume = polygons.reduce((sum, [a, ...rest]) => {
    if (!a) return sum;
    return rest.slice(1).reduce((held, c, index) => held + dot3(a, cross3(at(rest, index), c)) / 6, sum);
  }, 0);
  return polygons.map((polygon) => (volume < 0 ? [...polygon].reverse() : polygon));
}

/** Along a form from its own end A, and along the bend: both lead by the form's small end. */
function placeOf(form: Cone, { step }: PanelBend, thickness: number): (point: Place3) => Place3 {
  const { stretch } = step.use;
  const fromSmall = (x: number): number => (form.radiusA <= form.radiusB ? x : form.length - x);
  const along = (x: number): number => (stretch.startsAtA ? fromSmall(x) - stretch.from : stretch.to - fromSmall(x));
  return ([x, y, z]) => [along(x), y, z + thickness / 2];
}

interface Wood {
  readonly name: string;
  readonly kind: LookPart['kind'];
  readonly polygons: Polygon[];
}

/** The corners of a closed polygon, each unlike the next: turned round, two in one place would have no direction to begin with. */
function unlikeNext(outline: Polygon): Polygon {
  return outline.filter((point, index) => apart3(point, at(outline, index - 1)) > SAME_PLACE);
}

const kept = new WeakMap<Buildable, readonly Wood[]>();

/** A form's boards by name, made once. */
function woodOf(form: Buildable): readonly Wood[] {
  const held = kept.get(form);
  if (held) return held;
  const { bodies } = buildModel(form.layout, form.bend, null, { joints: form.joints });
  const made = [...new Set(bodies.map(({ name }) => name))].map((name): Wood => {
    const own = bodies.filter((body) => body.name === name);
    return {
      name,
      kind: own[0]?.kind ?? 'spine',
      polygons: own.flatMap(({ faces }) => faces.map(({ outline }) => unlikeNext(outline))),
    };
  });
  kept.set(form, made);
  return made;
}
