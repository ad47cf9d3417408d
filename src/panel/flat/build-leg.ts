import { at } from '../../base/at';
import { InternalError } from '../../base/errors';
import type { Vertex } from '../../base/drawing';
import type { Ends } from '../../base/ends';
import type { Finding } from '../../base/findings';
import { finding } from '../../findings/finding';
import type { Point } from '../../base/polygon';
import { cutRun, outAtRim, squareCut, type CutCurve, type RimLine } from '../corner/end-cut';
import { setBacks } from './base-lines';
import { bentAt, type Bend } from './bend';
import type { BendSpec, BuiltUp } from './built-up';
import type { EdgeBendPlaced } from './edge-bends';
import { bendSurface } from './make-bend';
import type { Face } from './panel';
import { add, direction, distance, leftOf, pointOf } from './plane';
import { rimLine } from './rim';
import { walkedBack } from '../../base/outline';

/** Width of a lap's tab at each end of a leg, mm; null without. */
export interface TabWidths {
  readonly start: number | null;
  readonly finish: number | null;
}

/** A bend and its leg laid out: the runs of sides the outline is walked along, and the pieces. */
export interface BuiltLeg {
  /** From the base line out to the rim, at the end where the outline comes to the bend. */
  readonly start: readonly Vertex[];
  /** The same at the end where it leaves. */
  readonly finish: readonly Vertex[];
  /** From the rim's start to its finish, without the last corner. */
  readonly rim: readonly Vertex[];
  /** This bend and those on its rim. */
  readonly pieces: readonly { readonly number: number; readonly bend: Bend; readonly face: Face }[];
}

export interface LegGiven {
  readonly placed: EdgeBendPlaced;
  readonly start: CutCurve;
  readonly finish: CutCurve;
  readonly onRim: readonly (number | null)[];
  /** Number of the face it hangs from. */
  readonly base: number;
  readonly tab: TabWidths;
}

/** Lays a bend, its leg and whatever stands on the rim out flat. */
export function buildLeg(spec: BuiltUp, given: LegGiven): BuiltLeg | Finding {
  const { placed, start, finish, onRim } = given;
  const child = onRim[placed.number] ?? null;
  const above = child === null ? null : placeOnRim(spec, { given, number: child });
  if (above && 'code' in above) return above;
  const ends = above?.ends ?? { start: outAtRim(start, placed.rim), finish: outAtRim(finish, placed.rim) };
  if (!Number.isFinite(ends.start) || !Number.isFinite(ends.finish)) return neverEnds(placed);
  const next = above && buildLeg(spec, above.given);
  if (next && 'code' in next) return next;
  const cuts = { start: cutRun(start, 0, ends.start), finish: cutRun(finish, 0, ends.finish) };
  const bend = finishBend(given, {
    start: cutRun(start, 0, Math.min(1, ends.start)),
    finish: cutRun(finish, 0, Math.min(1, ends.finish)),
  });
  const sides = { start: cutRun(start, 1, ends.start), finish: cutRun(finish, 1, ends.finish) };
  const face: Face = {
    name: placed.spec.on,
    bend: placed.number,
    outline: [...sides.start, ...walkedBack(sides.finish)],
  };
  const corner = sides.start.at(-1);
  const rim = next
    ? [...next.start.slice(0, -1), ...next.rim, ...walkedBack(next.finish).slice(0, -1)]
    : corner
      ? [corner]
      : [];
  return {
    start: withTab(cuts.start, given.tab.start, 1),
    finish: withTab(cuts.finish, given.tab.finish, -1),
    rim,
    pieces: [{ number: placed.number, bend, face }, ...(next?.pieces ?? [])],
  };
}

function neverEnds({ number, spec }: EdgeBendPlaced): Finding {
  return finding('rim-misses-leg', `bends[${number}]`, { edge: spec.on });
}

function finishBend(
  { placed, base }: LegGiven,
  runs: { readonly start: readonly Vertex[]; readonly finish: readonly Vertex[] },
): Bend {
  const { surface, spec, number } = placed;
  const xs = [...runs.start, ...runs.finish].map((vertex) => bentAt(surface, pointOf(vertex)).x);
  return {
    ...surface,
    name: spec.on,
    angle: spec.angle,
    base,
    leg: number + 1,
    zone: [...runs.start, ...walkedBack(runs.finish)],
    run: { from: Math.min(0, ...xs), to: Math.max(surface.finished.length, ...xs) },
  };
}

interface AboveRim {
  readonly given: LegGiven;
  /** How far out the leg's cuts go, to the base line of the bend above. */
  readonly ends: { readonly start: number; readonly finish: number };
}

