import { bulgeFromSagitta, sagittaFromBulge, sidesOf } from './arc';
import type { Drawing, Shape, Vertex } from './drawing';

/** What places are rounded to, mm: a thousandth of a µm, far more than rounding in long sums comes to, far less than anything here is cut to. */
const GRID = 1e-6;

function snapped(mm: number): number {
  return Math.round(mm / GRID) * GRID;
}

/** The loop with its places on a grid of 10⁻⁶ mm, and each arc as high over its chord as a number of that grid. */
export function loopOnGrid(vertices: readonly Vertex[]): Vertex[] {
  return sidesOf(vertices).map(([from, to]) => {
    const [x, y] = [snapped(from.x), snapped(from.y)];
    const chord = Math.hypot(snapped(to.x) - x, snapped(to.y) - y);
    if (from.bulge === 0 || chord === 0) return { x, y, bulge: 0 };
    return { x, y, bulge: bulgeFromSagitta(chord, snapped(sagittaFromBulge(chord, from.bulge))) };
  });
}

/**
 * The drawing on that grid. What was reckoned in many steps differs in its last places from one engine's sines to another's, and an arc's radius by far more
 * than its places; so written, a file is the same to the byte in node and in a browser.
 */
export function onGrid(drawing: Drawing): Drawing {
  const point = ([x, y]: readonly [number, number]): readonly [number, number] => [snapped(x), snapped(y)];
  return {
    shapes: drawing.shapes.map((shape): Shape => {
      switch (shape.kind) {
        case 'loop':
          return { ...shape, vertices: loopOnGrid(shape.vertices) };
        case 'line':
          return { ...shape, from: point(shape.from), to: point(shape.to) };
        case 'stroke':
          return { ...shape, points: shape.points.map(point) };
        case 'circle':
        case 'text':
          return { ...shape, x: snapped(shape.x), y: snapped(shape.y) };
      }
    }),
  };
}
