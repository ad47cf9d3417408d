import { boundsOf, type Bounds } from '../base/bounds';
import { InternalError } from '../base/errors';
import { moveDrawing } from '../base/transform';
import type { Part } from '../parts/part';
import type { Sheet } from './sheet';

const SLACK = 1e-6;

/** Throws unless every placed part lies within the board's border, none nearer another than the gap, none placed twice. */
export function checkSheet(sheet: Sheet, parts: readonly Part[], gap: number, border: number): void {
  const placed = sheet.placements.map((placement) => {
    const part = parts.find(({ id }) => id === placement.part);
    if (!part) throw new InternalError(`board ${sheet.id} holds an unknown part ${placement.part}`);
    return { id: part.id, bounds: boundsOf(moveDrawing(part.drawing, placement)) };
  });
  for (const [index, a] of placed.entries()) {
    if (!within(a.bounds, sheet, border)) throw new InternalError(`part ${a.id} lies over the border of board ${sheet.id}`);
    for (const b of placed.slice(index + 1)) {
      if (a.id === b.id) throw new InternalError(`part ${a.id} is placed twice`);
      if (apart(a.bounds, b.bounds) < gap - SLACK) throw new InternalError(`parts ${a.id} and ${b.id} lie too near each other on board ${sheet.id}`);
    }
  }
}

function within(bounds: Bounds, sheet: Sheet, border: number): boolean {
  return (
    bounds.minX >= border - SLACK && bounds.minY >= border - SLACK && bounds.maxX <= sheet.length - border + SLACK && bounds.maxY <= sheet.width - border + SLACK
  );
}

/** Clear distance between two boxes along the axis that parts them more; negative where they overlap. */
function apart(a: Bounds, b: Bounds): number {
  return Math.max(a.minX - b.maxX, b.minX - a.maxX, a.minY - b.maxY, b.minY - a.maxY);
}
