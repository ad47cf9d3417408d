import { arcBetween, sidesOf, type ArcSpan } from './arc';
import type { Drawing, Shape, Vertex } from './drawing';

export interface Bounds {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

type Place = readonly [number, number];

/** The box round a drawing, mm, arcs to their true edge. Labels are left out: they lie within what they label. Empty drawings throw. */
export function boundsOf(drawing: Drawing): Bounds {
  return boundsOfPoints(drawing.shapes.flatMap(extremes));
}

/** The box round some points; a RangeError where there are none. */
export function boundsOfPoints(points: readonly Place[]): Bounds {
  if (points.length === 0) throw new RangeError('nothing to take the bounds of');
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [x, y] of points) {
    [minX, minY, maxX, maxY] = [Math.min(minX, x), Math.min(minY, y), Math.max(maxX, x), Math.max(maxY, y)];
  }
  return { minX, minY, maxX, maxY };
}

function extremes(shape: Shape): Place[] {
  switch (shape.kind) {
    case 'loop':
      return loopExtremes(shape.vertices);
    case 'circle':
      return [
        [shape.x - shape.radius, shape.y - shape.radius],
        [shape.x + shape.radius, shape.y + shape.radius],
      ];
    case 'line':
      return [shape.from, shape.to];
    case 'text':
      return [];
  }
}

function loopExtremes(vertices: readonly Vertex[]): Place[] {
  return sidesOf(vertices).flatMap(([from, to]) => {
    const arc = arcBetween(from, to);
    return [[from.x, from.y] as const, ...(arc ? quadrants(arc) : [])];
  });
}

/** The points of an arc that lie furthest along an axis. */
function quadrants(arc: ArcSpan): Place[] {
  return [0, 1, 2, 3].flatMap((quarter) => {
    const angle = (quarter * Math.PI) / 2;
    const turn = 2 * Math.PI;
    const along = arc.sweep > 0 ? (((angle - arc.start) % turn) + turn) % turn : (((arc.start - angle) % turn) + turn) % turn;
    if (along > Math.abs(arc.sweep)) return [];
    return [[arc.centreX + arc.radius * Math.cos(angle), arc.centreY + arc.radius * Math.sin(angle)] as const];
  });
}
