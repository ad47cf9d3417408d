import type { OpenedDrawing } from '../../draft';

const NAME = 'bendbuck.drawing';
/** A longer drawing is not kept: browsers give a page a few MB. Characters. */
const MOST = 2_000_000;

/** The drawing last opened in this tab, for when the page is loaded again; null where there is none. */
export function keptDrawing(): OpenedDrawing | null {
  try {
    const kept: unknown = JSON.parse(sessionStorage.getItem(NAME) ?? 'null');
    if (typeof kept !== 'object' || kept === null || !('name' in kept) || !('text' in kept)) return null;
    const { name, text } = kept;
    return typeof name === 'string' && typeof text === 'string' ? { name, text } : null;
  } catch {
    return null;
  }
}

/** Keeps it, where the browser lets it be kept. */
export function keepDrawing(drawing: OpenedDrawing): void {
  try {
    if (drawing.text.length <= MOST) sessionStorage.setItem(NAME, JSON.stringify(drawing));
  } catch {
    // A browser set to keep nothing asks for the drawing again.
  }
}
