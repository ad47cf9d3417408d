import type { Vertex } from '../../base/drawing';
import type { Finding } from '../../base/findings';
import { flattenLoop } from '../../base/flatten';
import { isInside } from '../../base/polygon';
import { finding } from '../../findings/finding';
import { lengthOf, placeAlong, runSides } from './row';
import type { SeamLayout } from './seam';

/** A bend's zone on the flat: the metal between its tangent lines. */
export interface Zone {
  readonly name: string;
  readonly outline: readonly Vertex[];
}

/** A row is looked at so often along it, mm, as well as at its holes. */
const STEP = 1;
/** Arcs of zones as chords that stray so far, mm. */
const STRAY = 0.05;

/**
 * Holes drilled before a bend that their row runs over are pilot holes in this panel alone: bent, the outer sheet is the longer and the holes of two would part. A
 * warning for each bend it runs over; two panels that are both drilled so are refused where they are joined.
 */
export function checkClearOfBends(layout: SeamLayout, zones: readonly Zone[], path: string): Finding[] {
  if (layout.seam.drill === 'match') return [];
  const lap = runSides(layout.lapLine);
  const steps = Math.ceil(lengthOf(lap) / STEP);
  const line = Array.from({ length: steps + 1 }, (_, index) => placeAlong(lap, (index * lengthOf(lap)) / steps));
  const places = [...layout.rows.flat(), ...line];
  return zones.flatMap(({ name, outline }) => {
    const polygon = flattenLoop(outline, STRAY);
    const crosses = places.some(({ x, y }) => isInside([x, y], polygon));
    return crosses ? [finding('seam-over-bend', `${path}.on`, { edge: layout.seam.on, bend: name })] : [];
  });
}
