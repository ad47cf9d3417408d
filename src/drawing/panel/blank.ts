import { at } from '../../base/at';
import { boundsOf } from '../../base/bounds';
import { toDegrees } from '../../base/angle';
import type { Loop, Shape, Text, Vertex } from '../../base/drawing';
import { flattenLoop } from '../../base/flatten';
import { mirrorShapes } from '../../base/mirror';
import type { Point } from '../../base/polygon';
import { outline as outlineLoop } from '../../base/outline';
import type { LengthUnit } from '../../base/units';
import type { Bend, Panel } from '../../panel';
import { sideOfLeg } from '../../panel/flat/bend';
import type { SeamLayout } from '../../panel/seams/seam';
import type { CutAndTrim } from '../../panel/trim/trim';
import { labelLength } from '../parts/lengths';
import { circle, cross, label, mark, textWidth } from '../parts/shapes';
import { across, angleOf, between, lengthOf, lineBetween, textAlong, turnedToRead } from './along-line';
import { bendLines, markedLines, type BendLines, type BlankBend, type FlatLine } from './bend-lines';
import { CHORD_STRAY } from '../../base/tolerance';

/** Which face of the sheet is drawn: the one that is up when it is marked, or the one under it. */
export type BlankFace = 'marked' | 'other';

/** A panel's blank as it is to be drawn. */
export interface PanelBlank {
  readonly panel: Panel;
  /** One for each bend of the panel, in its numbering. */
  readonly bends: readonly BlankBend[];
  /** What is cut before bending and where it is trimmed after; null where the net outline is cut at once. */
  readonly trim: CutAndTrim | null;
  readonly seams: readonly SeamLayout[];
}

/** How it is drawn. */
export interface BlankView {
  /** As laid out, or mirrored for the other side of a pair; null for a panel that is made once. */
  readonly hand: 'left' | 'right' | null;
  readonly face: BlankFace;
  readonly units: LengthUnit;
}

/** How far a line is carried in from the edge on the face that it is not drawn on, and how long a middle's mark is, mm. */
const TICK = 6;
const LETTERS = 5;
/** Of the take-off line's words, mm. */
const TAKE_OFF_LETTERS = 3;
/** Between a take-off mark's name and its mark, mm. */
const ASIDE = 1.5;

/**
 * The blank of a panel at 1:1. Cut now: operations `outline` and `hole`, arcs exact. To mark: tangent lines and take-off marks of the bends that are marked
 * on this face, the others' carried in from the edge by ticks; middles, holes' centres, trim and lap lines.
 */
export function drawPanelBlank(blank: PanelBlank, view: BlankView): Shape[] {
  const { panel, trim, seams } = blank;
  const cut = trim?.cut ?? { vertices: panel.outline, holes: panel.holes };
  const shapes: Shape[] = [
    outlineLoop(cut.vertices),
    ...cut.holes.map(holeLoop),
    ...(trim?.trim ?? []).flatMap(trimMarks),
    ...seams.flatMap(seamShapes),
    ...panel.bends.flatMap((bend, index) => bendShapes(bend, at(blank.bends, index), view)),
    ...faceNames(panel, view),
  ];
  const isMirrored = (view.hand === 'right') !== (view.face === 'other');
  if (!isMirrored) return shapes;
  const { minX, maxX } = boundsOf({ shapes: [outlineLoop(cut.vertices)] });
  return mirrorShapes(shapes, minX + maxX);
}

function holeLoop(vertices: readonly Vertex[]): Loop {
  return { kind: 'loop', operation: 'hole', vertices };
}

/** A trim run, on the net outline, with its words on the waste's side of its longest side. */
function trimMarks(run: readonly Vertex[]): Shape[] {
  const sides = pairs(flattenLoop(run, CHORD_STRAY));
  const longest = sides.reduce((long, side) => (lengthOf(side) > lengthOf(long) ? side : long));
  return [...sides.map(([a, b]) => mark(a, b)), ...words('TRIM AFTER BENDING', longest, { side: -1 })];
}

function pairs(points: readonly Point[]): FlatLine[] {
  return points.slice(1).map((point, index) => [at(points, index), point] as const);
}

/** Holes drilled now with their centres; the lap line where the other panel's edge comes to lie. */
function seamShapes({ seam, rows, lapLine }: SeamLayout): Shape[] {
  const places = rows.flat();
  const drilled = seam.drill === 'now' ? places.map(({ x, y }) => circle('hole', x, y, seam.fastener.hole)) : [];
  const lap = pairs(flattenLoop(lapLine, CHORD_STRAY)).map(([from, to]) => mark(from, to));
  return [...drilled, ...places.flatMap(({ x, y }) => cross([x, y], TICK / 2)), ...lap];
}

