import { radiusAtCentre } from '../../base/cone';
import { el, type Element } from '../xml';
import { line, num, path, PEN, word, wordWidth, type PaperPoint } from './board-ink';
import { bothSides } from './both-sides';
import { dashed, LETTERS, level, sized, spread, upright } from './dimensions';
import type { Shop } from './shop';

/** The spine's drawing is this long, and no higher than this, mm of paper. */
const LONG = 160;
const HIGH = 60;
/** From one text turned upright to the next, and from the board to where texts begin. */
const PITCH = 3;
const AWAY = 7;
const FILL = { board: '#f0e0c0', hole: '#ffffff' };

/** A text turned upright that a line leads to. */
interface Pointer {
  readonly x: number;
  readonly text: string;
}

/** The spine to scale: its widths at both lines, and by what distances along it boards and holes are laid out. */
export function spineFigure(shop: Shop): Element {
  const { layout, bend, say } = shop;
  const { length, ears } = layout.spine;
  const half = (s: number): number => radiusAtCentre(bend.form, s);
  const widest = 2 * Math.max(half(-ears), half(length + ears));
  const scale = Math.max((length + 2 * ears) / LONG, widest / HIGH);
  const size = { width: (length + 2 * ears) / scale, height: widest / scale };
  const at = (s: number, y: number): PaperPoint => [(s + ears) / scale, size.height / 2 - y / scale];
  const x = (s: number): number => at(s, 0)[0];
  const above = boardPointers(shop, x);
  const below = holePointers(shop, x);
  const room = {
    left: 14,
    right: 14,
    top: AWAY + Math.max(0, ...above.map(textLength)) + 1,
    bottom: AWAY + Math.max(0, ...below.map(textLength)) + 10,
  };
  const end = size.height + room.bottom - 4;
  return sized('The spine, seen on its front', room, size, [
    el('path', {
      d: path(
        [
          at(-ears, -half(-ears)),
          at(length + ears, -half(length + ears)),
          at(length + ears, half(length + ears)),
          at(-ears, half(-ears)),
        ],
        true,
      ),
      fill: FILL.board,
      stroke: PEN.part,
      'stroke-width': '0.35',
    }),
    ...boardsOn(shop, at),
    ...holesIn(shop, at, scale),
    line(at(-ears, 0), at(length + ears, 0), 0.13, PEN.thin),
    ...[0, length].map((s) => line(at(s, half(s)), at(s, -half(s)), 0.2, PEN.part)),
    ...pointers(above, -1, 0),
    ...pointers(below, 1, size.height),
    ...upright([at(0, half(0))[1], at(0, -half(0))[1]], -5, x(0), `A: ${say.length(2 * half(0))} wide`),
    ...upright(
      [at(length, half(length))[1], at(length, -half(length))[1]],
      size.width + 5,
      x(length),
      `B: ${say.length(2 * half(length))} wide`,
    ),
    ...level(
      [x(0), x(length)],
      end,
      size.height + AWAY - 2,
      `A to B ${say.length(length)}${ears > 0 ? `; the ears reach ${say.length(ears)} further at either end` : ''}`,
    ),
  ]);
}

/** What a text takes: mostly digits, which are narrower than the letters `wordWidth` allows for. */
function textLength({ text }: Pointer): number {
  return 0.9 * wordWidth(text, LETTERS);
}

/** Stations as they stand in front, backing stations dashed behind. */
function boardsOn({ layout, bend }: Shop, at: (s: number, y: number) => PaperPoint): Element[] {
  const edge = (s: number, draw: (from: PaperPoint, to: PaperPoint) => Element): Element =>
    draw(at(s, radiusAtCentre(bend.form, s)), at(s, -radiusAtCentre(bend.form, s)));
  const both = (
    board: { at: number; thickness: number },
    draw: (from: PaperPoint, to: PaperPoint) => Element,
  ): Element[] => [-0.5, 0.5].map((side) => edge(board.at + side * board.thickness, draw));
  return [
    ...layout.stations.flatMap((board) => both(board, (from, to) => line(from, to, 0.2, PEN.part))),
    ...layout.backings.flatMap((board) => both(board, dashed)),
  ];
}

function holesIn({ layout, plan }: Shop, at: (s: number, y: number) => PaperPoint, scale: number): Element[] {
  const hole = (s: number, y: number, diameter: number): Element => {
    const [cx, cy] = at(s, y);
    return el('circle', {
      cx: num(cx),
      cy: num(cy),
      r: num(Math.max(0.4, diameter / 2 / scale)),
      fill: FILL.hole,
      stroke: PEN.part,
      'stroke-width': '0.2',
    });
  };
  return [
    ...layout.clampHoles.map(({ at: s, diameter }) => hole(s, 0, diameter)),
    ...plan.spine.screwHoles.map(({ at: s, offset, diameter }) => hole(s, offset, diameter)),
  ];
}

function boardPointers({ layout, say }: Shop, x: (s: number) => number): Pointer[] {
  return [...layout.stations, ...layout.backings]
    .map(({ name, at, thickness }) => ({ s: at - thickness / 2, name }))
    .sort((a, b) => a.s - b.s)
    .map(({ s, name }) => ({ x: x(s), text: `${name}  ${say.length(s)}` }));
}

function holePointers({ layout, say }: Shop, x: (s: number) => number): Pointer[] {
  return [
    ...layout.clampHoles.map(({ at, diameter }, index) => ({
      s: at,
      text: `C${index + 1}  ${say.length(at)}, ⌀ ${say.tool(diameter)}`,
    })),
    ...[...layout.stations, ...layout.backings].map(({ name, at, screws }) => ({
      s: at,
      text: `${name}  ${say.length(at)}, ${bothSides(
        screws.map(({ offset }) => offset),
        say.length,
      )}`,
    })),
  ]
    .sort((a, b) => a.s - b.s)
    .map(({ s, text }) => ({ x: x(s), text }));
}

/** Texts in a row, each turned upright, with a line from its place on the board's edge. `side`: −1 above, 1 below. */
function pointers(all: readonly Pointer[], side: -1 | 1, edge: number): Element[] {
  const places = spread(
    all.map(({ x }) => x),
    PITCH,
  );
  return all.flatMap(({ x, text }, index) => {
    const place = places[index] ?? x;
    const [bend, start] = [edge + side * 2, edge + side * (AWAY - 1)];
    return [
      line([x, edge], [x, bend], 0.13, PEN.thin),
      line([x, bend], [place, start], 0.13, PEN.thin),
      word(text, [place, edge + side * AWAY], LETTERS, { anchor: side < 0 ? 'start' : 'end', upright: true }),
    ];
  });
}
