import { at } from '../../base/at';
import { Clipper, FillRule, type PathsD } from 'clipper2-ts';
import earcut, { refine } from 'earcut';
import { isInside, type Point } from '../../base/polygon';
import { CornerIndex } from './corner-index';

/** A flat piece with its holes: the outline counter-clockwise, the holes clockwise, so that what is solid lies to the left of every side. */
export interface Region {
  readonly outline: readonly Point[];
  readonly holes: readonly (readonly Point[])[];
}

export type Triangle = readonly [Point, Point, Point];

/** Digits of a mm that places in a plane are told apart by. */
const DECIMALS = 6;
/** A corner this near a side lies on it, mm: what rounding two crossing lines may move it. */
const ON_SIDE = 3 * 10 ** -DECIMALS;

export function round([x, y]: Point): Point {
  const at = (value: number): number => Number(value.toFixed(DECIMALS)) + 0;
  return [at(x), at(y)];
}

/** Loops that lie in one another as outlines and holes: what is inside one alone is solid. */
export function regionsOf(loops: readonly (readonly Point[])[]): Region[] {
  return fromPaths(Clipper.unionD(toPaths(loops), [], FillRule.EvenOdd, DECIMALS));
}

/** What of some regions lies outside these loops, and what lies within them. */
export function partedBy(
  regions: readonly Region[],
  loops: readonly (readonly Point[])[],
): { outside: Region[]; inside: Region[] } {
  const [all, cut] = [toPaths(regions.flatMap(ringsOf)), toPaths(loops)];
  return {
    outside: fromPaths(Clipper.differenceD(all, cut, FillRule.NonZero, DECIMALS)),
    inside: fromPaths(Clipper.intersectD(all, cut, FillRule.NonZero, DECIMALS)),
  };
}

export function ringsOf({ outline, holes }: Region): (readonly Point[])[] {
  return [outline, ...holes];
}

function toPaths(loops: readonly (readonly Point[])[]): PathsD {
  return loops.map((loop) => loop.map(([x, y]) => ({ x, y })));
}

function fromPaths(paths: PathsD): Region[] {
  const loops = paths.map((path) => path.map(({ x, y }) => round([x, y])));
  const area = (loop: readonly Point[]): number => Clipper.areaD(loop.map(([x, y]) => ({ x, y })));
  const holes = loops.filter((loop) => area(loop) < 0);
  return loops
    .filter((loop) => area(loop) > 0)
    .map((outline) => ({ outline, holes: holes.filter(([corner]) => corner && isInside(corner, outline)) }));
}

/** The regions with every one of the known corners that lies on a side of theirs put into it. */
export function withCorners(regions: readonly Region[], known: CornerIndex): Region[] {
  const fill = (ring: readonly Point[]): Point[] =>
    ring.flatMap((from, index) => {
      const to = ring[(index + 1) % ring.length] ?? from;
      return [from, ...between(from, to, known)];
    });
  return regions.map(({ outline, holes }) => ({ outline: fill(outline), holes: holes.map(fill) }));
}

/** Those corners that lie on the side, in its order, without its ends, each once. */
function between(from: Point, to: Point, corners: CornerIndex): Point[] {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const length = Math.hypot(dx, dy);
  if (length === 0) return [];
  const found = new Map<number, Point>();
  corners.eachNear(from, to, ON_SIDE, (corner) => {
    const [x, y] = [corner[0] - from[0], corner[1] - from[1]];
    const along = (x * dx + y * dy) / length;
    if (Math.abs(x * dy - y * dx) / length > ON_SIDE || along < ON_SIDE || along > length - ON_SIDE) return;
    found.set(along, corner);
  });
  if (found.size === 0) return [];
  return [...found].sort(([a], [b]) => a - b).map(([, corner]) => corner);
}

/** A region's triangles, counter-clockwise, with all its corners: those in the midst of a straight side too, over which the library may lay a longer side. */
export function triangulate(region: Region): Triangle[] {
  const rings = ringsOf(region);
  const corners = rings.flat();
  const starts = startsOf(rings);
  const places = corners.flat();
  const flat = earcut(places, starts);
  // Slivers turned into fuller triangles, whose normals single precision can tell.
  refine(flat, places);
  const corner = (index: number): Point => at(corners, at(flat, index));
  const known = new CornerIndex(corners);
  return Array.from(
    { length: flat.length / 3 },
    (_, index) => [corner(3 * index), corner(3 * index + 1), corner(3 * index + 2)] as const,
  )
    .map(counterClockwise)
    .flatMap((triangle) => split(triangle, known));
}

/** How many corners come before each ring but the first. */
function startsOf(rings: readonly (readonly Point[])[]): number[] {
  let before = 0;
  return rings.slice(0, -1).map(({ length }) => (before += length));
}

function counterClockwise([a, b, c]: Triangle): Triangle {
  const area = (b[0] - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (b[1] - a[1]);
  return area >= 0 ? [a, b, c] : [a, c, b];
}

/**
 * A triangle as several that have all the corners on its sides for their own. A corner divides what comes of it once: among sides as short as corners are told
 * apart by, one may lie on a side, be left out of what the side is divided into, and lie on a side of that again. So it ends, however tiny the sides.
 */
function split(triangle: Triangle, corners: CornerIndex, spent: ReadonlySet<Point> = new Set()): Triangle[] {
  for (const turn of [0, 1, 2] as const) {
    const [a, b, c] = [
      triangle[turn],
      triangle[((turn + 1) % 3) as 0 | 1 | 2],
      triangle[((turn + 2) % 3) as 0 | 1 | 2],
    ];
    const found = between(a, b, corners);
    // Three corners in one line cover nothing.
    if (found.includes(c)) return [];
    const first = found.find((corner) => !spent.has(corner));
    if (first) {
      const more = new Set([...spent, ...triangle, first]);
      return [...split([a, first, c], corners, more), ...split([first, b, c], corners, more)];
    }
  }
  return [triangle];
}
