import { cross, subtract, type Point3 } from '../picture/vector';
import { trianglesOf, type Mesh } from './mesh';

/** Bytes before the count, to a triangle, and to a place. Source: the format's first publication (3D Systems, 1989), as known by every reader. */
const HEAD = 80;
const TRIANGLE = 50;
const POINT = 12;
const TITLE = 'bendbuck, mm';

/** One solid as a binary STL, mm; the format knows no units, colours or names. */
export function writeStl(mesh: Mesh): Uint8Array {
  // Normals are of the places as the format stores them, lest those of slivers disagree.
  const triangles = trianglesOf(mesh).map((corners) => storedTriangle(corners));
  const bytes = new Uint8Array(HEAD + 4 + TRIANGLE * triangles.length);
  const view = new DataView(bytes.buffer);
  bytes.set(new TextEncoder().encode(TITLE));
  view.setUint32(HEAD, triangles.length, true);
  for (const [index, corners] of triangles.entries()) {
    const start = HEAD + 4 + TRIANGLE * index;
    put(view, start, normalOf(corners));
    put(view, start + POINT, corners[0]);
    put(view, start + 2 * POINT, corners[1]);
    put(view, start + 3 * POINT, corners[2]);
  }
  return bytes;
}

function put(view: DataView, start: number, [x, y, z]: Point3): void {
  view.setFloat32(start, x + 0, true);
  view.setFloat32(start + 4, y + 0, true);
  view.setFloat32(start + 8, z + 0, true);
}

type Triangle = readonly [Point3, Point3, Point3];

function storedTriangle([a, b, c]: Triangle): Triangle {
  const stored = ([x, y, z]: Point3): Point3 => [Math.fround(x), Math.fround(y), Math.fround(z)];
  return [stored(a), stored(b), stored(c)];
}

/** Outward, length 1; nothing for a triangle without area. */
function normalOf([a, b, c]: Triangle): Point3 {
  const normal = cross(subtract(b, a), subtract(c, a));
  const length = Math.hypot(...normal);
  return length > 0 ? [normal[0] / length, normal[1] / length, normal[2] / length] : [0, 0, 0];
}
