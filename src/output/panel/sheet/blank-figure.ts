import { flattenLoop } from '../../../base/flatten';
import type { Point } from '../../../base/polygon';
import { num, path, PEN, line, word, wordWidth, type PaperPoint } from '../../shop-sheet/board-ink';
import { dashed, level, sized, upright } from '../../shop-sheet/dimensions';
import type { Measures } from '../../shop-sheet/measures';
import { el, type Element } from '../../xml';
import type { MarkedHole, MarkedLine, MarkingOut } from './marking-out';
import type { MarkedPlace, Piece } from './places';
import { SAME_PLACE } from '../../../base/tolerance';

/** The blank's drawing is this wide or this high at the most, mm of paper. */
const WIDE = 158;
const HIGH = 120;
const ROOM = { left: 12, right: 8, top: 6, bottom: 14 };
/** An enlarged corner is this wide and high, mm of paper, and reaches to so many corners of the outline: both ends of both cuts. */
const DETAIL = 76;
const CORNERS = 4;
/** Height of a name's capitals, and how far from its place it stands, mm of paper. */
const LETTERS = 2.2;
const OFF = 2.6;
/** Chords stray so far from the outline's arcs, mm of paper. */
const STRAY = 0.05;
const FILL = '#eef2f5';

/** The blank to scale on its piece, its places numbered, its lines lettered, as the tables beside it name them. */
export function blankFigure(marks: MarkingOut, say: Measures): Element {
  const { piece, roots } = marks;
  const scale = Math.max(piece.width / WIDE, piece.height / HIGH);
  const view = viewOf(piece, { scale, left: 0, top: piece.height });
  const size = { width: piece.width / scale, height: piece.height / scale };
  return sized('The blank, the marked face up', ROOM, size, [
    box([0, 0], size.width, size.height, { fill: 'none', stroke: PEN.thin }),
    ...drawn(marks, view),
    ...placeNames(marks, view),
    ...roots.flatMap(({ name, at }) => {
      const [x, y] = view.paper(at);
      return [word(name, [x + OFF, y - OFF], LETTERS, { anchor: 'start' })];
    }),
    ...level([0, size.width], size.height + 9, size.height, say.length(piece.width)),
    ...upright([0, size.height], -8, 0, say.length(piece.height)),
  ]);
}

/** Round about a root hole, as far as the next lines reach, enlarged: where the cuts of a corner stand too close for the whole drawing. */
export function cornerFigure(marks: MarkingOut, root: MarkedHole): Element {
  const { piece } = marks;
  const middle = piece.from(root.at);
  const far = ({ along, up }: MarkedPlace): number =>
    Math.max(Math.abs(along - middle.along), Math.abs(up - middle.up));
  const corners = marks.places.filter(({ name }) => /^\d+$/u.test(name)).map(far);
  const half = 1.2 * (corners.sort((a, b) => a - b)[CORNERS - 1] ?? 10 * root.diameter);
  const scale = (2 * half) / DETAIL;
  const view = viewOf(piece, { scale, left: middle.along - half, top: middle.up + half });
  const shown = { ...marks, places: marks.places.filter((place) => far(place) < 0.97 * half) };
  return sized(
    `The corner round hole ${root.name}`,
    { left: 2, right: 2, top: 2, bottom: 2 },
    { width: DETAIL, height: DETAIL },
    [
      el('svg', { width: String(DETAIL), height: String(DETAIL), viewBox: `0 0 ${DETAIL} ${DETAIL}` }, [
        ...drawn(shown, view),
        ...placeNames(shown, view),
      ]),
      box([0, 0], DETAIL, DETAIL, { fill: 'none', stroke: PEN.thin }),
    ],
  );
}

/** How the piece lies on paper: mm of sheet to one of paper, and what its top left corner shows. */
interface View {
  readonly scale: number;
  readonly onPaper: (place: { readonly along: number; readonly up: number }) => PaperPoint;
  readonly paper: (place: Point) => PaperPoint;
}

function viewOf(
  piece: Piece,
  { scale, left, top }: { readonly scale: number; readonly left: number; readonly top: number },
): View {
  const onPaper: View['onPaper'] = ({ along, up }) => [(along - left) / scale, (top - up) / scale];
  return { scale, onPaper, paper: (place) => onPaper(piece.from(place)) };
}

