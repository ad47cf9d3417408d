import { Clipper, EndType, JoinType, type PathsD } from 'clipper2-ts';
import type { Circle, Drawing, Loop, Operation } from '../../src/base/drawing';
import { flattenLoop } from '../../src/base/flatten';

/** What comes off the machine when a drawing's lines are followed: the judge of drawings from outside, by clipper2-ts on fine chords. */

const CHORD_ERROR = 5e-4;
const DECIMALS = 6;

export type Ring = readonly (readonly [number, number])[];

export function loopsUnder(drawing: Drawing, operation: Operation): Loop[] {
  return drawing.shapes.flatMap((shape): Loop[] => {
    if (shape.operation !== operation) return [];
    if (shape.kind === 'circle') return [asLoop(shape)];
    return shape.kind === 'loop' ? [shape] : [];
  });
}

function asLoop({ x, y, radius, operation }: Circle): Loop {
  return { kind: 'loop', operation, vertices: [-radius, radius].map((aside) => ({ x: x + aside, y, bulge: 1 })) };
}

/** Rings of the wood that is left: outside first, holes after. A beam `kerf` wide takes half of it on either side of every line. */
export function asCut(drawing: Drawing, kerf: number): Ring[] {
  const rings = (operation: Operation): PathsD =>
    loopsUnder(drawing, operation).map(({ vertices }) =>
      flattenLoop(vertices, CHORD_ERROR).map(([x, y]) => ({ x, y })),
    );
  const grown = (paths: PathsD, by: number): PathsD =>
    by === 0 ? paths : Clipper.inflatePathsD(paths, by, JoinType.Round, EndType.Polygon, 2, DECIMALS, CHORD_ERROR);
  const [outline, ...more] = grown(rings('outline'), -kerf / 2);
  if (!outline || more.length > 0) throw new Error(`${more.length + 1} pieces come out`);
  const holes = rings('hole').flatMap((hole) => grown([hole], kerf / 2));
  return [outline, ...holes].map((path) => path.map(({ x, y }) => [x, y]));
}

/** Where a straight line through the rings' plane runs in wood: stretches of x at height y, or of y at place x. */
export function inWood(rings: readonly Ring[], along: 'x' | 'y', at: number): [number, number][] {
  const [run, across]: [0 | 1, 0 | 1] = along === 'x' ? [0, 1] : [1, 0];
  const crossings: number[] = [];
  for (const ring of rings) {
    let from = ring.at(-1);
    for (const to of ring) {
      if (from && from[across] > at !== to[across] > at)
        crossings.push(from[run] + ((at - from[across]) / (to[across] - from[across])) * (to[run] - from[run]));
      from = to;
    }
  }
  const sorted = crossings.sort((a, b) => a - b);
  return sorted.flatMap((low, index): [number, number][] => (index % 2 === 0 ? [[low, sorted[index + 1] ?? low]] : []));
}
