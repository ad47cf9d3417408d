import type { Vertex } from '../../src/base/drawing';
import type { Part } from '../../src/drawing/parts/part';
import { fillByBoxes } from '../../src/drawing/boards/boxes';
import type { Filled } from '../../src/drawing/boards/fill';
import { itemsOf } from '../../src/drawing/boards/item';
import { nest } from '../../src/drawing/boards/nest';
import type { Supply } from '../../src/drawing/boards/stock';
import { halfDisc, partOf, straight } from '../helpers/part-shapes';

/** True shapes, the boxes of the same parts laid out by the same search, and the bounding-box packer: reach along the boards, mm. */
export interface Row {
  readonly name: string;
  readonly parts: number;
  readonly ms: number;
  readonly shapes: number;
  readonly boxes: number;
  readonly packer: number;
}

const board: Supply = { offcuts: [], board: { width: 1220, length: 2440, offcut: null }, border: 10 };
const GAP = 8;

/** Fujita, Akagi & Hirokawa 1993, the `fu` set of the cutting-and-packing group ESICUP: a strip 38 wide, 12 pieces, quarter turns. */
const fu: readonly (readonly (readonly [number, number])[])[] = [
  [
    [0, 0],
    [10, 0],
    [10, 10],
    [0, 10],
  ],
  [
    [0, 0],
    [10, 0],
    [10, 10],
    [0, 10],
  ],
  [
    [0, 0],
    [14, 0],
    [14, 9],
    [0, 9],
  ],
  [
    [0, 0],
    [14, 0],
    [7, 7],
  ],
  [
    [0, 9],
    [0, 0],
    [14, 9],
  ],
  [
    [0, 0],
    [14, 0],
    [14, 14],
    [0, 14],
  ],
  [
    [0, 0],
    [10, 4],
    [10, 9],
    [0, 9],
  ],
  [
    [0, 0],
    [5, 0],
    [5, 9],
    [0, 9],
  ],
  [
    [0, 0],
    [14, 0],
    [14, 14],
  ],
  [
    [0, 0],
    [10, 0],
    [10, 10],
    [0, 14],
  ],
  [
    [0, 8],
    [4, 0],
    [8, 8],
  ],
  [
    [0, 0],
    [14, 0],
    [7, 12],
  ],
];
/** The layout reckons in mm of wood: the set is made larger so that its clearances do not count. */
const FU_SCALE = 50;

export function rows(): Row[] {
  const taper = (from: number, to: number, count: number): Vertex[][] =>
    Array.from({ length: count }, (_, index) => halfDisc(from + ((to - from) * index) / (count - 1)));
  const fuStrip: Supply = {
    offcuts: [],
    board: { width: 38.0038 * FU_SCALE, length: 200 * FU_SCALE, offcut: null },
    border: 0,
  };
  const fuParts = fu.map((corners) => straight(...corners.map(([x, y]) => [x * FU_SCALE, y * FU_SCALE] as const)));
  return [
    row('half-discs 38 to 50 mm', taper(38, 50, 40), board, GAP),
    row('half-discs 60 to 150 mm', taper(60, 150, 30), board, GAP),
    row('half-discs 150 to 200 mm', taper(150, 200, 24), board, GAP),
    row('half-discs 38 to 50 mm', taper(38, 50, 100), board, GAP),
    row(`fu × ${FU_SCALE} (published best 31.57 × ${FU_SCALE}, from memory)`, fuParts, fuStrip, 0),
  ];
}

function row(name: string, outlines: readonly (readonly Vertex[])[], supply: Supply, gap: number): Row {
  const parts = outlines.map((vertices, index) => partOf(`P${index}`, vertices));
  const items = itemsOf(parts, gap / 2);
  const boxed: Part[] = items.map(({ part, poses: [{ bounds }] }) =>
    partOf(
      part.id,
      straight(
        [bounds.minX, bounds.minY],
        [bounds.maxX, bounds.minY],
        [bounds.maxX, bounds.maxY],
        [bounds.minX, bounds.maxY],
      ),
    ),
  );
  const began = performance.now();
  const shapes = reach(nest(parts, supply, gap));
  const ms = performance.now() - began;
  return {
    name,
    parts: parts.length,
    ms,
    shapes,
    boxes: reach(nest(boxed, supply, gap)),
    packer: reach(fillByBoxes(items, supply, gap)),
  };
}

function reach(boards: readonly Filled[] | null): number {
  return (boards ?? []).reduce((sum, filled) => sum + filled.reach, 0);
}
