import fc from 'fast-check';
import type { Vertex } from '../../src/base/drawing';
import type { Part } from '../../src/drawing/parts/part';
import { halfDisc, partOf, straight } from './part-shapes';

const length = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

const rectangle = fc.tuple(length(20, 600), length(20, 200)).map(([a, b]) => straight([0, 0], [a, 0], [a, b], [0, b]));
const trapezoid = fc
  .tuple(length(100, 900), length(30, 120), length(30, 120))
  .map(([a, b, c]) => straight([0, -b], [a, -c], [a, c], [0, b]));
const triangle = fc
  .tuple(length(30, 300), length(30, 300), length(-100, 300))
  .map(([a, b, c]) => straight([0, 0], [a, 0], [c, b]));
/** An L, whose hollow is wide enough for others. */
const angle = fc
  .tuple(length(120, 400), length(30, 60))
  .map(([a, b]) => straight([0, 0], [a, 0], [a, b], [b, b], [b, a], [0, a]));
/** A board with a row of slots, as edges for halving joints have. */
const comb = fc.tuple(fc.integer({ min: 1, max: 6 }), length(6, 60)).map(([slots, wide]) =>
  straight(
    [0, 0],
    ...Array.from({ length: slots }, (_, n): [number, number][] => [
      [(2 * n + 1) * wide, 0],
      [(2 * n + 1) * wide, 40],
      [(2 * n + 2) * wide, 40],
      [(2 * n + 2) * wide, 0],
    ]).flat(),
    [(2 * slots + 1) * wide, 0],
    [(2 * slots + 1) * wide, 90],
    [0, 90],
  ),
);
/** A square with a round bite out of it. */
const bitten = length(60, 200).map((side): Vertex[] => [
  { x: 0, y: 0, bulge: 0 },
  { x: side, y: 0, bulge: 0 },
  { x: side, y: side, bulge: 0 },
  { x: 0.8 * side, y: side, bulge: -1 },
  { x: 0.2 * side, y: side, bulge: 0 },
  { x: 0, y: side, bulge: 0 },
]);

const outline = fc.oneof(
  { arbitrary: length(15, 300).map(halfDisc), weight: 4 },
  rectangle,
  trapezoid,
  triangle,
  angle,
  comb,
  bitten,
);

/** One to eight parts of all the shapes there are. */
export const partSet: fc.Arbitrary<Part[]> = fc
  .array(outline, { minLength: 1, maxLength: 8 })
  .map((outlines) => outlines.map((vertices, index) => partOf(`P${index + 1}`, vertices)));
