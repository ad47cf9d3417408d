import { at } from '../../base/at';
import { toDegrees } from '../../base/angle';
import type { Drawing, Shape, Text } from '../../base/drawing';
import { outline as outlineLoop } from '../../base/outline';
import { scaleDrawing } from '../../base/transform';
import type { Bend, Panel } from '../../panel';
import type { SeamLayout } from '../../panel/seams/seam';
import { circle, cross, mark, textWidth } from '../parts/shapes';
import { lengthOf, middleLine, textAlong, turnedToRead } from './along-line';
import { bendLines } from './bend-lines';

/** A panel's flat as it comes out of its trims, to be cut out of paper and folded: each drawing in a line of its own, mm on the paper. */
export interface PaperModel {
  readonly cut: Drawing;
  /** Both tangent lines of the bends that go up, toward whoever looks at the marked face, and of those that go down. */
  readonly up: Drawing;
  readonly down: Drawing;
  /** Each bend's step and what is done in it, between its lines. */
  readonly names: Drawing;
  /** The seams' holes: a cross in each one's middle, and its edge where it is drilled before the bends. */
  readonly seams: Drawing;
}

/** Letters on the paper, mm, where they find room. */
const LETTERS = 2.6;

/** From a seam's hole's middle to the ends of its cross, mm on the paper. */
const CROSS = 0.8;

/** The model at 1 : `parts`. `stepOf`: number of a bend's step in the order of work, from 1; `seams`: those whose holes are shown. */
export function paperModel(
  panel: Panel,
  stepOf: (bend: number) => number,
  parts: number,
  seams: readonly SeamLayout[] = [],
): PaperModel {
  const small = (shapes: readonly Shape[]): Drawing => scaleDrawing({ shapes }, 1 / parts);
  const creases = (turn: Bend['turn']): Drawing => {
    const bends = panel.bends.filter((bend) => bend.turn === turn);
    return small(
      bends.flatMap((bend) => {
        const { base, leg } = bendLines(bend, { held: 'base', pulled: null });
        return [mark(...base), mark(...leg)];
      }),
    );
  };
  return {
    cut: small([
      outlineLoop(panel.outline),
      ...panel.holes.map((vertices) => ({ kind: 'loop', operation: 'hole', vertices }) as const),
    ]),
    up: creases('up'),
    down: creases('down'),
    names: small(panel.bends.flatMap((bend, index) => nameOf(bend, stepOf(index), parts))),
    seams: small(seams.flatMap((layout) => holesOf(layout, CROSS * parts))),
  };
}

function holesOf({ seam, rows }: SeamLayout, half: number): Shape[] {
  return rows
    .flat()
    .flatMap(({ x, y }) => [
      ...cross([x, y], half),
      ...(seam.drill === 'now' ? [circle('hole', x, y, seam.fastener.hole)] : []),
    ]);
}

function nameOf(bend: Bend, step: number, parts: number): Text[] {
  const middle = turnedToRead(middleLine(bend));
  const text = `${step}. ${bend.name}: ${bend.turn} ${toDegrees(bend.angle).toFixed(0)}°`;
  const height = Math.min(LETTERS * parts, (0.9 * lengthOf(middle)) / textWidth(text, 1));
  return textAlong(text, middle, { out: -height / 2, height, share: 0.5 });
}

/** Scales a model may be made at, 1 : each. */
export const MODEL_SCALES: readonly number[] = [1, 2, 2.5, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 75, 100];

/** The largest of those scales at which something fits into a room, mm; the smallest where none does. */
export function modelScale(
  size: { readonly width: number; readonly height: number },
  room: { readonly width: number; readonly height: number },
): number {
  const fits = (parts: number): boolean => size.width <= parts * room.width && size.height <= parts * room.height;
  return MODEL_SCALES.find(fits) ?? at(MODEL_SCALES, -1);
}
