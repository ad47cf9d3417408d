import type { Bounds } from '../../base/bounds';
import type { Text } from '../../base/drawing';
import { wrap, type Lettering } from './lettering';

/** Name and notes under a drawing that shares its page. */
export interface Caption {
  readonly lines: readonly Text[];
  /** The drawing's bounds and the caption's, mm. */
  readonly block: Bounds;
}

const TITLE_HEIGHT = 2.6;
const NOTE_HEIGHT = 2;
/** From one baseline to the next, over the height of a capital. */
const LEADING = 1.7;
/** A caption is at least this wide, mm: narrower and every word would stand alone. */
const LEAST_WIDTH = 55;

export function captionUnder(bounds: Bounds, title: string, notes: readonly string[], letters: Lettering): Caption {
  const width = Math.max(LEAST_WIDTH, bounds.maxX - bounds.minX);
  const rows = [title, ...notes].flatMap((text, index) => {
    const height = index === 0 ? TITLE_HEIGHT : NOTE_HEIGHT;
    return wrap(letters, text, height, width).map((line) => ({ line, height }));
  });
  let y = bounds.minY;
  const lines = rows.map(({ line, height }): Text => {
    y -= height * LEADING;
    return { kind: 'text', operation: 'label', x: bounds.minX, y, height, angle: 0, anchor: 'start', text: line };
  });
  return { lines, block: { ...bounds, minY: y - NOTE_HEIGHT / 2, maxX: Math.max(bounds.maxX, bounds.minX + width) } };
}
