import { arcBetween, sidesOf } from './arc';
import type { Vertex } from './drawing';

/** No arc is cut into chords finer than this, radians: far below what any tolerance here asks. */
const FINEST = 1e-4;

/**
 * The points of a closed loop with its arcs as chords that stray from them by at most `chordError` mm.
 * The first point is not repeated.
 */
export function flattenLoop(vertices: readonly Vertex[], chordError: number): [number, number][] {
  return sidesOf(vertices).flatMap(([from, to]): [number, number][] => {
    const arc = arcBetween(from, to);
    if (!arc) return [[from.x, from.y]];
    const widest = Math.max(FINEST, 2 * Math.acos(Math.max(0, 1 - chordError / arc.radius)));
    const count = Math.ceil(Math.abs(arc.sweep) / widest);
    return Array.from({ length: count }, (_, index) => {
      if (index === 0) return [from.x, from.y];
      const angle = arc.start + (arc.sweep * index) / count;
      return [arc.centreX + arc.radius * Math.cos(angle), arc.centreY + arc.radius * Math.sin(angle)];
    });
  });
}
