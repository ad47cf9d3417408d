import { at } from '../../base/at';
import { pointOnSide, sidesOf } from '../../base/arc';
import { isInside, type Point } from '../../base/polygon';
import { flattenLoop } from '../../base/flatten';
import type { BuiltUpChoice } from '../../job/panel/read';
import { onLeg, type Panel } from '../../panel';
import { outlineOf, type Outline } from '../../panel/trace/outline';

/** A side this near a line lies on it, mm. */
const ON = 1e-3;

/**
 * The net outline of a panel built up, its edges named: those of the base where no bend stands (`top`), and each leg's rim (`long.rim`), which is the
 * straight side farthest from its tangent line.
 */
export function namedEdges(panel: Panel, { base }: BuiltUpChoice): Outline {
  const outline = outlineOf(panel.outline, panel.holes);
  const sides = sidesOf(outline.vertices).map(([from, to]) => ({
    middle: pointOnSide(from, to, 0.5),
    straight: from.bulge === 0,
    length: Math.hypot(to.x - from.x, to.y - from.y),
  }));
  const edges: (string | null)[] = sides.map(() => null);
  const baseLoop = sidesOf(at(panel.faces, 0).outline);
  base.edges.forEach((name, index) => {
    if (panel.bends.some((bend) => bend.name === name)) return;
    const side = baseLoop.at(index);
    if (!side) return;
    sides.forEach(({ middle }, number) => {
      if (isOn(middle, [side[0].x, side[0].y], [side[1].x, side[1].y])) edges[number] = name;
    });
  });
  panel.bends.forEach((bend) => {
    if (panel.bends.some((other) => other.name === `${bend.name}.rim`)) return;
    const leg = flattenLoop(at(panel.faces, bend.leg).outline, ON);
    const out = sides.map(({ middle, straight }) => (straight && touches(middle, leg) ? onLeg(bend, middle)[1] : 0));
    const rim = out.indexOf(Math.max(...out));
    if (at(out, rim) > 0) edges[rim] = `${bend.name}.rim`;
  });
  return { ...outline, edges };
}

function isOn([x, y]: Point, [px, py]: Point, [qx, qy]: Point): boolean {
  const length = Math.hypot(qx - px, qy - py);
  const [along, off] = [
    ((x - px) * (qx - px) + (y - py) * (qy - py)) / length,
    ((x - px) * (qy - py) - (y - py) * (qx - px)) / length,
  ];
  return Math.abs(off) < ON && along > -ON && along < length + ON;
}

/** Whether a place is on the edge of a polygon, or in it. */
function touches(place: Point, polygon: readonly Point[]): boolean {
  return (
    isInside(place, polygon) ||
    polygon.some((from, index) => isOn(place, from, at(polygon, (index + 1) % polygon.length)))
  );
}
