import { at } from './at';
import { sidesOf } from './arc';
import type { Shape, Vertex } from './drawing';
import { sideBetween } from './side';

/** The length of a closed loop, arcs along their curve, mm. */
export function loopLength(vertices: readonly Vertex[]): number {
  return total(sidesOf(vertices).map(([from, to]) => sideBetween(from, to).length));
}

/** How long the line of a shape is, mm; of text, nothing. */
export function wayAlong(shape: Shape): number {
  switch (shape.kind) {
    case 'loop':
      return loopLength(shape.vertices);
    case 'circle':
      return 2 * Math.PI * shape.radius;
    case 'line':
      return apart(shape.from, shape.to);
    case 'stroke':
      return total(shape.points.slice(1).map((to, index) => apart(at(shape.points, index), to)));
    case 'text':
      return 0;
  }
}

function apart([ax, ay]: readonly [number, number], [bx, by]: readonly [number, number]): number {
  return Math.hypot(bx - ax, by - ay);
}

function total(lengths: readonly number[]): number {
  return lengths.reduce((sum, length) => sum + length, 0);
}
