import { pointOnSide, sidesOf, sweepFromBulge } from './arc';
import type { Drawing, Shape, Vertex } from './drawing';
import { InternalError } from './errors';

export interface Bounds {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

type Place = readonly [number, number];

const TURN = 2 * Math.PI;

/**
 * The box round a drawing, mm, arcs to their true edge. Texts are left out: a font decides their width, and they lie within what
 * they label. Throws where there is nothing but texts.
 */
export function boundsOf(drawing: Drawing): Bounds {
  return boundsOfPoints(drawing.shapes.flatMap(extremes));
}

/** The box round some points, mm; throws where there are none. */
export function boundsOfPoints(points: readonly Place[]): Bounds {
  if (points.length === 0) throw new InternalError('nothing to take the bounds of');
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const place of points) {
    minX = Math.min(minX, place[0]);
    minY = Math.min(minY, place[1]);
    maxX = Math.max(maxX, place[0]);
    maxY = Math.max(maxY, place[1]);
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
    case 'stroke':
      return [...shape.points];
    case 'text':
      return [];
  }
}

function loopExtremes(vertices: readonly Vertex[]): Place[] {
  return sidesOf(vertices).flatMap(([from, to]): Place[] => [[from.x, from.y], ...arcExtremes(from, to)]);
}

/** The points inside an arc where it runs along an axis: there it lies furthest along the other. */
function arcExtremes(from: Vertex, to: Vertex): Place[] {
  const sweep = sweepFromBulge(from.bulge);
  if (sweep === 0) return [];
  const heading = Math.atan2(to.y - from.y, to.x - from.x) - sweep / 2;
  return [0, 1, 2, 3].flatMap((quarter): Place[] => {
    const turned = (((quarter * Math.PI) / 2 - heading) * Math.sign(sweep)) % TURN;
    const share = (turned < 0 ? turned + TURN : turned) / Math.abs(sweep);
    return share < 1 ? [pointOnSide(from, to, share)] : [];
  });
}
