import { at } from '../../base/at';
import { asLoop } from '../../base/as-loop';
import { boundsOf } from '../../base/bounds';
import type { Operation, Shape } from '../../base/drawing';
import { InternalError } from '../../base/errors';
import { flattenLoop } from '../../base/flatten';
import { moveDrawing } from '../../base/transform';
import type { Part } from '../../drawing/parts/part';
import { outlineOf } from '../../drawing/boards/outline';
import type { LaidOut } from '../../drawing/boards/laid-out';
import { el, type Element } from '../xml';
import { AWAY, blockWidth, dimensionAcross, dimensionDown, LETTER, LINE } from './board-dimension';
import { frameOf, type BoardFrame } from './board-frame';
import { line, num, path, PEN, word, wordWidth, type PaperPoint } from './board-ink';
import { labelParts, type Outlined, type PartLabel } from './board-labels';
import { SAME_PLACE } from '../../base/tolerance';

/** What the drawing writes, line by line. */
export interface BoardWords {
  readonly title: string;
  readonly length: readonly string[];
  readonly width: readonly string[];
  readonly used: readonly string[];
  /** In what is left of the board. */
  readonly rest: string;
}

export interface BoardDrawing {
  readonly svg: Element;
  readonly frame: BoardFrame;
  /** Whether there is room for a list at its side. */
  readonly narrow: boolean;
}

/** The widest drawing, the widest beside a list, the highest, and the highest where names need more room, mm of paper. */
const WIDE = 178;
const BESIDE = 92;
const HIGH = 95;
const HIGHEST = 195;
/** How much longer than wide a board may be that has its list at its side. */
const LONG = 2;
const FILL = { board: '#f7f7f7', part: '#f0e0c0', hole: '#ffffff' };

/** A board with its parts in place, to scale, dimensioned. `parts`: at least those placed. */
export function drawBoard(board: LaidOut, parts: readonly Part[], words: BoardWords): BoardDrawing {
  const placed = board.placements.map((placement) => {
    const part = parts.find(({ id }) => id === placement.part);
    if (!part) throw new InternalError(`a board holds a part that is none: ${placement.part}`);
    return {
      id: part.id,
      shapes: moveDrawing(
        { shapes: [outlineOf(part), ...part.drawing.shapes.filter(({ operation }) => operation === 'hole')] },
        placement,
      ).shapes,
    };
  });
  const used = { length: board.used.length, width: boundsOf({ shapes: placed.flatMap(({ shapes }) => shapes) }).maxY };
  const sides = Math.max(blockWidth(words.used) + blockWidth(words.length), blockWidth(words.width)) + 4 * AWAY;
  const within = (width: number, height: number): Lying => {
    const frame = frameOf(board, used, { width: width - sides, height });
    const lying = placed.map(({ id, shapes }) => onPaper(id, shapes, frame));
    const labels = labelParts(lying, frame);
    return { frame, parts: lying, labels, leaders: labels.filter(({ leader }) => leader !== null).length };
  };
  const [beside, wide, high] = [within(BESIDE, HIGH), within(WIDE, HIGH), within(WIDE, HIGHEST)];
  const narrow =
    beside.leaders === 0 &&
    Math.max(wide.frame.wide, wide.frame.high) <= LONG * Math.min(wide.frame.wide, wide.frame.high);
  const chosen = narrow ? beside : high.leaders < wide.leaders ? high : wide;
  return { svg: assemble(board, chosen, words), frame: chosen.frame, narrow };
}

/** A board's parts as they lie on paper. */
interface Lying {
  readonly frame: BoardFrame;
  readonly parts: readonly Outlined[];
  readonly labels: readonly PartLabel[];
  /** How many names have no room inside their part. */
  readonly leaders: number;
}

function onPaper(id: string, shapes: readonly Shape[], frame: BoardFrame): Outlined {
  const loops = (operation: Operation): PaperPoint[][] =>
    shapes.flatMap((shape) =>
      shape.operation !== operation || !(shape.kind === 'loop' || shape.kind === 'circle')
        ? []
        : [flattenLoop(asLoop(shape).vertices, CHORD * frame.scale).map(([x, y]) => frame.at(x, y))],
    );
  return { id, outline: loops('outline').flat(), holes: loops('hole') };
}

/** Chord error of arcs, mm of paper: below what a printer resolves. */
const CHORD = 0.03;

