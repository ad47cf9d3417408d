import type { Shape, Stroke, Text } from '../../base/drawing';
import { moveDrawing } from '../../base/transform';
import { textWidth } from '../parts/shapes';
import { CAPITAL, glyphsOf, type Point } from './face';

/** How much of a text stands before its anchor. */
const BEFORE = { start: 0, middle: 1 / 2, end: 1 } as const;

/**
 * The shapes with every text turned into the strokes a router or laser engraves it by: same baseline, anchor, angle and height of
 * capitals (mm), no wider than `textWidth` reckons with, and nothing above the capitals. Other shapes pass as they are, in their place.
 */
export function engrave(shapes: readonly Shape[]): Shape[] {
  return shapes.flatMap((shape) => (shape.kind === 'text' ? strokesOf(shape) : [shape]));
}

function strokesOf({ text, x, y, height, angle, anchor }: Text): readonly Shape[] {
  const glyphs = glyphsOf(text);
  const scale = height / CAPITAL;
  const natural = scale * glyphs.reduce((sum, { advance }) => sum + advance, 0);
  // Wide letters are narrowed until the label stays as wide as its part has room for.
  const condense = Math.min(1, textWidth(text, height) / natural);
  let pen = -BEFORE[anchor] * natural * condense;
  const level = glyphs.flatMap(({ advance, strokes }): Stroke[] => {
    const left = pen;
    pen += advance * scale * condense;
    return strokes.map((points) => ({
      kind: 'stroke',
      operation: 'label',
      points: points.map(([along, up]): Point => [left + along * scale * condense, up * scale]),
    }));
  });
  return moveDrawing({ shapes: level }, { dx: x, dy: y, angle }).shapes;
}
