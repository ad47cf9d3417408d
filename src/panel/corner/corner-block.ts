import { at as item } from '../../base/at';
import { radiusAt } from '../../base/cone';
import { distanceTo, sideBetween } from '../../base/side';
import { isInside, type Point } from '../../base/polygon';
import { rootBetween } from '../../base/solve';
import { flattenLoop } from '../../base/flatten';
import type { Bend } from '../flat/bend';
import { fromFrame } from '../flat/bend';
import type { Corner, Panel } from '../flat/panel';
import { add, direction, dot, less } from '../flat/plane';
import { depthInside } from './inner-side';
import { CHORD_STRAY, ROUNDING, SAME_PLACE } from '../../base/tolerance';

/** What a block for a corner is made from and by, mm. */
export interface BlockGiven {
  /** Of the board of its layers. */
  readonly board: number;
  /** Of the two dowels through all layers, and the wood left round them. */
  readonly dowel: number;
  readonly wood: number;
  /** How far it follows each bend beyond the radius there, and how much of the legs at least. */
  readonly past: number;
  readonly leg: number;
}

/**
 * A block shaped as the finished inside of a corner: layers of board parallel to the base, the lowest on it. Each is cut square-edged to the inside's section at
 * its upper face, the larger of its two; what stands over the section at its lower face, which is the next layer's upper one, is worked off.
 */
export interface CornerBlock {
  /** Numbers of the bends, as in {@link Corner}. */
  readonly between: readonly [number, number];
  /** Along each base line from the corner, mm. */
  readonly reach: number;
  /** On the base's inside face, counter-clockwise on the marked face, mm on the flat: what the lowest layer is worked down to. */
  readonly foot: readonly Point[];
  readonly layers: readonly CornerBlockLayer[];
  /** Middles of the dowels' holes, the same in every layer. */
  readonly holes: readonly [Point, Point];
  /** Over the base's inside face, mm. */
  readonly height: number;
}

export interface CornerBlockLayer {
  /** Heights of its faces over the base's inside face, mm. */
  readonly from: number;
  readonly to: number;
  /** The inside's section at its upper face, as {@link CornerBlock.foot}. */
  readonly outline: readonly Point[];
}

/** Why a corner can have none: its bends turn to different faces, one of them overhangs, one leans so far out that the other's edge of the block is gone below its top, or the base is too small there. */
export type NoBlock = 'turns' | 'overhang' | 'shallow' | 'room';

/** More than a right angle by less than this does not overhang, radians. */
const RIGHT = 1e-9;
/** A reach that does not fit is made smaller by this share, so many times. */
const LESS = 0.92;
const TRIES = 14;
/** How far out of the middle of the foot a dowel stands, as a share of the way between its two ends. */
const DOWEL_OUT = 0.2;
/** No further from the corner than so many reaches along the line that halves it: wide corners' blocks end in a chamfer. */
const TIP = 1.5;
/** Two sections may meet so many reaches past the corner at the most. */
const FURTHEST = 1000;

/** The block of a corner, or why there is none. */
export function cornerBlock(panel: Panel, corner: Corner, given: BlockGiven): CornerBlock | NoBlock {
  const sides = [sideOf(panel, corner, 0), sideOf(panel, corner, 1)] as const;
  const [{ bend: a }, { bend: b }] = sides;
  if (a.turn !== b.turn) return 'turns';
  if (Math.max(a.angle, b.angle) > Math.PI / 2 + RIGHT) return 'overhang';
  const radius = Math.max(...sides.map((side) => side.radius));
  const zone = Math.max(...sides.map(({ bend, radius: own }) => own * (1 - Math.cos(bend.wrap))));
  const count = Math.ceil((zone + given.leg) / given.board - ROUNDING);
  const base = flattenLoop(item(panel.faces, a.base).outline, CHORD_STRAY);
  let reach = Math.min(radius + given.past, a.finished.length, b.finished.length);
  for (let tried = 0; tried < TRIES; tried++, reach *= LESS) {
    const spot: Spot = { at: corner.at, sides, reach, inside: (panel.thickness / 2) * (a.turn === 'up' ? 1 : -1) };
    const foot = footOf(spot);
    const holes = dowels(foot, spot);
    const isOnBase = foot.every((place) => isInside(place, base) || toEdge(place, base) < SAME_PLACE);
    if (!isOnBase || holes.some((hole) => toEdge(hole, foot) < given.wood + given.dowel / 2)) continue;
    const layers = Array.from({ length: count }, (_, index): CornerBlockLayer | null => {
      const to = (index + 1) * given.board;
      const outline = sectionAt(spot, to);
      return outline && { from: index * given.board, to, outline };
    }).filter((layer) => layer !== null);
    if (layers.length < count) return 'shallow';
    return { between: corner.between, reach, foot, layers, holes, height: count * given.board };
  }
  return 'room';
}

/** One of the two bends as the corner sees it. */
interface Side {
  readonly bend: Bend;
  /** Along the base line, away from the corner. */
  readonly away: Point;
  /** Finished inside radius at the corner, mm. */
  readonly radius: number;
}

function sideOf(panel: Panel, { between, at }: Corner, side: 0 | 1): Side {
  const bend = item(panel.bends, between[side]);
  const { length } = bend.finished;
  const away = direction(at, fromFrame(bend.frame, [length / 2, 0]));
  const isAtA = dot(away, bend.frame.along) > 0;
  return { bend, away, radius: radiusAt(bend.finished, isAtA ? 0 : length) };
}

