import { at } from '../../base/at';

/** A place or a step on the board, mm. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** Corners from the bottom up, y growing at every step; kept as bare numbers, as layouts look along millions of them. */
export interface Chain {
  readonly x: readonly number[];
  readonly y: readonly number[];
  /** How far the side up to each corner goes along x for a step up y; 0 for the first. */
  readonly slope: readonly number[];
}

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
    x,
    y,
    slope: x.map((to, index) => (index === 0 ? 0 : (to - at(x, index - 1)) / (at(y, index) - at(y, index - 1)))),
  };
}

function boxed(left: Chain, right: Chain): Convex {
  return {
    left,
    right,
    minX: Math.min(...left.x),
    maxX: Math.max(...right.x),
    minY: at(left.y, 0),
    maxY: at(left.y, -1),
  };
}

/** Turned by half a turn about the origin. */
export function turnedOver({ left, right }: Convex): Convex {
  const over = ({ x, y }: Chain): Chain =>
    chainOf(x.map((value) => -value).reverse(), y.map((value) => -value).reverse());
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
  const x = [at(a.x, 0) + at(b.x, 0)];
  const y = [at(a.y, 0) + at(b.y, 0)];
  const slope = [0];
  let i = 0;
  let j = 0;
  while (i < lastA || j < lastB) {
    const isNext = j === lastB || (i < lastA && turn * (at(b.slope, j + 1) - at(a.slope, i + 1)) <= 0);
    if (isNext) i += 1;
    else j += 1;
    x.push(at(a.x, i) + at(b.x, j));
    y.push(at(a.y, i) + at(b.y, j));
    slope.push((isNext ? a.slope[i] : b.slope[j]) as number);
  }
  return { x, y, slope };
}

/** Number of the side a level within the chain's own lies on: of its upper corner. */
export function sideAt({ y }: Chain, level: number): number {
  let low = 0;
  let high = y.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (at(y, middle) <= level) low = middle;
    else high = middle;
  }
  return high;
}

/** Where a chain is at a level, by the side up to corner number `side`, mm. */
export function chainAt({ x, y, slope }: Chain, level: number, side: number): number {
  return at(x, side - 1) + at(slope, side) * (level - at(y, side - 1));
}
