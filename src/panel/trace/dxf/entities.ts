import type { Vertex } from '../../../base/drawing';
import type { Place } from '../../../base/side';
import { IDENTITY, stretch, type Affine } from '../affine';
import { circleCurve, lineCurve, mapCurve, type Curve } from '../curve';
import { splineCurves } from './spline';
import { DxfMistake, numberOf, toNumber, type Record0 } from './tags';

/** Entities that draw edges, each as one connected line. */
export const EDGES: readonly string[] = ['LINE', 'ARC', 'CIRCLE', 'ELLIPSE', 'SPLINE', 'LWPOLYLINE', 'POLYLINE'];
/** Entities that belong beside an outline and are left out. */
export const BESIDE: readonly string[] = [
  ...['TEXT', 'MTEXT', 'DIMENSION', 'LEADER', 'MULTILEADER', 'HATCH', 'POINT', 'ATTDEF', 'ATTRIB', 'TOLERANCE'],
  ...['VIEWPORT', 'IMAGE', 'WIPEOUT', 'SEQEND', 'ARC_DIMENSION', 'ACAD_TABLE', 'OLE2FRAME'],
];

/** An entity with the vertices that follow it (POLYLINE). */
export interface Entity extends Record0 {
  readonly vertices: readonly Record0[];
}

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** An entity's curves in the drawing's own units. Throws {@link DxfMistake}. Angles in the file are degrees, counter-clockwise. */
export function entityCurves(entity: Entity): Curve[] {
  switch (entity.type) {
    case 'LINE':
      return [lineCurve(placeOf(entity, 10), placeOf(entity, 11))];
    case 'SPLINE':
      return splineCurves(entity);
    case 'ELLIPSE':
      return [ellipse(entity)];
    default:
      return planar(entity).map((curve) => mapCurve(planeOf(entity), curve));
  }
}

/** Entities whose places are in a plane of their own. */
function planar(entity: Entity): Curve[] {
  switch (entity.type) {
    case 'CIRCLE':
      return [circleCurve(placeOf(entity, 10), radiusOf(entity))];
    case 'ARC': {
      const [from, to] = [radians(numberOf(entity, 50)), radians(numberOf(entity, 51))];
      return [circleCurve(placeOf(entity, 10), radiusOf(entity), from, ahead(to - from))];
    }
    case 'LWPOLYLINE':
      return polyline(lightVertices(entity), numberOf(entity, 70, 0) % 2 === 1);
    default:
      return polyline(heavyVertices(entity), numberOf(entity, 70, 0) % 2 === 1);
  }
}

function placeOf(record: Record0, first: number): Place {
  return { x: numberOf(record, first), y: numberOf(record, first + 10) };
}

function radiusOf(record: Record0): number {
  const radius = numberOf(record, 40);
  if (!(radius > 0)) throw new DxfMistake(`${record.type} at line ${record.line}: its radius is not above 0`);
  return radius;
}

/** A turn as one counter-clockwise of more than none and at most the whole. */
function ahead(turn: number): number {
  const within = turn % (2 * Math.PI);
  return within > 1e-12 ? within : within + 2 * Math.PI;
}

/**
 * The plane an entity is drawn in, seen from above: as it is, or from behind, where x is mirrored (the reference's arbitrary axis
 * algorithm for an extrusion of 0, 0, −1). Other planes are refused: they do not lie flat.
 */
export function planeOf(record: Record0): Affine {
  return isFromBehind(record) ? stretch(-1, 1) : IDENTITY;
}

function isFromBehind(record: Record0): boolean {
  const [x, y, z] = [numberOf(record, 210, 0), numberOf(record, 220, 0), numberOf(record, 230, 1)];
  if (Math.hypot(x, y) > 1e-6 * Math.abs(z) || z === 0) {
    throw new DxfMistake(`${record.type} at line ${record.line} does not lie flat in the drawing`);
  }
  return z < 0;
}

/** Group 40 is the short axis as a share of the long one, 41 and 42 the ends as parameters, not angles. */
function ellipse(entity: Entity): Curve {
  const u = placeOf(entity, 11);
  const share = numberOf(entity, 40);
  const [from, to] = [numberOf(entity, 41, 0), numberOf(entity, 42, 2 * Math.PI)];
  if (!(Math.hypot(u.x, u.y) > 0 && share > 0)) throw new DxfMistake(`ELLIPSE at line ${entity.line} has no size`);
  const side = isFromBehind(entity) ? -share : share;
  return {
    kind: 'ellipse',
    centre: placeOf(entity, 10),
    u,
    v: { x: -side * u.y, y: side * u.x },
    start: from,
    sweep: ahead(to - from),
  };
}

/** LWPOLYLINE: each corner begins at its group 10. */
function lightVertices(entity: Entity): Vertex[] {
  const vertices: { x: number; y: number; bulge: number }[] = [];
  for (const tag of entity.tags) {
    if (tag.code === 10) vertices.push({ x: toNumber(tag), y: 0, bulge: 0 });
    const last = vertices.at(-1);
    if (tag.code === 20 && last) last.y = toNumber(tag);
    if (tag.code === 42 && last) last.bulge = toNumber(tag);
  }
  return vertices;
}

/** Bits of a POLYLINE's group 70 for meshes, and of a VERTEX's for the control points of a fitted curve. */
const MESH = 16 | 64;
const CONTROL = 16;

function heavyVertices(entity: Entity): Vertex[] {
  if ((numberOf(entity, 70, 0) & MESH) !== 0) throw new DxfMistake(`POLYLINE at line ${entity.line} is a mesh`);
  return entity.vertices
    .filter((vertex) => (numberOf(vertex, 70, 0) & CONTROL) === 0)
    .map((vertex) => ({ ...placeOf(vertex, 10), bulge: numberOf(vertex, 42, 0) }));
}

function polyline(vertices: readonly Vertex[], closed: boolean): Curve[] {
  return vertices.flatMap((from, index): Curve[] => {
    const to = vertices[index + 1] ?? (closed ? vertices[0] : undefined);
    return to ? [{ kind: 'side', from: { x: from.x, y: from.y }, to: { x: to.x, y: to.y }, bulge: from.bulge }] : [];
  });
}
