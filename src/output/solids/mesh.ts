import { at } from '../../base/at';
import { cross, dot, subtract, type Point3 } from '../picture/vector';

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

/** The corner of that index. */
export function cornerOf({ positions }: Mesh, index: number): Point3 {
  return [at(positions, 3 * index), at(positions, 3 * index + 1), at(positions, 3 * index + 2)];
}

/** Its triangles by their corners' places. */
export function trianglesOf(mesh: Mesh): (readonly [Point3, Point3, Point3])[] {
  const { triangles } = mesh;
  return Array.from({ length: triangles.length / 3 }, (_, index) => {
    const corner = (turn: number): Point3 => cornerOf(mesh, triangles[3 * index + turn] ?? NaN);
    return [corner(0), corner(1), corner(2)] as const;
  });
}

/** Volume, mm³: a sixth of the triple products about one corner; negative where the triangles face inward. */
export function meshVolume(mesh: Mesh): number {
  const origin = cornerOf(mesh, 0);
  return trianglesOf(mesh).reduce((sum, [a, b, c]) => {
    const sides = [subtract(a, origin), subtract(b, origin), subtract(c, origin)] as const;
    return sum + dot(sides[0], cross(sides[1], sides[2])) / 6;
  }, 0);
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
    const turned = Array.from({ length: this.#triangles.length / 3 }, (_, index) => {
      const [a = NaN, b = NaN, c = NaN] = this.#triangles.slice(3 * index, 3 * index + 3);
      return [a, c, b];
    });
    return { ...mesh, triangles: turned.flat() };
  }
}
