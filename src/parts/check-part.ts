import type { Circle, Loop } from '../base/drawing';
import { InternalError } from '../base/errors';
import { flattenLoop } from '../base/flatten';
import type { Part } from './part';

/** Chord error of the check's own polygon, mm. */
const CHORD_ERROR = 0.001;

/** Throws unless the part has one outline and every hole lies inside it, none touching another: the last look before a drawing leaves. */
export function checkPart(part: Part): void {
  const outlines = part.drawing.shapes.filter((shape): shape is Loop => shape.kind === 'loop' && shape.operation === 'outline');
  const holes = part.drawing.shapes.filter((shape): shape is Circle => shape.kind === 'circle' && shape.operation === 'hole');
  const [outline] = outlines;
  if (!outline || outlines.length !== 1) throw new InternalError(`part ${part.id} has ${outlines.length} outlines`);
  const polygon = flattenLoop(outline.vertices, CHORD_ERROR);
  for (const [index, hole] of holes.entries()) {
    if (!inside(polygon, [hole.x, hole.y]) || distanceToEdge(polygon, [hole.x, hole.y]) < hole.radius) {
      throw new InternalError(`part ${part.id} has a hole at ${hole.x}, ${hole.y} that breaks its edge`);
    }
    for (const other of holes.slice(index + 1)) {
      if (Math.hypot(hole.x - other.x, hole.y - other.y) < hole.radius + other.radius) {
        throw new InternalError(`part ${part.id} has holes that run into each other at ${hole.x}, ${hole.y}`);
      }
    }
  }
}

type Place = readonly [number, number];

/** Even–odd rule: how often a ray to the right crosses the edges. */
function inside(polygon: readonly Place[], [x, y]: Place): boolean {
  return edges(polygon).filter(([[ax, ay], [bx, by]]) => ay > y !== by > y && x < ax + ((y - ay) / (by - ay)) * (bx - ax)).length % 2 === 1;
}

function distanceToEdge(polygon: readonly Place[], [x, y]: Place): number {
  return Math.min(
    ...edges(polygon).map(([[ax, ay], [bx, by]]) => {
      const [dx, dy] = [bx - ax, by - ay];
      const share = Math.max(0, Math.min(1, ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy)));
      return Math.hypot(x - ax - share * dx, y - ay - share * dy);
    }),
  );
}

function edges(polygon: readonly Place[]): (readonly [Place, Place])[] {
  return polygon.map((point, index) => [point, polygon[(index + 1) % polygon.length] ?? point] as const);
}
