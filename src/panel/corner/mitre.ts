import { rootBetween } from '../../base/solve';
import { distance } from '../flat/plane';
import {
  flatOf,
  innerAlong,
  insideSurface,
  surfacePlace,
  viewOf,
  type CornerBend,
  type Station,
  type SurfacePlace,
} from './inner-side';

/** The end of a bend that stands at a corner: where its base line ends there, and which way is past it. */
export interface BendEnd {
  readonly bend: CornerBend;
  /** Along the base line, mm. */
  readonly x: number;
  /** +1 at end B, −1 at end A. */
  readonly past: 1 | -1;
  /** Well inside the bend, mm along the base line. */
  readonly middle: number;
}

/** How far past the corner the two surfaces may meet, mm; beyond it they as good as never do. */
const FURTHEST = 1e5;

/**
 * Where the inside surface of a bend, run on past the corner, meets that of its neighbour, by ruling (or line of the leg): mm along it from end A.
 * NaN where they never meet.
 */
export function mitreSolver(end: BendEnd, neighbour: CornerBend): (station: Station) => number {
  const seen = viewOf(end.bend, neighbour);
  return (station) => {
    if (station.wrap === 0) return end.x;
    const along = innerAlong(
      neighbour,
      [0, end.past].map((step) => seen({ x: end.middle + step, ...station })),
    );
    if (!(along(0) > 0)) return NaN;
    let reach = Math.max(1, Math.abs(end.x - end.middle));
    for (; along(reach) > 0; reach *= 2) if (reach > FURTHEST) return NaN;
    return end.middle + end.past * rootBetween(along, 0, reach);
  };
}

/** A place of the mitre on the one bend, and the same place in space on the other. */
export interface MitrePair {
  readonly own: SurfacePlace;
  readonly other: SurfacePlace;
}

export function mitrePair(end: BendEnd, neighbour: CornerBend, station: Station): MitrePair {
  const own = { x: mitreSolver(end, neighbour)(station), ...station };
  return { own, other: surfacePlace(neighbour, insideSurface(end.bend, own)) };
}

/**
 * The share by which metal left whole at a station of the corner would have to shrink, on the inside surface: the way across the dart over the way between
 * the feet of both rulings at the corner.
 */
export function shrinkAt(ends: readonly [BendEnd, BendEnd], station: Station): number {
  const [end, neighbour] = ends;
  const { own, other } = mitrePair(end, neighbour.bend, station);
  const [first, second] = [insideOf(end.bend), insideOf(neighbour.bend)];
  const across = distance(flatOf(first, own), flatOf(second, other));
  const feet = distance(flatOf(first, { ...own, x: end.x }), flatOf(second, { ...other, x: neighbour.x }));
  return feet === 0 ? 0 : across / feet;
}

/** The bend with its inside surface, not the neutral one, laid out flat. */
function insideOf(bend: CornerBend): CornerBend {
  return { ...bend, neutral: 0 };
}

/** A station by one number: 0…1 round the bend, beyond 1 mm out on the leg. */
export function stationAt(bend: CornerBend, out: number): Station {
  return out <= 1 ? { wrap: out * bend.wrap, beyond: 0 } : { wrap: bend.wrap, beyond: out - 1 };
}

/** Inverse of {@link stationAt}. */
function outOf(bend: CornerBend, { wrap, beyond }: Station): number {
  return beyond > 0 ? 1 + beyond : wrap / bend.wrap;
}

/** Where a cut's curve has a kink: where the neighbour's cone passes into its leg, seen on the own bend. */
export function neighboursLegLine(ends: readonly [BendEnd, BendEnd]): number {
  const [end, neighbour] = ends;
  const station = { wrap: neighbour.bend.wrap, beyond: 0 };
  const { other } = mitrePair(neighbour, end.bend, station);
  return outOf(end.bend, other);
}
