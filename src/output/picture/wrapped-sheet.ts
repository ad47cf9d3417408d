import { at } from '../../base/at';
import { angleFromWrap, coneThrough, radiusAt, type Cone } from '../../base/cone';
import type { Point } from '../../base/polygon';
import type { BendPlan } from '../../design/bend/bend-plan';
import { toFlat, toSpace, type ParallelSurface } from '../../design/form/development';
import { idealWrap } from '../../design/pull/wrap-for';
import { onBench } from './frame';
import { CURVE_FACETS, type Body, type Edge, type Face, type FaceMark } from './solid';
import { foldsOf, mean, type Fold } from './tail-folds';
import { cutAlong, isAlong, isBeyond, segmentAlong, type Stretch } from './cut-along';
import { addScaled, carryAll, normalOf, subtract, turnAbout, unit, type Motion, type Point3 } from './vector';

/**
 * How the sheet lies. Pulled round the form by `wrap` radians (0 is flat), the leg beyond bent by a share of its turn at the end of the
 * pull (all of it once the sheet is being wrapped). Or let go: a share of the way open, all of it unless said.
 */
export type SheetState =
  | { readonly kind: 'on-form'; readonly wrap: number; readonly tail?: number }
  | { readonly kind: 'released'; readonly opened?: number };

/**
 * A share of the pull, by the angle of the leg at the hands: first the leg bends, since nothing wraps before its moment is the form's, then
 * the sheet goes round the form.
 */
export function pulledBy(bend: BendPlan, share: number): SheetState {
  const wrapped = bend.wrap.chosen;
  const own = bend.pull.gaugeWrap - wrapped;
  const turned = share * bend.pull.gaugeWrap;
  const tail = own > 0 ? Math.min(1, turned / own) : 1;
  return { kind: 'on-form', wrap: share >= 1 ? wrapped : Math.max(0, turned - own), tail };
}

/** The angle between the legs' planes while the sheet is pulled, radians from flat: what the gauge reads. */
export function legTurn(bend: BendPlan, state: Extract<SheetState, { kind: 'on-form' }>): number {
  const { halfAngle } = bend.form;
  const own = bend.pull.gaugeWrap - bend.wrap.chosen;
  return angleFromWrap(state.wrap + (state.tail ?? (state.wrap > 0 ? 1 : 0)) * own, halfAngle);
}

/**
 * The sheet's inside face at any state, in flat pieces: held leg, what bends behind the form, what lies on it, what bends beyond it, and the
 * rest of the free leg, which is flat. Lengths are kept: what is beyond the form is laid out by the same development as the blank. The held
 * leg lies on the bench, the line where the form stands along x; what the held leg lifts while it is pulled, less than the sheet's own
 * thickness, is not drawn.
 */
export function buildSheet(bend: BendPlan, state: SheetState): Body[] {
  const sheet = sheetAt(bend, state);
  return [...heldLeg(bend, sheet), ...bentFacets(sheet), ...freeLeg(bend, sheet)];
}

/** Where the hands pull: their lever from the take-off, on the free leg or a yoke's handles, `x` along the tangent line from A. */
export function handPoint(bend: BendPlan, state: SheetState, x: number): Point3 {
  const sheet = sheetAt(bend, state);
  const released = state.kind === 'released';
  const whole = Math.max(sheet.wrap, released ? sheet.whole : bend.wrap.chosen);
  return placeOnLeg(sheet, outFrom({ ...sheet, whole }, x, bend.pull.lever));
}

/** A point of the free leg: `x` along the tangent line from A, `distance` from the free tangent line, mm. */
export function freeLegPoint(bend: BendPlan, state: SheetState, x: number, distance: number): Point3 {
  const sheet = sheetAt(bend, state);
  return placeOnLeg(sheet, beyond(sheet, x, distance));
}

/** The same of the bend as it was asked for, one round arc between flat legs. */
export function idealLegPoint(bend: BendPlan, x: number, distance: number): Point3 {
  const sheet = { ...sheetAt(bend, { kind: 'released' }), wrap: bend.finishedWrap, early: 0 };
  return flatToSpace(sheet, beyond(sheet, x, distance));
}

/** How the form shifts where the held leg has bent up behind it: as the middle of the bend does, so that it stays within the bend. */
export function formShift(bend: BendPlan, state: SheetState): Motion {
  const { carried, surface, length } = sheetAt(bend, state);
  const middle: Point3 = [0, 0, radiusAt(surface.cone, length / 2)];
  const shift = subtract(carried(middle), middle);
  return (point) => addScaled(point, shift, 1);
}

