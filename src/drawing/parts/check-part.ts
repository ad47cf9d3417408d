import { at } from '../../base/at';
import { asLoop } from '../../base/as-loop';
import type { Circle, Loop } from '../../base/drawing';
import { InternalError } from '../../base/errors';
import { flattenLoop } from '../../base/flatten';
import { isInside } from '../../base/polygon';
import type { Part } from './part';
import { SAME_PLACE } from '../../base/tolerance';

/** Chord error of the check's own polygons, mm. */
const CHORD_ERROR = 0.001;

/**
 * Throws unless the part has one outline, every hole and slot lies inside it, none touching another, and no groove meets a clamp
 * hole or another groove nor strays further than twice `overrun` mm past the edge (its corners lie aslant of an edge): the last look before a drawing leaves.
 */
export function checkPart(part: Part, overrun = 0): void {
  const outlines = part.drawing.shapes.filter(
    (shape): shape is Loop => shape.kind === 'loop' && shape.operation === 'outline',
  );
  const [outline] = outlines;
  if (!outline || outlines.length !== 1) throw new InternalError(`part ${part.id} has ${outlines.length} outlines`);
  const edge = flattenLoop(outline.vertices, CHORD_ERROR);
  const holes = openingsOf(part, 'hole');
  for (const [index, hole] of holes.entries()) {
    if (!within(edge, hole))
      throw new InternalError(`part ${part.id} has a hole at ${where(hole)} that breaks its edge`);
    for (const other of holes.slice(index + 1))
      if (meet(hole, other))
        throw new InternalError(`part ${part.id} has holes that run into each other at ${where(hole)}`);
  }
  checkGrooves(part, edge, holes, overrun);
}

/** A screw's own hole lies in the floor of the groove; any other opening keeps clear. */
function checkGrooves(part: Part, edge: Polygon, holes: readonly Opening[], overrun: number): void {
  const grooves = openingsOf(part, 'groove');
  for (const [index, groove] of grooves.entries()) {
    const strays = groove.polygon.some(
      (place) => !isInside(place, edge) && distanceToEdge(edge, place) > 2 * overrun + SAME_PLACE,
    );
    if (strays) throw new InternalError(`part ${part.id} has a groove at ${where(groove)} that runs away from it`);
    const met = [...grooves.slice(index + 1), ...holes.filter((hole) => !within(groove.polygon, hole))].find((other) =>
      meet(groove, other),
    );
    if (met)
      throw new InternalError(
        `part ${part.id} has a groove at ${where(groove)} that runs into the opening at ${where(met)}`,
      );
  }
}

type Place = readonly [number, number];
type Polygon = readonly Place[];

interface Opening {
  readonly polygon: Polygon;
  readonly circle: Circle | null;
}

function openingsOf(part: Part, operation: 'hole' | 'groove'): Opening[] {
  return part.drawing.shapes.flatMap((shape): Opening[] => {
    if (shape.operation !== operation) return [];
    if (shape.kind !== 'loop' && shape.kind !== 'circle') return [];
    return [
      { polygon: flattenLoop(asLoop(shape).vertices, CHORD_ERROR), circle: shape.kind === 'circle' ? shape : null },
    ];
  });
}

/** Whether all of an opening lies inside a polygon, clear of its edge; a circle by its middle and radius. */
function within(polygon: Polygon, opening: Opening): boolean {
  const places: Polygon = opening.circle ? [[opening.circle.x, opening.circle.y]] : opening.polygon;
  return places.every((place) => isInside(place, polygon)) && between(opening, { polygon, circle: null }) >= SAME_PLACE;
}

function meet(a: Opening, b: Opening): boolean {
  return between(a, b) < SAME_PLACE || isInside(at(b.polygon, 0), a.polygon) || isInside(at(a.polygon, 0), b.polygon);
}

/** Least distance between the edges of two shapes, circles by their true radius; negative or 0 where they cross. */
function between(a: Opening, b: Opening): number {
  if (a.circle && b.circle)
    return Math.hypot(a.circle.x - b.circle.x, a.circle.y - b.circle.y) - a.circle.radius - b.circle.radius;
  if (a.circle) return distanceToEdge(b.polygon, [a.circle.x, a.circle.y]) - a.circle.radius;
  if (b.circle) return between(b, a);
  if (edges(a.polygon).some((side) => edges(b.polygon).some((other) => cross(side, other)))) return 0;
  return Math.min(
    ...a.polygon.map((place) => distanceToEdge(b.polygon, place)),
    ...b.polygon.map((place) => distanceToEdge(a.polygon, place)),
  );
}

function distanceToEdge(polygon: Polygon, [x, y]: Place): number {
  return Math.min(
    ...edges(polygon).map(([[ax, ay], [bx, by]]) => {
      const [dx, dy] = [bx - ax, by - ay];
      const share = Math.max(0, Math.min(1, ((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy)));
      return Math.hypot(x - ax - share * dx, y - ay - share * dy);
    }),
  );
}

function cross([p, q]: readonly [Place, Place], [r, s]: readonly [Place, Place]): boolean {
  const side = (a: Place, b: Place, c: Place): number =>
    Math.sign((b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]));
  return side(p, q, r) * side(p, q, s) < 0 && side(r, s, p) * side(r, s, q) < 0;
}

function edges(polygon: Polygon): (readonly [Place, Place])[] {
  return polygon.map((point, index) => [point, polygon[(index + 1) % polygon.length] ?? point] as const);
}

function where({ polygon, circle }: Opening): string {
  const [x, y] = circle ? [circle.x, circle.y] : at(polygon, 0);
  return `${x}, ${y}`;
}
