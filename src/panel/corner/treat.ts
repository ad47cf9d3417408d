import { at } from '../../base/at';
import type { Point } from '../../base/polygon';
import { apart3 } from '../../base/space';
import { rootBetween } from '../../base/solve';
import { fanOf } from '../flat/bend';
import { cross, direction, distance, less } from '../flat/plane';
import { dartAngle, meetingSlant, rimShrink } from './dart';
import { cutPoint, outAtRim, type CutCurve, type RimLine } from './end-cut';
import { flatOf, insideSurface } from './inner-side';
import { mitreSolver, mitrePair, neighboursLegLine, shrinkAt, stationAt, type BendEnd } from './mitre';

/** Both bends' ends at a corner, the one that comes in along the outline first, and the lines their legs end in. */
export interface CornerEnds {
  readonly at: Point;
  /** Inside angle of the base between the base lines, radians. */
  readonly inside: number;
  readonly ends: readonly [BendEnd, BendEnd];
  readonly rims: readonly [RimLine, RimLine];
}

/** What has to leave this corner, radians. */
export function dartOf({ inside, ends }: Pick<CornerEnds, 'inside' | 'ends'>): number {
  const [a, b] = ends.map(({ bend, past }) => ({
    angle: (bend.turn === 'up' ? 1 : -1) * legAngle(bend.finished.halfAngle, bend.wrap),
    slant: -past * meetingSlant(bend.finished.halfAngle, bend.wrap),
    fan: -past * fanOf(bend),
  }));
  return a && b ? dartAngle(inside, [a, b]) : NaN;
}

function legAngle(halfAngle: number, wrap: number): number {
  return 2 * Math.asin(Math.sin(wrap / 2) * Math.cos(halfAngle));
}

/** Arcs that a stretch of a mitre's curve is drawn with: well within a hundredth of a mm. */
const STEPS = 16;

/** A mitre's two cuts, where their root is, and how far out on each the dart begins. */
export interface Mitre {
  readonly ideal: readonly [CutCurve, CutCurve];
  readonly rootOut: readonly [number, number];
  readonly root: Point;
  /** Between the edges at the root, mm. */
  readonly rootGap: number;
}

/** The mitre of a corner; its dart begins where the shrink left in reaches `rootShrink` (a share). Null where the two inside surfaces never meet. */
export function mitreOf({ ends, rims }: CornerEnds, rootShrink: number): Mitre | null {
  const [a, b] = ends;
  const curves = [curveOf([a, b]), curveOf([b, a])] as const;
  const outs = curves.map((curve, side) => outAtRim(curve, rims[side === 0 ? 0 : 1]));
  if (!outs.every(Number.isFinite)) return null;
  const out = rootOut([a, b], at(outs, 0), rootShrink);
  const { own, other } = mitrePair(a, b.bend, stationAt(a.bend, out));
  const [p, q] = [flatOf(a.bend, own), flatOf(b.bend, other)];
  const otherOut = other.beyond > 0 ? 1 + other.beyond : other.wrap / b.bend.wrap;
  const root: Point = [(p[0] + q[0]) / 2, (p[1] + q[1]) / 2];
  if (!Number.isFinite(root[0] + root[1])) return null;
  return { ideal: curves, rootOut: [out, out === 0 ? 0 : otherOut], root, rootGap: distance(p, q) };
}

function curveOf(ends: readonly [BendEnd, BendEnd]): CutCurve {
  const [end, neighbour] = ends;
  const kink = neighboursLegLine(ends);
  const solve = mitreSolver(end, neighbour.bend);
  const xAt = remembered((out) => solve(stationAt(end.bend, out)));
  const straightFrom = Math.max(1, kink);
  const [first, further] = [xAt(straightFrom), xAt(straightFrom + 1)];
  return {
    bend: end.bend,
    xAt: (out) => (out <= straightFrom ? xAt(out) : first + (further - first) * (out - straightFrom)),
    kinks: [kink],
    straightFrom,
    steps: STEPS,
  };
}

/** A dart that is open this near its root, as a share of the bend, is open from there. */
const NEAR_ROOT = 1e-3;

/** Where the shrink left in reaches its limit, or 0 where it never does. */
function rootOut(ends: readonly [BendEnd, BendEnd], rim: number, limit: number): number {
  const over = (out: number): number => shrinkAt(ends, stationAt(ends[0].bend, out)) - limit;
  const most = [1, rim].find((out) => over(out) > 0);
  if (most === undefined) return 0;
  return over(NEAR_ROOT) < 0 ? rootBetween(over, NEAR_ROOT, most, 1e-9) : 0;
}

