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

/** The curve from one place to another further out, as corners of an outline; straight where it is straight. */
export function cutRun(curve: CutCurve, from: number, to: number): Vertex[] {
  const places = [from, ...[...curve.kinks, 1].filter((kink) => kink > from && kink < to).sort((a, b) => a - b), to];
  const run: Vertex[] = [];
  for (let index = 0; index + 1 < places.length; index++) {
    const [low, high] = [places[index] ?? from, places[index + 1] ?? to];
    const steps = low >= curve.straightFrom ? 1 : curve.steps;
    for (let step = 0; step < steps; step++) {
      const at = (share: number): Point => cutPoint(curve, low + ((high - low) * (step + share)) / steps);
      run.push(span(at(0), low >= curve.straightFrom ? null : at(0.5), at(1)));
    }
  }
  const [x, y] = cutPoint(curve, to);
  return [...run, { x, y, bulge: 0 }];
}

function span(from: Point, middle: Point | null, to: Point): Vertex {
  return { x: from[0], y: from[1], bulge: middle ? bulgeOver(from, middle, to) : 0 };
}
