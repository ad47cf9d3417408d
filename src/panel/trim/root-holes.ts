import type { PathsD } from 'clipper2-ts';
import type { Vertex } from '../../base/drawing';
import type { Corner, Panel } from '../flat/panel';
import { areaOf, regionOf, united, without } from './regions';
import { restoreArcs, withoutIdleCorners } from './restore-arcs';

/**
 * The net outline as it is cut: where two bends meet, the cut stops at the root hole. What is left uncut between the hole and the base's corner is the small
 * surplus that is dressed in. Closed, counter-clockwise, mm on the flat.
 */
export function cutAtRoots({ outline, corners }: Pick<Panel, 'outline' | 'corners'>): readonly Vertex[] {
  const roots = corners.flatMap(({ at, root }) => (root ? [{ at, root }] : []));
  if (roots.length === 0) return outline;
  const holes = roots.map(({ root }) => disc(root.at, root.diameter / 2));
  const webs = roots.map(webOf).filter((loop) => loop.length > 0);
  const whole = united([...regionOf([outline]), ...webs.flatMap((web) => regionOf([web]))]);
  const cut: PathsD = without(whole, united(holes.flatMap((hole) => regionOf([hole]))));
  const [outer = []] = [...cut].sort((a, b) => areaOf([b]) - areaOf([a]));
  return withoutIdleCorners(restoreArcs(outer, [outline, ...holes]));
}

/** The metal between base corner and root hole: a disc round the corner that reaches the root; all of it but the slit is metal anyhow. */
function webOf({ at, root }: { readonly at: Corner['at']; readonly root: NonNullable<Corner['root']> }): Vertex[] {
  const reach = Math.hypot(root.at[0] - at[0], root.at[1] - at[1]);
  return reach > root.diameter / 2 ? disc(at, reach) : [];
}

function disc([x, y]: readonly [number, number], radius: number): Vertex[] {
  return [
    { x: x - radius, y, bulge: 1 },
    { x: x + radius, y, bulge: 1 },
  ];
}
