import { el, type Element } from '../xml';
import { line, num, path, PEN, word, wordWidth, type PaperPoint } from './board-ink';

/** Dimension lines of the form's drawings, mm of paper, y down. Arrows and extension lines as in ISO 129-1 (from memory). */

/** Height of a dimension's capitals. */
export const LETTERS = 1.9;
const HEAD = 1.6;
const THIN = 0.13;
/** How far an extension line runs past the dimension line, and stays clear of what it measures. */
const PAST = 0.8;

/** A level dimension between two places across, at height `y`; `from`: where what is measured lies, for the lines that lead to it. */
export function level([x1, x2]: readonly [number, number], y: number, from: number, text: string): Element[] {
  const fits = x2 - x1 > wordWidth(text, LETTERS) + 1;
  const over = y > from ? y + LETTERS : y - LETTERS;
  return [
    ...extension([x1, from], [x1, y]),
    ...extension([x2, from], [x2, y]),
    ...arrows([x1, y], [x2, y]),
    fits
      ? word(text, [(x1 + x2) / 2, y - LETTERS / 2 - 0.7], LETTERS)
      : word(text, [(x1 + x2) / 2, over + (y > from ? 0.4 : -0.4)], LETTERS),
  ];
}

/** An upright dimension between two heights, at `x`, its text turned along it, on the side away from what is measured. */
export function upright([y1, y2]: readonly [number, number], x: number, from: number, text: string): Element[] {
  const side = x < from ? -1 : 1;
  return [
    ...extension([from, y1], [x, y1]),
    ...extension([from, y2], [x, y2]),
    ...arrows([x, y1], [x, y2]),
    word(text, [x + side * (LETTERS / 2 + 0.7), (y1 + y2) / 2], LETTERS, { anchor: 'middle', upright: true }),
  ];
}

/** A radius from a centre to a point of the arc, its lines of text along the way out, level. */
export function radial(centre: PaperPoint, tip: PaperPoint, lines: readonly string[]): Element[] {
  const past: PaperPoint = [tip[0] + (tip[0] - centre[0]) * 0.18, tip[1] + (tip[1] - centre[1]) * 0.18];
  return [
    line(centre, past, THIN, PEN.thin),
    arrowHead(tip, centre),
    ...lines.map((text, index) =>
      word(text, [past[0] + 1, past[1] + 1.6 * LETTERS * index], LETTERS, { anchor: 'start' }),
    ),
  ];
}

/** A dashed line: what lies behind. */
export function dashed(from: PaperPoint, to: PaperPoint, colour: string = PEN.thin): Element {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const count = Math.max(1, Math.round(length / 2));
  const place = (share: number): PaperPoint => [
    from[0] + share * (to[0] - from[0]),
    from[1] + share * (to[1] - from[1]),
  ];
  const d = Array.from({ length: count }, (_, index) =>
    path([place(index / count), place((index + 0.6) / count)], false),
  ).join('');
  return el('path', { d, fill: 'none', stroke: colour, 'stroke-width': '0.2' });
}

function extension(from: PaperPoint, to: PaperPoint): Element[] {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  if (length < PAST) return [];
  const [ux, uy] = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  return [line([from[0] + PAST * ux, from[1] + PAST * uy], [to[0] + PAST * ux, to[1] + PAST * uy], THIN, PEN.thin)];
}

function arrows(from: PaperPoint, to: PaperPoint): Element[] {
  const short = Math.hypot(to[0] - from[0], to[1] - from[1]) < 2.5 * HEAD;
  return [line(from, to, THIN, PEN.thin), ...(short ? [] : [arrowHead(from, to), arrowHead(to, from)])];
}

/** An arrow head with its tip at the first point, drawn from the second. */
function arrowHead(tip: PaperPoint, tail: PaperPoint): Element {
  const length = Math.hypot(tail[0] - tip[0], tail[1] - tip[1]);
  const [ux, uy] = [(tail[0] - tip[0]) / length, (tail[1] - tip[1]) / length];
  const corner = (aside: number): PaperPoint => [tip[0] + HEAD * ux - aside * uy, tip[1] + HEAD * uy + aside * ux];
  return el('path', { d: path([tip, corner(0.4), corner(-0.4)], true), fill: PEN.thin, stroke: 'none' });
}

/** A drawing of a size, its origin moved in by what stands left and above. */
export function sized(
  title: string,
  room: { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number },
  size: { readonly width: number; readonly height: number },
  children: readonly Element[],
): Element {
  const [width, height] = [num(room.left + size.width + room.right), num(room.top + size.height + room.bottom)];
  return el(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      width: `${width}mm`,
      height: `${height}mm`,
      viewBox: `0 0 ${width} ${height}`,
    },
    [el('title', {}, [title]), el('g', { transform: `translate(${num(room.left)} ${num(room.top)})` }, children)],
  );
}

/** Places at least `gap` apart, as near as can be to those wanted, which rise: neighbours that crowd are spread about their middle. */
export function spread(wanted: readonly number[], gap: number): number[] {
  const blocks: { sum: number; count: number }[] = [];
  for (const [index, place] of wanted.entries()) {
    blocks.push({ sum: place - index * gap, count: 1 });
    for (
      let last = blocks.at(-1), before = blocks.at(-2);
      last && before;
      last = blocks.at(-1), before = blocks.at(-2)
    ) {
      if (before.sum / before.count <= last.sum / last.count) break;
      blocks.splice(-2, 2, { sum: before.sum + last.sum, count: before.count + last.count });
    }
  }
  return blocks
    .flatMap(({ sum, count }) => Array.from({ length: count }, () => sum / count))
    .map((place, index) => place + index * gap);
}
