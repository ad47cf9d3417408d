import { at } from '../../base/at';
import { arcBetween, sidesOf } from '../../base/arc';
import { loopArea } from '../../base/area';
import type { Circle, Vertex } from '../../base/drawing';
import { distanceTo, sideBetween, type Place } from '../../base/side';
import { middleOf } from './chain';

/** The edge of a flat sheet, mm, seen on the face that is up when it is marked. */
export interface Outline {
  /** Counter-clockwise; the last corner joins the first. */
  readonly vertices: readonly Vertex[];
  /** For each side, from its corner to the next, the name of the edge it belongs to; null where it has none. One edge may have several sides in a row. */
  readonly edges: readonly (string | null)[];
  /** Loops cut out of it, clockwise, none within another. */
  readonly holes: readonly (readonly Vertex[])[];
}

/** An edge by its name: its first side and how many it has, in order round the outline. */
export interface Edge {
  readonly name: string;
  readonly first: number;
  readonly count: number;
}

/** An outline without names, its loops turned the right way round. */
export function outlineOf(outer: readonly Vertex[], holes: readonly (readonly Vertex[])[]): Outline {
  const vertices = wound(outer, 1);
  return { vertices, edges: vertices.map(() => null), holes: holes.map((hole) => wound(hole, -1)) };
}

/** A closed loop counter-clockwise (1) or clockwise (−1), starting at the same corner. */
export function wound(vertices: readonly Vertex[], way: 1 | -1): Vertex[] {
  if (loopArea(vertices) * way > 0) return [...vertices];
  const turned = vertices.map(({ x, y }, index) => ({ x, y, bulge: -at(vertices, index - 1).bulge })).reverse();
  // Reversing puts the first corner last.
  return turned.slice(-1).concat(turned.slice(0, -1));
}

/** Sheet within an outline, mm²: holes taken off. */
export function outlineArea({ vertices, holes }: Outline): number {
  return [vertices, ...holes].reduce((sum, loop) => sum + loopArea(loop), 0);
}

/** The same outline seen from the other face: mirrored in the y axis, each edge keeping its name. */
export function mirrored({ vertices, edges, holes }: Outline): Outline {
  const flip = (loop: readonly Vertex[]): Vertex[] => loop.map(({ x, y, bulge }) => ({ x: -x, y, bulge: -bulge }));
  const way = (loop: readonly Vertex[]): 1 | -1 => (loopArea(loop) > 0 ? 1 : -1);
  // Turning the loop round keeps its first corner, so the side after it becomes the last.
  return {
    vertices: wound(flip(vertices), way(vertices)),
    edges: [...edges].reverse(),
    holes: holes.map((hole) => wound(flip(hole), way(hole))),
  };
}

/** The sides that carry a name, if they are in one row; null where there is no such edge. */
export function findEdge({ edges }: Outline, name: string): Edge | null {
  const count = edges.filter((edge) => edge === name).length;
  const first = edges.findIndex((edge, index) => edge === name && edges.at(index - 1) !== name);
  if (count === 0) return null;
  if (first < 0) return { name, first: 0, count };
  const row = Array.from({ length: count }, (_, step) => edges[(first + step) % edges.length]);
  return row.every((edge) => edge === name) ? { name, first, count } : null;
}

/** An edge as an open run of corners, its end included, counter-clockwise: the sheet on its left. */
export function edgeRun({ vertices }: Outline, { first, count }: Edge): Vertex[] {
  return Array.from({ length: count + 1 }, (_, step) => {
    const vertex = at(vertices, (first + step) % vertices.length);
    return step === count ? { ...vertex, bulge: 0 } : vertex;
  });
}

/** Sides named by a place near each; a name takes the side nearest to it, with those that run on from it smoothly (less than `corner` radians of turn). */
export function nameEdges(outline: Outline, names: Readonly<Record<string, Place>>, corner = Math.PI / 12): Outline {
  const edges = [...outline.edges];
  for (const [name, place] of Object.entries(names)) {
    for (const side of smoothRun(outline.vertices, nearestSide(outline.vertices, place), corner)) edges[side] = name;
  }
  return { ...outline, edges };
}

/** The number of the side that passes nearest to a place. */
function nearestSide(vertices: readonly Vertex[], place: Place): number {
  const away = sidesOf(vertices).map(([from, to]) => distanceTo(sideBetween(from, to), place));
  return away.indexOf(Math.min(...away));
}

function smoothRun(vertices: readonly Vertex[], start: number, corner: number): number[] {
  const count = vertices.length;
  const sides = sidesOf(vertices);
  const turnAfter = (index: number): number => {
    const [here, next] = [sides[index % count], sides[(index + 1) % count]];
    if (!here || !next) return Infinity;
    const [end, begin] = [sideBetween({ ...here[1], bulge: -here[0].bulge }, here[0]), sideBetween(next[0], next[1])];
    // `end` looks back along the side: turned round it heads on.
    const [x, y] = [-end.headingX, -end.headingY];
    return Math.abs(Math.atan2(x * begin.headingY - y * begin.headingX, x * begin.headingX + y * begin.headingY));
  };
  const run = [start];
  for (let side = start; run.length < count && turnAfter(side) < corner; side += 1) run.push((side + 1) % count);
  for (let side = start + count; run.length < count && turnAfter(side - 1) < corner; side -= 1)
    run.push((side - 1) % count);
  return run;
}

/** A loop whose every corner and side lies on one circle within `tolerance` mm, as that circle; null for other loops. */
export function asCircle(vertices: readonly Vertex[], tolerance = 0.06): Circle | null {
  const sides = sidesOf(vertices);
  if (!sides.every(([{ bulge }]) => bulge !== 0 && Math.sign(bulge) === Math.sign(sides[0]?.[0].bulge ?? 0)))
    return null;
  const arcs = sides.flatMap(([from, to]) => {
    const arc = arcBetween(from, to);
    return arc ? [arc] : [];
  });
  const turned = arcs.reduce((sum, arc) => sum + Math.abs(arc.sweep), 0);
  const mean = (of: (arc: (typeof arcs)[number]) => number): number =>
    arcs.reduce((sum, arc) => sum + of(arc) * Math.abs(arc.sweep), 0) / turned;
  const [x, y, radius] = [mean((arc) => arc.centreX), mean((arc) => arc.centreY), mean((arc) => arc.radius)];
  const places = sides.flatMap((side) => [side[0], middleOf(side)]);
  const isOn = places.every((place) => Math.abs(Math.hypot(place.x - x, place.y - y) - radius) <= tolerance);
  return isOn && radius > 0 ? { kind: 'circle', operation: 'hole', x, y, radius } : null;
}