function bendShapes(bend: Bend, made: BlankBend, { face, units }: BlankView): Shape[] {
  const lines = bendLines(bend, made);
  const isHere = (bend.turn === 'up') === (face === 'marked');
  const marked = markedLines(lines, made.held);
  const toLeg = sideOfLeg(bend.frame);
  const [ahead, behind] = made.held === 'base' ? [toLeg, turnedSide(toLeg)] : [turnedSide(toLeg), toLeg];
  if (!isHere)
    return [
      ...marked.flatMap(edgeTicks),
      ...bendNames({ ...lines, off: BOTH_TICKS }, [`${made.step} ${name(bend)}: LINES ON THE OTHER FACE`]),
    ];
  const room = roomForNames(lines);
  const aside = room.words === null ? ahead : room.words === 'leg' ? toLeg : turnedSide(toLeg);
  return [
    ...marked.map(([from, to]) => mark(from, to)),
    ...marked.flatMap(middleTick),
    ...(lines.takeOff && made.pulled ? takeOffMarks(lines.takeOff, made.pulled.wrap, aside) : []),
    ...(lines.nose ? noseMark(lines.nose, ahead) : []),
    ...bendNames(room, bendWords(bend, made, units)),
    ...words('FORM STANDS HERE', lines.stand, { side: behind, tallest: 4 }),
  ];
}

function turnedSide(side: Side): Side {
  return side === 1 ? -1 : 1;
}

function name(bend: Bend): string {
  return bend.name.toUpperCase();
}

function bendWords(bend: Bend, { step, held, form }: BlankBend, units: LengthUnit): string[] {
  const { radiusA, radiusB, length } = bend.finished;
  const radii =
    radiusA === radiusB
      ? `R ${labelLength(radiusA, units)}`
      : `R ${labelLength(radiusA, units)} AT A, ${labelLength(radiusB, units)} AT B`;
  const heldName = held === 'base' ? 'BASE' : 'LEG';
  return [
    `${step} ${name(bend)}: ${bend.turn.toUpperCase()} ${degrees(bend.angle)}, HOLD THE ${heldName}, FORM ${form.toUpperCase()}`,
    `${radii}, ${labelLength(length, units)} LONG`,
  ];
}

function degrees(angle: number): string {
  return `${toDegrees(angle).toFixed(1)}°`;
}

/** Both ends of a line, in from the edge. */
function edgeTicks(line: FlatLine): Shape[] {
  const share = Math.min(0.5, TICK / lengthOf(line));
  return [mark(line[0], between(line, share)), mark(between(line, 1 - share), line[1])];
}

/** Square across the middle of a line: the form's middle is laid to it. */
function middleTick(line: FlatLine): Shape[] {
  const [x, y] = between(line, 0.5);
  const [dx, dy] = across(line, TICK / 2);
  return [mark([x - dx, y - dy], [x + dx, y + dy])];
}

/** Take-off marks by both ends, where the sheet leaves the form when the pull is done. */
function takeOffMarks(line: FlatLine, wrap: number, side: Side): Shape[] {
  return [
    ...edgeTicks(line),
    ...words(`TAKE-OFF AT ${degrees(wrap)} OF WRAP`, line, { side, tallest: TAKE_OFF_LETTERS, share: 0.25 }),
  ];
}

/** Between the beginnings of two dashes, mm at least, and the share of it that is drawn. */
const DASH = 12;
const DRAWN = 0.6;

/** A yoke's nose lies along it: dashed, since it may cross the free tangent line; named on the side where the yoke lies. */
function noseMark(line: FlatLine, side: Side): Shape[] {
  const count = Math.max(1, Math.floor(lengthOf(line) / DASH - DRAWN));
  const dashes = Array.from({ length: count + 1 }, (_, dash) =>
    mark(between(line, dash / (count + DRAWN)), between(line, (dash + DRAWN) / (count + DRAWN))),
  );
  return [...dashes, ...words('YOKE NOSE', line, { side, tallest: 4 })];
}

/** The left (1) or the right (−1) of the way along a line. */
type Side = 1 | -1;

