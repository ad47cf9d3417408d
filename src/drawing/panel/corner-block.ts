import { boundsOf } from '../../base/bounds';
import type { Shape } from '../../base/drawing';
import { fileName } from '../../base/file-name';
import { mirrorShapes } from '../../base/mirror';
import { corner, outline } from '../../base/outline';
import type { CornerBlock, Panel } from '../../panel';
import { stackFirst } from '../aids/room';
import { checkPart } from '../parts/check-part';
import type { Part } from '../parts/part';
import { circle } from '../parts/shapes';

/** A corner's block as its layers are drawn. */
export interface BlockToDraw {
  readonly panel: Panel;
  /** Of the corner: `long/short`. */
  readonly name: string;
  readonly block: CornerBlock;
  /** Of the dowels' holes, mm. */
  readonly dowel: number;
  /** Id of the layers' board, and how thick it is. */
  readonly stock: string;
  readonly board: number;
  /** For which side of a pair; null for a panel that is made once. */
  readonly hand: 'left' | 'right' | null;
}

const LETTERS = 5;

/** What the files of a corner's block begin with; `name`: the corner's. */
export function blockId(name: string): string {
  return `corner-${fileName(name.replaceAll('/', '-'))}`;
}

/** Every layer of a corner's block as a piece of board to cut, from the base up, seen on its upper face; checked. */
export function drawCornerBlock(given: BlockToDraw): Part[] {
  const { block, name, hand, stock, board } = given;
  const side = hand === null ? '' : `-${hand}`;
  return block.layers.map((_, index): Part => {
    const part: Part = {
      id: `${blockId(name)}${side}-${index + 1}`,
      kind: 'block',
      name: `Block of corner ${name}${hand === null ? '' : `, ${hand}`}, layer ${index + 1} of ${block.layers.length}`,
      stock,
      thickness: board,
      drawing: { shapes: drawLayer(given, index) },
    };
    checkPart(part);
    return part;
  });
}

function drawLayer({ panel, name, block, dowel, hand }: BlockToDraw, index: number): Shape[] {
  const layer = block.layers[index];
  if (!layer) return [];
  const isDown = panel.bends[block.between[0]]?.turn === 'down';
  // What is up when the block stands on the base is seen from the marked face's side, or mirrored from the other.
  const shapes: Shape[] = [
    outline(layer.outline.map((place) => corner(place))),
    ...block.holes.map(([x, y]) => circle('hole', x, y, dowel)),
  ];
  const { minX, maxX } = boundsOf({ shapes });
  const seen = (hand === 'right') === isDown ? shapes : mirrorShapes(shapes, minX + maxX);
  const edge = seen.flatMap((shape) =>
    shape.kind === 'loop' ? shape.vertices.map(({ x, y }) => [x, y] as const) : [],
  );
  const holes = seen.flatMap((shape) => (shape.kind === 'circle' ? [shape] : []));
  const [which, number, face] = [
    `CORNER ${name.toUpperCase()}${hand === null ? '' : ` ${hand.toUpperCase()}`}`,
    `LAYER ${index + 1} OF ${block.layers.length}`,
    'THIS FACE UP',
  ];
  const wordings = [[which, number, face], [number, face], [`${index + 1} UP`]];
  const over = Math.max(...holes.map(({ y, radius }) => y + radius)) + 2;
  const under = Math.min(...holes.map(({ y, radius }) => y - radius)) - 2;
  const above = stackFirst(edge, wordings, LETTERS, { low: over });
  return [...seen, ...(above.length > 0 ? above : stackFirst(edge, wordings, LETTERS, { high: under }))];
}
