import { placeWords } from './overall';
import type { Loop } from '../../base/drawing';
import type { Part } from './part';

/** Letters' heights tried, tallest first, mm. */
const HEIGHTS = [5, 3.5, 2.3, 1.8];

/**
 * The part with the name of its form written on it, where several forms' parts lie on one board: clear of everything else, or over marks where there is no
 * such place. A part with no room for it stays as it is; the board's own drawing in the sheet names it all the same.
 */
export function withFormName(part: Part, form: string): Part {
  const outline = part.drawing.shapes.find(
    (shape): shape is Loop => shape.kind === 'loop' && shape.operation === 'outline',
  );
  if (!outline) return part;
  const others = part.drawing.shapes.filter((shape) => shape !== outline);
  const unmarked = others.filter(({ kind }) => kind !== 'line');
  const name = form.toUpperCase();
  for (const words of [`FORM ${name}`, name]) {
    const found =
      placeWords(words, outline, others, HEIGHTS) ?? placeWords(words, outline, unmarked, HEIGHTS.slice(-1));
    if (found) return { ...part, drawing: { shapes: [...part.drawing.shapes, found] } };
  }
  return part;
}
