import { sidesOf } from '../../../base/arc';
import { at } from '../../../base/at';
import { boundsOf } from '../../../base/bounds';
import type { Vertex } from '../../../base/drawing';
import { outline as outlineLoop } from '../../../base/outline';
import type { Point } from '../../../base/polygon';
import { distanceTo, sideBetween, startingAt, sweepOf, type Side } from '../../../base/side';

/** A place on the blank to mark out: mm along the bottom edge of the piece it is cut from, from its left corner, and up from that edge. */
export interface MarkedPlace {
  readonly name: string;
  readonly along: number;
  readonly up: number;
  /** How the outline goes on to the next place. */
  readonly then: Onward;
}

/** Straight, an arc of a radius, or a curve of no one radius that is traced. */
export type Onward = { readonly kind: 'straight' | 'curve' } | { readonly kind: 'arc'; readonly radius: number };

/** The piece of sheet that a blank is cut from, square at its lower left corner, and how its places are measured from there. */
export interface Piece {
  readonly width: number;
  readonly height: number;
  readonly from: (place: Point) => { readonly along: number; readonly up: number };
}

/** A turn of the outline no sharper than this is one of the chords or arcs of a curve, radians. */
const CORNER = Math.PI / 36;
/** Sides that stray no further than this from the straight line between two places are straight, mm: a scribed line is as wide. */
const STRAIGHT = 0.1;
/** A curve longer than this gets places on its way, mm: so many at least, and at most, that straight lines between them stray no further than that. */
const SHORT = 12;
const ON_THE_WAY = { least: 3, most: 25, stray: 1.4 } as const;
/** A place this near the end of a line is that end, mm. */
const SAME = 1e-3;

/** The smallest piece with its edges along and across that holds the outline, mm. */
export function pieceFor(outline: readonly Vertex[]): Piece {
  const { minX, minY, maxX, maxY } = boundsOf({ shapes: [outlineLoop(outline)] });
  return { width: maxX - minX, height: maxY - minY, from: ([x, y]) => ({ along: x - minX, up: y - minY }) };
}

/**
 * The places an outline is marked out by, counter-clockwise from the one nearest the piece's lower left corner: its corners, where a line (one of `ends`)
 * meets it, and places on the way along curves. Numbered from 1; places on the way are 4a, 4b, 4c.
 */
export function outlinePlaces(outline: readonly Vertex[], piece: Piece, ends: readonly Point[]): MarkedPlace[] {
  const sides = sidesOf(outline)
    .filter(([from, to]) => Math.hypot(to.x - from.x, to.y - from.y) > SAME)
    .map(([from, to]) => sideBetween(from, to));
  const starts = sides.flatMap((side, index) => (isPlace(side, before(sides, index), ends) ? [index] : []));
  const runs = starts.map((start, index) => stretchOf(sides, start, at(starts, (index + 1) % starts.length)));
  return numbered(runs, piece);
}

function before(sides: readonly Side[], index: number): Side {
  return at(sides, (index + sides.length - 1) % sides.length);
}

function isPlace(side: Side, previous: Side, ends: readonly Point[]): boolean {
  const end = startingAt(previous, 1);
  const turn = Math.atan2(
    end.headingX * side.headingY - end.headingY * side.headingX,
    end.headingX * side.headingX + end.headingY * side.headingY,
  );
  return Math.abs(turn) > CORNER || ends.some(([x, y]) => Math.hypot(x - side.x, y - side.y) < SAME);
}

/** The sides from one place up to the next, round the end of the list. */
function stretchOf(sides: readonly Side[], start: number, next: number): Side[] {
  return next > start ? sides.slice(start, next) : [...sides.slice(start), ...sides.slice(0, next)];
}

function numbered(runs: readonly (readonly Side[])[], piece: Piece): MarkedPlace[] {
  const first = runs.reduce(
    (best, run, index) => (farOff(at(run, 0), piece) < farOff(at(at(runs, best), 0), piece) ? index : best),
    0,
  );
  return [...runs.slice(first), ...runs.slice(0, first)].flatMap((run, index): MarkedPlace[] => {
    const name = String(index + 1);
    const then = onward(run);
    return [
      { name, ...piece.from([at(run, 0).x, at(run, 0).y]), then },
      ...(then.kind === 'straight' ? [] : onTheWay(run)).map((place, step): MarkedPlace => ({
        name: `${name}${'abcdefghijklmnopqrstuvwxyz'[step] ?? ''}`,
        ...piece.from(place),
        then,
      })),
    ];
  });
}

function farOff({ x, y }: Side, piece: Piece): number {
  const { along, up } = piece.from([x, y]);
  return Math.hypot(along, up);
}

function onward(run: readonly Side[]): Onward {
  const [first, last] = [at(run, 0), startingAt(at(run, run.length - 1), 1)];
  const [dx, dy] = [last.x - first.x, last.y - first.y];
  const chord = Math.hypot(dx, dy);
  const strays = run
    .flatMap((side) => [side, startingAt(side, 0.5)])
    .map(({ x, y }) => Math.abs(dx * (y - first.y) - dy * (x - first.x)) / chord);
  if (Math.max(...strays) < STRAIGHT) return { kind: 'straight' };
  const turnsOnce = run.length === 1 && Math.abs(sweepOf(first)) < Math.PI;
  return turnsOnce ? { kind: 'arc', radius: 1 / Math.abs(first.curvature) } : { kind: 'curve' };
}

/** Places that part a curve's length evenly, the fewest that draw it. */
function onTheWay(run: readonly Side[]): Point[] {
  const length = run.reduce((sum, side) => sum + side.length, 0);
  if (length < SHORT) return [];
  for (let count: number = ON_THE_WAY.least; ; count++) {
    const places = Array.from({ length: count }, (_, step) => placeAlong(run, (length * (step + 1)) / (count + 1)));
    if (count === ON_THE_WAY.most || strayOf(run, places) < ON_THE_WAY.stray) return places;
  }
}

/** How far the sides of a run stray from the straight lines between its ends and the places on its way, mm. */
function strayOf(run: readonly Side[], places: readonly Point[]): number {
  const [first, last] = [at(run, 0), startingAt(at(run, run.length - 1), 1)];
  const all = [[first.x, first.y] as const, ...places, [last.x, last.y] as const];
  const lines = all
    .slice(1)
    .map(([x, y], index) => sideBetween({ x: at(all, index)[0], y: at(all, index)[1], bulge: 0 }, { x, y }));
  const looked = run.flatMap((side) => [0, 0.25, 0.5, 0.75].map((share) => startingAt(side, share)));
  return Math.max(...looked.map((place) => Math.min(...lines.map((line) => distanceTo(line, place)))));
}

function placeAlong(run: readonly Side[], way: number): Point {
  let left = way;
  for (const side of run) {
    if (left <= side.length) {
      const { x, y } = startingAt(side, left / side.length);
      return [x, y];
    }
    left -= side.length;
  }
  const { x, y } = startingAt(at(run, run.length - 1), 1);
  return [x, y];
}
