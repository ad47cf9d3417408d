import type { Point } from '../../base/polygon';
import type { Point3 } from '../picture/vector';
import { CornerIndex } from './corner-index';
import { MeshBuilder, type Mesh } from './mesh';
import { partedBy, regionsOf, ringsOf, triangulate, withCorners, type Region } from './region';

/** A board to be made solid, mm. */
export interface Board {
  readonly name: string;
  readonly colour: string;
  /** Outline and the edges of openings right through, as points. */
  readonly loops: readonly (readonly Point[])[];
  /** From which height to which, square to the drawing. */
  readonly low: number;
  readonly high: number;
  /** Pockets sunk from `high` down to `floor`; they may run out of the edge. */
  readonly pockets: readonly (readonly Point[])[];
  readonly floor: number;
}

/** A face of a board by the numbers of its corners: triangles, counter-clockwise, and the rings its walls stand on. */
interface Face {
  readonly triangles: readonly (readonly [number, number, number])[];
  readonly rings: readonly (readonly number[])[];
}

/** The whole board's face, what of it is left beside the pockets, and the pockets' floors. */
interface Faces {
  readonly corners: readonly Point[];
  readonly full: Face;
  readonly upper: Face;
  readonly sunk: Face;
}

/** Makes boards solid; layers of one shape have their faces worked out once. */
export class Extruder {
  readonly #known = new Map<string, Faces>();

  /** The solid, each of its places put where `place` says. Openings through and pockets from one side; no countersinks. */
  extrude({ name, colour, loops, low, high, pockets, floor }: Board, place: (point: Point3) => Point3): Mesh {
    const builder = new MeshBuilder();
    const { corners, full, upper, sunk } = this.#faces(loops, pockets);
    const levels = [low, high, floor];
    const corner = (index: number, z: number): number =>
      builder.corner(index * levels.length + levels.indexOf(z), () => {
        const [x, y] = corners[index] ?? [NaN, NaN];
        return place([x, y, z]);
      });
    const cap = ({ triangles }: Face, z: number, up: boolean): void => {
      for (const [a, b, c] of triangles)
        if (up) builder.triangle(corner(a, z), corner(b, z), corner(c, z));
        else builder.triangle(corner(a, z), corner(c, z), corner(b, z));
    };
    const walls = ({ rings }: Face, from: number, to: number): void => {
      for (const ring of rings)
        for (const [index, a] of ring.entries()) {
          const b = ring[(index + 1) % ring.length] ?? a;
          builder.quad(corner(a, from), corner(b, from), corner(b, to), corner(a, to));
        }
    };
    cap(full, low, false);
    cap(upper, high, true);
    if (pockets.length === 0) walls(full, low, high);
    else {
      walls(full, low, floor);
      walls(upper, floor, high);
      cap(sunk, floor, true);
    }
    return builder.build(name, colour);
  }

  #faces(loops: Board['loops'], pockets: Board['pockets']): Faces {
    const key = JSON.stringify([loops, pockets]);
    const faces = this.#known.get(key) ?? facesOf(loops, pockets);
    this.#known.set(key, faces);
    return faces;
  }
}

function facesOf(loops: Board['loops'], pockets: Board['pockets']): Faces {
  const whole = regionsOf(loops);
  const parted = pockets.length > 0 ? partedBy(whole, pockets) : { outside: whole, inside: [] };
  const all = new CornerIndex([...whole, ...parted.outside, ...parted.inside].flatMap(ringsOf).flat());
  const numbers = new Map<string, number>();
  const corners: Point[] = [];
  const numberOf = (point: Point): number => {
    const key = `${point[0]} ${point[1]}`;
    const known = numbers.get(key);
    if (known !== undefined) return known;
    numbers.set(key, corners.length);
    return corners.push(point) - 1;
  };
  const face = (regions: readonly Region[]): Face => {
    const filled = withCorners(regions, all);
    return {
      triangles: filled.flatMap(triangulate).map(([a, b, c]) => [numberOf(a), numberOf(b), numberOf(c)] as const),
      rings: filled.flatMap(ringsOf).map((ring) => ring.map(numberOf)),
    };
  };
  const full = face(whole);
  const upper = pockets.length > 0 ? face(parted.outside) : full;
  return { corners, full, upper, sunk: face(parted.inside) };
}
