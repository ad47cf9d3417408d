import type { Vertex } from '../../base/drawing';
import type { Point } from '../../base/polygon';
import { areaOf, common, NOTHING, regionOf, united, without } from './regions';
import { shadowOf } from './shadow';
import type { PulledSide } from './trim';

/**
 * What is left on a pulled side beyond the net panel, cut up by the faces it carries on: for each of `faces` (the nearest to the bend first) the polygons that hang on
 * it. A face behind another has what lies beyond itself alone.
 */
export function leftRegions(
  net: readonly Vertex[],
  side: PulledSide,
  faces: readonly (readonly Vertex[])[],
): readonly (readonly (readonly Point[])[])[] {
  const whole = shadowOf(side);
  let taken = regionOf([net]);
  const made = [...faces].reverse().map((face) => {
    const beyond = without(common(shadowOf({ ...side, free: [face] }), whole), taken);
    taken = united([...taken, ...beyond]);
    return beyond
      .filter((path) => Math.abs(areaOf([path])) > NOTHING)
      .map((path) => path.map(({ x, y }): Point => [x, y]));
  });
  return made.reverse();
}
