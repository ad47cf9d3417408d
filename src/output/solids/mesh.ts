import { at } from '../../base/at';
import type { Point3 } from '../picture/vector';

/**
 * One closed solid as triangles, mm: `positions` three numbers a corner, `triangles` three corners each, counter-clockwise seen from
 * outside. Every edge is shared by two triangles that run along it in opposite directions.
 */
export interface Mesh {
  /** Unique, safe as a file name: the part's id, or `bend`. */
  readonly name: string;
  /** #rrggbb. */
  readonly colour: string;
  readonly positions: readonly number[];
  readonly triangles: readonly number[];
}

/** Every triangle's corners, as where they begin among the positions: without a list of them all, for meshes have tens of thousands. */
export function eachTriangle({ triangles }: Mesh, see: (a: number, b: number, c: number) => void): void {
  for (let first = 0; first < triangles.length; first += 3)
    see(3 * at(triangles, first), 3 * at(triangles, first + 1), 3 * at(triangles, first + 2));
}

/** Volume, mm³: a sixth of the triple products about one corner; negative where the triangles face inward. */
export function meshVolume(mesh: Mesh): number {
  const { positions } = mesh;
  const [x, y, z] = [at(positions, 0), at(positions, 1), at(positions, 2)];
  let sum = 0;
  eachTriangle(mesh, (a, b, c) => {
    const [ax, ay, az] = [at(positions, a) - x, at(positions, a + 1) - y, at(positions, a + 2) - z];
    const [bx, by, bz] = [at(positions, b) - x, at(positions, b + 1) - y, at(positions, b + 2) - z];
    const [cx, cy, cz] = [at(positions, c) - x, at(positions, c + 1) - y, at(positions, c + 2) - z];
    sum += (ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx)) / 6;
  });
  return sum;
}

/** Gathers triangles corner by corner; corners with the same key are one. */
export class MeshBuilder {
  readonly #indexes = new Map<string | number, number>();
  readonly #positions: number[] = [];
  readonly #triangles: number[] = [];

  corner(key: string | number, place: () => Point3): number {
    const known = this.#indexes.get(key);
    if (known !== undefined) return known;
    const index = this.#indexes.size;
    this.#indexes.set(key, index);
    this.#positions.push(...place());
    return index;
  }

  triangle(a: number, b: number, c: number): void {
    if (a !== b && b !== c && c !== a) this.#triangles.push(a, b, c);
  }

  /** Counter-clockwise seen from outside. */
  quad(a: number, b: number, c: number, d: number): void {
    this.triangle(a, b, c);
    this.triangle(a, c, d);
  }

  /** The whole, turned inside out where its triangles faced inward. */
  build(name: string, colour: string): Mesh {
    const mesh: Mesh = { name, colour, positions: this.#positions, triangles: this.#triangles };
    if (meshVolume(mesh) >= 0) return mesh;
    // Of every triangle the last two corners change places.
    const turned = this.#triangles.map((_, index, all) =>
      index % 3 === 0 ? at(all, index) : at(all, index % 3 === 1 ? index + 1 : index - 1),
    );
    return { ...mesh, triangles: turned };
  }
}
