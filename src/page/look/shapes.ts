import { BufferAttribute, BufferGeometry, ShapeUtils, Vector2, Vector3 } from 'three';
import { toCreasedNormals } from 'three/addons/utils/BufferGeometryUtils.js';
import type { Polygon } from './scene';

/** Facets that turn less than this toward one another are shaded as one round surface, radians. */
const ROUND = Math.PI / 12;

/** Flat polygons in space as one geometry of triangles, round where its facets nearly lie in one plane. */
export function geometryOf(polygons: readonly Polygon[]): BufferGeometry {
  const positions = polygons.flatMap((polygon) => trianglesOf(polygon).flatMap((corner) => [...corner]));
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(new Float32Array(positions), 3));
  return toCreasedNormals(geometry, ROUND);
}

/** The corners of the triangles a flat polygon is made of, three by three; it need not be convex. */
function trianglesOf(polygon: Polygon): Polygon {
  const points = polygon.map(([x, y, z]) => new Vector3(x, y, z));
  const [origin] = points;
  if (!origin || points.length < 3) return [];
  const normal = newellNormal(points);
  const across = new Vector3().subVectors(points[1] ?? origin, origin).normalize();
  const up = new Vector3().crossVectors(normal, across);
  const flat = points.map((point) => {
    const from = point.clone().sub(origin);
    return new Vector2(from.dot(across), from.dot(up));
  });
  return ShapeUtils.triangulateShape(flat, []).flatMap((corners) =>
    corners.flatMap((corner) => {
      const point = polygon[corner];
      return point ? [point] : [];
    }),
  );
}

/** Square to a polygon whose corners may miss its plane by a hair. */
function newellNormal(points: readonly Vector3[]): Vector3 {
  const normal = new Vector3();
  points.forEach((a, index) => {
    const b = points[(index + 1) % points.length] ?? a;
    normal.x += (a.y - b.y) * (a.z + b.z);
    normal.y += (a.z - b.z) * (a.x + b.x);
    normal.z += (a.x - b.x) * (a.y + b.y);
  });
  return normal.normalize();
}

/** Open or closed runs of points as pairs of ends, for line segments. */
export function segmentsOf(runs: readonly Polygon[], closed: boolean): BufferGeometry {
  const positions = runs.flatMap((run) =>
    run.flatMap((point, index) => {
      const next = run[index + 1] ?? (closed ? run[0] : undefined);
      return next ? [...point, ...next] : [];
    }),
  );
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(new Float32Array(positions), 3));
  return geometry;
}
