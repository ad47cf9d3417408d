import { at } from '../../base/at';
import type { Shaped } from '../parts/part';
import { fillByBoxes } from './boxes';
import { emptyBoards, fill, NoFits, type Filled, type Growth } from './fill';
import { itemsOf, type Item } from './item';
import type { Supply } from './stock';
import { isHalfDisc, pair, pairings, single, type Pairing, type Unit } from './unit';
import { SAME_PLACE } from '../../base/tolerance';

/** How the edge follows a long layout. */
export interface Watch {
  /** Called between trials: how many are done, of so many at most. */
  readonly progress?: (done: number, total: number) => void;
}

/** How much is tried: trials, and no-fit polygons asked for. Counted, not timed, so that every machine finds the same layout. */
const MOST_TRIALS = 48;
const MOST_WORK = 120_000;

/** Costs of reaching further along the board that have proved of use, see `fill`. */
const STRETCHES = [0.3, 0, 10] as const;

interface Trial {
  readonly units: readonly Unit[];
  readonly stretch: number;
}

/**
 * Parts of one board and thickness → filled boards: fewest whole boards, then fewest offcuts, then the least length used. Orders and
 * pairings that do well as a rule are tried first, then small changes to the best so far; the boxes' layout stands where none beats it.
 * Null where a part fits nowhere. `gap`: between parts, mm.
 */
export function nest(
  parts: readonly Shaped[],
  supply: Supply,
  gap: number,
  watch: Watch = {},
): readonly Filled[] | null {
  const items = itemsOf(parts.toSorted(byId), gap / 2);
  const starts = startingTrials(items, supply.grain ?? false);
  const noFits = new NoFits();
  const chance = chances();
  const empty = [emptyBoards(supply)];
  let best: readonly Filled[] | null = null;
  let leader: { readonly trial: Trial; readonly growth: Growth } | null = null;
  for (let done = 0; done < MOST_TRIALS && noFits.asked < MOST_WORK; done++) {
    watch.progress?.(done, MOST_TRIALS);
    const trial: Trial | null = starts[done] ?? (leader && changed(leader.trial, chance));
    if (!trial || (best && isLeast(best, at(starts, 0).units, supply.border))) break;
    const start: Growth = leader ? [...empty, ...leader.growth.slice(1, 1 + inCommon(leader.trial, trial))] : empty;
    const growth = fill(trial.units, {
      rule: { supply, stretch: trial.stretch },
      start,
      isHopeless: (boards) => best !== null && isBetter(best, boards),
      noFits,
    });
    if (!growth) continue;
    leader = { trial, growth };
    best = used(growth);
  }
  watch.progress?.(MOST_TRIALS, MOST_TRIALS);
  const boxes = supply.grain ? null : fillByBoxes(items, supply, gap);
  return best && !(boxes && isBetter(boxes, best)) ? best : boxes;
}

/** Boards that hold anything, once all is laid out. */
function used(growth: Growth): Filled[] {
  return at(growth, -1).filter(({ members }) => members.length > 0);
}

/** Whether no layout can be better: all on one board, and no further along it than the widest part alone reaches. */
function isLeast(boards: readonly Filled[], singles: readonly Unit[], border: number): boolean {
  return (
    boards.length === 1 &&
    (boards[0]?.reach ?? Infinity) <= border + Math.max(...singles.map(({ short }) => short)) + SAME_PLACE
  );
}

/** How many units two trials lay out alike from the start. */
function inCommon(a: Trial, b: Trial): number {
  if (a.stretch !== b.stretch) return 0;
  const different = a.units.findIndex((unit, index) => unit !== b.units[index]);
  return different < 0 ? a.units.length : different;
}

const byId = (a: Shaped, b: Shaped): number => (a.id < b.id ? -1 : a.id > b.id ? 1 : 0);

/** Whether a layout is better than another: boards, offcuts, length used, and at last how far across the parts reach. */
export function isBetter(a: readonly Filled[], b: readonly Filled[]): boolean {
  const counts = (boards: readonly Filled[]): readonly number[] => {
    const filled = boards.filter(({ members }) => members.length > 0);
    return [
      filled.filter(({ stock }) => stock.offcut === null).length,
      filled.length,
      filled.reduce((sum, { reach }) => sum + reach, 0),
      filled.reduce((sum, { across }) => sum + across, 0),
    ];
  };
  const [first, second] = [counts(a), counts(b)];
  for (const [index, count] of first.entries()) {
    const difference = count - at(second, index);
    if (Math.abs(difference) > SAME_PLACE) return difference < 0;
  }
  return false;
}

/** Largest first by one measure and another, half-discs single and paired. */
function startingTrials(items: readonly Item[], grain: boolean): Trial[] {
  const groupings = [items.map(single), ...pairings.map((pairing) => paired(items, pairing))]
    .filter((units, index) => index === 0 || units.length < items.length)
    .map((units) => (grain ? units.map(alongGrain) : units));
  const measures = ['long', 'area', 'short'] as const;
  return STRETCHES.flatMap((stretch) =>
    measures.flatMap((measure) =>
      groupings.map((units) => ({ units: units.toSorted((a, b) => b[measure] - a[measure]), stretch })),
    ),
  );
}

/** The unit in those poses only that leave its parts' own x along the board. */
function alongGrain(unit: Unit): Unit {
  return { ...unit, poses: unit.poses.filter(({ members }) => members.every(({ quarters }) => quarters % 2 === 0)) };
}

/** Half-discs in pairs of the nearest radius, the rest by themselves. */
function paired(items: readonly Item[], pairing: Pairing): Unit[] {
  const halfDiscs = items.filter(isHalfDisc).sort((a, b) => b.area - a.area);
  const even = halfDiscs.length - (halfDiscs.length % 2);
  const pairs = halfDiscs.slice(0, even).flatMap((first, index) => {
    const second = halfDiscs[index + 1];
    return index % 2 === 0 && second ? [pair(first, second, pairing)] : [];
  });
  const taken = new Set(halfDiscs.slice(0, even));
  return [...pairs, ...items.filter((item) => !taken.has(item)).map(single)];
}

/** One unit moved to another place in the order, or two exchanged; now and then with another cost of reaching. */
function changed({ units, stretch }: Trial, chance: (below: number) => number): Trial {
  const order = [...units];
  const [from, to] = [chance(order.length), chance(order.length)];
  const [a, b] = [order[from], order[to]];
  if (a && b && chance(2) === 0) [order[from], order[to]] = [b, a];
  else order.splice(to, 0, ...order.splice(from, 1));
  return { units: order, stretch: chance(4) === 0 ? (STRETCHES[chance(STRETCHES.length)] ?? stretch) : stretch };
}

/** Whole numbers below a bound, the same sequence every time. Source: the quick generator of Numerical Recipes (from memory). */
function chances(): (below: number) => number {
  let state = 1;
  return (below) => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return Math.floor((state / 2 ** 32) * below);
  };
}
