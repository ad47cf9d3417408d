import type { Text } from '../../base/drawing';
import { levelAt } from '../../base/polygon';
import { label, textWidth } from '../parts/shapes';

type Place = readonly [number, number];

/** Free stretch of a horizontal band inside a polygon, mm. */
export interface Room {
  readonly from: number;
  readonly to: number;
}

/** Left between a label and the edge of what it stands on, mm. */
const MARGIN = 1.5;
/** From one line to the next, as a share of the letters' height. */
const PITCH = 1.6;
/** Horizontal lines looked along to see what a band leaves free. */
const LOOKS = 7;

/** The widest stretch of x that lies inside a closed polygon all the way from y = `low` to `high`; null where there is none. */
export function roomIn(polygon: readonly Place[], low: number, high: number): Room | null {
  let free: Room[] = [{ from: -Infinity, to: Infinity }];
  for (let look = 0; look < LOOKS && free.length > 0; look++) {
    const stretches = insideAt(polygon, low + ((high - low) * look) / (LOOKS - 1));
    free = free
      .flatMap((a) => stretches.map((b) => ({ from: Math.max(a.from, b.from), to: Math.min(a.to, b.to) })))
      .filter(({ from, to }) => to > from);
  }
  return free.reduce<Room | null>(
    (best, room) => (best && best.to - best.from >= room.to - room.from ? best : room),
    null,
  );
}

/** Where the horizontal line at `y` runs inside the polygon (even–odd rule). */
function insideAt(polygon: readonly Place[], y: number): Room[] {
  const crossings: number[] = [];
  let before = polygon.at(-1);
  for (const corner of polygon) {
    if (before && before[1] > y !== corner[1] > y) crossings.push(levelAt(before, corner, y));
    before = corner;
  }
  crossings.sort((a, b) => a - b);
  return crossings.flatMap((from, index): Room[] =>
    index % 2 === 0 ? [{ from, to: crossings[index + 1] ?? from }] : [],
  );
}

/** Letters are tried this high, as shares of the tallest asked for. */
const SHARES = [1, 0.85, 0.7, 0.6, 0.5, 0.42, 0.36];
/** Places between top (0) and bottom (1) where a stack of lines is tried, the middle first. */
const TRIES = 16;
const FROM_THE_MIDDLE = Array.from(
  { length: TRIES + 1 },
  (_, index) => 0.5 + ((index % 2 === 0 ? 1 : -1) * Math.ceil(index / 2)) / TRIES,
);

/**
 * Lines of text one under another, all of one height, inside a polygon and between two heights: as high as `tallest` or as there is
 * room for, as near the middle as they fit. Nothing where they would be too small to read.
 */
export function stackLines(
  polygon: readonly Place[],
  lines: readonly string[],
  tallest: number,
  { low = -Infinity, high = Infinity } = {},
): Text[] {
  const ys = polygon.map(([, y]) => y);
  const [bottom, top] = [Math.max(low, Math.min(...ys) + MARGIN), Math.min(high, Math.max(...ys) - MARGIN)];
  const xs = polygon.map(([x]) => x);
  const widest = Math.max(...xs) - Math.min(...xs) - 2 * MARGIN;
  for (const height of SHARES.map((share) => share * tallest)) {
    if (lines.some((line) => textWidth(line, height) > widest)) continue;
    const depth = height * (1 + PITCH * (lines.length - 1));
    const play = top - depth - bottom;
    if (play < 0) continue;
    for (const share of FROM_THE_MIDDLE) {
      const start = top - play * share;
      const texts =
        linesAt(polygon, lines, { top: start, height, foot: start - depth }) ??
        linesAt(polygon, lines, { top: start, height });
      if (texts) return texts;
    }
  }
  return [];
}

/** The lines at one height, the first one's capitals ending at `top`, all in one column down to `foot` where that is given; null where one has no room or cannot be read. */
function linesAt(
  polygon: readonly Place[],
  lines: readonly string[],
  { top, height, foot }: { readonly top: number; readonly height: number; readonly foot?: number },
): Text[] | null {
  const texts: Text[] = [];
  const column = foot === undefined ? null : roomIn(polygon, foot - MARGIN, top + MARGIN);
  if (foot !== undefined && !column) return null;
  for (const [index, line] of lines.entries()) {
    const base = top - height - index * PITCH * height;
    const room = column ?? roomIn(polygon, base - MARGIN, base + height + MARGIN);
    const width = room ? room.to - room.from - 2 * MARGIN : 0;
    if (!room || textWidth(line, height) > width) return null;
    const [text] = label(line, { x: (room.from + room.to) / 2, y: base, width, tallest: height });
    if (!text || text.height !== height) return null;
    texts.push(text);
  }
  return texts;
}

/** The first of several wordings, fullest first, for which there is room. */
export function stackFirst(
  polygon: readonly Place[],
  wordings: readonly (readonly string[])[],
  tallest: number,
  band: { low?: number; high?: number } = {},
): Text[] {
  for (const lines of wordings) {
    const texts = stackLines(polygon, lines, tallest, band);
    if (texts.length > 0) return texts;
  }
  return [];
}
