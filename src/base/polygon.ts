/** A place in the plane: x, y. */
export type Point = readonly [number, number];

/** Whether a point lies within a polygon, by the even–odd rule: how often a ray to the right crosses its sides. */
export function isInside([x, y]: Point, polygon: readonly Point[]): boolean {
  let inside = false;
  let before = polygon.at(-1);
  for (const corner of polygon) {
    if (before && before[1] > y !== corner[1] > y && x < levelAt(before, corner, y)) inside = !inside;
    before = corner;
  }
  return inside;
}

/** Where the side between two corners, one above y and one not, crosses that level. */
export function levelAt([x1, y1]: Point, [x2, y2]: Point, y: number): number {
  return x1 + ((y - y1) / (y2 - y1)) * (x2 - x1);
}
