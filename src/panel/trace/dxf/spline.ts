import { at } from '../../../base/at';
import type { BezierCurve, WeightedPlace } from '../curve';
import { DxfMistake, numberOf, numbersOf, toNumber, type Record0 } from './tags';

/** No degree above this, no more control points: a drawing's are 3 and some dozens. */
const HIGHEST_DEGREE = 11;
const MOST_POINTS = 20_000;

/** A SPLINE → its Bézier pieces, one a span of its knots. */
export function splineCurves(record: Record0): BezierCurve[] {
  const degree = numberOf(record, 71);
  const knots = numbersOf(record, 40);
  const points = controlPoints(record);
  const where = `SPLINE at line ${record.line}`;
  if (points.length === 0) throw new DxfMistake(`${where} has fit points only, no control points`);
  const fits = Number.isInteger(degree) && degree >= 1 && degree <= HIGHEST_DEGREE && points.length > degree;
  if (!fits || points.length > MOST_POINTS || knots.length !== points.length + degree + 1) {
    throw new DxfMistake(
      `${where}: ${points.length} control points and ${knots.length} knots do not make degree ${degree}`,
    );
  }
  if (knots.some((knot, index) => knot < (knots[index - 1] ?? -Infinity)))
    throw new DxfMistake(`${where}: its knots fall`);
  return spans(degree, knots, points);
}

/** Control points (10, 20) in order, each with its weight (41), 1 where there are none. */
function controlPoints(record: Record0): WeightedPlace[] {
  const weights = numbersOf(record, 41);
  const points: { x: number; y: number; weight: number }[] = [];
  for (const tag of record.tags) {
    if (tag.code === 10) points.push({ x: toNumber(tag), y: 0, weight: weights[points.length] ?? 1 });
    const last = points.at(-1);
    if (tag.code === 20 && last) last.y = toNumber(tag);
  }
  if (points.some(({ weight }) => !(weight > 0)))
    throw new DxfMistake(`SPLINE at line ${record.line}: a weight is not above 0`);
  return points;
}

/**
 * Over each span of knots the i-th Bézier point is the blossom of the spline at the span's ends, the end taken i times
 * (Farin, Curves and Surfaces for CAGD, "Blossoms"; from memory).
 */
function spans(degree: number, knots: readonly number[], points: readonly WeightedPlace[]): BezierCurve[] {
  const curves: BezierCurve[] = [];
  for (let span = degree; span < points.length; span++) {
    const [from, to] = [at(knots, span), at(knots, span + 1)];
    if (!(to > from)) continue;
    const piece = Array.from({ length: degree + 1 }, (_, index) => {
      const arguments_ = Array.from({ length: degree }, (_unused, place) => (place < degree - index ? from : to));
      return blossom({ degree, knots, points }, span, arguments_);
    });
    curves.push({ kind: 'bezier', points: piece });
  }
  return curves;
}

interface Spline {
  readonly degree: number;
  readonly knots: readonly number[];
  readonly points: readonly WeightedPlace[];
}

/** De Boor's scheme with a value of its own at every step. */
function blossom({ degree, knots, points }: Spline, span: number, values: readonly number[]): WeightedPlace {
  const rows = points.slice(span - degree, span + 1).map(homogeneous);
  for (const [step, value] of values.entries()) {
    for (let i = degree; i > step; i--) {
      const low = at(knots, span - degree + i);
      const high = at(knots, span + i - step);
      const share = high > low ? (value - low) / (high - low) : 0;
      const [before, here] = [rows[i - 1], rows[i]];
      if (before && here) rows[i] = mix(before, here, share);
    }
  }
  const last = at(rows, degree);
  return { x: last.x / last.weight, y: last.y / last.weight, weight: last.weight };
}

function homogeneous({ x, y, weight }: WeightedPlace): WeightedPlace {
  return { x: x * weight, y: y * weight, weight };
}

function mix(a: WeightedPlace, b: WeightedPlace, share: number): WeightedPlace {
  const at = (from: number, to: number): number => (1 - share) * from + share * to;
  return { x: at(a.x, b.x), y: at(a.y, b.y), weight: at(a.weight, b.weight) };
}
