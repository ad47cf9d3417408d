import { boundsOf, boundsOfPoints, type Bounds } from '../../base/bounds';
import type { Circle, Drawing, Text } from '../../base/drawing';
import { flattenLoop } from '../../base/flatten';
import { SAME_PLACE } from '../../base/tolerance';
import { formatDiameter, type LengthUnit } from '../../base/units';

/** The diameter written beside each hole, where it hides nothing. */

/** Height of the notes' capitals, mm: read at the bench, not across it. */
const HEIGHT = 1.9;
/** From one line of a note to the next, mm. */
const LINE = 1.5 * HEIGHT;
/** Clear of the hole's edge and the ends of its cross, mm. */
const CLEAR = 2.2;
/** Left free inside a hole's edge, mm. */
const ROOM_FOR_TICKS = 2.5;
/** How many times the note may be moved on, and by how much, mm. */
const STEPS = 5;
const STEP = 3;
/** Circles about one middle are within this of it, mm. */
const SAME_MIDDLE = 0.02;
const CHORD_ERROR = 0.1;

export type MeasureText = (text: string, height: number) => number;

/** One note a hole and pilot, a line for it and one for its countersink (csk, the drawing-office abbreviation). */
export function holeNotes(drawing: Drawing, units: LengthUnit, measure: MeasureText): Text[] {
  const circles = drawing.shapes.filter((shape) => shape.kind === 'circle');
  const sinks = circles.filter(({ operation }) => operation === 'countersink');
  const edges = boundsOf(drawing);
  const taken = drawing.shapes.flatMap((shape) => {
    if (shape.kind === 'text') return [textBounds(shape, measure)];
    return shape.kind === 'circle' || shape.kind === 'stroke' ? [boundsOf({ shapes: [shape] })] : [];
  });
  const strokes = strokesOf(drawing).map((stroke) => ({ stroke, box: boundsOfPoints(stroke) }));
  return circles
    .filter(({ operation }) => operation === 'hole' || operation === 'pilot')
    .flatMap((hole): Text[] => {
      const sink = sinks.find(({ x, y }) => Math.hypot(x - hole.x, y - hole.y) < SAME_MIDDLE);
      const lines = [
        `Ø ${formatDiameter(2 * hole.radius, units)}`,
        ...(sink ? [`csk Ø ${formatDiameter(2 * sink.radius, units)}`] : []),
      ];
      const size = {
        width: Math.max(...lines.map((line) => measure(line, HEIGHT))),
        height: (lines.length - 1) * LINE + HEIGHT,
      };
      // Inside a hole that is wide enough, in a quarter of its cross.
      if (Math.hypot(size.width + HEIGHT, size.height + HEIGHT) < hole.radius - ROOM_FOR_TICKS)
        return stack(lines, hole.x + HEIGHT, hole.y + HEIGHT, 0);
      const places = placesRound(hole, Math.max(hole.radius, sink?.radius ?? 0), size).map(([x, y, angle]) => {
        const note = stack(lines, x, y, angle);
        return { note, box: boxRound(note.map((line) => textBounds(line, measure))) };
      });
      // Of a whole board's shapes few are anywhere near a hole.
      const reach = boxRound(places.map(({ box }) => box));
      const takenNear = taken.filter((other) => meet(reach, other));
      const strokesNear = strokes.filter(({ box }) => touch(reach, box));
      const scored = places.map(({ note, box }, index) => {
        const hidden =
          takenNear.filter((other) => meet(box, other)).length +
          strokesNear.filter(({ stroke }) => crosses(stroke, box)).length +
          (holds(edges, box) ? 0 : 3);
        return { note, box, score: hidden + index / 100 };
      });
      const best = scored.reduce((a, b) => (b.score < a.score ? b : a));
      taken.push(best.box);
      return best.note;
    });
}

