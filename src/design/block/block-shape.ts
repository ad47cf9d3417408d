import type { End } from '../../base/ends';
import type { Vertex } from '../../base/drawing';
import { bulgeOf, corner } from '../../base/outline';
import { ROUNDING } from '../../base/tolerance';

/** One slice of the finishing block, mm and radians. */
export interface LayerShape {
  readonly radius: number;
  readonly wrap: number;
  readonly legs: { readonly held: number; readonly free: number };
  /** Height of the flat back. */
  readonly base: number;
  /** The face it is seen on: from A's side the free leg lies left, from B's right. */
  readonly contact: End;
}

/**
 * Corners of a slice square to the centre line, counter-clockwise from its lower left, seen on its contact face: centre line at the
 * origin, the arc's middle straight up, a straight edge tangential to either end of it, and a flat back.
 */
export function layerCorners({ radius, wrap, legs, base, contact }: LayerShape): Vertex[] {
  const [sine, cosine] = [Math.sin(wrap / 2), Math.cos(wrap / 2)];
  const [left, right] = contact === 'A' ? [legs.free, legs.held] : [legs.held, legs.free];
  const end = (leg: number): readonly [number, number] => [radius * sine + leg * cosine, radius * cosine - leg * sine];
  const [leftEnd, rightEnd] = [end(left), end(right)];
  return [
    corner([-leftEnd[0], base]),
    corner([rightEnd[0], base]),
    corner(rightEnd),
    corner([radius * sine, radius * cosine], bulgeOf(wrap)),
    corner([-radius * sine, radius * cosine]),
    corner([-leftEnd[0], leftEnd[1]]),
  ].filter(({ x, y }, index, all) => {
    const before = all.at(index - 1);
    return !before || Math.hypot(x - before.x, y - before.y) > ROUNDING;
  });
}
