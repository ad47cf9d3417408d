import { pack2D } from 'binpackingjs/2d';
import { boundsOf, type Bounds } from '../base/bounds';
import { InternalError } from '../base/errors';
import { moveDrawing } from '../base/transform';
import type { Part } from '../parts/part';
import { findBoard } from '../tables/look-up';
import type { Tables } from '../tables/tables';
import { checkSheet } from './check-sheet';
import type { Placement, Sheet } from './sheet';

/** More boards of one kind than this are never laid out: each part fits one (fixture/board-fit.ts sees to it), so it would be our mistake. */
const MOST_SHEETS = 100;

/** Parts → stock boards, one kind and thickness of board at a time, by bounding boxes; nothing overlaps, checked. */
export function layOutSheets(parts: readonly Part[], tables: Tables): Sheet[] {
  return [...groupByBoard(parts).values()].flatMap((group) => layOutGroup(group, tables));
}

function groupByBoard(parts: readonly Part[]): Map<string, Part[]> {
  const groups = new Map<string, Part[]>();
  for (const part of parts) {
    const key = `${part.stock} ${part.thickness}`;
    groups.set(key, [...(groups.get(key) ?? []), part]);
  }
  return groups;
}

function layOutGroup(parts: readonly Part[], tables: Tables): Sheet[] {
  const [first] = parts;
  const board = first && findBoard(tables, first.stock);
  if (!first || !board) throw new InternalError('a group of parts without a board');
  const { partGap: gap, boardBorder: border } = tables.rules;
  // Every box carries the gap on its right and top; the board, less its border, is one gap larger to take the last of them.
  const bin = { width: board.length - 2 * border + gap, height: board.width - 2 * border + gap };
  const bounds = new Map(parts.map((part) => [part, boundsOf(part.drawing)]));
  const boxes = parts.map((part) => {
    const size = sizeOf(bounds.get(part));
    return { width: size.width + gap, height: size.height + gap, part };
  });
  const packed = pack2D({ bins: Array.from({ length: Math.min(parts.length, MOST_SHEETS) }, () => bin), boxes });
  if (packed.unpackedBoxes.length > 0) throw new InternalError('a part does not fit its board');
  return packed.packedBins
    .filter((packedBin) => packedBin.boxes.length > 0)
    .map((packedBin, index) => {
      const placed = packedBin.boxes.map((box) => {
        const part = (box.sourceBox as (typeof boxes)[number]).part;
        return { part, placement: placementOf(part, bounds.get(part), box.rotated, border + box.x, border + box.y) };
      });
      const sheet: Sheet = {
        id: `board-${board.id.replaceAll(/[^a-z0-9-]/g, '_')}-${index + 1}`,
        stock: board.id,
        thickness: first.thickness,
        width: board.width,
        length: board.length,
        placements: placed.map(({ placement }) => placement),
        drawing: { shapes: placed.flatMap(({ part, placement }) => moveDrawing(part.drawing, placement).shapes) },
      };
      checkSheet(sheet, parts, gap, border);
      return sheet;
    });
}

function sizeOf(bounds: Bounds | undefined): { width: number; height: number } {
  if (!bounds) throw new InternalError('a part without bounds');
  return { width: bounds.maxX - bounds.minX, height: bounds.maxY - bounds.minY };
}

/** Moves a part's lower left corner, after a quarter turn where it is turned, to `x`, `y`. */
function placementOf(part: Part, bounds: Bounds | undefined, turned: boolean, x: number, y: number): Placement {
  if (!bounds) throw new InternalError('a part without bounds');
  return turned
    ? { part: part.id, angle: Math.PI / 2, dx: x + bounds.maxY, dy: y - bounds.minX }
    : { part: part.id, angle: 0, dx: x - bounds.minX, dy: y - bounds.minY };
}