function drawn({ outline, lines, roots, holes, seams, trims }: MarkingOut, { scale, paper }: View): Element[] {
  const drilled = seams.flatMap(({ rows, seam }) =>
    rows.flat().map(({ x, y }) => ({ at: [x, y] as const, diameter: seam.fastener.hole })),
  );
  const lightly = [...trims, ...seams.map(({ lapLine }) => lapLine)];
  return [
    el('path', {
      d: path(flattenLoop(outline, STRAY * scale).map(paper), true),
      fill: FILL,
      stroke: PEN.part,
      'stroke-width': '0.35',
    }),
    ...lines.flatMap((each) => drawLine(each, paper)),
    ...lightly.map((run) =>
      el('path', {
        d: path(flattenLoop(run, STRAY * scale).map(paper), false),
        fill: 'none',
        stroke: PEN.thin,
        'stroke-width': '0.2',
      }),
    ),
    ...[...roots, ...holes, ...drilled].map(({ at, diameter }) => {
      const [cx, cy] = paper(at);
      const r = num(Math.max(0.5, diameter / 2 / scale));
      return el('circle', { cx: num(cx), cy: num(cy), r, fill: '#ffffff', stroke: PEN.part, 'stroke-width': '0.2' });
    }),
  ];
}

/** A dot on every place of the outline, and its name where no other's stands already. */
function placeNames({ places, outline }: MarkingOut, { scale, onPaper, paper }: View): Element[] {
  const edge = flattenLoop(outline, STRAY * scale).map(paper);
  const taken: PaperPoint[] = [];
  // Whole numbers first: places on the way along a curve can be counted from them.
  const byRank = [...places].sort(
    (a, b) => a.name.length - b.name.length || Number.parseInt(a.name) - Number.parseInt(b.name),
  );
  return byRank.flatMap(({ name, ...place }) => {
    const middle = onPaper(place);
    const spot = spotBeside(middle, edge);
    const isFree = taken.every(([x, y]) => Math.hypot(x - spot[0], y - spot[1]) > 1.3 * LETTERS);
    if (isFree) taken.push(spot);
    return [dot(middle), ...(isFree ? [word(name, spot, name.length > 2 ? 0.8 * LETTERS : LETTERS)] : [])];
  });
}

function dot([x, y]: PaperPoint): Element {
  return el('circle', { cx: num(x), cy: num(y), r: '0.5', fill: PEN.part, stroke: 'none' });
}

function drawLine({ name, what, ends }: MarkedLine, paper: (place: Point) => PaperPoint): Element[] {
  const [from, to] = [paper(ends[0]), paper(ends[1])];
  const isDashed = what === 'take-off' || what === 'nose';
  const share = { 'base tangent': 0.5, 'leg tangent': 0.5, 'take-off': 0.62, nose: 0.56 }[what];
  const [x, y] = [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])];
  return [isDashed ? dashed(from, to) : line(from, to, 0.25, PEN.part), ...backed(name, [x, y])];
}

function box(
  [x, y]: PaperPoint,
  width: number,
  height: number,
  { fill, stroke }: { readonly fill: string; readonly stroke: string },
): Element {
  const corners: PaperPoint[] = [
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
  ];
  return el('path', { d: path(corners, true), fill, stroke, 'stroke-width': '0.13' });
}

/** A word on a patch that the line under it does not run through. */
function backed(text: string, [x, y]: PaperPoint): Element[] {
  const [width, height] = [wordWidth(text, LETTERS) + 0.6, LETTERS + 1];
  return [
    box([x - width / 2, y - height / 2], width, height, { fill: FILL, stroke: 'none' }),
    word(text, [x, y], LETTERS),
  ];
}

/** Beside a place of the outline, where it is furthest from all of it. */
function spotBeside([x, y]: PaperPoint, edge: readonly PaperPoint[]): PaperPoint {
  const around = DIRECTIONS.map(([dx, dy]): PaperPoint => [x + OFF * dx, y + OFF * dy]);
  return around.reduce((a, b) => (clearance(b, edge) > clearance(a, edge) + SAME_PLACE ? b : a));
}

const DIRECTIONS: readonly PaperPoint[] = Array.from({ length: 16 }, (_, step): PaperPoint => [
  Math.cos((step * Math.PI) / 8),
  Math.sin((step * Math.PI) / 8),
]);

/** Distance from a place to the outline, mm of paper. */
function clearance([x, y]: PaperPoint, edge: readonly PaperPoint[]): number {
  return Math.min(...edge.map((from, index) => distance([x, y], from, edge[(index + 1) % edge.length] ?? from)));
}

function distance([x, y]: PaperPoint, [ax, ay]: PaperPoint, [bx, by]: PaperPoint): number {
  const [dx, dy] = [bx - ax, by - ay];
  const square = dx ** 2 + dy ** 2;
  const share = square === 0 ? 0 : Math.min(1, Math.max(0, ((x - ax) * dx + (y - ay) * dy) / square));
  return Math.hypot(x - ax - share * dx, y - ay - share * dy);
}