/** Lines of text above each other; `x`, `y` is where the last one begins. */
function stack(lines: readonly string[], x: number, y: number, angle: number): Text[] {
  return lines.map((text, index): Text => {
    const up = (lines.length - 1 - index) * LINE;
    return {
      kind: 'text',
      operation: 'label',
      x: x - up * Math.sin(angle),
      y: y + up * Math.cos(angle),
      height: HEIGHT,
      angle,
      anchor: 'start',
      text,
    };
  });
}

function boxRound(boxes: readonly Bounds[]): Bounds {
  return boundsOfPoints(boxes.flatMap(({ minX, minY, maxX, maxY }) => [[minX, minY] as const, [maxX, maxY] as const]));
}

/** Box round a line of text, mm: from its baseline to the top of its capitals, whichever way it runs. */
export function textBounds({ x, y, angle, height, anchor, text }: Text, measure: MeasureText): Bounds {
  const width = measure(text, height);
  const start = -{ start: 0, middle: 1 / 2, end: 1 }[anchor] * width;
  const [cosine, sine] = [Math.cos(angle), Math.sin(angle)];
  // A quarter of the height hangs below the baseline (g, p, y, brackets).
  const corners = [start, start + width].flatMap((along) =>
    [-height / 4, height * 1.1].map((up) => [x + along * cosine - up * sine, y + along * sine + up * cosine] as const),
  );
  return boundsOfPoints(corners);
}

/** Where a note of some size may begin round a hole, and the angle of its text: the nearest and most usual first. */
function placesRound(
  { x, y }: Circle,
  radius: number,
  { width, height }: { readonly width: number; readonly height: number },
): [number, number, number][] {
  const upright = Math.PI / 2;
  return Array.from({ length: STEPS }, (_, step) => radius + CLEAR + step * STEP).flatMap(
    (away): [number, number, number][] => [
      [x + away, y - height / 2, 0],
      [x - away - width, y - height / 2, 0],
      [x - width / 2, y + away, 0],
      [x - width / 2, y - away - height, 0],
      [x - away, y - width / 2, upright],
      [x + away + height, y - width / 2, upright],
      [x + height / 2, y + away, upright],
      [x + height / 2, y - away - width, upright],
    ],
  );
}

type Stroke = readonly [readonly [number, number], readonly [number, number]];

function strokesOf({ shapes }: Drawing): Stroke[] {
  return shapes.flatMap((shape): Stroke[] => {
    if (shape.kind === 'line') return [[shape.from, shape.to]];
    if (shape.kind !== 'loop') return [];
    const points = flattenLoop(shape.vertices, CHORD_ERROR);
    return points.map((point, index): Stroke => [point, points[(index + 1) % points.length] ?? point]);
  });
}

function meet(a: Bounds, b: Bounds): boolean {
  return a.minX < b.maxX && b.minX < a.maxX && a.minY < b.maxY && b.minY < a.maxY;
}

/** Whether two boxes have a point in common, give or take rounding. */
function touch(a: Bounds, b: Bounds): boolean {
  return (
    a.minX <= b.maxX + SAME_PLACE &&
    b.minX <= a.maxX + SAME_PLACE &&
    a.minY <= b.maxY + SAME_PLACE &&
    b.minY <= a.maxY + SAME_PLACE
  );
}

function holds(outer: Bounds, inner: Bounds): boolean {
  return inner.minX >= outer.minX && inner.maxX <= outer.maxX && inner.minY >= outer.minY && inner.maxY <= outer.maxY;
}

/** Whether a straight stroke runs through a box: some of it is left when it is cut off at all four sides. */
function crosses([[x1, y1], [x2, y2]]: Stroke, box: Bounds): boolean {
  let [enter, leave] = [0, 1];
  for (const [start, end, low, high] of [
    [x1, x2, box.minX, box.maxX],
    [y1, y2, box.minY, box.maxY],
  ] as const) {
    if (start === end) {
      if (start < low || start > high) return false;
      continue;
    }
    const [first, second] = [(low - start) / (end - start), (high - start) / (end - start)];
    enter = Math.max(enter, Math.min(first, second));
    leave = Math.min(leave, Math.max(first, second));
  }
  return enter <= leave;
}
