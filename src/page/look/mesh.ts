import { ShapeUtils, Vector2 } from 'three';
import { at } from '../../base/at';
import { cross, dot, subtract, unit, type Point3 } from '../../output/picture/vector';
import type { Polygon } from './scene';

/** Flat polygons in space as the graphics card takes them: three numbers a point, three points a triangle, two a line. */
export interface MeshData {
  readonly positions: Float32Array;
  readonly normals: Float32Array;
  /** Edges where two polygons meet sharply, and those of one polygon alone. */
  readonly edges: Float32Array;
}

/** Facets that turn less than this toward one another are shaded as one round surface, cosine. */
const ROUND = Math.cos(Math.PI / 12);
/** Edges of facets that turn more than this are drawn, cosine. */
const SHARP = Math.cos(Math.PI / 9);
/** Corners nearer than a sixteenth of a millimetre are one; so many of those steps are told apart along an axis. */
const STEPS_PER_MM = 16;
const RANGE = 2 ** 17;

/** Triangles, shading and drawn edges of flat polygons, which need not be convex. */
export function meshOf(polygons: readonly Polygon[]): MeshData {
  const facets = facetsOf(polygons);
  const round = roundNormals(facets);
  const positions: number[] = [];
  const shading: number[] = [];
  facets.forEach(({ polygon, normal }, index) => {
    const corners = at(round, index);
    for (const corner of triangles(polygon, normal)) {
      positions.push(...at(polygon, corner));
      shading.push(...at(corners, corner));
    }
  });
  return {
    positions: new Float32Array(positions),
    normals: new Float32Array(shading),
    edges: new Float32Array(sharpEdges(facets)),
  };
}

interface Facet {
  readonly polygon: Polygon;
  readonly normal: Point3;
  /** Which place each corner lies at: corners of several facets that lie at one have one number. */
  readonly places: readonly number[];
}

function facetsOf(polygons: readonly Polygon[]): Facet[] {
  const numbers = new Map<number, number>();
  const numberOf = ([x, y, z]: Point3): number => {
    const place = (stepOf(x) * RANGE + stepOf(y)) * RANGE + stepOf(z);
    const number = numbers.get(place) ?? numbers.size;
    numbers.set(place, number);
    return number;
  };
  return polygons.flatMap((polygon): Facet[] => {
    const normal = polygon.length < 3 ? null : newellNormal(polygon);
    return normal ? [{ polygon, normal, places: polygon.map(numberOf) }] : [];
  });
}

function stepOf(value: number): number {
  return Math.round(value * STEPS_PER_MM) + RANGE / 2;
}

/** For every corner of every facet the normal of the surface there: the mean of all facets that meet in it nearly in one plane. */
function roundNormals(facets: readonly Facet[]): Point3[][] {
  const meeting: Point3[][] = [];
  for (const { normal, places } of facets) for (const place of places) (meeting[place] ??= []).push(normal);
  return facets.map(({ normal: own, places }) =>
    places.map((place): Point3 => {
      let [x, y, z] = [0, 0, 0];
      for (const normal of at(meeting, place)) {
        if (dot(own, normal) < ROUND) continue;
        [x, y, z] = [x + normal[0], y + normal[1], z + normal[2]];
      }
      return unit([x, y, z]);
    }),
  );
}

/** The corners of the triangles a flat polygon is made of, by their places in it, three by three. */
function triangles(polygon: Polygon, normal: Point3): number[] {
  if (isConvex(polygon, normal)) return polygon.slice(2).flatMap((_, index) => [0, index + 1, index + 2]);
  const origin = at(polygon, 0);
  const across = unit(subtract(at(polygon, 1), origin));
  const up = cross(normal, across);
  const flat = polygon.map((point) => {
    const from = subtract(point, origin);
    return new Vector2(dot(from, across), dot(from, up));
  });
  return ShapeUtils.triangulateShape(flat, []).flat();
}

/** Whether a polygon of few corners has none that turns back; of many it is not asked. */
function isConvex(polygon: Polygon, normal: Point3): boolean {
  if (polygon.length > 4) return false;
  return polygon.every((point, index) => {
    const before = at(polygon, index - 1);
    const after = at(polygon, (index + 1) % polygon.length);
    return dot(cross(subtract(point, before), subtract(after, point)), normal) >= 0;
  });
}

/** Square to a polygon whose corners may miss its plane by a hair; null where it has no area. */
function newellNormal(polygon: Polygon): Point3 | null {
  let [x, y, z] = [0, 0, 0];
  let a = at(polygon, -1);
  for (const b of polygon) {
    x += (a[1] - b[1]) * (a[2] + b[2]);
    y += (a[2] - b[2]) * (a[0] + b[0]);
    z += (a[0] - b[0]) * (a[1] + b[1]);
    a = b;
  }
  return x === 0 && y === 0 && z === 0 ? null : unit([x, y, z]);
}

/** More places than any picture has. */
const PLACES = 2 ** 24;

function sharpEdges(facets: readonly Facet[]): number[] {
  /** Edges met once so far, by the places they go from and to. */
  const open = new Map<number, { readonly normal: Point3; readonly from: Point3; readonly to: Point3 }>();
  const drawn: number[] = [];
  for (const { polygon, normal, places } of facets) {
    places.forEach((place, side) => {
      const next = (side + 1) % places.length;
      const back = at(places, next) * PLACES + place;
      const met = open.get(back);
      if (!met) {
        if (place !== at(places, next))
          open.set(place * PLACES + at(places, next), { normal, from: at(polygon, side), to: at(polygon, next) });
        return;
      }
      open.delete(back);
      if (dot(normal, met.normal) <= SHARP) drawn.push(...met.from, ...met.to);
    });
  }
  for (const { from, to } of open.values()) drawn.push(...from, ...to);
  return drawn;
}
