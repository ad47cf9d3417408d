import { flattenLoop } from '../../src/base/flatten';
import { isInside, type Point } from '../../src/base/polygon';
import { back, movedBy, stay, type Place3 } from '../../src/base/space';
import { radiusAt } from '../../src/base/cone';
import type { Panel } from '../../src/panel/flat/panel';
import { foldPanel, pieceFinder, toSpace, type Piece } from '../../src/panel/fold/fold';
import { motionOf, type Wrapped } from '../../src/panel/fold/bend-motion';
import { formPlacement, heldFrame } from '../../src/panel/form/hand';
import type { BendWork, Step } from '../../src/panel/order/work';

/** A place of the sheet and which side of the bend it lies on. */
interface Sample {
  readonly piece: Piece;
  readonly flat: Point;
  readonly up: number;
}

/** The clouds of the panels last looked at, which are the same at every step. */
const clouds = new WeakMap<Panel, { readonly apart: number; readonly samples: Sample[] }>();

function cloudOf(panel: Panel, apart: number): readonly Sample[] {
  const known = clouds.get(panel);
  if (known?.apart === apart) return known.samples;
  const samples = sampledCloud(panel, apart);
  clouds.set(panel, { apart, samples });
  return samples;
}

/** The sheet as a cloud of places on both its faces, `apart` mm from one another. */
function sampledCloud(panel: Panel, apart: number): Sample[] {
  const find = pieceFinder(panel);
  const polygon = flattenLoop(panel.outline, 0.05);
  const [xs, ys] = [polygon.map(([x]) => x), polygon.map(([, y]) => y)];
  const samples: Sample[] = [];
  for (let x = Math.min(...xs) + apart / 2; x < Math.max(...xs); x += apart)
    for (let y = Math.min(...ys) + apart / 2; y < Math.max(...ys); y += apart) {
      const flat: Point = [x, y];
      if (!isInside(flat, polygon)) continue;
      const piece = find(flat);
      if (!piece) continue;
      for (const up of [panel.thickness / 2, -panel.thickness / 2]) samples.push({ piece, flat, up });
    }
  return samples;
}

/** Faces on the leg's side of a bend. */
function beyond(panel: Panel, bend: number): Set<number> {
  const faces = new Set<number>([panel.bends[bend]?.leg ?? -1]);
  for (let round = 0; round < panel.bends.length; round++)
    for (const [index, one] of panel.bends.entries()) if (index !== bend && faces.has(one.base)) faces.add(one.leg);
  return faces;
}

export interface Worst {
  /** Nearest any metal that is not beside the bend came to the form, and into what; mm, below 0 inside. */
  readonly wood: number;
  /** Nearest that metal of the two sides came, away from corners that bends share; mm. */
  readonly metal: number;
  /** Nearest that metal beyond a corner shared with this bend came to metal that is not of that corner; mm. */
  readonly atCorner: number;
}

/**
 * Looks at one step of an order by places sampled in the sheet, `apart` mm from one another, every so many radians of the pull. Nothing here shares code with the search but the fold itself: the form is
 * asked place by place whether it has it within.
 */
export function sampledStep(
  panel: Panel,
  work: BendWork,
  { step, done }: { step: Step; done: readonly boolean[] },
  { every = Math.PI / 180, apart = 7 }: { readonly every?: number; readonly apart?: number },
): Worst {
  const own = panel.bends[step.bend];
  if (!own) throw new Error('a bend');
  const { body, stretch } = step.use;
  const cloud = cloudOf(panel, apart);
  const legSide = beyond(panel, step.bend);
  const isLeg = ({ piece }: Sample): boolean =>
    piece.kind === 'face' ? legSide.has(piece.face) : legSide.has(panel.bends[piece.bend]?.base ?? -1);
  const besides = new Set(
    panel.corners.flatMap(({ between: [a, b] }) => (a === step.bend ? [b] : b === step.bend ? [a] : [])),
  );
  const [first, last] = stretch.startsAtA ? [stretch.from, stretch.to] : [stretch.to, stretch.from];
  const cone = {
    radiusA: radiusAt(body.cone, first),
    radiusB: radiusAt(body.cone, last),
    length: own.finished.length,
    halfAngle: stretch.startsAtA ? body.cone.halfAngle : -body.cone.halfAngle,
  };
  const placement = formPlacement(own, cone, step.held);
  const fromSmall = stretch.from * Math.cos(body.cone.halfAngle);
  // Everything as it is folded before the pull, in the plane of the bend's own faces; the pulled side then rolls round the form.
  const before = foldPanel(
    panel,
    panel.bends.map((bend, index): Wrapped => ({ cone: bend.finished, wrap: done[index] ? bend.wrap : 0 })),
  );
  const home = back(before.motions[own.base] ?? stay);
  const seen = { ...own, frame: heldFrame(own, step.held) };
  const lies = flatPieces(panel, { bend: step.bend, done });
  const marked = cloud
    .filter(({ piece }) => piece.kind === 'face' || piece.bend !== step.bend)
    .map((sample) => {
      const bend = sample.piece.kind === 'face' ? (panel.faces[sample.piece.face]?.bend ?? -1) : sample.piece.bend;
      return {
        at: movedBy(home, toSpace(before, sample.piece, sample)),
        isHeld: isLeg(sample) === (step.held === 'leg'),
        isPartner: besides.has(bend),
        beside: besides.has(bend) || (bend === step.bend && besides.size > 0),
        flat: lies(sample.piece),
      };
    });
  const still = marked.filter(({ isHeld }) => isHeld);
  const inside = own.turn === 'up' ? 1 : -1;
  let wood = Infinity;
  let metal = Infinity;
  let atCorner = Infinity;
  const toForm = back(placement);
  const woodAt = (place: Place3): number => {
    const [s, ahead, up] = movedBy(toForm, place);
    return intoForm([s + fromSmall, ahead, up], step);
  };
  for (const { at, flat, isPartner } of still)
    if (!flat && !isPartner && inside * at[2] > panel.thickness / 2 + 0.1) wood = Math.min(wood, woodAt(at));
  const pulled = marked.filter(({ isHeld }) => !isHeld);
  const cells = new Cells(still, 3);
  const end = work.pulling[step.held]?.pulled;
  if (end === undefined) throw new Error('a side that is not pulled');
  for (let turn = 0; turn <= end; turn += every) {
    const roll = motionOf(seen, { cone, wrap: turn });
    const swung = pulled.map(({ at, beside, isPartner, flat }) => ({ at: movedBy(roll, at), beside, isPartner, flat }));
    for (const { at, flat, isPartner } of swung) if (!flat && !isPartner) wood = Math.min(wood, woodAt(at));
    const near = cells.nearest(swung);
    metal = Math.min(metal, near.away);
    atCorner = Math.min(atCorner, near.atCorner);
  }
  return { wood, metal, atCorner };
}

