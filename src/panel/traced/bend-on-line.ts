import { radiusAt } from '../../base/cone';
import type { Ends } from '../../base/ends';
import type { Finding } from '../../base/findings';
import type { Point } from '../../base/polygon';
import { setBacks } from '../flat/base-lines';
import { flatAt, flatOnLeg, fromFrame, toFrame, type BendSurface } from '../flat/bend';
import { bendSurface } from '../flat/make-bend';
import { add, direction, distance, leftOf } from '../flat/plane';
import type { Mockup, Traced, TracedBend } from './traced';

/** Moves a place of what was traced beyond a bend to where the metal's flat has it. */
export type Carry = (place: Point) => Point;

/** A bend found from its traced line: the surface, with end A and B where its base line meets the outline, and how what is beyond is carried. */
export interface BendOnLine {
  readonly surface: BendSurface;
  readonly carry: Carry;
  readonly takenOff: Ends;
}

/** The bend along a line of the outline (from edge to edge), by what was traced. */
export function bendOnLine(
  traced: Traced,
  bend: TracedBend,
  line: readonly [Point, Point],
  path: string,
): BendOnLine | Finding {
  const { mockup, thickness } = traced;
  const legOnLeft = bend.free === 'left';
  const common = { legOnLeft, angle: bend.angle, radius: bend.radius, thickness, neutral: bend.neutral };
  if (mockup === 'metal-allowed') {
    const surface = bendSurface({ ...common, from: line[0], to: line[1] }, path);
    return 'code' in surface ? surface : { surface, carry: (place) => place, takenOff: { A: 0, B: 0 } };
  }
  const card = cardOf(mockup, bend.angle);
  const way = direction(line[0], line[1]);
  const left = leftOf(way);
  const toLeg: Point = legOnLeft ? left : [-left[0], -left[1]];
  const fold: readonly [Point, Point] = [add(line[0], toLeg, card.toFold), add(line[1], toLeg, card.toFold)];
  const [from, to] = baseLine(fold, toLeg, bend);
  const surface = bendSurface({ ...common, from, to }, path);
  if ('code' in surface) return surface;
  // Along the meeting line the card and the metal agree: R·tan(ψ/2) beyond the base line on this side, as far before the leg line on the other.
  const meets = (x: number): number => radiusAt(surface.finished, x) * Math.tan(surface.wrap / 2);
  const onBase = (x: number): Point => fromFrame(surface.frame, [x, meets(x)]);
  const onLeg = (x: number): Point => flatOnLeg(surface, [x, -meets(x)]);
  const [p, q] = [onBase(0), onBase(surface.finished.length)];
  const [u, v] = [onLeg(0), onLeg(surface.finished.length)];
  const [old, now] = [direction(p, q), direction(u, v)];
  const [cosine, sine] = [old[0] * now[0] + old[1] * now[1], old[0] * now[1] - old[1] * now[0]];
  const carry: Carry = ([x, y]) => {
    const [dx, dy] = [x + toLeg[0] * card.longer - p[0], y + toLeg[1] * card.longer - p[1]];
    return [u[0] + dx * cosine - dy * sine, u[1] + dx * sine + dy * cosine];
  };
  const off = (x: number): number => {
    const leg = flatAt(surface, { x, wrap: surface.wrap });
    return 2 * meets(x) - card.longer - distance(fromFrame(surface.frame, [x, 0]), leg);
  };
  return { surface, carry, takenOff: { A: off(0), B: off(surface.finished.length) } };
}

/** From the traced line to where the faces' planes meet, and how much longer the card would be if it were folded sharp; mm. */
function cardOf(mockup: Exclude<Mockup, 'metal-allowed'>, angle: number): { toFold: number; longer: number } {
  if (mockup === 'sharp') return { toFold: 0, longer: 0 };
  const middle = mockup.radius + (mockup.over === 'inside' ? mockup.thickness : -mockup.thickness) / 2;
  const toFold = mockup.radius * Math.tan(angle / 2);
  return { toFold, longer: 2 * toFold - angle * middle };
}

const LOOPS = 60;

/** The base line under a fold line: the radii are at the feet of the fold line's ends. */
function baseLine(fold: readonly [Point, Point], toLeg: Point, { angle, radius }: TracedBend): readonly [Point, Point] {
  let ends: readonly [Point, Point] = fold;
  for (let loop = 0; loop < LOOPS; loop++) {
    const back = setBacks({ angle, radius, inset: { A: 0, B: 0 } }, distance(...ends), 0);
    const next: readonly [Point, Point] = [add(fold[0], toLeg, -back.A), add(fold[1], toLeg, -back.B)];
    const moved = distance(next[0], ends[0]) + distance(next[1], ends[1]);
    // A taper too steep for its line has no base line; what stands so far is refused as such.
    if (!Number.isFinite(moved)) break;
    ends = next;
    if (moved <= 1e-12) break;
  }
  return ends;
}

/** The same bend with its base line lengthened or shortened to new ends on it. */
export function withEnds(
  bend: TracedBend,
  surface: BendSurface,
  ends: readonly [Point, Point],
  path: string,
): BendSurface | Finding {
  const radiusOver = (place: Point): number => radiusAt(surface.finished, toFrame(surface.frame, place)[0]);
  const radius = { A: radiusOver(ends[0]), B: radiusOver(ends[1]) };
  return bendSurface(
    {
      from: ends[0],
      to: ends[1],
      legOnLeft: bend.free === 'left',
      angle: bend.angle,
      radius,
      thickness: surface.thickness,
      neutral: surface.neutral,
    },
    path,
  );
}
