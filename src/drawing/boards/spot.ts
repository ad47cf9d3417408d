import { at } from '../../base/at';
import { eachCrossing, levelAt } from './convex';
import { Grid } from './grid';
import type { Obstacle, Range } from './obstacle';
import { Shade } from './shade';
import { SAME_PLACE } from '../../base/tolerance';

export interface Spot {
  readonly x: number;
  readonly y: number;
  readonly cost: number;
}

/** What a place costs: never less further along the board. */
export type Cost = (x: number, y: number) => number;

/** Nearer than this to a no-fit polygon's edge counts as on it, mm. */
const TOUCH = SAME_PLACE;
/** Where fewer obstacles are about, it is as quick to look at all their crossings as to find out which are hidden. */
const WORTH_SHADING = 24;

/**
 * The cheapest place in the range that lies inside no obstacle; null where there is none cheaper than `limit`. As cost grows along
 * the board, the cheapest place lies where the way back is barred: on the range's near end, or where two obstacles' edges cross,
 * or where one crosses the range's side; these are all looked at.
 */
export function cheapestSpot(obstacles: readonly Obstacle[], range: Range, cost: Cost, limit: number): Spot | null {
  const near = obstacles.filter(
    ({ minX, maxX, minY, maxY }) => maxX > range.minX && minX < range.maxX && maxY > range.minY && minY < range.maxY,
  );
  near.sort((a, b) => a.minX - b.minX || a.minY - b.minY);
  const grid = new Grid(near, range);
  const shade = near.length < WORTH_SHADING ? null : new Shade(near, range, 2 * TOUCH);
  let best: Spot | null = null;
  let least = limit;
  let barred: Obstacle | undefined;
  const look = (x: number, y: number): void => {
    const price = cost(x, y);
    if (!(price < least) || x < range.minX || x > range.maxX || y < range.minY || y > range.maxY) return;
    if (barred && covers(barred, x, y)) return;
    for (const obstacle of grid.at(x, y)) {
      if (!covers(obstacle, x, y)) continue;
      barred = obstacle;
      return;
    }
    best = { x, y, cost: price };
    least = price;
  };

  look(range.minX, range.minY);
  look(range.minX, range.maxY);
  for (const obstacle of near) alongRange(obstacle, range, look);
  for (const [index, a] of near.entries()) {
    if (cost(Math.max(range.minX, a.minX), range.minY) >= least) break;
    for (let other = index + 1; other < near.length; other++) {
      const b = near[other];
      if (!b || b.minX > a.maxX || cost(Math.max(range.minX, b.minX), range.minY) >= least) break;
      if (b.minY > a.maxY || a.minY > b.maxY || shade?.hides(sharedLevels(a, b))) continue;
      crossings(a, b, look);
    }
  }
  return best;
}

function covers(obstacle: Obstacle, px: number, py: number): boolean {
  if (
    px <= obstacle.minX + TOUCH ||
    px >= obstacle.maxX - TOUCH ||
    py <= obstacle.minY + TOUCH ||
    py >= obstacle.maxY - TOUCH
  )
    return false;
  const { shape } = obstacle;
  const dx = px - obstacle.x;
  const dy = py - obstacle.y;
  return dx > levelAt(shape.left, dy) + TOUCH && dx < levelAt(shape.right, dy) - TOUCH;
}

type Look = (x: number, y: number) => void;

/** Where an obstacle's edge meets the range's near end and its two sides. */
function alongRange({ shape, x, y }: Obstacle, range: Range, look: Look): void {
  for (const level of [range.minY, range.maxY]) {
    if (level - y >= shape.minY && level - y <= shape.maxY) look(x + levelAt(shape.right, level - y), level);
  }
  if (x + shape.minX > range.minX || x + shape.maxX < range.minX) return;
  const nearEnd = range.minX - x;
  look(range.minX, y + shape.minY);
  look(range.minX, y + shape.maxY);
  for (const chain of [shape.left, shape.right]) {
    for (let side = 1; side < chain.x.length; side++) {
      const before = at(chain.x, side - 1) - nearEnd;
      const after = at(chain.x, side) - nearEnd;
      if (before < 0 === after < 0) continue;
      const low = at(chain.y, side - 1);
      look(range.minX, y + low + ((at(chain.y, side) - low) * before) / (before - after));
    }
  }
}

/** A box that holds both obstacles' edges between the levels that both reach. */
function sharedLevels(a: Obstacle, b: Obstacle): Range {
  return {
    minX: Math.min(a.minX, b.minX),
    maxX: Math.max(a.maxX, b.maxX),
    minY: Math.max(a.minY, b.minY),
    maxY: Math.min(a.maxY, b.maxY),
  };
}

/** Where two obstacles' edges cross, as far as a part could be barred there: at least one of the two edges is a far one. */
function crossings(a: Obstacle, b: Obstacle, look: Look): void {
  const low = Math.max(a.minY, b.minY);
  const high = Math.min(a.maxY, b.maxY);
  look(a.x + levelAt(a.shape.right, low - a.y), low);
  look(b.x + levelAt(b.shape.right, low - b.y), low);
  look(a.x + levelAt(a.shape.right, high - a.y), high);
  look(b.x + levelAt(b.shape.right, high - b.y), high);
  const between = [low, high] as const;
  eachCrossing([a.shape.right, a], [b.shape.right, b], between, look);
  eachCrossing([a.shape.right, a], [b.shape.left, b], between, look);
  eachCrossing([b.shape.right, b], [a.shape.left, a], between, look);
}