/** A box on the free leg, beyond all that bends. From the take-off at the end of the pull outward, along it from end A, and up from the inside face: mm. */
export function onLeg(bend: BendPlan, state: SheetState): (along: number, out: number, up: number) => Point3 {
  const sheet = sheetAt(bend, state);
  const end = { ...sheet, whole: bend.wrap.chosen };
  const [start, one] = [outFrom(end, 0, 0), outFrom(end, 1, 0)];
  const ruling: Point = [one[0] - start[0], one[1] - start[1]];
  const far = (point: Point): Point3 => carryAll(motionsOf(sheet), flatToSpace(sheet, point));
  const inward = awayFromForm([start, one, outFrom(end, 1, 1)].map(far));
  return (along, out, up) => {
    const flat: Point = [
      start[0] + along * ruling[0] - out * ruling[1],
      start[1] + along * ruling[1] + out * ruling[0],
    ];
    return addScaled(far(flat), inward, -up);
  };
}

interface SheetAt {
  readonly surface: ParallelSurface;
  readonly length: number;
  /** Lying round the form or keeping its radius so far, and what the whole bend would be with flat legs; radians. */
  readonly wrap: number;
  readonly whole: number;
  /** How far behind the bend's own tangent line the form stands. */
  readonly early: number;
  /** Of the held leg, from the form backward, and of the free leg, from the take-off outward. */
  readonly heldFolds: readonly Fold[];
  readonly folds: readonly Fold[];
  /** What the held leg's folds do to all beyond them. */
  readonly carried: Motion;
}

function sheetAt(bend: BendPlan, state: SheetState): SheetAt {
  const opened = state.kind === 'released' ? (state.opened ?? 1) : 0;
  const cone = opening(bend, opened);
  const tailShare = state.kind === 'on-form' ? (state.tail ?? (state.wrap > 0 ? 1 : 0)) : 1;
  const ideal = bend.finishedWrap * opened + idealWrap(bend) * (1 - opened);
  const facet = ideal / CURVE_FACETS;
  const { legs, bearing } = bend.pull;
  const turnOf = ({ loaded, stays }: { readonly loaded: number; readonly stays: number }): number =>
    tailShare * (loaded + opened * (stays - loaded));
  const folds = foldsOf({ A: legs.A.pieces, B: legs.B.pieces }, turnOf, {
    facet,
    within: bend.pull.yoke && state.kind === 'on-form' ? bend.pull.yoke.gap : Infinity,
  });
  const heldTurn = opened * mean(bend.pull.held);
  const heldFolds = heldTurn > 0 ? foldsAlong(bearing, heldTurn, facet) : [];
  const kept = (mean({ A: legs.A.stays, B: legs.B.stays }) + mean(bend.pull.held)) / Math.cos(bend.finished.halfAngle);
  const wrap =
    state.kind === 'on-form' ? state.wrap : bend.wrap.chosen + opened * (bend.finishedWrap - kept - bend.wrap.chosen);
  const carried: Motion = (point) =>
    heldFolds.reduce((moved, { A, turn }) => turnAbout(moved, { from: [0, -A, 0], axis: [1, 0, 0], turn }), point);
  return {
    surface: { cone, offset: bend.neutral * bend.section.thickness },
    length: bend.length,
    wrap,
    whole: Math.max(wrap, ideal),
    early: bend.pull.early,
    heldFolds,
    folds,
    carried,
  };
}

/** The cone on its way from the form's to the finished part's, by curvature. */
function opening({ form, finished }: BendPlan, share: number): Cone {
  if (share === 0) return form;
  if (share === 1) return finished;
  const between = (a: number, b: number): number => 1 / ((1 - share) / a + share / b);
  return coneThrough(between(form.radiusA, finished.radiusA), between(form.radiusB, finished.radiusB), form.length);
}

/** A turn spread over a length with the moment falling steadily along it, as that of a held leg: most of it near the form. */
function foldsAlong(length: number, turn: number, facet: number): Fold[] {
  const count = Math.max(1, Math.ceil(turn / facet));
  return Array.from({ length: count }, (_, index) => {
    const at = length * (1 - Math.sqrt(1 - (index + 0.5) / count));
    return { A: at, B: at, turn: turn / count };
  });
}

