import type { Vertex } from '../../src/base/drawing';
import type { Part } from '../../src/drawing/parts/part';

/** A part of 18 mm MDF with this outline and nothing else. */
export function partOf(id: string, vertices: readonly Vertex[], stock = 'mdf-18'): Part {
  return {
    id,
    kind: 'station',
    name: id,
    stock,
    thickness: 18,
    drawing: { shapes: [{ kind: 'loop', operation: 'outline', vertices }] },
  };
}

/** Corners joined by straight sides. */
export const straight = (...corners: readonly (readonly [number, number])[]): Vertex[] =>
  corners.map(([x, y]) => ({ x, y, bulge: 0 }));

/** A half-disc as stations are drawn: straight edge along x, round edge up. */
export const halfDisc = (radius: number): Vertex[] => [
  { x: -radius, y: 0, bulge: 0 },
  { x: radius, y: 0, bulge: 1 },
];
