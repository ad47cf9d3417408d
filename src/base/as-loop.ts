import type { Circle, Loop } from './drawing';

/** A circle as a loop of two half circles: a bulge of 1 is one. A loop is its own. */
export function asLoop(shape: Circle | Loop): Loop {
  if (shape.kind === 'loop') return shape;
  const { x, y, radius, operation } = shape;
  return { kind: 'loop', operation, vertices: [-radius, radius].map((aside) => ({ x: x + aside, y, bulge: 1 })) };
}
