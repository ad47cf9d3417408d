import { at } from '../../base/at';
import type { Vertex } from '../../base/drawing';
import { flattenLoop } from '../../base/flatten';
import type { Point } from '../../base/polygon';
import { movedBy, type Motion, type Place3 } from '../../base/space';
import { frameMotion, zonePlace } from '../fold/bend-motion';
import { bentAt, onLeg, flatOnLeg, type Bend } from '../flat/bend';
import type { Panel } from '../flat/panel';
import { convex, type Convex } from './gap';
import { convexPieces } from './convex-pieces';
import type { LeftMetal } from './work';

/** Chords may stray from arcs by this in a body made for looking for clashes, mm. */
const STRAY = 0.3;
/** A finished zone is looked at in slices of at most this wrap, radians: a chord of R 100 then strays by 0.6 mm, on the outer side. */
const SLICE = Math.PI / 14;

/** A face as convex prisms in its own flat space; what lies past the x limits of the bend it hangs from is left off. */
export function faceBodies(panel: Panel, face: number, limits: XLimits | null = null): Bodies {
  const own = panel.faces[face];
  if (!limits && own) return remembered(faces, own, () => cutFace(panel, face, null));
  return cutFace(panel, face, limits);
}

/** Metal left on at a face as convex prisms, within the same limits. */
export function leftBodies(panel: Panel, left: LeftMetal, limits: XLimits | null): Bodies {
  const cut = (): Bodies => left.regions.flatMap((region) => cutPolygon(panel, left.face, { region, limits }));
  return limits ? cut() : remembered(leftMetals, left, cut);
}

/** Convex bodies by their corners. */
export type Bodies = readonly (readonly Place3[])[];

/** What has been cut up once is not cut up for every bend and every order again. */
const faces = new WeakMap<object, Bodies>();
const leftMetals = new WeakMap<object, Bodies>();
const flatZones = new WeakMap<object, Bodies>();
const zones = new WeakMap<object, Bodies>();

function remembered(known: WeakMap<object, Bodies>, thing: object, make: () => Bodies): Bodies {
  const before = known.get(thing);
  if (before) return before;
  const made = make();
  known.set(thing, made);
  return made;
}

function cutFace(panel: Panel, face: number, limits: XLimits | null): Bodies {
  return cutPolygon(panel, face, { region: cleaned(at(panel.faces, face).outline), limits });
}

/** A polygon that lies in the plane of a face. */
function cutPolygon(
  panel: Panel,
  face: number,
  { region, limits }: { readonly region: readonly Point[]; readonly limits: XLimits | null },
): Bodies {
  const bend = panel.faces[face]?.bend ?? null;
  const hung = bend === null ? undefined : panel.bends[bend];
  const clipped = hung && limits ? withinLimits(region, hung, limits) : region;
  return prisms(clipped, panel.thickness);
}

/** A zone still flat, as convex prisms. */
export function flatZoneBodies(panel: Panel, bend: Bend): Bodies {
  return remembered(flatZones, bend, () => prisms(cleaned(bend.zone), panel.thickness));
}

/** How far along its rulings a bend's metal is looked at, mm from end A. */
export interface XLimits {
  readonly from: number;
  readonly to: number;
}

/** A finished zone as slices in the space of its base face. */
export function zoneBodies(bend: Bend, limits: XLimits | null = null): Bodies {
  return limits ? slices(bend, limits) : remembered(zones, bend, () => slices(bend, null));
}

function slices(bend: Bend, limits: XLimits | null): Bodies {
  const frame = frameMotion(bend);
  const count = Math.max(1, Math.ceil(bend.wrap / SLICE));
  const ends = zoneEnds(bend);
  return Array.from({ length: count }, (_, index) => {
    const [low, high] = [(index * bend.wrap) / count, ((index + 1) * bend.wrap) / count];
    const outer = bend.thickness / 2;
    return [low, high].flatMap((wrap) => {
      const [from, to] = ends(wrap);
      const [a, b] = limits ? [Math.max(from, limits.from), Math.min(to, limits.to)] : [from, to];
      return [a, b].flatMap((x) =>
        [outer, -outer].map((inward) => movedBy(frame, zonePlace(bend.finished, bend.thickness, { x, wrap, inward }))),
      );
    });
  });
}

/** How far a zone reaches at each wrap, along its rulings from end A, by the corners of its outline; mm. */
export function zoneEnds(bend: Bend): (wrap: number) => readonly [number, number] {
  const places = flattenLoop(bend.zone, STRAY).map((place) => bentAt(bend, place));
  return (wrap) => {
    const crossed = places.flatMap((from, index) => {
      const to = places[(index + 1) % places.length] ?? from;
      if (Math.abs(from.wrap - wrap) < 1e-7) return [from.x];
      if ((from.wrap - wrap) * (to.wrap - wrap) >= 0) return [];
      return [from.x + ((to.x - from.x) * (wrap - from.wrap)) / (to.wrap - from.wrap)];
    });
    return crossed.length === 0 ? [0, bend.finished.length] : [Math.min(...crossed), Math.max(...crossed)];
  };
}

/** The outline flattened, corners in a straight line left out. */
function cleaned(outline: readonly Vertex[]): Point[] {
  const points = flattenLoop(outline, STRAY);
  return points.filter((point, index) => {
    const before = points[(index - 1 + points.length) % points.length] ?? point;
    const next = points[(index + 1) % points.length] ?? point;
    const [ax, ay, bx, by] = [point[0] - before[0], point[1] - before[1], next[0] - point[0], next[1] - point[1]];
    return Math.hypot(ax, ay) > 1e-6 && Math.abs(ax * by - ay * bx) > 1e-7 * Math.hypot(ax, ay) * Math.hypot(bx, by);
  });
}

function prisms(polygon: readonly Point[], thickness: number): Place3[][] {
  return convexPieces(polygon).map((piece) =>
    piece.flatMap(([x, y]): Place3[] => [
      [x, y, thickness / 2],
      [x, y, -thickness / 2],
    ]),
  );
}

/** A leg's polygon between two places along its leg line. */
function withinLimits(polygon: readonly Point[], bend: Bend, { from, to }: XLimits): Point[] {
  const own = polygon.map((place) => onLeg(bend, place));
  const clipped = clip(clip(own, from, 1), to, -1);
  return clipped.map((place) => flatOnLeg(bend, place));
}

/** The part of a polygon on one side of x = at (+1: beyond it). */
function clip(polygon: readonly Point[], at: number, side: 1 | -1): Point[] {
  return polygon.flatMap((from, index): Point[] => {
    const to = polygon[(index + 1) % polygon.length] ?? from;
    const [a, b] = [side * (from[0] - at), side * (to[0] - at)];
    const kept: Point[] = a >= 0 ? [from] : [];
    if (a * b < 0) kept.push([at, from[1] + ((to[1] - from[1]) * a) / (a - b)]);
    return kept;
  });
}

/** Bodies carried by a motion. */
export function carried(bodies: Bodies, motion: Motion): Convex[] {
  return bodies.filter((body) => body.length > 0).map((body) => convex(body.map((place) => movedBy(motion, place))));
}
