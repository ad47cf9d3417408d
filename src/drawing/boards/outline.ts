import { at } from '../../base/at';
import { Clipper, EndType, JoinType, TriangulateResult, type PathD, type PathsD } from 'clipper2-ts';
import type { Loop } from '../../base/drawing';
import { InternalError } from '../../base/errors';
import { flattenLoop } from '../../base/flatten';
import type { Shaped } from '../parts/part';
import type { Point } from './convex';

/** What flattening may stray from an arc, and rounding from a corner's circle, mm; added to the outline three times (closing hollows rounds once more), so that no gap comes out smaller than asked. */
const STRAY = 0.02;
/** Decimal places of a mm that the offsets are reckoned to. */
const DECIMALS = 5;
/** More convex pieces than this to a part are not worth their time: hollows are closed until there are fewer. */
const MOST_PIECES = 8;
/** Hollows narrower than twice this are closed at first, mm: hardly a part goes into them. */
const NARROW = 15;

/** A part's one outline, as the loop it is drawn by. */
export function outlineOf(part: Shaped): Loop {
  const [outline, ...more] = part.drawing.shapes.filter(
    (shape): shape is Loop => shape.kind === 'loop' && shape.operation === 'outline',
  );
  if (!outline || more.length > 0) throw new InternalError(`part ${part.id} has no single outline`);
  return outline;
}

/** A part's outline as points, counter-clockwise, arcs as chords that stray by at most `stray` mm. */
export function polygonOf(part: Shaped, stray: number): Point[] {
  const points = flattenLoop(outlineOf(part).vertices, stray).map(([x, y]) => ({ x, y }));
  return Clipper.areaD(points) < 0 ? points.reverse() : points;
}

/**
 * The room a part takes up: its outline grown by `clearance` mm all round, as convex pieces, counter-clockwise. Holes count as
 * solid, and hollows too narrow to be of use are closed; the pieces together are never smaller than what they stand for.
 */
export function roomOf(part: Shaped, clearance: number): Point[][] {
  const polygon = polygonOf(part, STRAY);
  const grown = largest(offset([polygon], clearance + 3 * STRAY));
  return solidPieces(grown).map((piece) => fewerCorners(isStrictlyConvex(piece) ? piece : hull(piece)));
}

function solidPieces(grown: PathD): Point[][] {
  if (isConvex(grown)) return [grown];
  for (let narrow = NARROW; narrow < 1000; narrow *= 2) {
    const closed = largest(offset(offset([grown], narrow), -narrow));
    if (isConvex(closed)) return [closed];
    const pieces = convexPieces(grown.length < closed.length ? grown : closed);
    if (pieces && pieces.length <= MOST_PIECES) return pieces;
  }
  return [hull(grown)];
}

function offset(paths: PathsD, by: number): PathsD {
  return Clipper.inflatePathsD(paths, by, JoinType.Round, EndType.Polygon, 2, DECIMALS, STRAY);
}

function largest(paths: PathsD): PathD {
  return paths.reduce<PathD>((most, path) => (Clipper.areaD(path) > Clipper.areaD(most) ? path : most), []);
}

/** A piece may be larger than what it stands for by this at a corner, mm: the fewer corners, the faster. */
const EXCESS = 0.25;

/** A convex polygon round another: sides taken away, shortest reach first, and their neighbours lengthened until they meet. */
function fewerCorners(polygon: readonly Point[]): Point[] {
  const corners = [...polygon];
  const meetings = corners.map((_, index) => meeting(corners, index));
  for (;;) {
    const least = meetings.reduce((most, { excess }, index) => (excess < at(meetings, most).excess ? index : most), 0);
    const found = meetings[least];
    if (!found?.at || found.excess > EXCESS) return corners;
    const gone = (least + 1) % corners.length;
    corners[least] = found.at;
    corners.splice(gone, 1);
    meetings.splice(gone, 1);
    // A side's meeting hangs on its own corners and the one before and after: four sides have another now, or all of so few.
    const moved = gone < least ? least - 1 : least;
    for (const step of [-2, -1, 0, 1]) {
      const side = (moved + step + 2 * corners.length) % corners.length;
      meetings[side] = meeting(corners, side);
    }
  }
}

