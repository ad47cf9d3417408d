/** Where a drawing stands on the screen, and how it moves there: pure sums. Screen lengths are px, drawing lengths mm, y points down. */

export interface Size {
  readonly width: number;
  readonly height: number;
}

export type Point = readonly [x: number, y: number];

/** Where the drawing's corner lies on the screen, px, and how large a mm is there, px. */
export interface Place {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
}

/** Left clear round a drawing shown whole, px. */
const CLEAR = 12;
/** As near as one gets, px to a mm: a pencil line is then as wide as a finger. */
const NEAREST = 60;
/** As far away as one gets, as a share of the drawing shown whole. */
const FARTHEST = 0.5;
/** How much of the frame a drawing moved aside still reaches into, as a share. */
const KEPT = 0.25;
/** What a quarter turn must gain in scale before it is worth turning one's head. */
const WORTH_TURNING = 1.25;

/** The whole drawing in the middle of the frame. Valid for sizes above zero. */
export function whole(drawing: Size, frame: Size): Place {
  const scale = wholeScale(drawing, frame);
  return { scale, x: (frame.width - scale * drawing.width) / 2, y: (frame.height - scale * drawing.height) / 2 };
}

function wholeScale(drawing: Size, frame: Size): number {
  const room = (length: number): number => Math.max(1, length - 2 * CLEAR);
  return Math.min(room(frame.width) / drawing.width, room(frame.height) / drawing.height);
}

/** Nearer (factor above 1) or farther, the point at `at`, px, kept under the finger. */
export function zoomed({ scale, x, y }: Place, factor: number, [left, top]: Point): Place {
  return { scale: scale * factor, x: left + (x - left) * factor, y: top + (y - top) * factor };
}

/** Moved by so many px. */
export function moved({ scale, x, y }: Place, [right, down]: Point): Place {
  return { scale, x: x + right, y: y + down };
}

/** Two fingers were at `before` and are at `after`: what lay under their middle follows it, and grows as they part. */
export function pinched(place: Place, before: readonly [Point, Point], after: readonly [Point, Point]): Place {
  const [from, to] = [middle(before), middle(after)];
  const factor = Math.max(1, apart(after)) / Math.max(1, apart(before));
  return moved(zoomed(place, factor, from), [to[0] - from[0], to[1] - from[1]]);
}

function middle([a, b]: readonly [Point, Point]): Point {
  return [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
}

function apart([a, b]: readonly [Point, Point]): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}

/** The same, not so near, so far or so far aside that the drawing is lost from sight. */
export function kept(place: Place, drawing: Size, frame: Size): Place {
  const fitting = wholeScale(drawing, frame);
  const scale = clamp(place.scale, fitting * FARTHEST, Math.max(NEAREST, fitting));
  const centre: Point = [frame.width / 2, frame.height / 2];
  const { x, y } = zoomed(place, scale / place.scale, centre);
  const along = (at: number, length: number, room: number): number => {
    const least = KEPT * Math.min(room, length);
    return clamp(at, least - length, room - least);
  };
  return {
    scale,
    x: along(x, scale * drawing.width, frame.width),
    y: along(y, scale * drawing.height, frame.height),
  };
}

function clamp(value: number, low: number, high: number): number {
  return Math.min(high, Math.max(low, value));
}

/** A size after a quarter turn. */
export function turnedSize({ width, height }: Size): Size {
  return { width: height, height: width };
}

/** Whether a long drawing on a narrow screen is much larger lying down the screen. */
export function isBetterTurned(drawing: Size, frame: Size): boolean {
  return wholeScale(turnedSize(drawing), frame) > WORTH_TURNING * wholeScale(drawing, frame);
}