/** From its edge forward to the form, cut where it bends up. */
function heldLeg({ length, legs }: BendPlan, { heldFolds, early }: SheetAt): Body[] {
  const bends = heldFolds.map(({ A }) => A);
  const from = early - legs.held;
  const places = [from, ...[...bends].reverse().map((at) => -at), 0];
  const motions = places.slice(1).map((_, index): Motion => (point) => {
    const folded = heldFolds.slice(heldFolds.length - index);
    return folded.reduce((moved, { A, turn }) => turnAbout(moved, { from: [0, -A, 0], axis: [1, 0, 0], turn }), point);
  });
  const outlines = motions.map((carry, index): Point3[] => {
    const [low, high] = [at(places, index), at(places, index + 1)];
    const corners: Point3[] = [
      [0, high, 0],
      [0, low, 0],
      [length, low, 0],
      [length, high, 0],
    ];
    return corners.map(carry);
  });
  const normals = outlines.map(awayFromForm);
  return outlines.map((outline, index) => {
    const [before, after]: [Edge, Edge] = [normals[index - 1] ?? 'sharp', normals[index + 1] ?? 'sharp'];
    return piece(index === 0 ? 'held leg' : 'bend', outline, ['sharp', before, 'sharp', after]);
  });
}

/** Each facet is flat, since neighbouring rulings of a cone meet at its apex. */
function bentFacets(sheet: SheetAt): Body[] {
  const count = Math.ceil((CURVE_FACETS * sheet.wrap) / sheet.whole);
  const facets = Array.from({ length: count }, (_, index) => {
    const [low, high] = [(sheet.wrap * index) / count, (sheet.wrap * (index + 1)) / count];
    return [
      insidePoint(sheet, 0, low),
      insidePoint(sheet, sheet.length, low),
      insidePoint(sheet, sheet.length, high),
      insidePoint(sheet, 0, high),
    ].map(sheet.carried);
  });
  const normals = facets.map(awayFromForm);
  return facets.map((outline, index) => {
    const [before, after]: [Edge, Edge] = [normals[index - 1] ?? 'sharp', normals[index + 1] ?? 'sharp'];
    return piece('bend', outline, [before, 'sharp', after, 'sharp']);
  });
}

/** The leg beyond the form and whatever of the bend is still flat: tangent to the form where the sheet leaves it, bent along its folds. */
function freeLeg(bend: BendPlan, sheet: SheetAt): Body[] {
  const lines = sheet.folds.map((fold) => foldLine(sheet, fold));
  const outline = legOutline(bend, sheet);
  const motions = motionsOf(sheet);
  const stretches = [...lines, null].map((to, index): Stretch => ({ from: lines[index - 1] ?? null, to }));
  const flats = stretches.map((stretch) => cutAlong(outline, stretch));
  const carry = (index: number) => (point: Point) => carryAll(motions.slice(0, index), flatToSpace(sheet, point));
  const outlines = flats.map((flat, index) => flat.map((point) => sheet.carried(carry(index)(point))));
  const normals = outlines.map((points) => (points.length > 2 ? awayFromForm(points) : null));
  return flats.flatMap((flat, index) => {
    const points = at(outlines, index);
    if (points.length < 3) return [];
    const edges = flat.map((from, corner): Edge => {
      const to = flat[(corner + 1) % flat.length] ?? from;
      const [low, high] = [lines[index - 1], lines[index]];
      if (low && isAlong(low, from, to)) return normals[index - 1] ?? 'sharp';
      if (high && isAlong(high, from, to)) return normals[index + 1] ?? 'sharp';
      return 'sharp';
    });
    const marks = legLines(bend, sheet).flatMap(({ kind, name, ends }): FaceMark[] => {
      const stretch = stretches[index];
      const part = stretch && segmentAlong(ends, stretch);
      return part
        ? [{ kind, name, closed: false, points: part.map((point) => sheet.carried(carry(index)(point))) }]
        : [];
    });
    return [piece(index === lines.length ? 'free leg' : 'bend', points, edges, marks)];
  });
}

interface LegLine {
  readonly kind: 'tangent' | 'trim';
  readonly name: string;
  readonly ends: readonly [Point, Point];
}

function legLines(bend: BendPlan, sheet: SheetAt): LegLine[] {
  const across = (distance: number): readonly [Point, Point] => [
    beyond(sheet, 0, distance),
    beyond(sheet, sheet.length, distance),
  ];
  return [
    ...(sheet.whole > sheet.wrap ? [{ kind: 'tangent', name: 'free tangent line', ends: across(0) } as const] : []),
    ...(bend.pull.leverage > 0 ? [{ kind: 'trim', name: 'trim line', ends: across(bend.legs.free) } as const] : []),
  ];
}