/** Where the sides before and after the side from corner `index` meet, and how far outside that side, mm. */
function meeting(corners: readonly Point[], index: number): { readonly excess: number; readonly at: Point | null } {
  const corner = (step: number): Point => at(corners, (index + step + corners.length) % corners.length);
  const [before, from, to, after] = [corner(-1), corner(0), corner(1), corner(2)];
  const [u, v] = [
    { x: from.x - before.x, y: from.y - before.y },
    { x: to.x - after.x, y: to.y - after.y },
  ];
  const turn = u.x * v.y - u.y * v.x;
  const share = ((to.x - from.x) * v.y - (to.y - from.y) * v.x) / turn;
  // Turning left by half a turn or more, the two never meet outside.
  if (!(turn < 0) || !(share >= 0) || corners.length < 4) return { excess: Infinity, at: null };
  const place = { x: from.x + share * u.x, y: from.y + share * u.y };
  return { excess: Math.abs(cross(from, to, place)) / Math.hypot(to.x - from.x, to.y - from.y), at: place };
}

const cross = (a: Point, b: Point, c: Point): number => (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);

/** Rounding of the offsets may turn a straight side by this much the wrong way, mm². */
const FLAT = 1e-3;

function isConvex(polygon: readonly Point[]): boolean {
  return polygon.every(
    (point, index) =>
      cross(point, polygon[(index + 1) % polygon.length] ?? point, polygon[(index + 2) % polygon.length] ?? point) >
      -FLAT,
  );
}

/**
 * Whether each corner turns left by however little. A side as short as the rounding may point anywhere, and one that points the wrong way
 * puts all sides of a no-fit polygon after it out of order.
 */
function isStrictlyConvex(polygon: readonly Point[]): boolean {
  return polygon.every(
    (point, index) =>
      cross(point, at(polygon, (index + 1) % polygon.length), at(polygon, (index + 2) % polygon.length)) > 0,
  );
}

/** Triangles put together while they stay convex; null where the outline cannot be cut into triangles. */
function convexPieces(polygon: PathD): Point[][] | null {
  const { result, solution } = Clipper.triangulateD([polygon], DECIMALS);
  if (result !== TriangulateResult.success) return null;
  const numbering = new Numbering();
  const pieces = solution.map((triangle) => {
    const numbers = triangle.map((corner) => numbering.of(corner));
    return Clipper.areaD(triangle) < 0 ? numbers.reverse() : numbers;
  });
  for (let index = 0; index < pieces.length; index++) {
    for (let other = index + 1; other < pieces.length; other++) {
      const merged = merge(at(pieces, index), at(pieces, other), numbering);
      if (!merged) continue;
      pieces[index] = merged;
      pieces.splice(other, 1);
      other = index;
    }
  }
  return pieces.map((piece) => piece.map((number) => numbering.corner(number)));
}

/** The numbers of a piece's corners, counter-clockwise. */
type Piece = number[];

/** A number for every place. */
class Numbering {
  readonly #numbers = new Map<string, number>();
  readonly #places: Point[] = [];

  of({ x, y }: Point): number {
    const key = `${x} ${y}`;
    const known = this.#numbers.get(key);
    if (known !== undefined) return known;
    this.#numbers.set(key, this.#places.length);
    return this.#places.push({ x, y }) - 1;
  }

  corner(number: number): Point {
    return at(this.#places, number);
  }
}

/** Two convex pieces that share a side as one, if that is convex too; else null. Only at the shared side's ends does it turn otherwise than they do. */
function merge(a: Piece, b: Piece, numbering: Numbering): Piece | null {
  for (const [j, to] of b.entries()) {
    const next = (j + 1) % b.length;
    const i = a.indexOf(at(b, next));
    if (i < 0 || a[(i + 1) % a.length] !== to) continue;
    const start = (i + 1) % a.length;
    const merged = [...a.slice(start), ...a.slice(0, start), ...[...b.slice(next), ...b.slice(0, next)].slice(1, -1)];
    const turnsLeft = (middle: number): boolean => {
      const [before, corner, after] = [-1, 0, 1].map((step) =>
        numbering.corner(at(merged, (middle + step + merged.length) % merged.length)),
      ) as [Point, Point, Point];
      return cross(before, corner, after) > -FLAT;
    };
    return turnsLeft(0) && turnsLeft(a.length - 1) ? merged : null;
  }
  return null;
}

/** The convex hull, counter-clockwise: Andrew's monotone chain. */
function hull(points: readonly Point[]): Point[] {
  const sorted = [...points].sort((a, b) => a.x - b.x || a.y - b.y);
  const half = (along: readonly Point[]): Point[] => {
    const chain: Point[] = [];
    for (const point of along) {
      for (;;) {
        const [before, last] = chain.slice(-2);
        if (!before || !last || cross(before, last, point) > 0) break;
        chain.pop();
      }
      chain.push(point);
    }
    return chain.slice(0, -1);
  };
  return [...half(sorted), ...half(sorted.reverse())];
}
