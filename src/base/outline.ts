import { at } from './at';
import type { Loop, Vertex } from './drawing';

type Place = readonly [number, number];

/** A corner of an outline; `bulge` as in {@link Vertex}. */
export function corner([x, y]: Place, bulge = 0): Vertex {
  return { x, y, bulge };
}

/** The closed outline through these corners, counter-clockwise. */
export function outline(vertices: readonly Vertex[]): Loop {
  return { kind: 'loop', operation: 'outline', vertices };
}

/** The same open run of sides, walked from its end to its start: each bulge goes with the side it stood on. */
export function walkedBack(run: readonly Vertex[]): Vertex[] {
  return run.map(({ x, y }, index) => ({ x, y, bulge: index === 0 ? 0 : -at(run, index - 1).bulge })).reverse();
}

/** Bulge of an arc of `sweep` radians, positive counter-clockwise. */
export function bulgeOf(sweep: number): number {
  return Math.tan(sweep / 4);
}
