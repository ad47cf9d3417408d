import { BufferAttribute, BufferGeometry } from 'three';
import { meshOf } from './mesh';
import type { Polygon } from './scene';

/** Flat polygons in space as one geometry of triangles, round where its facets nearly lie in one plane, and their sharp edges as line segments. */
export function geometryOf(polygons: readonly Polygon[]): {
  readonly faces: BufferGeometry;
  readonly edges: BufferGeometry;
} {
  const { positions, normals, edges } = meshOf(polygons);
  const faces = new BufferGeometry();
  faces.setAttribute('position', new BufferAttribute(positions, 3));
  faces.setAttribute('normal', new BufferAttribute(normals, 3));
  return { faces, edges: pointsOf(edges) };
}

/** Open or closed runs of points as pairs of ends, for line segments. */
export function segmentsOf(runs: readonly Polygon[], closed: boolean): BufferGeometry {
  const positions = runs.flatMap((run) =>
    run.flatMap((point, index) => {
      const next = run[index + 1] ?? (closed ? run[0] : undefined);
      return next ? [...point, ...next] : [];
    }),
  );
  return pointsOf(new Float32Array(positions));
}

function pointsOf(positions: Float32Array): BufferGeometry {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(positions, 3));
  return geometry;
}
