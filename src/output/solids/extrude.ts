import type { Point } from '../../base/polygon';
import type { Point3 } from '../picture/vector';
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

/** The solid, each of its places put where `place` says. Openings through and pockets from one side; no countersinks. */
export function extrude(
  { name, colour, loops, low, high, pockets, floor }: Board,
  place: (point: Point3) => Point3,
): Mesh {
  const builder = new MeshBuilder();
  const corner = ([x, y]: Point, z: number): number => builder.corner(`${x} ${y} ${z}`, () => place([x, y, z]));
  const whole = regionsOf(loops);
  const parted = pockets.length > 0 ? partedBy(whole, pockets) : { outside: whole, inside: [] };
  const corners = [...whole, ...parted.outside, ...parted.inside].flatMap(ringsOf).flat();
  const [full, upper, sunk] = [whole, parted.outside, parted.inside].map((regions) => withCorners(regions, corners));

  const cap = (regions: readonly Region[] = [], z: number, up: boolean): void => {
    for (const [a, b, c] of regions.flatMap(triangulate))
      if (up) builder.triangle(corner(a, z), corner(b, z), corner(c, z));
      else builder.triangle(corner(a, z), corner(c, z), corner(b, z));
  };
  const walls = (regions: readonly Region[] = [], from: number, to: number): void => {
    for (const ring of regions.flatMap(ringsOf))
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
