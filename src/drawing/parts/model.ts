import { at } from '../../base/at';
import makerjs from 'makerjs';
import { loopArea } from '../../base/area';
import { bulgeFromSweep } from '../../base/arc';
import type { Loop, Operation, Vertex } from '../../base/drawing';
import { InternalError } from '../../base/errors';
import { SAME_PLACE } from '../../base/tolerance';

/**
 * The closed loops of a makerjs model, arcs kept as bulges, each starting at its lowest leftmost corner and running
 * counter-clockwise. Throws where any path of the model is left over or open: nothing open may be cut.
 */
export function loopsOf(model: makerjs.IModel, operation: Operation): Loop[] {
  const loops: Loop[] = [];
  makerjs.model.findChains(
    model,
    (chains, loose) => {
      if (loose.length > 0) throw new InternalError(`an outline has ${loose.length} path(s) that join nothing`);
      for (const chain of chains) loops.push({ kind: 'loop', operation, vertices: verticesOf(chain) });
    },
    { pointMatchingDistance: SAME_PLACE, byLayers: false },
  );
  if (loops.length === 0) throw new InternalError('an outline has no closed loop');
  return loops;
}

function verticesOf(chain: makerjs.IChain): Vertex[] {
  if (!chain.endless) throw new InternalError('an outline is not closed');
  const vertices = chain.links.map((link): Vertex => {
    const start = link.endPoints[link.reversed ? 1 : 0];
    if (!start) throw new InternalError('a path without an end');
    return { x: start[0] ?? NaN, y: start[1] ?? NaN, bulge: bulgeOf(link) };
  });
  return startLowLeft(loopArea(vertices) > 0 ? vertices : reversed(vertices));
}

function bulgeOf(link: makerjs.IChainLink): number {
  const path = link.walkedPath.pathContext;
  if (path.type !== makerjs.pathType.Arc) return 0;
  const bulge = bulgeFromSweep(makerjs.angle.toRadians(makerjs.angle.ofArcSpan(path as makerjs.IPathArc)));
  return link.reversed ? -bulge : bulge;
}

function reversed(vertices: readonly Vertex[]): Vertex[] {
  return vertices.map((_, index) => {
    const corner = at(vertices, -1 - index);
    const before = at(vertices, (2 * vertices.length - 2 - index) % vertices.length);
    return { ...corner, bulge: -before.bulge };
  });
}

/** Chains start where makerjs happens to; a fixed start keeps the bytes of a file the same. */
function startLowLeft(vertices: readonly Vertex[]): Vertex[] {
  const first = vertices.reduce((best, corner, index) => {
    const held = at(vertices, best);
    return corner.y < held.y - SAME_PLACE ||
      (Math.abs(corner.y - held.y) <= SAME_PLACE && corner.x < held.x - SAME_PLACE)
      ? index
      : best;
  }, 0);
  return [...vertices.slice(first), ...vertices.slice(0, first)];
}
