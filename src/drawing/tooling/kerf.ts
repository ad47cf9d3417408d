import type { Shape } from '../../base/drawing';
import { InternalError } from '../../base/errors';
import { offsetLoop } from '../../base/offset';

/**
 * A shape moved off its line by half the beam, so that the piece comes out as wanted: outlines outward, holes and slots inward, arcs
 * as arcs; marks and labels stay. Throws where a shape would pinch off, which `joints/laser.ts` finds beforehand.
 */
export function compensate(shape: Shape, halfKerf: number): Shape {
  const by = shape.operation === 'outline' ? halfKerf : shape.operation === 'hole' ? -halfKerf : 0;
  if (by === 0) return shape;
  if (shape.kind === 'circle') {
    if (shape.radius + by <= 0) throw new InternalError(`a hole of ${shape.radius} mm radius closes up by ${-by} mm`);
    return { ...shape, radius: shape.radius + by };
  }
  if (shape.kind !== 'loop') return shape;
  const vertices = offsetLoop(shape.vertices, by);
  if (vertices === 'pinched-off') throw new InternalError(`an outline pinches off when moved by ${by} mm`);
  return { ...shape, vertices };
}
