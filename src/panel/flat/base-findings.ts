import { loopArea } from '../../base/area';
import type { Finding } from '../../base/findings';
import { finding } from '../../findings/finding';
import { at } from '../../base/at';
import { corner } from '../../base/outline';
import type { Point } from '../../base/polygon';
import { ROUNDING, SAME_PLACE } from '../../base/tolerance';
import type { BuiltUp } from './built-up';
import { areCrossing, type Side } from './check-outline';
import { cross, dot, less } from './plane';

export function noRoomInBase(): Finding {
  return finding('base-too-small', 'base.corners');
}

export function baseFindings({ base }: BuiltUp): Finding[] {
  const count = base.corners.length;
  if (count < 3 || base.edges.length !== count) {
    return [finding('base-edges', 'base.edges', { corners: count, edges: base.edges.length })];
  }
  if (new Set(base.edges).size !== count || base.edges.some((name) => name === '' || name.includes('.'))) {
    return [finding('edge-names', 'base.edges')];
  }
  const area = loopArea(base.corners.map((place) => corner(place)));
  if (!(area > 0)) {
    return [finding('base-clockwise', 'base.corners')];
  }
  return edgesAstray(base);
}

/** An edge without length; else the first two that cross, or of which one runs back along the other. */
function edgesAstray({ corners, edges }: BuiltUp['base']): Finding[] {
  const sides = corners.map((from, index): Side => [from, at(corners, (index + 1) % corners.length)]);
  const ways = sides.map(([from, to]) => less(to, from));
  const none = ways.findIndex((way) => Math.hypot(...way) < SAME_PLACE);
  if (none >= 0) return [finding('edge-without-length', 'base.corners', { edge: at(edges, none) })];
  for (const [index, side] of sides.entries()) {
    const [way, next] = [at(ways, index), (index + 1) % sides.length];
    const other = isBack(way, at(ways, next)) ? next : sides.findIndex((one) => areCrossing(side, one));
    if (other >= 0)
      return [finding('base-crosses', 'base.corners', { first: at(edges, index), second: at(edges, other) })];
  }
  return [];
}

function isBack(way: Point, next: Point): boolean {
  return dot(way, next) < 0 && Math.abs(cross(way, next)) < ROUNDING * Math.hypot(...way) * Math.hypot(...next);
}

export function cornerNames({ base, corners }: BuiltUp): Finding[] {
  return corners.flatMap(({ between: [a, b] }) => {
    const [i, j] = [base.edges.indexOf(a), base.edges.indexOf(b)];
    const count = base.edges.length;
    if (i >= 0 && j >= 0 && ((i + 1) % count === j || (j + 1) % count === i)) return [];
    return [finding('no-such-corner', `corners.${a}/${b}`, { first: a, second: b, edges: base.edges })];
  });
}
