import { at } from '../../base/at';
import { flattenLoop } from '../../base/flatten';
import type { Point } from '../../base/polygon';
import type { DepthAlong, DepthPiece } from '../../design/bend/depth-along';
import type { HeldSide, Panel } from '../../panel';
import { onLeg, toFrame, type Bend } from '../../panel/flat/bend';
import { depthOf } from './one-bend';
import { SAME_PLACE } from '../../base/tolerance';

/** Chords of a face may stray so far from its arcs, mm: the foot is packed to no better. */
const STRAY = 0.05;

/**
 * How deep the held side of a bend is along it, mm, where that is not the same everywhere: what lies under the form without a break, and to its last edge.
 * Undefined where it is a rectangle as deep all along.
 */
export function heldAlongOf(panel: Panel, bend: Bend, side: HeldSide): DepthAlong | undefined {
  const face = flattenLoop(at(panel.faces, side === 'base' ? bend.base : bend.leg).outline, STRAY).map(
    (place): Point => {
      const [x, y] = side === 'base' ? toFrame(bend.frame, place) : onLeg(bend, place);
      return [x, side === 'base' ? -y : y];
    },
  );
  const { length } = bend.finished;
  const within = face.map(([x]) => x).filter((x) => x > SAME_PLACE && x < length - SAME_PLACE);
  const borders = [0, ...within.sort((a, b) => a - b), length];
  const pieces = borders.slice(1).flatMap((to, index): DepthPiece[] => {
    const from = at(borders, index);
    return to - from < SAME_PLACE ? [] : [pieceOf(face, from, to)];
  });
  const deepest = depthOf(panel, bend, side);
  const isEven = pieces.every((piece) =>
    [piece.under.A, piece.under.B, piece.last.A, piece.last.B].every((depth) => Math.abs(depth - deepest) < SAME_PLACE),
  );
  return isEven ? undefined : pieces;
}

/** Between two neighbouring corners of the face the depth runs straight: two looks within tell it. */
function pieceOf(face: readonly Point[], from: number, to: number): DepthPiece {
  const [first, last] = [depthsAt(face, from + (to - from) / 4), depthsAt(face, to - (to - from) / 4)];
  const drawnOut = (what: 'under' | 'last'): DepthPiece['under'] => {
    const step = (last[what] - first[what]) / 2;
    return { A: Math.max(0, first[what] - step), B: Math.max(0, last[what] + step) };
  };
  return { from, to, under: drawnOut('under'), last: drawnOut('last') };
}

function depthsAt(face: readonly Point[], x: number): { readonly under: number; readonly last: number } {
  const crossed = face.flatMap(([ax, ay], index): number[] => {
    const [bx, by] = face[(index + 1) % face.length] ?? [ax, ay];
    if (ax > x === bx > x) return [];
    const depth = ay + ((x - ax) / (bx - ax)) * (by - ay);
    return depth > SAME_PLACE ? [depth] : [];
  });
  // Where the tangent line is not the face's own edge the line out of it crosses an even number of edges: nothing lies right behind it.
  return { under: crossed.length % 2 === 1 ? Math.min(...crossed) : 0, last: Math.max(0, ...crossed) };
}