/** A function that works each value out once: outlines ask for the same places again and again. */
function remembered(f: (value: number) => number): (value: number) => number {
  const known = new Map<number, number>();
  return (value) => {
    const before = known.get(value);
    if (before !== undefined) return before;
    const found = f(value);
    known.set(value, found);
    return found;
  };
}

/** The cut moved back from the ideal one, by nothing at the root and by `setBack` mm, square to it, at the rim. */
export function openedCut(
  curve: CutCurve,
  open: { past: 1 | -1; from: number; to: number; setBack: number },
): CutCurve {
  const { past, from, to, setBack } = open;
  if (setBack === 0) return curve;
  const root = cutPoint(curve, from);
  const whole = distance(root, cutPoint(curve, to));
  const onLeg = sineToRuling(curve, curve.straightFrom + 1);
  const moved = (out: number): number => {
    const grown = (setBack * distance(root, cutPoint(curve, out))) / whole;
    return curve.xAt(out) - (past * grown) / (out < curve.straightFrom ? sineToRuling(curve, out) : onLeg);
  };
  const xAt = remembered(moved);
  return { ...curve, xAt: (out) => (out <= from ? curve.xAt(out) : xAt(out)), kinks: [...curve.kinks, from] };
}

/** Sine of the angle between the cut and the rulings on the flat. */
function sineToRuling(curve: CutCurve, out: number): number {
  const [low, high] = [Math.max(0, out - 1e-4), out + 1e-4];
  const station = stationAt(curve.bend, out);
  const x = curve.xAt(out);
  const ruling = direction(flatOf(curve.bend, { x, ...station }), flatOf(curve.bend, { x: x + 1, ...station }));
  return Math.abs(cross(ruling, direction(cutPoint(curve, low), cutPoint(curve, high))));
}

/** The cut along the line that halves the outside angle of a corner: for a corner that has no room for square ends. */
export function halvingCut(end: BendEnd, at: Point, away: Point): CutCurve {
  const xAt = (out: number): number => {
    if (out === 0) return end.x;
    const station = stationAt(end.bend, out);
    const aside = (x: number): number => cross(away, less(flatOf(end.bend, { x, ...station }), at));
    const inner = aside(end.middle);
    let reach = Math.abs(end.x - end.middle);
    for (; aside(end.middle + end.past * reach) * inner > 0; reach *= 2) if (reach > 1e6) return NaN;
    return rootBetween(aside, end.middle, end.middle + end.past * reach);
  };
  return { bend: end.bend, xAt, kinks: [], straightFrom: 1, steps: STEPS };
}

/** Legs' ends at the leg lines, mm apart in space when the bends end square at the corner. */
export function apartAtLegLines(ends: readonly [BendEnd, BendEnd]): number {
  const [a, b] = ends.map(({ bend, x }) => insideSurface(bend, { x, wrap: bend.wrap, beyond: 0 }));
  return a && b ? apart3(a, b) : NaN;
}

/**
 * What is lacking to close an open corner, mm²: the octant-like patch between the zones, C·R²·(1 − cos ψ) of a sphere for one radius (the mean of four),
 * and the quarter-cylinder-like strip between the legs, C·R·sin… of it times the leg.
 */
export function patchArea({ inside, ends, rims }: CornerEnds): number {
  const turn = Math.max(0, Math.PI - inside);
  const radii = ends.map(({ bend, x }) => bend.finished.radiusA + x * Math.sin(bend.finished.halfAngle));
  const radius = (Number(radii[0]) + Number(radii[1])) / 2;
  const wrap = (ends[0].bend.wrap + ends[1].bend.wrap) / 2;
  const leg = ends.reduce((sum, { x }, side) => sum + lengthOf(rims[side === 0 ? 0 : 1], x), 0) / 2;
  // A ring of the patch at wrap φ is R·sin φ from the line through the corner; on the leg it moves off at cos ψ.
  return turn * (radius ** 2 * (1 - Math.cos(wrap)) + leg * (radius * Math.sin(wrap) + (leg * Math.cos(wrap)) / 2));
}

function lengthOf({ start, slope }: RimLine, x: number): number {
  return start + slope * x;
}

/** The most a dressed corner's rim shrinks, of both bends. */
export function dressShrink({ ends, rims }: CornerEnds, rounding: number): number {
  const shrinks = ends.map(({ bend, x }, side) =>
    rimShrink({
      rounding,
      radius: bend.finished.radiusA + x * Math.sin(bend.finished.halfAngle),
      leg: lengthOf(rims[side === 0 ? 0 : 1], x),
      wrap: bend.wrap,
    }),
  );
  return Math.max(...shrinks);
}
