import type { Cone } from '../../base/cone';
import type { BendPlan } from '../../design/bend/bend-plan';
import { idealWrap } from '../../design/pull/settle';
import { toFlat, toSpace, type ParallelSurface } from '../../design/form/development';
import type { Point } from '../../base/polygon';
import { onBench } from './frame';
import { CURVE_FACETS, type Body, type Edge, type Face, type FaceMark } from './solid';
import { addScaled, normalOf, subtract, unit, type Point3 } from './vector';

/** How the sheet lies: pulled round the form by `wrap` radians (0 is flat), or let go, in its finished shape. */
export type SheetState = { readonly kind: 'on-form'; readonly wrap: number } | { readonly kind: 'released' };

/**
 * The sheet's inside face at any state, in flat pieces: held leg, what is bent so far, and the rest, which is flat. Lengths are
 * kept: the rest is laid out by the same development as the blank. The held leg lies on the bench, tangent line along x.
 */
export function buildSheet(bend: BendPlan, state: SheetState): Body[] {
  const sheet = sheetAt(bend, state);
  return [heldLeg(bend), ...bentFacets(sheet), rest(bend, sheet)];
}

/** Where the hands pull: their lever from the take-off, on the free leg or a yoke's handles, `x` along the tangent line from A. */
export function handPoint(bend: BendPlan, wrap: number, x: number): Point3 {
  const sheet = { ...sheetAt(bend, { kind: 'on-form', wrap }), whole: Math.max(wrap, bend.wrap.chosen) };
  return flatToSpace(sheet, beyond(sheet, x, bend.pull.lever));
}

/** A point of the free leg: `x` along the tangent line from A, `distance` from the free tangent line, mm. */
export function freeLegPoint(bend: BendPlan, state: SheetState, x: number, distance: number): Point3 {
  const sheet = sheetAt(bend, state);
  return flatToSpace(sheet, beyond(sheet, x, distance));
}

interface SheetAt {
  readonly surface: ParallelSurface;
  readonly length: number;
  /** Bent so far, and at the end of the pull; radians. */
  readonly wrap: number;
  readonly whole: number;
}

function sheetAt(bend: BendPlan, state: SheetState): SheetAt {
  const released = state.kind === 'released';
  const cone: Cone = released ? bend.finished : bend.form;
  const wrap = released ? bend.finishedWrap : state.wrap;
  return {
    surface: { cone, offset: bend.neutral * bend.section.thickness },
    length: bend.length,
    wrap,
    whole: Math.max(wrap, released ? bend.finishedWrap : idealWrap(bend)),
  };
}

function heldLeg(bend: BendPlan): Body {
  const { length, legs } = bend;
  return piece('held leg', [
    [0, 0, 0],
    [0, -legs.held, 0],
    [length, -legs.held, 0],
    [length, 0, 0],
  ]);
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
    ];
  });
  const normals = facets.map(awayFromForm);
  return facets.map((outline, index) => {
    const [before, after]: [Edge, Edge] = [normals[index - 1] ?? 'sharp', normals[index + 1] ?? 'sharp'];
    return piece('bend', outline, [before, 'sharp', after, 'sharp']);
  });
}

/** The free leg and whatever of the bend is still flat: one plane, tangent to the form where the sheet leaves it. */
function rest(bend: BendPlan, sheet: SheetAt): Body {
  const { wrap, whole, length } = sheet;
  const steps = whole > wrap ? Math.ceil((CURVE_FACETS * (whole - wrap)) / whole) : 0;
  const edge = (x: number): Point[] =>
    Array.from({ length: steps + 1 }, (_, index) =>
      toFlat(sheet.surface, { x, wrap: wrap + (steps ? ((whole - wrap) * index) / steps : 0) }),
    );
  const lever = bend.pull.edge;
  const outline = [...edge(0).reverse(), ...edge(length), beyond(sheet, length, lever), beyond(sheet, 0, lever)].map(
    (point) => flatToSpace(sheet, point),
  );
  const line = (kind: 'tangent' | 'trim', distance: number): FaceMark => ({
    kind,
    name: kind === 'trim' ? 'trim line' : 'free tangent line',
    closed: false,
    points: [0, length].map((x) => flatToSpace(sheet, beyond(sheet, x, distance))),
  });
  const marks = [
    ...(steps ? [line('tangent', 0)] : []),
    ...(bend.pull.leverage > 0 ? [line('trim', bend.legs.free)] : []),
  ];
  return piece('free leg', outline, undefined, marks);
}

/** On the flat sheet: `distance` out from the free tangent line, square to it, at `x` along it. */
function beyond({ surface, whole }: SheetAt, x: number, distance: number): Point {
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
