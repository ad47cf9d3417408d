import { at } from '../../base/at';
import type { Point } from '../../base/polygon';
import { cross, less } from '../flat/plane';

/** Corners that stand out of a straight line by less, mm², are none. */
const FLAT = 1e-9;

/** Cuts a counter-clockwise polygon into convex ones: ears are cut off, then triangles put together again while they stay convex. */
export function convexPieces(polygon: readonly Point[]): Point[][] {
  if (isConvex(polygon)) return [[...polygon]];
  return merged(ears(polygon));
}

const turn = (a: Point, b: Point, c: Point): number => cross(less(b, a), less(c, a));

function isConvex(polygon: readonly Point[]): boolean {
  return polygon.every((point, index) => {
    const next = polygon[(index + 1) % polygon.length] ?? point;
    return turn(point, next, polygon[(index + 2) % polygon.length] ?? point) > -1e-6;
  });
}

function ears(polygon: readonly Point[]): Point[][] {
  const rest = [...polygon];
  const cut: Point[][] = [];
  for (let tries = 0; rest.length > 3 && tries < rest.length;) {
    const count = rest.length;
    const ear = rest.findIndex((_, index) => isEar(rest, index));
    const index = ear >= 0 ? ear : tries++;
    const [before, here, after] = [rest[(index - 1 + count) % count], rest[index], rest[(index + 1) % count]];
    if (!before || !here || !after) break;
    if (ear >= 0 && turn(before, here, after) > FLAT) cut.push([before, here, after]);
    rest.splice(index, 1);
  }
  return [...cut, rest];
}

function isEar(rest: readonly Point[], index: number): boolean {
  const count = rest.length;
  const [a, b, c] = [rest[(index - 1 + count) % count], rest[index], rest[(index + 1) % count]];
  if (!a || !b || !c || turn(a, b, c) < -FLAT) return false;
  if (Math.abs(turn(a, b, c)) <= FLAT) return true;
  return rest.every((point) => {
    if (point === a || point === b || point === c) return true;
    return turn(a, b, point) <= FLAT || turn(b, c, point) <= FLAT || turn(c, a, point) <= FLAT;
  });
}

function merged(pieces: Point[][]): Point[][] {
  for (let index = 0; index < pieces.length; index++)
    for (let other = index + 1; other < pieces.length; other++) {
      const both = joined(at(pieces, index), at(pieces, other));
      if (!both) continue;
      pieces[index] = both;
      pieces.splice(other, 1);
      other = index;
    }
  return pieces;
}

/** Two pieces that share a side as one, where that is convex. */
function joined(a: readonly Point[], b: readonly Point[]): Point[] | null {
  for (const [i, from] of a.entries()) {
    const to = a[(i + 1) % a.length];
    const j = b.findIndex((point, index) => point === to && b[(index + 1) % b.length] === from);
    if (j < 0) continue;
    const around = [...b.slice(j + 1), ...b.slice(0, j + 1)].slice(1, -1);
    const both = [...a.slice(i + 1), ...a.slice(0, i + 1), ...around];
    return isConvex(both) ? both : null;
  }
  return null;
}
