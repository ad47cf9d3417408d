import { at } from '../../base/at';
import { pack2D } from 'binpackingjs/2d';
import { InternalError } from '../../base/errors';
import type { Filled } from './fill';
import type { Item, Pose } from './item';
import type { Stock, Supply } from './stock';

/**
 * Parts laid out by the boxes round them, offcuts first: the yardstick, and now and then the better layout. Null where a part fits nowhere.
 * `gap`: between parts, mm.
 */
export function fillByBoxes(items: readonly Item[], supply: Supply, gap: number): Filled[] | null {
  const { border } = supply;
  const stocks: Stock[] = [...supply.offcuts, ...items.map(() => supply.board)];
  // Every box carries the gap on its right and top; the board, less its border, is one gap larger to take the last of them.
  const bins = stocks.map(({ length, width }) => ({
    width: length - 2 * border + gap,
    height: width - 2 * border + gap,
  }));
  const boxes = items.map((item) => {
    const { minX, minY, maxX, maxY } = item.poses[0].bounds;
    return { width: maxX - minX + gap, height: maxY - minY + gap, item };
  });
  const packed = pack2D({ bins: bins.filter(({ width, height }) => width > 0 && height > 0), boxes });
  if (packed.unpackedBoxes.length > 0) return null;
  const usable = stocks.filter((_, index) => at(bins, index).width > 0 && at(bins, index).height > 0);
  return packed.packedBins.flatMap((bin, index): Filled[] => {
    const stock = usable[index];
    if (!stock) throw new InternalError('more boards packed than there are');
    if (bin.boxes.length === 0) return [];
    const laid = bin.boxes.map((box) => {
      const { item } = box.sourceBox as (typeof boxes)[number];
      const pose: Pose = item.poses[box.rotated ? 1 : 0];
      return { item, pose, x: border + box.x - pose.bounds.minX, y: border + box.y - pose.bounds.minY };
    });
    return [
      {
        stock,
        members: laid.map(({ item, pose, x, y }) => ({ part: item.part, quarters: pose.quarters, x, y })),
        pieces: [],
        reach: Math.max(...laid.map(({ pose, x }) => x + pose.bounds.maxX)),
        across: Math.max(...laid.map(({ pose, y }) => y + pose.bounds.maxY)),
      },
    ];
  });
}
