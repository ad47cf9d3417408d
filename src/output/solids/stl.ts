import { at } from '../../base/at';
import { eachTriangle, type Mesh } from './mesh';

/** Bytes before the count, to a triangle, and to a place. Source: the format's first publication (3D Systems, 1989), as known by every reader. */
const HEAD = 80;
const TRIANGLE = 50;
const POINT = 12;
const TITLE = 'bendbuck, mm';

/** One solid as a binary STL, mm; the format knows no units, colours or names. */
export function writeStl(mesh: Mesh): Uint8Array {
  // Normals are of the places as the format stores them, lest those of slivers disagree.
  const stored = Float32Array.from(mesh.positions);
  const count = mesh.triangles.length / 3;
  const bytes = new Uint8Array(HEAD + 4 + TRIANGLE * count);
  const view = new DataView(bytes.buffer);
  bytes.set(new TextEncoder().encode(TITLE));
  view.setUint32(HEAD, count, true);
  let start = HEAD + 4;
  /** Never a minus zero. */
  const put = (x: number, y: number, z: number): void => {
    view.setFloat32(start, x + 0, true);
    view.setFloat32(start + 4, y + 0, true);
    view.setFloat32(start + 8, z + 0, true);
    start += POINT;
  };
  const putCorner = (corner: number): void => {
    put(at(stored, corner), at(stored, corner + 1), at(stored, corner + 2));
  };
  eachTriangle(mesh, (a, b, c) => {
    const side = (corner: number, axis: number): number => at(stored, corner + axis) - at(stored, a + axis);
    const [ux, uy, uz] = [side(b, 0), side(b, 1), side(b, 2)];
    const [vx, vy, vz] = [side(c, 0), side(c, 1), side(c, 2)];
    const [x, y, z] = [uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx];
    // Outward, length 1; nothing for a triangle without area.
    const length = Math.hypot(x, y, z) || 1;
    put(x / length, y / length, z / length);
    putCorner(a);
    putCorner(b);
    putCorner(c);
    start += TRIANGLE - 4 * POINT;
  });
  return bytes;
}
