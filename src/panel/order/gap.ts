import { cross3, dot3, length3, minus, plus, scaled, type Place3 } from '../../base/space';

/** A convex body by its corners, mm, and a sphere and an upright box round it. */
export interface Convex {
  readonly corners: readonly Place3[];
  readonly centre: Place3;
  readonly radius: number;
  readonly box: Box;
}

/** Least and greatest x, y and z, mm. */
interface Box {
  readonly low: Place3;
  readonly high: Place3;
}

export function convex(corners: readonly Place3[]): Convex {
  let centre: Place3 = [0, 0, 0];
  for (const corner of corners) centre = plus(centre, corner, 1 / corners.length);
  const radius = Math.max(...corners.map((corner) => length3(minus(corner, centre))));
  return sphered(() => corners, { centre, radius });
}

/** A body whose sphere is known; its corners and its box are made only once they are looked at, since the sphere mostly tells enough. */
export function sphered(
  make: () => readonly Place3[],
  { centre, radius }: { readonly centre: Place3; readonly radius: number },
): Convex {
  let made: readonly Place3[] | null = null;
  let box: Box | null = null;
  return {
    get corners() {
      return (made ??= make());
    },
    centre,
    radius,
    get box() {
      return (box ??= boxRound(this.corners));
    },
  };
}

function boxRound(corners: readonly Place3[]): Box {
  const [first] = corners;
  let [[lowX, lowY, lowZ], [highX, highY, highZ]] = first
    ? [first, first]
    : [
        [0, 0, 0],
        [0, 0, 0],
      ];
  for (const corner of corners) {
    const x = corner[0];
    const y = corner[1];
    const z = corner[2];
    if (x < lowX) lowX = x;
    else if (x > highX) highX = x;
    if (y < lowY) lowY = y;
    else if (y > highY) highY = y;
    if (z < lowZ) lowZ = z;
    else if (z > highZ) highZ = z;
  }
  return { low: [lowX, lowY, lowZ], high: [highX, highY, highZ] };
}

/** A box by two opposite corners. */
export function boxBetween(low: Place3, high: Place3): Convex {
  const sides = [low, high];
  return convex(sides.flatMap((a) => sides.flatMap((b) => sides.map((c): Place3 => [a[0], b[1], c[2]]))));
}

/** Never more than the gap between two bodies, mm; below 0 where their spheres overlap. */
export function leastGap(a: Convex, b: Convex): number {
  const x = a.centre[0] - b.centre[0];
  const y = a.centre[1] - b.centre[1];
  const z = a.centre[2] - b.centre[2];
  return Math.sqrt(x * x + y * y + z * z) - a.radius - b.radius;
}

/** Never more than the gap between two bodies, mm: that between the boxes round them; 0 where those overlap. */
export function boxesGap({ box: a }: Convex, { box: b }: Convex): number {
  return length3([
    Math.max(0, a.low[0] - b.high[0], b.low[0] - a.high[0]),
    Math.max(0, a.low[1] - b.high[1], b.low[1] - a.high[1]),
    Math.max(0, a.low[2] - b.high[2], b.low[2] - a.high[2]),
  ]);
}

const ROUNDS = 48;
/** A step nearer than this, mm, is none. */
const NO_NEARER = 1e-7;

/**
 * The gap between two convex bodies, mm; 0 where they touch or overlap. Source: Gilbert, Johnson & Keerthi, “A fast procedure for computing the distance between
 * complex objects”, IEEE J. Robotics 4 (1988); nearest places on triangles after Ericson, Real-Time Collision Detection, ch. 5 (both from memory).
 */
export function gapBetween(a: Convex, b: Convex): number {
  return separation(a, b).gap;
}

/** The gap, and the way from b to a across it where there is one (any length). */
export interface Separation {
  readonly gap: number;
  readonly way: Place3 | null;
}

const touching: Separation = { gap: 0, way: null };

