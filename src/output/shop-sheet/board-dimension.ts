import { el, type Element } from '../xml';
import { line, path, PEN, word, wordWidth, type PaperPoint } from './board-ink';

/** Height of capitals of the dimensions, from line to line, and from the board to a dimension line, mm of paper. */
export const LETTER = 2;
export const LINE = 3.2;
export const AWAY = 3;

/** The width a dimension's lines of text take, mm of paper. */
export function blockWidth(lines: readonly string[]): number {
  return Math.max(0, ...lines.map((text) => wordWidth(text, LETTER)));
}

/** A dimension along the top, from the left edge; `open`: the board goes on. */
export function dimensionAcross(
  { to, open, y }: { to: number; open: boolean; y: number },
  lines: readonly string[],
): Element[] {
  return [
    line([0, y], [to, y], 0.15, PEN.thin),
    line([0, y - 1], [0, y + 1], 0.2, PEN.thin),
    ...(open ? [] : [line([to, y - 1], [to, y + 1], 0.2, PEN.thin)]),
    ...arrowHeads([0, y], [to, y], open),
    ...lines.map((text, index) =>
      word(
        text,
        [Math.max(to / 2, wordWidth(text, LETTER) / 2), y - LINE * (lines.length - index) + LINE - LETTER / 2 - 0.8],
        LETTER,
      ),
    ),
  ];
}

/** A dimension at one side, from the top down. */
export function dimensionDown(
  { to, open, x, openFrom = false }: { to: number; open: boolean; x: number; openFrom?: boolean },
  lines: readonly string[],
  anchor: 'start' | 'end',
): Element[] {
  const beside = x + (anchor === 'start' ? 1.5 : -1.5);
  return [
    line([x, 0], [x, to], 0.15, PEN.thin),
    ...(openFrom ? [] : [line([x - 1, 0], [x + 1, 0], 0.2, PEN.thin)]),
    ...(open ? [] : [line([x - 1, to], [x + 1, to], 0.2, PEN.thin)]),
    ...(openFrom ? arrowHeads([x, to], [x, 0], true) : arrowHeads([x, 0], [x, to], open)),
    ...lines.map((text, index) =>
      word(text, [beside, to / 2 + LINE * (index - (lines.length - 1) / 2)], LETTER, { anchor }),
    ),
  ];
}

/** At both ends of a dimension line, or at its first only. */
function arrowHeads(from: PaperPoint, to: PaperPoint, open: boolean): Element[] {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  if (length < 6) return [];
  const [ux, uy] = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  const head = ([x, y]: PaperPoint, sign: number): Element =>
    el('path', {
      d: path(
        [
          [x, y],
          [x + sign * 1.6 * ux - 0.4 * uy, y + sign * 1.6 * uy + 0.4 * ux],
          [x + sign * 1.6 * ux + 0.4 * uy, y + sign * 1.6 * uy - 0.4 * ux],
        ],
        true,
      ),
      fill: PEN.thin,
      stroke: 'none',
    });
  return [head(from, 1), ...(open ? [] : [head(to, -1)])];
}