/** The bend on a leg's rim: on the rim itself, or set back from it where the rim is where two planes meet. */
function placeOnRim(spec: BuiltUp, { given, number }: { given: LegGiven; number: number }): AboveRim | Finding {
  const { placed, start, finish } = given;
  const child = spec.bends[number];
  const path = `bends[${number}]`;
  const meets = 'height' in placed.spec.reach && spec.base.measured !== 'flat';
  const outside = spec.base.measured === 'outside' ? spec.thickness : 0;
  if (!child) throw new InternalError(`no bend ${number}`);
  const radius = radiusAlong(spec, child, placed);
  let ends = { start: outAtRim(start, placed.rim), finish: outAtRim(finish, placed.rim) };
  for (let loop = 0; meets && loop < 60; loop++) {
    const length = distance(placeOn(start, ends.start), placeOn(finish, ends.finish));
    const backs = setBacks({ angle: child.angle, radius, inset: { A: 0, B: 0 } }, length, outside);
    const next = {
      start: outAtRim(start, lower(placed.rim, backs.A)),
      finish: outAtRim(finish, lower(placed.rim, backs.B)),
    };
    const moved = Math.abs(next.start - ends.start) + Math.abs(next.finish - ends.finish);
    ends = next;
    if (moved < 1e-12) break;
  }
  if (!(ends.start > 1 && ends.finish > 1)) {
    return finding('no-leg-left', `bends[${placed.number}]`);
  }
  const surface = surfaceOnRim(spec, {
    child,
    placed,
    radius,
    from: placeOn(start, ends.start),
    to: placeOn(finish, ends.finish),
    path,
  });
  if ('code' in surface) return surface;
  const rim = rimLine(surface, child.reach, spec.base.measured, path);
  if ('code' in rim) return rim;
  const above: EdgeBendPlaced = {
    number,
    spec: child,
    surface: { ...surface, turn: child.turn },
    startsAtA: placed.startsAtA,
    rim,
  };
  const length = surface.finished.length;
  const square = (atA: boolean): CutCurve => squareCut(above.surface, atA ? 0 : length);
  const [first, last] = [square(placed.startsAtA), square(!placed.startsAtA)];
  const legGiven: LegGiven = {
    placed: above,
    start: first,
    finish: last,
    onRim: given.onRim,
    base: placed.number + 1,
    tab: { start: null, finish: null },
  };
  return { given: legGiven, ends };
}

function placeOn(curve: CutCurve, out: number): Point {
  const last = cutRun(curve, out, out).at(-1);
  return last ? pointOf(last) : [NaN, NaN];
}

function lower({ start, slope }: RimLine, by: number): RimLine {
  return { start: start - by * Math.hypot(1, slope), slope };
}

/** Finished radii where the outline starts and finishes along the rim. */
function radiusAlong(spec: BuiltUp, child: BendSpec, placed: EdgeBendPlaced): Ends {
  const names = namesBeside(spec, placed);
  const of = (name: string): number => (typeof child.radius === 'number' ? child.radius : (child.radius[name] ?? NaN));
  return { A: of(names[0]), B: of(names[1]) };
}

function namesBeside({ base }: BuiltUp, { spec }: EdgeBendPlaced): readonly [string, string] {
  const edge = base.edges.indexOf(spec.on.split('.')[0] ?? '');
  const count = base.edges.length;
  return [at(base.edges, (edge - 1 + count) % count), at(base.edges, (edge + 1) % count)];
}

interface OnRim {
  readonly child: BendSpec;
  readonly placed: EdgeBendPlaced;
  readonly radius: Ends;
  readonly from: Point;
  readonly to: Point;
  readonly path: string;
}

/** The surface of a bend on a rim; it starts at A where its leg's own bend does, and stays short of the ends by its insets. */
function surfaceOnRim(spec: BuiltUp, { child, placed, radius, from, to, path }: OnRim): ReturnType<typeof bendSurface> {
  const names = namesBeside(spec, placed);
  const way = direction(from, to);
  const start = add(from, way, child.inset[names[0]] ?? 0);
  const end = add(to, way, -(child.inset[names[1]] ?? 0));
  const { startsAtA } = placed;
  return bendSurface(
    {
      from: startsAtA ? start : end,
      to: startsAtA ? end : start,
      legOnLeft: !startsAtA,
      angle: child.angle,
      radius: startsAtA ? radius : { A: radius.B, B: radius.A },
      thickness: spec.thickness,
      neutral: child.neutral,
    },
    path,
  );
}

/** The straight part of a leg's side with a tab on it, its ends cut back at 45°; `side` +1 where the tab lies to the right walking outward. */
function withTab(run: readonly Vertex[], width: number | null, side: 1 | -1): Vertex[] {
  const [from, to] = run.slice(-2);
  if (width === null || !from || !to) return [...run];
  const way = direction(pointOf(from), pointOf(to));
  const left = leftOf(way);
  const out: Point = [-left[0] * side, -left[1] * side];
  const corner = ([x, y]: Point): Vertex => ({ x, y, bulge: 0 });
  const reach = Math.min(width, distance(pointOf(from), pointOf(to)) / 2);
  const near = add(add(pointOf(from), way, reach), out, width);
  const far = add(add(pointOf(to), way, -reach), out, width);
  return [...run.slice(0, -2), corner(pointOf(from)), corner(near), corner(far), corner(pointOf(to))];
}
