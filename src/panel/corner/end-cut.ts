import { at } from '../../base/at';
import type { Vertex } from '../../base/drawing';
import type { Point } from '../../base/polygon';
import { rootBetween } from '../../base/solve';
import { bulgeOver } from '../flat/plane';
import { flatOf, type CornerBend } from './inner-side';
import { stationAt } from './mitre';

/** The end of a bend's metal as a curve over its flat: where it lies along the rulings, by how far round and out ({@link stationAt}). */
export interface CutCurve {
  readonly bend: CornerBend;
  readonly xAt: (out: number) => number;
  /** Where its direction changes, rising. */
  readonly kinks: readonly number[];
  /** Out from which it is straight on the leg. */
  readonly straightFrom: number;
  /** Arcs a stretch of the zone is drawn with. */
  readonly steps: number;
}

/** The line on the leg where it ends or a bend on it begins, y = start + slope·x in the leg's coordinates, mm. */
export interface RimLine {
  readonly start: number;
  readonly slope: number;
}

/** Straight across the rulings at a place of the base line: an arc about the apex, then square to the leg line. */
export function squareCut(bend: CornerBend, x: number): CutCurve {
  return { bend, xAt: () => x, kinks: [], straightFrom: 1, steps: 1 };
}

export function cutPoint({ bend, xAt }: CutCurve, out: number): Point {
  return flatOf(bend, { x: xAt(out), ...stationAt(bend, out) });
}

/** How far out a curve meets a line of the leg. */
export function outAtRim({ xAt }: CutCurve, rim: RimLine): number {
  const over = (y: number): number => y - (rim.start + rim.slope * xAt(1 + y));
  if (over(0) >= 0) return 1;
  let far = Math.max(1, rim.start);
  for (; over(far) < 0; far *= 2) if (far > 1e6) return NaN;
  if (Number.isNaN(over(0)) || Number.isNaN(over(far))) return NaN;
  return 1 + rootBetween(over, 0, far);
}

/** How far out the corners are by which a curve is drawn from one place to another further out: straight where it is straight. */
export function cornersAlong(curve: CutCurve, from: number, to: number): number[] {
  const places = [from, ...[...curve.kinks, 1].filter((kink) => kink > from && kink < to).sort((a, b) => a - b), to];
  const corners = places.slice(1).flatMap((high, index) => {
    const low = at(places, index);
    const steps = low >= curve.straightFrom ? 1 : curve.steps;
    return Array.from({ length: steps }, (_, step) => low + ((high - low) * step) / steps);
  });
  return [...corners, to];
}

/** The curve from one place to another further out, as corners of an outline. */
export function cutRun(curve: CutCurve, from: number, to: number): Vertex[] {
  const outs = cornersAlong(curve, from, to);
  const points = outs.map((out) => cutPoint(curve, out));
  return points.map(([x, y], index) => {
    const [out, next] = [at(outs, index), outs[index + 1]];
    if (next === undefined || out >= curve.straightFrom) return { x, y, bulge: 0 };
    return { x, y, bulge: bulgeOver([x, y], cutPoint(curve, (out + next) / 2), at(points, index + 1)) };
  });
}
