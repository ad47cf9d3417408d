import type { PathsD } from 'clipper2-ts';
import { distanceTo, sideBetween } from '../../base/side';
import { pointOnSide, sidesOf } from '../../base/arc';
import type { Finding, Staged } from '../../base/findings';
import { finding } from '../../findings/finding';
import { outlineOf, type Outline } from '../trace/outline';
import { areaOf, common, middleOfLargest, NOTHING, regionOf, united, without } from './regions';
import { restoreArcs, withoutIdleCorners } from './restore-arcs';
import { shadowOf } from './shadow';
import { trimRuns } from './trim-runs';
import type { CutAndTrim, PulledSide } from './trim';

/**
 * The net panel with the leverage its bends need left on: the net part united with the shadow of every pulled side; its own arcs stay arcs,
 * edges keep their names where they are not trimmed. Error findings: a shadow that falls on another part of the panel or on another shadow.
 */
export function cutAndTrim(net: Outline, pulled: readonly PulledSide[], path: string): Staged<CutAndTrim | null> {
  const whole = regionOf([net.vertices]);
  const shadows = pulled.map((side) => ({ side, shadow: shadowOf(side), own: regionOf(side.free) }));
  const findings = [
    ...shadows.flatMap(({ side, shadow, own }) =>
      overlap('trim-on-panel', common(shadow, without(whole, own)), [side.bend], path),
    ),
    ...shadows.flatMap((a, index) =>
      shadows.slice(index + 1).flatMap((b) => {
        const [first, second] = [without(a.shadow, a.own), without(b.shadow, b.own)];
        return overlap('trim-on-trim', common(first, second), [a.side.bend, b.side.bend], path);
      }),
    ),
  ];
  if (findings.length > 0) return { value: null, findings };
  const grown = united([...whole, ...shadows.flatMap(({ shadow }) => shadow)]);
  // Voids the shadows close round are cut along with the rest: the largest loop is the sheet's edge.
  const [outer = []] = [...grown].sort((a, b) => areaOf([b]) - areaOf([a]));
  const vertices = withoutIdleCorners(restoreArcs(outer, [net.vertices]));
  const cut = { ...outlineOf(vertices, net.holes), holes: net.holes };
  return {
    value: { cut: { ...cut, edges: namesFrom(net, cut.vertices) }, trim: trimRuns(net.vertices, cut.vertices) },
    findings,
  };
}

function overlap(
  code: 'trim-on-panel' | 'trim-on-trim',
  region: PathsD,
  [bend = '', other = '']: readonly string[],
  path: string,
): Finding[] {
  if (areaOf(region) <= NOTHING) return [];
  const { x, y } = middleOfLargest(region);
  return [code === 'trim-on-panel' ? finding(code, path, { bend, x, y }) : finding(code, path, { bend, other, x, y })];
}

/** The name of the net side that a side lies on; none for what is new. */
function namesFrom(net: Outline, vertices: Outline['vertices']): (string | null)[] {
  const known = sidesOf(net.vertices).map(([from, to], index) => ({
    side: sideBetween(from, to),
    name: net.edges[index] ?? null,
  }));
  return sidesOf(vertices).map(([from, to]) => {
    const [x, y] = pointOnSide(from, to, 0.5);
    return known.find(({ side }) => distanceTo(side, { x, y }) < 1e-3)?.name ?? null;
  });
}
