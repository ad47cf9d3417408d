import type { Drawing, Vertex } from './drawing';

/** Of a bulge: over a chord of 1 m the arc strays by 0.25 µm. */
const STEPS = 1e9;

/**
 * The drawing with its arcs' bulges rounded to 10⁻⁹. What was reckoned in many steps differs in its last places from one engine's sines to another's; so written, it
 * does not.
 */
export function withRoundBulges(drawing: Drawing): Drawing {
  const rounded = (vertex: Vertex): Vertex => ({ ...vertex, bulge: Math.round(vertex.bulge * STEPS) / STEPS });
  return {
    shapes: drawing.shapes.map((shape) =>
      shape.kind === 'loop' ? { ...shape, vertices: shape.vertices.map(rounded) } : shape,
    ),
  };
}
