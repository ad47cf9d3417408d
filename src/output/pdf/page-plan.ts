import { pack2D } from 'binpackingjs/2d';
import type { Bounds } from '../../base/bounds';
import { InternalError } from '../../base/errors';
import type { Move } from '../../base/transform';
import type { PaperChoice } from '../../job/job';
import { cutRoll, isRoll, pagesOf, type Page } from './paper';
import { gridFor, placeAt, tilesOf, turn, type Grid, type Tile } from './tile-plan';
import { SAME_PLACE } from '../../base/tolerance';

/** Which drawing stands on which page: small ones share pages, large ones are spread over several. Lengths mm. */

/** What must be placed: the drawing's bounds, and the block of drawing and caption it takes on a shared page. */
export interface Item {
  readonly bounds: Bounds;
  /** Contains `bounds`; in the drawing's coordinates. */
  readonly block: Bounds;
}

/** One item on a shared page. */
export interface Placed {
  /** Which item, counted from 0. */
  readonly item: number;
  readonly place: Move;
}

export type PlannedPage =
  | { readonly kind: 'shared'; readonly page: Page; readonly placed: readonly Placed[] }
  | { readonly kind: 'tile'; readonly page: Page; readonly item: number; readonly grid: Grid; readonly tile: Tile };

/** Clear paper between two blocks, mm. */
const GAP = 4;

/** Every page, in the order of the first item it shows. */
export function planPages(items: readonly Item[], paper: PaperChoice): PlannedPage[] {
  const small = items.flatMap((item, index) => (pagesOf(paper).some((page) => fits(item, page)) ? [index] : []));
  const large = items.flatMap((_, index) => (small.includes(index) ? [] : [index]));
  const pages = [
    ...share(small, items, paper),
    ...large.flatMap((item): PlannedPage[] => {
      const grid = gridFor(itemAt(items, item).bounds, paper);
      return tilesOf(grid).map((tile) => ({ kind: 'tile', page: grid.page, item, grid, tile }));
    }),
  ];
  return pages.sort((a, b) => firstItem(a) - firstItem(b));
}

function firstItem(page: PlannedPage): number {
  return page.kind === 'tile' ? page.item : Math.min(...page.placed.map(({ item }) => item));
}

function itemAt(items: readonly Item[], index: number): Item {
  const item = items[index];
  if (!item) throw new InternalError(`there is no drawing ${index} to place`);
  return item;
}

function sizeOf({ block }: Item): { width: number; height: number } {
  return { width: block.maxX - block.minX, height: block.maxY - block.minY };
}

function fits(item: Item, { frame }: Page): boolean {
  return [false, true].some((turned) => {
    const { width, height } = turn(sizeOf(item), turned);
    return width <= frame.width + SAME_PLACE && height <= frame.height + SAME_PLACE;
  });
}

/** Packs the small items, trying each way to hold the paper first; what fits only the other way goes on pages of its own. */
function share(small: readonly number[], items: readonly Item[], paper: PaperChoice): PlannedPage[] {
  const pages = pagesOf(paper);
  const orders = [pages, [...pages].reverse()];
  const plans = orders.map((order) => {
    let left = small;
    return order.flatMap((page) => {
      const now = left.filter((index) => fits(itemAt(items, index), page));
      left = left.filter((index) => !now.includes(index));
      return pack(now, items, page, isRoll(paper));
    });
  });
  return plans.reduce((best, plan) => (plan.length < best.length ? plan : best));
}

function pack(indices: readonly number[], items: readonly Item[], page: Page, roll: boolean): PlannedPage[] {
  if (indices.length === 0) return [];
  const { frame } = page;
  // Every box carries the gap on its right and top; the frame is one gap larger to take the last of them.
  const bin = { width: frame.width + GAP + SAME_PLACE, height: frame.height + GAP + SAME_PLACE };
  const boxes = indices.map((item) => {
    const size = sizeOf(itemAt(items, item));
    return { width: size.width + GAP, height: size.height + GAP, item };
  });
  const packed = pack2D({ bins: indices.map(() => bin), boxes });
  if (packed.unpackedBoxes.length > 0) throw new InternalError('a drawing that fits a page was not placed');
  return packed.packedBins
    .filter(({ boxes: held }) => held.length > 0)
    .map(({ boxes: held }): PlannedPage => {
      const used = Math.max(...held.map((box) => box.y + box.height)) - GAP;
      const cut = roll ? cutRoll(page, used) : page;
      // From the top of the frame down, as one reads.
      const top = cut.frame.y + cut.frame.height;
      const placed = held.map((box) => {
        const { item } = box.sourceBox as (typeof boxes)[number];
        return {
          item,
          place: placeAt(itemAt(items, item).block, box.rotated, cut.frame.x + box.x, top - box.y - (box.height - GAP)),
        };
      });
      return { kind: 'shared', page: cut, placed: placed.sort((a, b) => a.item - b.item) };
    });
}
