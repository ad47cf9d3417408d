import { sidesOf, sweepFromBulge } from './arc';
import type { Shape } from './drawing';

/** How long the line of a shape is, mm; of text, nothing. */
export function wayAlong(shape: Shape): number {
  switch (shape.kind) {
    case 'loop':
      return total(sidesOf(shape.vertices).map(([from, to]) => sideLength(from, to)));
    case 'circle':
      return 2 * Math.PI * shape.radius;
    case 'line':
      return apart(shape.from, shape.to);
    case 'stroke':
      return total(shape.points.slice(1).map((to, index) => apart(shape.points[index] ?? to, to)));
    case 'text':
      return 0;
  }
}

interface Side {
  readonly x: number;
  readonly y: number;
  readonly bulge: number;
}

/** Source: chord c = 2R·sin(θ/2), arc = Rθ, of an arc whose bulge is tan(θ/4). */
function sideLength(from: Side, to: Side): number {
  const chord = Math.hypot(to.x - from.x, to.y - from.y);
  const half = Math.abs(sweepFromBulge(from.bulge)) / 2;
  return half < 1e-9 ? chord : (chord * half) / Math.sin(half);
}

function apart([ax, ay]: readonly [number, number], [bx, by]: readonly [number, number]): number {
  return Math.hypot(bx - ax, by - ay);
}

function total(lengths: readonly number[]): number {
  return lengths.reduce((sum, length) => sum + length, 0);
}