/** A line of text beside the middle (or another share) of a line; none where there is no room. */
function words(
  text: string,
  line: FlatLine,
  { side, tallest = LETTERS, share = 0.5 }: { readonly side: Side; readonly tallest?: number; readonly share?: number },
): Text[] {
  const readable = turnedToRead(line);
  const isKept = readable === line;
  const [x, y] = between(readable, isKept ? share : 1 - share);
  const isLeft = (side === 1) === isKept;
  const [written] = label(text, { x: 0, y: 0, width: 0.45 * lengthOf(line), tallest });
  if (!written) return [];
  const [dx, dy] = across(readable, isLeft ? ASIDE : -ASIDE - written.height);
  return [{ ...written, x: x + dx, y: y + dy, angle: angleOf(readable) }];
}

/** From one row of a bend's names to the next, in heights of their letters. */
const ROW = 1.6;

/** Between which lines a bend's names stand, and what of the room each of them takes, mm. */
interface NameRoom {
  readonly base: FlatLine;
  readonly leg: FlatLine;
  readonly off: { readonly base: number; readonly leg: number };
}

const BOTH_TICKS: NameRoom['off'] = { base: TICK / 2, leg: TICK / 2 };

/** What the take-off line's words take beside it, mm. */
const TAKE_OFF_ROOM = TAKE_OFF_LETTERS + 2 * ASIDE;

/**
 * A bend's names stand between its tangent lines or, where the take-off line runs between those, between it and the one further from it; the words of the take-off
 * line beyond it, toward the leg or the base, or beside the names where there is no room for them.
 */
function roomForNames({ base, leg, takeOff }: BendLines): NameRoom & { readonly words: 'base' | 'leg' | null } {
  const apart = (a: FlatLine, b: FlatLine): number => lengthOf([between(a, 0.5), between(b, 0.5)]);
  const isBetween = takeOff && apart(base, takeOff) + apart(takeOff, leg) < 1.01 * apart(base, leg);
  if (!isBetween) return { base, leg, off: BOTH_TICKS, words: null };
  const [toBase, toLeg] = [apart(base, takeOff), apart(takeOff, leg)];
  const isBeyond = Math.min(toBase, toLeg) >= TAKE_OFF_ROOM;
  const off = isBeyond ? 0 : TAKE_OFF_ROOM;
  return toBase >= toLeg
    ? { base, leg: takeOff, off: { ...BOTH_TICKS, leg: off }, words: isBeyond ? 'leg' : 'base' }
    : { base: takeOff, leg, off: { ...BOTH_TICKS, base: off }, words: isBeyond ? 'base' : 'leg' };
}

/** A bend's names in the middle of the room between two lines, as large as there is room for; ends A and B by theirs. */
function bendNames({ base, leg, off }: NameRoom, lines: readonly string[]): Text[] {
  const depth = lengthOf([between(base, 0.5), between(leg, 0.5)]);
  const free = depth - off.base - off.leg;
  const middle = lineBetween(base, leg, (off.base + free / 2) / depth);
  const longest = Math.max(...lines.map((line) => textWidth(line, 1)));
  const height = Math.min(LETTERS, (0.7 * lengthOf(base)) / longest, free / (ROW * lines.length));
  const readable = turnedToRead(middle);
  const rows = lines.flatMap((line, index) => {
    const out = height * ((lines.length / 2 - index - 1) * ROW + (ROW - 1) / 2);
    return textAlong(line, readable, { out, height, share: 0.5 });
  });
  const ends = (['A', 'B'] as const).flatMap((end, index) =>
    textAlong(end, readable, {
      out: -height / 2,
      height: Math.min(LETTERS, free / 2),
      share: (index === 0) === (readable === middle) ? 0.04 : 0.96,
    }),
  );
  return [...rows, ...ends];
}

/** In the middle of the base: which blank and which face this is, and the caution that belongs to it. */
function faceNames(panel: Panel, { hand, face }: BlankView): Text[] {
  const box = boundsOf({ shapes: [outlineLoop(at(panel.faces, 0).outline)] });
  const [x, y] = [(box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2];
  const size = { x, width: 0.6 * (box.maxX - box.minX), tallest: Math.min(8, (box.maxY - box.minY) / 12) };
  const lines = [
    hand === null ? 'BLANK' : `BLANK ${hand.toUpperCase()}`,
    face === 'marked' ? 'MARKED FACE' : 'OTHER FACE: TURN THE SHEET OVER',
    'PENCIL ONLY: SCRIBED LINES START CRACKS',
  ];
  return lines.flatMap((text, index) => label(text, { ...size, y: y + (1 - index) * 1.8 * size.tallest }));
}