function assemble(board: LaidOut, { frame, parts, labels }: Lying, words: BoardWords): Element {
  const { turned, wide, high } = frame;
  const [left, right] = turned ? [words.used, words.length] : [words.width, []];
  const top = turned ? [words.width] : [words.used, words.length];
  const margin = {
    left: blockWidth(left) + 2 * AWAY,
    right: Math.max(
      right.length > 0 ? blockWidth(right) + 2 * AWAY : AWAY,
      ...labels.map(({ id, at, height }) => at[0] + wordWidth(id, height) / 2 + 1 - wide),
    ),
    top: top.reduce((sum, lines) => sum + lines.length * LINE + AWAY, AWAY),
    bottom: Math.max(AWAY, ...labels.map(({ at, height }) => at[1] + height - high + 1)),
  };
  const usedAt = board.used.length / frame.scale;
  const rows = top.map(
    (_, index) => -AWAY - top.slice(0, index).reduce((sum, before) => sum + before.length * LINE + AWAY, 0),
  );
  const children = [
    el('title', {}, [words.title]),
    el('g', { transform: `translate(${num(margin.left)} ${num(margin.top)})` }, [
      el('path', { d: path(boardEdge(frame), true), fill: FILL.board, stroke: PEN.board, 'stroke-width': '0.25' }),
      line(frame.at(0, 0), frame.at(0, frame.shown.width), 1, PEN.board),
      ...usedLine(board, frame),
      ...parts.map(({ outline }) =>
        el('path', { d: path(outline, true), fill: FILL.part, stroke: PEN.part, 'stroke-width': '0.3' }),
      ),
      ...parts.flatMap(({ holes }) =>
        holes.map((hole) =>
          el('path', { d: path(hole, true), fill: FILL.hole, stroke: PEN.part, 'stroke-width': '0.15' }),
        ),
      ),
      ...labels.flatMap((label) => leaderOf(label, turned)),
      ...labels.map(name),
      ...restLabel(board, frame, labels, words.rest),
      ...(turned
        ? [
            ...dimensionAcross({ to: wide, open: frame.broken.width, y: at(rows, 0) }, words.width),
            ...dimensionDown({ to: usedAt, open: false, x: -AWAY }, words.used, 'end'),
            ...dimensionDown({ to: high, open: frame.broken.length, x: wide + AWAY }, words.length, 'start'),
          ]
        : [
            ...dimensionAcross({ to: usedAt, open: false, y: at(rows, 0) }, words.used),
            ...dimensionAcross({ to: wide, open: frame.broken.length, y: at(rows, 1) }, words.length),
            // Across an unturned board its origin is at the bottom, and so is what is broken off at the top.
            ...dimensionDown({ to: high, open: false, x: -AWAY, openFrom: frame.broken.width }, words.width, 'end'),
          ]),
    ]),
  ];
  const [width, height] = [num(margin.left + wide + margin.right), num(margin.top + high + margin.bottom)];
  return el(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      width: `${width}mm`,
      height: `${height}mm`,
      viewBox: `0 0 ${width} ${height}`,
    },
    children,
  );
}

/** The edge of what is shown, with a break line where the board goes on. */
function boardEdge({ at, shown: { length, width }, broken }: BoardFrame): PaperPoint[] {
  const corners: readonly PaperPoint[] = [at(0, 0), at(length, 0), at(length, width), at(0, width)];
  const isBroken = [false, broken.length, broken.width, false];
  return corners.flatMap((corner, index) =>
    isBroken[index] ? breakLine(corner, corners[(index + 1) % 4] ?? corner) : [corner],
  );
}

/** A straight line with a zigzag in its middle, without its end. Source: long break line of ISO 128-2, type 01.1 with zigzags (from memory). */
function breakLine(from: PaperPoint, to: PaperPoint): PaperPoint[] {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const along: PaperPoint = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  const place = (way: number, aside: number): PaperPoint => [
    from[0] + way * along[0] - aside * along[1],
    from[1] + way * along[1] + aside * along[0],
  ];
  const middle = length / 2;
  return [from, place(middle - 1.5, 0), place(middle - 0.75, 2), place(middle + 0.75, -2), place(middle + 1.5, 0)];
}

/** A dashed line across the board where the parts end. */
function usedLine({ used }: LaidOut, { at, shown }: BoardFrame): Element[] {
  if (used.length >= shown.length - SAME_PLACE) return [];
  const [from, to] = [at(used.length, 0), at(used.length, shown.width)];
  const count = Math.max(1, Math.round(Math.hypot(to[0] - from[0], to[1] - from[1]) / DASH));
  const place = (share: number): PaperPoint => [
    from[0] + share * (to[0] - from[0]),
    from[1] + share * (to[1] - from[1]),
  ];
  const d = Array.from({ length: count }, (_, index) =>
    path([place(index / count), place((index + 0.6) / count)], false),
  ).join('');
  return [el('path', { d, fill: 'none', stroke: PEN.board, 'stroke-width': '0.3' })];
}

const DASH = 3;

/** In the stretch no part reaches, where that is wide enough for a line of text, clear of leaders. */
function restLabel(
  { used }: LaidOut,
  { at, shown, turned, scale }: BoardFrame,
  labels: readonly PartLabel[],
  text: string,
): Element[] {
  const deep = (shown.length - used.length) / scale;
  const width = wordWidth(text, LETTER);
  const room = shown.width / scale - width - 4;
  if (deep < LETTER + 3 || room < 0) return [];
  const across = turned ? 0 : 1;
  const place = [0.75, 0.25, 1, 0, 0.6, 0.4]
    .map((share) => at((used.length + shown.length) / 2, scale * (2 + width / 2 + share * room)))
    .find((middle) =>
      labels.every(
        ({ at: end, leader }) =>
          leader === null ||
          (Math.abs(middle[across] - end[across]) > width / 2 + 1 &&
            Math.abs(middle[across] - leader[across]) > width / 2 + 1 &&
            middle[across] > end[across] === middle[across] > leader[across]),
      ),
    );
  return place ? [word(text, place, LETTER, { anchor: 'middle', upright: !turned })] : [];
}

function leaderOf({ id, leader, at, height }: PartLabel, turned: boolean): Element[] {
  if (!leader) return [];
  const end: PaperPoint = turned ? [at[0], at[1] - height / 2 - 0.5] : [at[0] - wordWidth(id, height) / 2 - 0.5, at[1]];
  return [
    line(leader, end, 0.15, PEN.thin),
    el('circle', { cx: num(leader[0]), cy: num(leader[1]), r: '0.4', fill: PEN.thin }),
  ];
}

function name({ id, at, height, upright }: PartLabel): Element {
  return word(id, at, height, { anchor: 'middle', upright });
}
