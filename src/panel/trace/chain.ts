import { pointOnSide } from '../../base/arc';
import type { Vertex } from '../../base/drawing';
import type { Place } from '../../base/side';

/** Lines and arcs that follow one another, open until joined; the last vertex is where they end. */
export interface Chain {
  readonly vertices: readonly Vertex[];
  readonly where: string;
  readonly layer: string;
}

/** A closed loop, its last vertex joined to its first; `where`: what it was drawn as. */
export interface TracedLoop {
  readonly vertices: readonly Vertex[];
  readonly where: string;
  readonly layer: string;
}

/** Each side of an open run with where it ends. */
export function openSides(vertices: readonly Vertex[]): (readonly [Vertex, Vertex])[] {
  return vertices.slice(0, -1).flatMap((from, index) => {
    const to = vertices[index + 1];
    return to ? [[from, to] as const] : [];
  });
}

/** The middle of a side. */
export function middleOf([from, to]: readonly [Vertex, Place]): Place {
  const [x, y] = pointOnSide(from, to, 0.5);
  return { x, y };
}

export function distance(a: Place, b: Place): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}
