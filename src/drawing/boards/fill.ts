import { at } from '../../base/at';
import { noFit, type Convex } from './convex';
import type { Obstacle } from './obstacle';
import { cheapestSpot, type Cost } from './spot';
import type { Stock, Supply } from './stock';
import type { Member, Placed, Unit, UnitPose } from './unit';
import { ROUNDING } from '../../base/tolerance';

/** A board with parts on it. */
export interface Filled {
  readonly stock: Stock;
  readonly members: readonly Member[];
  readonly pieces: readonly Placed[];
  /** How far along the board the parts reach, and across it, mm from its corner. */
  readonly reach: number;
  readonly across: number;
}

/** No-fit polygons already worked out, by the numbers of their two pieces. */
export class NoFits {
  private readonly known = new Map<number, Convex>();
  /** How many were asked for: the measure of the work done. */
  asked = 0;

  between(fixed: Placed, moving: Placed): Obstacle {
    this.asked += 1;
    const key = fixed.piece.id * PIECES + moving.piece.id;
    let shape = this.known.get(key);
    if (!shape) {
      shape = noFit(fixed.piece.shape, moving.piece.over);
      if (this.known.size >= MOST_KEPT) this.known.clear();
      this.known.set(key, shape);
    }
    const x = fixed.x - moving.x;
    const y = fixed.y - moving.y;
    return { shape, x, y, minX: x + shape.minX, maxX: x + shape.maxX, minY: y + shape.minY, maxY: y + shape.maxY };
  }
}

/** More than the pieces that can ever be laid out together. */
const PIECES = 1_000_000;
/** More no-fit polygons than this are not kept: some 50 MB. */
const MOST_KEPT = 40_000;

/** What a millimetre across the board weighs against one along it: enough to settle where a part slides freely. */
const TILT = 1e-3;

/** A layout as it grew: the boards before the first unit, after it, after the second and so on. */
export type Growth = readonly (readonly Filled[])[];

/** What units are laid out on and by what rule. */
export interface Rule {
  readonly supply: Supply;
  /** What reaching a millimetre further along the board costs beside lying a millimetre further. */
  readonly stretch: number;
}

/** Boards before anything is laid on them: the offcuts. Whole boards are begun as they are needed. */
export function emptyBoards({ offcuts, border }: Supply): Filled[] {
  return offcuts.map((stock) => begin(stock, border));
}

/**
 * Units placed one by one after those of `start`, each at the cheapest place on the first board that has one; a new board is begun
 * where none has. Null where a unit fits nowhere, or as soon as `isHopeless` says so of the boards so far.
 */
export function fill(
  units: readonly Unit[],
  {
    rule,
    start,
    isHopeless,
    noFits,
  }: {
    readonly rule: Rule;
    readonly start: Growth;
    readonly isHopeless: (boards: readonly Filled[]) => boolean;
    readonly noFits: NoFits;
  },
): Growth | null {
  const growth = [...start];
  for (const unit of units.slice(start.length - 1)) {
    const boards = withUnit(unit, at(growth, -1), rule, noFits);
    if (!boards || isHopeless(boards)) return null;
    growth.push(boards);
  }
  return growth;
}

function begin(stock: Stock, border: number): Filled {
  return { stock, members: [], pieces: [], reach: border, across: border };
}

function withUnit(unit: Unit, boards: readonly Filled[], rule: Rule, noFits: NoFits): readonly Filled[] | null {
  for (const [index, board] of boards.entries()) {
    const filled = place(unit, board, rule, noFits);
    if (filled) return boards.with(index, filled);
  }
  const filled = place(unit, begin(rule.supply.board, rule.supply.border), rule, noFits);
  return filled && [...boards, filled];
}

function place(unit: Unit, board: Filled, { supply: { border }, stretch }: Rule, noFits: NoFits): Filled | null {
  const { length, width } = board.stock;
  let best: { readonly pose: UnitPose; readonly x: number; readonly y: number } | null = null;
  let least = Infinity;
  for (const pose of unit.poses) {
    const { minX, minY, maxX, maxY } = pose.bounds;
    if (maxX - minX > length - 2 * border + ROUNDING || maxY - minY > width - 2 * border + ROUNDING) continue;
    const range = {
      minX: border - minX,
      maxX: Math.max(border - minX, length - border - maxX),
      minY: border - minY,
      maxY: Math.max(border - minY, width - border - maxY),
    };
    const middle = (minX + maxX) / 2;
    const cost: Cost = (x, y) => stretch * Math.max(0, x + maxX - board.reach) + x + middle + TILT * (y + minY);
    if (cost(range.minX, range.minY) >= least) continue;
    const obstacles = board.pieces.flatMap((fixed) => pose.pieces.map((moving) => noFits.between(fixed, moving)));
    const spot = cheapestSpot(obstacles, range, cost, least);
    if (!spot) continue;
    best = { pose, x: spot.x, y: spot.y };
    least = spot.cost;
  }
  if (!best) return null;
  const { pose, x, y } = best;
  return {
    stock: board.stock,
    pieces: [
      ...board.pieces,
      ...pose.pieces.map((placed) => ({ piece: placed.piece, x: placed.x + x, y: placed.y + y })),
    ],
    members: [...board.members, ...pose.members.map((member) => ({ ...member, x: member.x + x, y: member.y + y }))],
    reach: Math.max(board.reach, x + pose.bounds.maxX),
    across: Math.max(board.across, y + pose.bounds.maxY),
  };
}