export function separation(a: Convex, b: Convex): Separation {
  let simplex: Place3[] = [difference(a, b, minus(b.centre, a.centre))];
  let nearest = simplex[0] ?? [0, 0, 0];
  for (let round = 0; round < ROUNDS; round++) {
    const distance = length3(nearest);
    if (distance < NO_NEARER) return touching;
    const next = difference(a, b, [-nearest[0], -nearest[1], -nearest[2]]);
    // How much nearer the whole difference body may still come.
    if (distance - dot3(nearest, next) / distance < NO_NEARER) return { gap: distance, way: nearest };
    const found = nearestOn([...simplex, next]);
    if (!found) return touching;
    const at = length3(found.at);
    if (at >= distance - 1e-12) return { gap: Math.min(distance, at), way: nearest };
    simplex = found.kept;
    nearest = found.at;
  }
  return { gap: length3(nearest), way: nearest };
}

/** Never more than the gap: the room between two bodies along a direction (from b to a), mm. */
export function gapAlong(a: Convex, b: Convex, way: Place3): number {
  const size = length3(way);
  let low = Infinity;
  for (const c of a.corners) low = Math.min(low, c[0] * way[0] + c[1] * way[1] + c[2] * way[2]);
  let high = -Infinity;
  for (const c of b.corners) high = Math.max(high, c[0] * way[0] + c[1] * way[1] + c[2] * way[2]);
  return (low - high) / size;
}

/** The corner of a − b furthest along a direction. */
function difference(a: Convex, b: Convex, way: Place3): Place3 {
  return minus(furthest(a, way, 1), furthest(b, way, -1));
}

function furthest({ corners }: Convex, way: Place3, sense: number): Place3 {
  let best: Place3 = [0, 0, 0];
  let most = -Infinity;
  for (const corner of corners) {
    const along = sense * (corner[0] * way[0] + corner[1] * way[1] + corner[2] * way[2]);
    if (along > most) {
      most = along;
      best = corner;
    }
  }
  return best;
}

interface Nearest {
  readonly at: Place3;
  readonly kept: Place3[];
}

/** The place of a simplex nearest to the origin and the corners it lies between; null where the origin is inside. */
function nearestOn(simplex: readonly Place3[]): Nearest | null {
  const [a, b, c, d] = simplex;
  if (a && b && c && d) return onTetrahedron(a, b, c, d);
  if (a && b && c) return onTriangle(a, b, c);
  if (a && b) return onSegment(a, b);
  return { at: a ?? [0, 0, 0], kept: a ? [a] : [] };
}

function onSegment(a: Place3, b: Place3): Nearest {
  const way = minus(b, a);
  const share = -dot3(a, way) / dot3(way, way);
  if (!(share > 0)) return { at: a, kept: [a] };
  if (share >= 1) return { at: b, kept: [b] };
  return { at: plus(a, way, share), kept: [a, b] };
}

function onTriangle(a: Place3, b: Place3, c: Place3): Nearest {
  const [ab, ac] = [minus(b, a), minus(c, a)];
  const normal = cross3(ab, ac);
  const size = dot3(normal, normal);
  if (size < 1e-18) return nearer(nearer(onSegment(a, b), onSegment(b, c)), onSegment(a, c));
  // Weights of the corners where the origin falls on the plane.
  const ofA = dot3(cross3(b, c), normal) / size;
  const ofB = dot3(cross3(c, a), normal) / size;
  const ofC = 1 - ofA - ofB;
  if (ofA > 0 && ofB > 0 && ofC > 0) return { at: scaled(normal, dot3(a, normal) / size), kept: [a, b, c] };
  return nearer(nearer(onSegment(a, b), onSegment(b, c)), onSegment(a, c));
}

function onTetrahedron(a: Place3, b: Place3, c: Place3, d: Place3): Nearest | null {
  const faces = [
    [a, b, c, d],
    [a, b, d, c],
    [a, c, d, b],
    [b, c, d, a],
  ] as const;
  let best: Nearest | null = null;
  for (const [p, q, r, other] of faces) {
    const normal = cross3(minus(q, p), minus(r, p));
    const [own, origin] = [dot3(minus(other, p), normal), -dot3(p, normal)];
    if (own * origin > 0 && Math.abs(own) > 1e-12) continue;
    const found = onTriangle(p, q, r);
    best = best ? nearer(best, found) : found;
  }
  return best;
}

function nearer(a: Nearest, b: Nearest): Nearest {
  return dot3(a.at, a.at) <= dot3(b.at, b.at) ? a : b;
}