/** Whether a piece lies in the plane of one of the bend's own faces. */
function flatPieces(
  panel: Panel,
  { bend, done }: { bend: number; done: readonly boolean[] },
): (piece: Piece) => boolean {
  const flat = new Set<number>([panel.bends[bend]?.base ?? -1, panel.bends[bend]?.leg ?? -1]);
  for (let round = 0; round < panel.bends.length; round++)
    for (const [index, one] of panel.bends.entries()) {
      if (index === bend || done[index]) continue;
      if (flat.has(one.base)) flat.add(one.leg);
      if (flat.has(one.leg)) flat.add(one.base);
    }
  return (piece) => {
    if (piece.kind === 'face') return flat.has(piece.face);
    const own = panel.bends[piece.bend];
    return own !== undefined && !done[piece.bend] && flat.has(own.base);
  };
}

/** How near a place comes to the form's wood: below 0 within. In the form's own space, along its centre line from the small end. */
function intoForm([s, ahead, up]: Place3, { use }: Step): number {
  const { body } = use;
  const slope = Math.tan(body.cone.halfAngle);
  const length = body.cone.length * Math.cos(body.cone.halfAngle);
  const radius = body.cone.radiusA + Math.min(Math.max(s, 0), length) * slope;
  const pastEnd = Math.max(-s, s - length);
  const station = Math.max(pastEnd, -ahead, Math.hypot(ahead, up) - radius);
  const spine = Math.max(
    Math.max(-s - body.ears.small, s - length - body.ears.large),
    ahead,
    -body.spine - ahead,
    Math.abs(up) - radius,
  );
  const feet = body.backings.map(({ at, thickness }) =>
    Math.max(
      Math.abs(s - at * Math.cos(body.cone.halfAngle)) - thickness / 2,
      ahead + body.spine,
      -body.spine - body.foot - ahead,
      Math.abs(up) - radius,
    ),
  );
  return Math.min(station, spine, ...feet);
}

interface Marked {
  readonly at: Place3;
  readonly beside: boolean;
  readonly isPartner: boolean;
  readonly flat: boolean;
}

const STEPS = [-1, 0, 1];

/** A cloud of places in cells `wide` mm wide, and which blocks of cells are near one that holds any. */
class Cells {
  private readonly held = new Map<number, Marked[]>();
  private readonly near = new Set<number>();

  constructor(
    still: readonly Marked[],
    private readonly wide: number,
  ) {
    const blocks = new Set<number>();
    for (const one of still) {
      const [i, j, k] = this.cellOf(one.at);
      const there = this.held.get(keyOf(i, j, k));
      if (there) there.push(one);
      else this.held.set(keyOf(i, j, k), [one]);
      if (there) continue;
      const [u, v, w] = blockOf([i, j, k]);
      if (blocks.has(keyOf(u, v, w))) continue;
      blocks.add(keyOf(u, v, w));
      for (const a of STEPS) for (const b of STEPS) for (const c of STEPS) this.near.add(keyOf(u + a, v + b, w + c));
    }
  }

  /** The nearest two places of this cloud and another, away from corners and where one is of a corner's bend; Infinity where none are about as near as a cell is wide. */
  nearest(swung: readonly Marked[]): { readonly away: number; readonly atCorner: number } {
    const nearest = { away: Infinity, atCorner: Infinity };
    for (const { at, beside, isPartner, flat } of swung) {
      const [i, j, k] = this.cellOf(at);
      if (!this.near.has(keyOf(...blockOf([i, j, k])))) continue;
      for (const a of STEPS)
        for (const b of STEPS)
          for (const c of STEPS)
            for (const other of this.held.get(keyOf(i + a, j + b, k + c)) ?? []) {
              if ((beside && other.beside) || (flat && other.flat)) continue;
              const kind = isPartner || other.isPartner ? 'atCorner' : 'away';
              const apart = Math.hypot(at[0] - other.at[0], at[1] - other.at[1], at[2] - other.at[2]);
              nearest[kind] = Math.min(nearest[kind], apart);
            }
    }
    return nearest;
  }

  private cellOf([x, y, z]: Place3): Place3 {
    return [Math.floor(x / this.wide), Math.floor(y / this.wide), Math.floor(z / this.wide)];
  }
}

/** Eight by eight by eight cells. */
function blockOf([i, j, k]: Place3): Place3 {
  return [Math.floor(i / 8), Math.floor(j / 8), Math.floor(k / 8)];
}

function keyOf(i: number, j: number, k: number): number {
  return ((i + 4096) * 8192 + j + 4096) * 8192 + k + 4096;
}
