import { boundsOf, type Bounds } from '../../base/bounds';
import type { Loop, Shape, Text } from '../../base/drawing';
import { flattenLoop } from '../../base/flatten';
import { isInside } from '../../base/polygon';
import type { LengthUnit } from '../../base/units';
import { labelLength } from './lengths';
import type { Part } from './part';
import { textWidth } from './shapes';

/** Letters' heights tried, tallest first, mm; the last can just be read. */
const HEIGHTS = [3.5, 2.8, 2.3, 1.8];
/** Left free round the words, mm. */
const CLEAR = 1;
/** Chord error of the outline looked at, mm. */
const CHORD_ERROR = 0.05;
/** Long marks are looked at in pieces of this length, mm. */
const PIECE = 2;
/** Places tried along the longer side of a part. */
const TRIES = 120;

/**
 * The part with its greatest extent, along x or y as drawn, written on it as the finished piece measures: what a program shows
 * that takes no notice of a file's unit can be checked against it. Written clear of everything else, from the low left, or over
 * marks where there is no such place; a part with no room for it (a small station's radius says as much) stays as it is.
 */
export function withOverall(part: Part, units: LengthUnit): Part {
  const outline = part.drawing.shapes.find(
    (shape): shape is Loop => shape.kind === 'loop' && shape.operation === 'outline',
  );
  if (!outline) return part;
  const box = boundsOf({ shapes: [outline] });
  const words = `OVERALL ${labelLength(Math.max(box.maxX - box.minX, box.maxY - box.minY), units)}`;
  const others = part.drawing.shapes.filter((shape) => shape !== outline);
  const unmarked = others.filter(({ kind }) => kind !== 'line');
  const found = placeWords(words, outline, others, HEIGHTS) ?? placeWords(words, outline, unmarked, HEIGHTS.slice(-1));
  return found ? { ...part, drawing: { shapes: [...part.drawing.shapes, found] } } : part;
}

/** Words within an outline clear of the other shapes, as tall of `heights` (mm, tallest first) as there is room for, from the low left; null where there is none. */
export function placeWords(
  words: string,
  outline: Loop,
  others: readonly Shape[],
  heights: readonly number[],
): Text | null {
  const edge = flattenLoop(outline.vertices, CHORD_ERROR);
  const box = boundsOf({ shapes: [outline] });
  const taken = [...others.flatMap(boxesOf), ...edgeBoxes(edge)];
  const step = Math.max(1, Math.max(box.maxX - box.minX, box.maxY - box.minY) / TRIES);
  // What barred one place bars the next, as a rule.
  let barred: Bounds | undefined;
  const isBarred = (tried: Bounds): boolean => {
    if (barred && overlap(tried, barred)) return true;
    barred = taken.find((other) => overlap(tried, other));
    return barred !== undefined;
  };
  for (const height of heights) {
    const long = textWidth(words, height) + 2 * CLEAR;
    const high = height + 2 * CLEAR;
    for (const angle of [0, Math.PI / 2]) {
      const [width, depth] = angle === 0 ? [long, high] : [high, long];
      for (let y = box.minY; y + depth <= box.maxY; y += step)
        for (let x = box.minX; x + width <= box.maxX; x += step) {
          const tried = { minX: x, minY: y, maxX: x + width, maxY: y + depth };
          if (isBarred(tried) || !isInside([x + width / 2, y + depth / 2], edge)) continue;
          const [baseX, baseY] = angle === 0 ? [x + width / 2, y + CLEAR] : [x + width - CLEAR, y + depth / 2];
          return {
            kind: 'text',
            operation: 'label',
            x: baseX,
            y: baseY,
            height,
            angle,
            anchor: 'middle',
            text: words,
          };
        }
    }
  }
  return null;
}

/** Boxes that together cover a shape. */
function boxesOf(shape: Shape): Bounds[] {
  switch (shape.kind) {
    case 'line':
      return piecesOf(shape.from, shape.to);
    case 'text':
      return [textBox(shape)];
    case 'stroke':
      return shape.points.slice(1).flatMap((to, index) => piecesOf(shape.points[index] ?? to, to));
    case 'loop':
    case 'circle':
      return [boundsOf({ shapes: [shape] })];
  }
}

function edgeBoxes(edge: readonly (readonly [number, number])[]): Bounds[] {
  return edge.flatMap((from, index) => piecesOf(from, edge[(index + 1) % edge.length] ?? from));
}

/** A straight line as boxes of its pieces, so that a slanted one takes no more room than it needs. */
function piecesOf(from: readonly [number, number], to: readonly [number, number]): Bounds[] {
  const straight = from[0] === to[0] || from[1] === to[1];
  const count = straight ? 1 : Math.max(1, Math.ceil(Math.hypot(to[0] - from[0], to[1] - from[1]) / PIECE));
  const at = (share: number): [number, number] => [
    from[0] + share * (to[0] - from[0]),
    from[1] + share * (to[1] - from[1]),
  ];
  return Array.from({ length: count }, (_, index) => {
    const [[ax, ay], [bx, by]] = [at(index / count), at((index + 1) / count)];
    return { minX: Math.min(ax, bx), minY: Math.min(ay, by), maxX: Math.max(ax, bx), maxY: Math.max(ay, by) };
  });
}

/** The upright box round a text at any angle, with what hangs below its line where not all is capitals. */
function textBox({ x, y, height, angle, anchor, text }: Text): Bounds {
  const width = textWidth(text, height);
  const left = anchor === 'start' ? 0 : anchor === 'middle' ? -width / 2 : -width;
  const corners = [left, left + width].flatMap((along) =>
    [text === text.toUpperCase() ? 0 : -0.2 * height, height].map((up): [number, number] => [
      x + along * Math.cos(angle) - up * Math.sin(angle),
      y + along * Math.sin(angle) + up * Math.cos(angle),
    ]),
  );
  return {
    minX: Math.min(...corners.map(([cx]) => cx)),
    minY: Math.min(...corners.map(([, cy]) => cy)),
    maxX: Math.max(...corners.map(([cx]) => cx)),
    maxY: Math.max(...corners.map(([, cy]) => cy)),
  };
}

function overlap(a: Bounds, b: Bounds): boolean {
  return a.minX < b.maxX && b.minX < a.maxX && a.minY < b.maxY && b.minY < a.maxY;
}
