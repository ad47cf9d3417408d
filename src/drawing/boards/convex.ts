import { at } from '../../base/at';
import { InternalError } from '../../base/errors';

/** A place or a step on the board, mm. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** Corners from the bottom up, y growing at every step; kept as bare numbers of one kind (Float64Array), as layouts look along millions of them. */
export interface Chain {
  readonly x: Numbers;
  readonly y: Numbers;
  /** How far the side up to each corner goes along x for a step up y; 0 for the first. */
  readonly slope: Numbers;
}

type Numbers = ArrayLike<number>;

/** A convex polygon as the chains of corners on its two sides: where a level line enters and leaves it is one look along each. */
export interface Convex {
  readonly left: Chain;
  readonly right: Chain;
  readonly minX: number;
  readonly maxX: number;
  readonly minY: number;
  readonly maxY: number;
}

/** A place turned by quarter turns about the origin, counter-clockwise. */
export function quarterTurned({ x, y }: Point, quarters: number): Point {
  const turns: readonly Point[] = [
    { x, y },
    { x: -y, y: x },
    { x: -x, y: -y },
    { x: y, y: -x },
  ];
  return at(turns, quarters % 4);
}

/** The convex polygon with these corners, in any order, mm. */
export function convexOf(corners: readonly Point[]): Convex {
  const [minY, maxY] = [Math.min(...corners.map(({ y }) => y)), Math.max(...corners.map(({ y }) => y))];
  const at = (level: number, pick: (...values: number[]) => number): Point => ({
    x: pick(...corners.filter(({ y }) => y === level).map(({ x }) => x)),
    y: level,
  });
  const [lowRight, highRight] = [at(minY, Math.max), at(maxY, Math.max)];
  const isRight = ({ x, y }: Point): boolean =>
    (highRight.x - lowRight.x) * (y - lowRight.y) - (maxY - minY) * (x - lowRight.x) <= 0;
  const climb = (from: Point, to: Point, side: (corner: Point) => boolean): Chain => {
    const between = corners
      .filter((corner) => corner.y > minY && corner.y < maxY && side(corner))
      .sort((a, b) => a.y - b.y);
    const chain = [from, ...between, to];
    return chainOf(
      chain.map(({ x }) => x),
      chain.map(({ y }) => y),
    );
  };
  return boxed(
    climb(at(minY, Math.min), at(maxY, Math.min), (corner) => !isRight(corner)),
    climb(lowRight, highRight, isRight),
  );
}

function chainOf(x: readonly number[], y: readonly number[]): Chain {
  return {
    x: Float64Array.from(x),
    y: Float64Array.from(y),
    slope: Float64Array.from(x, (to, index) =>
      index === 0 ? 0 : (to - at(x, index - 1)) / (at(y, index) - at(y, index - 1)),
    ),
  };
}

function boxed(left: Chain, right: Chain): Convex {
  return {
    left,
    right,
    minX: Math.min(...Array.from(left.x)),
    maxX: Math.max(...Array.from(right.x)),
    minY: at(left.y, 0),
    maxY: at(left.y, -1),
  };
}

/** Turned by half a turn about the origin. */
export function turnedOver({ left, right }: Convex): Convex {
  const turned = (values: Numbers): number[] => Array.from(values, (value) => -value).reverse();
  const over = ({ x, y }: Chain): Chain => chainOf(turned(x), turned(y));
  return boxed(over(right), over(left));
}

/**
 * The no-fit polygon: every shift of `moving` (given already turned over) that lays it over `fixed`. It is their Minkowski sum,
 * and of convex polygons that is their sides put together in order of direction. Source: de Berg et al., Computational Geometry, ch. 13 (from memory).
 */
export function noFit(fixed: Convex, movingTurnedOver: Convex): Convex {
  return {
    left: joined(fixed.left, movingTurnedOver.left, -1),
    right: joined(fixed.right, movingTurnedOver.right, 1),
    minX: fixed.minX + movingTurnedOver.minX,
    maxX: fixed.maxX + movingTurnedOver.maxX,
    minY: fixed.minY + movingTurnedOver.minY,
    maxY: fixed.maxY + movingTurnedOver.maxY,
  };
}

/** Two chains' sides in order of direction: turning left (1) up a right chain, turning right (-1) up a left one. */
function joined(a: Chain, b: Chain, turn: 1 | -1): Chain {
  const [lastA, lastB] = [a.x.length - 1, b.x.length - 1];
  const [x, y, slope] = [0, 1, 2].map(() => new Float64Array(lastA + lastB + 1)) as [
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  x[0] = numberAt(a.x, 0) + numberAt(b.x, 0);
  y[0] = numberAt(a.y, 0) + numberAt(b.y, 0);
  let i = 0;
  let j = 0;
  while (i < lastA || j < lastB) {
    const isNext = j === lastB || (i < lastA && turn * (numberAt(b.slope, j + 1) - numberAt(a.slope, i + 1)) <= 0);
    if (isNext) i += 1;
    else j += 1;
    x[i + j] = numberAt(a.x, i) + numberAt(b.x, j);
    y[i + j] = numberAt(a.y, i) + numberAt(b.y, j);
    slope[i + j] = isNext ? numberAt(a.slope, i) : numberAt(b.slope, j);
  }
  return { x, y, slope };
}

/** What a chain's list holds at an index. A look of its own: it meets no other kind of list, which makes it several times as quick as `at`. */
function numberAt(list: Numbers, index: number): number {
  const found = list[index];
  if (found === undefined) throw new InternalError(`no corner ${index} in a chain of ${list.length}`);
  return found;
}

/** Number of the side a level within the chain's own lies on: of its upper corner. */
export function sideAt({ y }: Chain, level: number): number {
  let low = 0;
  let high = y.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (numberAt(y, middle) <= level) low = middle;
    else high = middle;
  }
  return high;
}

/** Where a chain is at a level, by the side up to corner number `side`, mm. */
export function chainAt({ x, y, slope }: Chain, level: number, side: number): number {
  return numberAt(x, side - 1) + numberAt(slope, side) * (level - numberAt(y, side - 1));
}

/** Where a chain is at a level within its own, mm. */
export function levelAt(chain: Chain, level: number): number {
  return chainAt(chain, level, sideAt(chain, level));
}

/** A chain and where it is shifted. */
export type PlacedChain = readonly [Chain, Point];

/** Looks at every place where one chain crosses another between two levels: both are straight between the levels of their corners. */
export function eachCrossing(
  [a, atA]: PlacedChain,
  [b, atB]: PlacedChain,
  [low, high]: readonly [number, number],
  look: (x: number, y: number) => void,
): void {
  let i = sideAt(a, low - atA.y);
  let j = sideAt(b, low - atB.y);
  let level = low;
  let gap = atA.x + chainAt(a, low - atA.y, i) - atB.x - chainAt(b, low - atB.y, j);
  for (;;) {
    const endA = atA.y + numberAt(a.y, i);
    const endB = atB.y + numberAt(b.y, j);
    const next = Math.min(high, endA, endB);
    const nextGap = atA.x + chainAt(a, next - atA.y, i) - atB.x - chainAt(b, next - atB.y, j);
    if (gap < 0 !== nextGap < 0) {
      const crossing = level + ((next - level) * gap) / (gap - nextGap);
      look(atA.x + chainAt(a, crossing - atA.y, i), crossing);
    }
    if (next >= high) return;
    if (endA <= next) i += 1;
    if (endB <= next) j += 1;
    level = next;
    gap = nextGap;
  }
}