interface Spot {
  readonly at: Point;
  readonly sides: readonly [Side, Side];
  readonly reach: number;
  /** Of the base's inside face, signed as the flat's z. */
  readonly inside: number;
}

/** The block's section at the base's inside face: the corner, and as far as it reaches along both base lines. */
function footOf(spot: Spot): Point[] {
  const [first, second] = spot.sides;
  const end = ({ away }: Side): Point => add(spot.at, away, spot.reach);
  return [end(first), spot.at, end(second), ...backOf(spot)];
}

/** The block's section, `height` mm over the base's inside face; null where the two sides meet no nearer than the block reaches. */
function sectionAt(spot: Spot, height: number): Point[] | null {
  const { at, sides, reach } = spot;
  const [first, second] = sides;
  const meets = meetingAt(spot, height);
  if (!meets) return null;
  const [u, v] = [dot(less(meets, at), first.away), dot(less(meets, at), second.away)];
  if (Math.max(u, v) >= reach) return null;
  const along = (side: Side): ((from: number) => Point) => {
    return (from) => placeOn(spot, side, { along: from, height });
  };
  return [
    ...chords(along(first), reach, u).slice(0, -1),
    meets,
    ...chords(along(second), v, reach).slice(1),
    ...backOf(spot),
  ];
}

/** Where the section of a side's inside surface stands square off the place so far along its base line. */
function placeOn(
  { at, inside }: Spot,
  { bend, away }: Side,
  { along, height }: { readonly along: number; readonly height: number },
): Point {
  const foot = add(at, away, along);
  const z = inside + Math.sign(inside) * height;
  const depth = (out: number): number => {
    const [x, y] = add(foot, bend.frame.toLeg, out);
    return depthInside(bend, [x, y, z]);
  };
  let far = height;
  while (depth(far) > 0) far *= 2;
  // Past the apex of a taper what lies inside all tangent planes draws back from the base line.
  let near = 0;
  while (depth(near) < 0) near = near === 0 ? -height : 2 * near;
  return add(foot, bend.frame.toLeg, rootBetween(depth, near, far, 1e-13));
}

/** Where both sections meet; null where that is further along the first base line than the block reaches. */
function meetingAt(spot: Spot, height: number): Point | null {
  const [first, second] = spot.sides;
  const z = spot.inside + Math.sign(spot.inside) * height;
  const place = (along: number): Point => placeOn(spot, first, { along, height });
  const inner = (along: number): number => {
    const [x, y] = place(along);
    return depthInside(second.bend, [x, y, z]);
  };
  if (inner(spot.reach) <= 0) return null;
  let past = spot.reach;
  while (inner(-past) > 0 && past < FURTHEST * spot.reach) past *= 2;
  return place(rootBetween(inner, -past, spot.reach, 1e-13));
}

/** A curve between two of its numbers in chords; both ends are in it. */
function chords(curve: (at: number) => Point, from: number, to: number): Point[] {
  const [start, end] = [curve(from), curve(to)];
  const middle = curve((from + to) / 2);
  const off = distanceTo(sideBetween(vertex(start), vertex(end)), vertex(middle));
  if (off < CHORD_STRAY) return [start, end];
  return [...chords(curve, from, (from + to) / 2).slice(0, -1), ...chords(curve, (from + to) / 2, to)];
}

function vertex([x, y]: Point): { readonly x: number; readonly y: number; readonly bulge: number } {
  return { x, y, bulge: 0 };
}

/** The block's flat backs, square to both base lines, from the second side's end to the first's: where they meet, or the ends of the chamfer there. */
function backOf({ at, sides, reach }: Spot): Point[] {
  const [{ away: p, bend: first }, { away: q, bend: second }] = sides;
  const tip = add(add(at, p, reach / (1 + dot(p, q))), q, reach / (1 + dot(p, q)));
  const half = direction(at, tip);
  const from = dot(less(tip, at), half);
  if (from <= TIP * reach) return [tip];
  const cut = ([bend, away]: readonly [Bend, Point]): Point => {
    const end = add(at, away, reach);
    const back: Point = [-bend.frame.toLeg[0], -bend.frame.toLeg[1]];
    return add(end, back, (TIP * reach - dot(less(end, at), half)) / dot(back, half));
  };
  return [cut([second, q]), cut([first, p])];
}

/** Two holes beside the middle of the foot, along the way from one end to the other. */
function dowels(foot: readonly Point[], { at, sides, reach }: Spot): [Point, Point] {
  const middle: Point = [
    foot.reduce((sum, [x]) => sum + x, 0) / foot.length,
    foot.reduce((sum, [, y]) => sum + y, 0) / foot.length,
  ];
  const [first, second] = sides;
  const way = less(add(at, second.away, reach), add(at, first.away, reach));
  return [add(middle, way, -DOWEL_OUT), add(middle, way, DOWEL_OUT)];
}

function toEdge([x, y]: Point, polygon: readonly Point[]): number {
  const place = { x, y };
  return Math.min(
    ...polygon.map((from, index) =>
      distanceTo(sideBetween(vertex(from), vertex(item(polygon, (index + 1) % polygon.length))), place),
    ),
  );
}
