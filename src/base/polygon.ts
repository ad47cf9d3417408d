import { at } from './at';

/** A place in the plane: x, y. */
export type Point = readonly [number, number];

/** Whether a point lies within a polygon, by the even–odd rule: how often a ray to the right crosses its sides. */
export function isInside([x, y]: Point, polygon: readonly Point[]): boolean {
  return polygon.reduce((inside, [x1, y1], index) => {
    const [x2, y2] = at(polygon, (index + 1) % polygon.length);
    return y1 > y !== y2 > y && x < x1 + ((y - y1) / (y2 - y1)) * (x2 - x1) ? !inside : inside;
  }, false);
}
