import { describe, expect, it } from 'vitest';
import { meshOf } from '../../../src/page/look/mesh';
import type { Polygon } from '../../../src/page/look/scene';

/** The six faces of a cube of 10 mm, counter-clockwise seen from outside. */
const cube: readonly Polygon[] = [
  [at(0, 0, 0), at(0, 10, 0), at(10, 10, 0), at(10, 0, 0)],
  [at(0, 0, 10), at(10, 0, 10), at(10, 10, 10), at(0, 10, 10)],
  [at(0, 0, 0), at(10, 0, 0), at(10, 0, 10), at(0, 0, 10)],
  [at(10, 0, 0), at(10, 10, 0), at(10, 10, 10), at(10, 0, 10)],
  [at(10, 10, 0), at(0, 10, 0), at(0, 10, 10), at(10, 10, 10)],
  [at(0, 10, 0), at(0, 0, 0), at(0, 0, 10), at(0, 10, 10)],
];

function at(x: number, y: number, z: number): Polygon[number] {
  return [x, y, z];
}

/** Enclosed volume by the divergence theorem, mm³. */
function volumeOf(positions: Float32Array): number {
  let volume = 0;
  for (let i = 0; i < positions.length; i += 9) {
    const [ax = NaN, ay = NaN, az = NaN, bx = NaN, by = NaN, bz = NaN, cx = NaN, cy = NaN, cz = NaN] =
      positions.subarray(i, i + 9);
    volume += (ax * (by * cz - bz * cy) - ay * (bx * cz - bz * cx) + az * (bx * cy - by * cx)) / 6;
  }
  return volume;
}

describe('the shapes of the 3-D view', () => {
  it('are closed, their sharp edges drawn once, each face shaded flat', () => {
    const { positions, normals, edges } = meshOf(cube);
    expect(positions.length / 9).toBe(12);
    expect(volumeOf(positions)).toBeCloseTo(1000, 6);
    expect(edges.length / 6).toBe(12);
    expect([...normals.subarray(0, 3)]).toEqual([0, 0, -1]);
  });

  it('of a polygon that is not convex fill it and no more', () => {
    const ell: Polygon = [at(0, 0, 0), at(10, 0, 0), at(10, 2, 0), at(2, 2, 0), at(2, 10, 0), at(0, 10, 0)];
    const dart: Polygon = [at(0, 0, 0), at(10, 0, 0), at(2, 2, 0), at(0, 10, 0)];
    const areaOf = (polygon: Polygon): number => 3 * volumeOf(meshOf([polygon.map(([x, y]) => at(x, y, 1))]).positions);
    expect(areaOf(ell)).toBeCloseTo(36, 6);
    expect(areaOf(dart)).toBeCloseTo(20, 6);
  });

  it('are shaded round where facets turn little, and show no edge there', () => {
    const turn = Math.PI / 18;
    const strip = [0, 1, 2].map((step): Polygon => {
      const [a, b] = [step * turn, (step + 1) * turn].map((angle) => [10 * Math.cos(angle), 10 * Math.sin(angle)]);
      const [ax = NaN, ay = NaN] = a ?? [];
      const [bx = NaN, by = NaN] = b ?? [];
      return [at(ax, ay, 0), at(bx, by, 0), at(bx, by, 5), at(ax, ay, 5)];
    });
    const { normals, edges } = meshOf(strip);
    expect(edges.length / 6).toBe(8);
    // Where the first facet meets the second the surface looks outward along the radius.
    expect(normals[3]).toBeCloseTo(Math.cos(turn), 6);
    expect(normals[4]).toBeCloseTo(Math.sin(turn), 6);
  });

  it('leave out what has no area', () => {
    const flat: Polygon = [at(0, 0, 0), at(1, 0, 0), at(2, 0, 0)];
    const { positions, edges } = meshOf([flat, [at(0, 0, 0), at(1, 1, 1)]]);
    expect([positions.length, edges.length]).toEqual([0, 0]);
  });
});
