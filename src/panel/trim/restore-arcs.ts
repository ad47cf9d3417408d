import { sidesOf } from '../../base/arc';
import type { Vertex } from '../../base/drawing';
import { distanceTo, shareAt, sideBetween, startingAt, sweepOf, type Place, type Side } from '../../base/side';

/** Points that stood on an arc still do so within this, mm, after a union. */
const ON = 1e-5;
/** The chords it was cut into stray so far, mm, and a little more. */
const CHORD = 0.012;

/** A loop of points cut from loops with arcs, with those arcs put back: its other sides stay straight. */
export function restoreArcs(points: readonly Place[], sources: readonly (readonly Vertex[])[]): Vertex[] {
  const arcs = sources.flatMap(sidesOf).flatMap(([from, to]) => (from.bulge === 0 ? [] : [sideBetween(from, to)]));
  const owners = points.map((point, index) => arcUnder(point, points[(index + 1) % points.length] ?? point, arcs));
  const start = owners.findIndex((owner, index) => owner === null || owner !== owners.at(index - 1));
  const vertices: Vertex[] = [];
  for (let step = 0; step < points.length;) {
    const first = (Math.max(0, start) + step) % points.length;
    const owner = owners[first] ?? null;
    let count = 1;
    while (owner && step + count < points.length && owners[(first + count) % points.length] === owner) count += 1;
    const [from, to] = [points[first], points[(first + count) % points.length]];
    if (from && to) vertices.push({ x: from.x, y: from.y, bulge: owner ? bulgeBetween(owner, from, to) : 0 });
    step += count;
  }
  return vertices;
}

/** The arc that a chord was cut from; null where there is none. */
function arcUnder(from: Place, to: Place, arcs: readonly Side[]): Side | null {
  const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  const isOn = (arc: Side): boolean =>
    distanceTo(arc, from) < ON && distanceTo(arc, to) < ON && distanceTo(arc, middle) < CHORD;
  return arcs.find(isOn) ?? null;
}

function bulgeBetween(arc: Side, from: Place, to: Place): number {
  return Math.tan((sweepOf(arc) * (shareAt(arc, to) - shareAt(arc, from))) / 4);
}

/** Corners between sides that run straight on, and corners twice, taken out. */
export function withoutIdleCorners(vertices: readonly Vertex[]): Vertex[] {
  const once = vertices.filter((vertex, index) => {
    const next = vertices[(index + 1) % vertices.length] ?? vertex;
    return Math.hypot(next.x - vertex.x, next.y - vertex.y) > TWICE;
  });
  // From what is kept before it: two corners beside one another may each be idle by the other's place.
  return once.reduce<Vertex[]>((kept, vertex, index) => {
    const before = kept.at(-1) ?? once.at(-1) ?? vertex;
    const next = once[(index + 1) % once.length] ?? vertex;
    if (before.bulge !== 0 || vertex.bulge !== 0 || !isBetween(vertex, before, next)) kept.push(vertex);
    return kept;
  }, []);
}

/** Corners nearer to one another than this, mm, are one. */
const TWICE = 1e-4;

function isBetween(vertex: Place, before: Place, next: Place): boolean {
  const side = sideBetween({ ...before, bulge: 0 }, next);
  const end = startingAt(side, 1);
  return distanceTo(side, vertex) <= ON && Math.hypot(end.x - before.x, end.y - before.y) >= ON;
}