/** What is beyond the take-off, on the flat sheet, counter-clockwise from the take-off's end A… by way of end B and the edge. */
function legOutline(bend: BendPlan, sheet: SheetAt): Point[] {
  const { wrap, whole, length } = sheet;
  const steps = whole > wrap ? Math.ceil((CURVE_FACETS * (whole - wrap)) / whole) : 0;
  const side = (x: number): Point[] =>
    Array.from({ length: steps + 1 }, (_, index) =>
      toFlat(sheet.surface, { x, wrap: wrap + (steps ? ((whole - wrap) * index) / steps : 0) }),
    );
  const { edge } = bend.pull;
  return [...side(0).reverse(), ...side(length), beyond(sheet, length, edge), beyond(sheet, 0, edge)];
}

/** A fold across the flat sheet: from end A to end B. */
function foldLine(sheet: SheetAt, { A, B }: Fold): readonly [Point, Point] {
  const from = { ...sheet, whole: sheet.wrap };
  return [outFrom(from, 0, A), outFrom(from, sheet.length, B)];
}

/** The folds as turns in space of all beyond each, the first first. */
function motionsOf(sheet: SheetAt): Motion[] {
  const motions: Motion[] = [];
  for (const fold of sheet.folds) {
    const before = [...motions];
    const [from, to] = foldLine(sheet, fold).map((point) => carryAll(before, flatToSpace(sheet, point)));
    if (!from || !to) continue;
    const axis = unit(subtract(to, from));
    motions.push((point) => turnAbout(point, { from, axis, turn: fold.turn }));
  }
  return motions;
}

/** A place of the flat sheet beyond the take-off, as the folded leg carries it. */
function placeOnLeg(sheet: SheetAt, point: Point): Point3 {
  const passed = sheet.folds.filter((fold) => isBeyond(foldLine(sheet, fold), point));
  return sheet.carried(carryAll(motionsOf(sheet).slice(0, passed.length), flatToSpace(sheet, point)));
}

/** On the flat sheet: `distance` out from the free tangent line, square to it, at `x` along it. */
function beyond(sheet: SheetAt, x: number, distance: number): Point {
  return outFrom(sheet, x, distance + sheet.early);
}

/** On the flat sheet: `distance` out from the ruling at `whole`, square to it, at `x` along it. */
function outFrom({ surface, whole }: SheetAt, x: number, distance: number): Point {
  const fan = whole * Math.sin(surface.cone.halfAngle);
  const [atX, atY] = toFlat(surface, { x, wrap: whole });
  return [atX - distance * Math.sin(fan), atY + distance * Math.cos(fan)];
}

/** A point of the flat sheet beyond the ruling at `wrap`, carried onto the plane that is tangent there. */
function flatToSpace(sheet: SheetAt, [x, y]: Point): Point3 {
  const { surface, wrap } = sheet;
  const turn = wrap * Math.sin(surface.cone.halfAngle);
  const [startX, startY] = toFlat(surface, { x: 0, wrap });
  const [dx, dy] = [x - startX, y - startY];
  const along = dx * Math.cos(turn) + dy * Math.sin(turn);
  const out = -dx * Math.sin(turn) + dy * Math.cos(turn);
  const start = insidePoint(sheet, 0, wrap);
  const ruling = unit(subtract(insidePoint(sheet, 1, wrap), start));
  const origin = onBench(surface.cone, { along: 0, ahead: 0, up: 0 });
  const outward = subtract(onBench(surface.cone, { along: 0, ahead: Math.cos(wrap), up: Math.sin(wrap) }), origin);
  return addScaled(addScaled(start, ruling, along), outward, out);
}

function awayFromForm(outline: readonly Point3[]): Point3 {
  return addScaled([0, 0, 0], normalOf(outline), -1);
}

function insidePoint({ surface }: SheetAt, x: number, wrap: number): Point3 {
  const [along, ahead, up] = toSpace({ cone: surface.cone, offset: 0 }, { x, wrap });
  return onBench(surface.cone, { along, ahead, up });
}

/** Corners are given so that they run counter-clockwise seen from the form. */
function piece(
  name: string,
  outline: readonly Point3[],
  edges: readonly Edge[] = outline.map(() => 'sharp'),
  marks: readonly FaceMark[] = [],
): Body {
  const face: Face = { outline, normal: awayFromForm(outline), edges, marks };
  return { kind: 'sheet', name, open: true, faces: [face] };
}
