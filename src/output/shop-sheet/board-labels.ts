import { at } from '../../base/at';
import { roomIn } from '../../drawing/aids/room';
import { boundsOfPoints, type Bounds } from '../../base/bounds';
import type { BoardFrame } from './board-frame';
import { wordWidth, type PaperPoint } from './board-ink';

/** A part as it lies on the paper, mm. */
export interface Outlined {
  readonly id: string;
  readonly outline: readonly PaperPoint[];
  readonly holes: readonly (readonly PaperPoint[])[];
}

/** A part's name on the paper: its middle, and how high its capitals are, mm. */
export interface PartLabel {
  readonly id: string;
  readonly at: PaperPoint;
  readonly height: number;
  /** To be read from the right. */
  readonly upright: boolean;
  /** Where the part is that has no room for its own name; null for a name inside its part. */
  readonly leader: PaperPoint | null;
}

/** What a board takes of the paper. */
type Paper = Pick<BoardFrame, 'turned' | 'wide' | 'high'>;

/** Heights tried, mm; the least is small print, 6 point. */
const HEIGHTS = [3, 2.6, 2.2, 1.8, 1.5];
/** Kept clear round a name, mm. */
const CLEAR = 0.45;
/** Places between one side of a part and the other where its name is tried, the middle first. */
const PLACES = [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9, 0, 1];

/** Each part's name inside it, as large as there is room for; names without room stand past the board's free end, with a leader. */
export function labelParts(parts: readonly Outlined[], paper: Paper): PartLabel[] {
  const inside = parts.map((part) => labelInside(part));
  return [
    ...inside.filter((label) => label !== null),
    ...outside(
      parts.filter((_, index) => !inside[index]),
      paper,
    ),
  ];
}

function labelInside({ id, outline, holes }: Outlined): PartLabel | null {
  const ways = [false, true].map((upright) => {
    const turn = ([x, y]: PaperPoint): PaperPoint => (upright ? [y, x] : [x, y]);
    const polygon = outline.map(turn);
    const part = {
      polygon,
      bounds: boundsOfPoints(polygon),
      holes: holes.map((hole) => boundsOfPoints(hole.map(turn))),
    };
    return { upright, turn, part };
  });
  for (const height of HEIGHTS) {
    for (const { upright, turn, part } of ways) {
      const at = placeFor(wordWidth(id, height), height, part);
      if (at) return { id, at: turn(at), height, upright, leader: null };
    }
  }
  return null;
}

/** A part the way its name is read, and the boxes round it and its holes. */
interface Turned {
  readonly polygon: readonly PaperPoint[];
  readonly bounds: Bounds;
  readonly holes: readonly Bounds[];
}

/** The middle of a box inside a polygon and clear of its holes, as near the polygon's middle as one is found. */
function placeFor(width: number, height: number, { polygon, bounds, holes }: Turned): PaperPoint | null {
  const [low, high] = [bounds.minY + CLEAR + height / 2, bounds.maxY - CLEAR - height / 2];
  if (high < low || bounds.maxX - bounds.minX < width + 2 * CLEAR) return null;
  for (const y of PLACES.map((share) => low + share * (high - low))) {
    const room = roomIn(polygon, y - height / 2 - CLEAR, y + height / 2 + CLEAR);
    const play = room ? room.to - room.from - width - 2 * CLEAR : -1;
    if (!room || play < 0) continue;
    const x = PLACES.map((share) => room.from + CLEAR + width / 2 + share * play).find((middle) =>
      holes.every((hole) => isClear(hole, { x: middle, y, width, height })),
    );
    if (x !== undefined) return [x, y];
  }
  return null;
}

/** Whether a name's box keeps off the box round a hole. */
function isClear(
  { minX, minY, maxX, maxY }: Bounds,
  { x, y, width, height }: { readonly x: number; readonly y: number; readonly width: number; readonly height: number },
): boolean {
  return Math.max(minX - x - width / 2, x - width / 2 - maxX, minY - y - height / 2, y - height / 2 - maxY) > CLEAR / 2;
}

/** Names farther from their part than this, mm, begin another row. */
const STRAY = 12;
/** From the board's edge to the first row of names, and between two names, mm. */
const FIRST_ROW = 5;
const BETWEEN = 2;
const OUTSIDE_HEIGHT = 2;

/** Rows under a turned board, columns to the right of one that is not: its free end, the fewest parts on the way there. */
function outside(parts: readonly Outlined[], { turned, wide, high }: Paper): PartLabel[] {
  const [along, edge, extent] = turned ? ([0, high, wide] as const) : ([1, wide, high] as const);
  const widest = Math.max(...parts.map(({ id }) => wordWidth(id, OUTSIDE_HEIGHT)));
  const ends: number[] = [];
  const places = parts.map((part) => ({ part, at: middleOf(part.outline) })).sort((a, b) => a.at[along] - b.at[along]);
  return places.map(({ part: { id }, at }): PartLabel => {
    const size = turned ? wordWidth(id, OUTSIDE_HEIGHT) : OUTSIDE_HEIGHT;
    const wanted = Math.max(0, Math.min(at[along] - size / 2, extent - size));
    const found = ends.findIndex((end) => end + BETWEEN <= wanted + STRAY && end + BETWEEN + size <= extent);
    const row = found < 0 ? ends.length : found;
    const from = Math.max(wanted, (ends[row] ?? -BETWEEN) + BETWEEN);
    ends[row] = from + size;
    const middle = from + size / 2;
    return {
      id,
      at: turned
        ? [middle, edge + FIRST_ROW + row * 2 * OUTSIDE_HEIGHT]
        : [edge + FIRST_ROW + widest / 2 + row * (widest + BETWEEN), middle],
      height: OUTSIDE_HEIGHT,
      upright: false,
      leader: at,
    };
  });
}

/** A place inside a polygon, half-way up it. */
function middleOf(polygon: readonly PaperPoint[]): PaperPoint {
  const ys = polygon.map(([, y]) => y);
  const y = (Math.min(...ys) + Math.max(...ys)) / 2;
  const room = roomIn(polygon, y, y);
  return [room ? (room.from + room.to) / 2 : at(polygon, 0)[0], y];
}
