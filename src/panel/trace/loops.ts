import { at } from '../../base/at';
import { loopArea } from '../../base/area';
import { boundsOf, type Bounds } from '../../base/bounds';
import type { Vertex } from '../../base/drawing';
import { flattenLoop } from '../../base/flatten';
import { isInside } from '../../base/polygon';
import { distance, type TracedLoop } from './chain';

/** A loop among others: what it lies in. */
export interface PlacedLoop extends TracedLoop {
  readonly bounds: Bounds;
  readonly area: number;
  /** How many other loops it lies within. */
  readonly depth: number;
  /** The innermost of those, by its place in the list; null where it lies in none. */
  readonly within: number | null;
}

/** Sides shorter than this, mm, are dropped: rounding, and slips of the pen. */
const SHORTEST = 1e-3;
/** What a loop flattened to look into it may stray, mm. Loops that do not touch are told apart by a corner of theirs. */
const STRAY = 0.001;

/** A loop without sides that are none. */
export function tidied(vertices: readonly Vertex[]): Vertex[] {
  return vertices.filter((vertex, index) => {
    const next = vertices[(index + 1) % vertices.length] ?? vertex;
    return distance(vertex, next) > SHORTEST;
  });
}

/** Loops that do not touch, each with what it lies in. */
export function placeLoops(loops: readonly TracedLoop[]): PlacedLoop[] {
  const shapes = loops.map((loop) => {
    const bounds = boundsOf({ shapes: [{ kind: 'loop', operation: 'outline', vertices: loop.vertices }] });
    return { loop, bounds, area: Math.abs(loopArea(loop.vertices)) };
  });
  const polygons = new Map<number, ReturnType<typeof flattenLoop>>();
  const polygonOf = (index: number): ReturnType<typeof flattenLoop> => {
    const known = polygons.get(index) ?? flattenLoop(at(loops, index).vertices, STRAY);
    polygons.set(index, known);
    return known;
  };
  return shapes.map(({ loop, bounds, area }) => {
    const [corner] = loop.vertices;
    const around = shapes.flatMap((other, index) =>
      corner && other.area > area && covers(other.bounds, bounds) && isInside([corner.x, corner.y], polygonOf(index))
        ? [{ index, area: other.area }]
        : [],
    );
    const innermost = around.reduce<{ index: number; area: number } | null>(
      (best, one) => (best && best.area <= one.area ? best : one),
      null,
    );
    return { ...loop, bounds, area, depth: around.length, within: innermost?.index ?? null };
  });
}

function covers(outer: Bounds, inner: Bounds): boolean {
  return outer.minX <= inner.minX && outer.minY <= inner.minY && outer.maxX >= inner.maxX && outer.maxY >= inner.maxY;
}
