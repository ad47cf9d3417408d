import { at } from '../../base/at';
import type { FixtureLayout } from '../../design/fixture/fixture';
import type { Joints, LaserJoints, StackedBoard } from '../../design/joints/joints';
import { count } from './pieces';
import type { Shop } from './shop';

/** Whether anything of the form is glued up from layers. */
export function isStacked({ layout: { layers } }: Shop): boolean {
  return Math.max(layers.spine, layers.stations, layers.backing) > 1;
}

/** `3 layers, 18 mm in all`, or one board's own thickness. */
export function builtOf({ layout, board, say }: Shop, what: keyof FixtureLayout['layers']): string {
  const layers = layout.layers[what];
  const each = board[what].thickness;
  return layers === 1
    ? say.thickness(each)
    : `${count(layers, 'layer')} of ${say.thickness(each)}, ${say.thickness(layers * each)} in all`;
}

/** Boards of more than one layer; none but for a laser. */
export function stacksOf(joints: Joints): readonly StackedBoard[] {
  return joints.with === 'laser' ? joints.boards.filter(({ layers }) => layers.length > 1) : [];
}

/** How thick a stacked board is, face to face, mm. */
export function thicknessOf({ layers }: StackedBoard): number {
  return at(layers, -1).high - at(layers, 0).low;
}

/** Dowels or bolts to have at hand: how many of each diameter and length, mm; thinnest first. */
export function dowelsToBuy({
  boards,
}: LaserJoints): { readonly diameter: number; readonly length: number; readonly number: number }[] {
  const kinds = new Map<string, { diameter: number; length: number; number: number }>();
  for (const board of boards) {
    const length = thicknessOf(board);
    for (const { diameter } of board.dowels) {
      const key = `${diameter.toFixed(3)} ${length.toFixed(3)}`;
      kinds.set(key, { diameter, length, number: (kinds.get(key)?.number ?? 0) + 1 });
    }
  }
  return [...kinds.values()].sort((a, b) => a.diameter - b.diameter || a.length - b.length);
}
