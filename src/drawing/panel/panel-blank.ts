import { boundsOf } from '../../base/bounds';
import type { Drawing, Shape, Text } from '../../base/drawing';
import { outline } from '../../base/outline';
import type { Point } from '../../base/polygon';
import { flatOnLeg, fromFrame, type Bend } from '../../panel/flat/bend';
import type { Panel } from '../../panel';
import { cutAtRoots } from '../../panel/trim/root-holes';
import { mirrored } from '../aids/blank-drawing';
import { label, mark } from '../parts/shapes';

/** What stands on the blank at a bend: which step it is, and what is done there. */
export interface BendNote {
  readonly bend: number;
  /** Short lines for the leg, the first in larger letters. */
  readonly words: readonly string[];
}

/** Which face is looked at: the one that is up when it is marked, or the other, carried over by the ticks at the edges. */
export type MarkedFace = 'marked' | 'other';

const LETTERS = 7;
/** Length of a tick at the edge, for a line that is drawn on the other face, mm. */
const TICK = 10;

/**
 * The panel's flat at 1:1, to cut and to mark. Bends that turn up have both their tangent lines on the marked face; those that turn down on the other, seen as that
 * face is seen, with ticks at the edges on both. The right hand is the mirror image of the left.
 */
export function drawPanelBlank(
  panel: Panel,
  notes: readonly BendNote[],
  { hand, face }: { readonly hand: 'left' | 'right'; readonly face: MarkedFace },
): Drawing {
  const shapes: Shape[] = [
    outline(cutAtRoots(panel)),
    ...panel.holes.map((hole): Shape => ({ kind: 'loop', operation: 'hole', vertices: hole })),
    ...panel.corners.flatMap(({ root }) => (root ? crossAt(root.at, root.diameter) : [])),
    ...panel.bends.flatMap((bend, index) => [
      ...linesOf(bend, face),
      ...wordsOn(bend, notes.find((note) => note.bend === index)?.words ?? []),
    ]),
    ...faceWords(panel, hand, face),
  ];
  // The other face is seen from behind: left and right change places, as they do for the other hand.
  const turned = (hand === 'right') !== (face === 'other');
  const { minX, maxX } = boundsOf({ shapes: [outline(panel.outline)] });
  return { shapes: turned ? shapes.map((shape) => mirrored(shape, minX + maxX)) : shapes };
}

/** Where a root hole's drill is set: a cross as wide as the hole. */
function crossAt([x, y]: Point, diameter: number): Shape[] {
  const half = diameter / 2;
  return [mark([x - half, y], [x + half, y]), mark([x, y - half], [x, y + half])];
}

/** Both tangent lines on the face that will be inside; ticks on the other. */
function linesOf(bend: Bend, face: MarkedFace): Shape[] {
  const { length } = bend.finished;
  const lines: readonly (readonly [Point, Point])[] = [
    [fromFrame(bend.frame, [0, 0]), fromFrame(bend.frame, [length, 0])],
    [flatOnLeg(bend, [0, 0]), flatOnLeg(bend, [length, 0])],
  ];
  const drawnHere = (bend.turn === 'up') === (face === 'marked');
  if (drawnHere) return lines.map(([from, to]) => mark(from, to));
  return lines.flatMap(([from, to]) => {
    const share = Math.min(0.5, TICK / Math.hypot(to[0] - from[0], to[1] - from[1]));
    return [mark(from, between(from, to, share)), mark(between(to, from, share), to)];
  });
}

/** Along the leg, in its middle, as one reads it with the leg away from oneself. */
function wordsOn(bend: Bend, words: readonly string[]): Text[] {
  const [a, b] = [flatOnLeg(bend, [0, 0]), flatOnLeg(bend, [bend.finished.length, 0])];
  const slant = Math.atan2(b[1] - a[1], b[0] - a[0]);
  const angle = Math.abs(slant) > Math.PI / 2 + 1e-9 ? slant + Math.PI : slant;
  return words.flatMap((text, index) => {
    const [x, y] = flatOnLeg(bend, [bend.finished.length / 2, 12 + index * 2 * LETTERS]);
    return label(text, {
      x,
      y,
      width: bend.finished.length * 0.8,
      tallest: index === 0 ? LETTERS : LETTERS * 0.6,
      angle,
    });
  });
}

function faceWords({ faces: [base] }: Panel, hand: 'left' | 'right', face: MarkedFace): Text[] {
  const { minX, maxX, minY, maxY } = boundsOf({ shapes: [outline(base?.outline ?? [])] });
  const [x, y] = [(minX + maxX) / 2, (minY + maxY) / 2];
  const room = { x, width: (maxX - minX) * 0.7, tallest: LETTERS * 1.5 };
  return [
    ...label(hand.toUpperCase(), { ...room, y: y + LETTERS }),
    ...label(face === 'marked' ? 'THIS FACE UP WHEN MARKED' : 'THE OTHER FACE', {
      ...room,
      y: y - 2 * LETTERS,
      tallest: LETTERS,
    }),
  ];
}

function between([ax, ay]: Point, [bx, by]: Point, share: number): Point {
  return [ax + (bx - ax) * share, ay + (by - ay) * share];
}
