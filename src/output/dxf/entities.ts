import { arcBetween, sagittaFromBulge, sidesOf } from '../../base/arc';
import { toDegrees } from '../../base/angle';
import type { Loop, Shape, Stroke, Text, Vertex } from '../../base/drawing';
import { InternalError } from '../../base/errors';
import { plainText } from './plain-text';
import { asWritten, coordinate, FINE_DECIMALS, place, real, tag, UNIT_SIZE, type DxfUnits } from './tags';

/** How outlines and engraved strokes are written: each as one polyline, its arcs as bulges; or side by side as lines and arcs. */
export const dxfKinds = ['polylines', 'lines'] as const;
export type DxfKind = (typeof dxfKinds)[number];

/** Half the last digit of a coordinate, mm: a side that swells less is straight as far as the file can tell. */
const FLATTEST = 5e-7;
/** An arc flatter than this, mm, is written as a line: nobody can cut it, and its middle lies so far off that its ends would not be met to the last digit. */
const FLATTEST_ARC = 1e-4;

/** A shape as entities, in the file's unit already. Throws InternalError on a loop or stroke of fewer than two points, or a bulge that is none. */
export function entitiesOf(shape: Shape, kind: DxfKind, units: DxfUnits): string {
  switch (shape.kind) {
    case 'loop':
    case 'stroke':
      return run(shape, kind, units);
    case 'circle':
      return (
        entity('CIRCLE', shape.operation) + place(shape.x, shape.y, units) + tag(40, coordinate(shape.radius, units))
      );
    case 'line':
      return line(shape.operation, shape.from, shape.to, units);
    case 'text':
      return textEntity(shape, units);
  }
}

/** How every entity begins: its kind and its layer. */
function entity(kind: string, layer: Shape['operation']): string {
  return tag(0, kind) + tag(8, layer);
}

function run(shape: Loop | Stroke, kind: DxfKind, units: DxfUnits): string {
  const vertices = shape.kind === 'loop' ? shape.vertices : shape.points.map(([x, y]) => ({ x, y, bulge: 0 }));
  if (vertices.length < 2) throw new InternalError(`a ${shape.kind} needs two points at least`);
  const odd = vertices.find(({ bulge }) => !Number.isFinite(bulge));
  if (odd) throw new InternalError(`a loop has a bulge that is none: ${odd.bulge}`);
  const sides = shape.kind === 'loop' ? sidesOf(vertices) : sidesOf(vertices).slice(0, -1);
  return kind === 'lines'
    ? sides.map((side) => sideEntity(shape.operation, side, units)).join('')
    : polyline(shape, vertices, units);
}

/** Closed for a loop (bit 1 of group 70), open for a stroke. A straight side has no bulge: readers draw a bulge of 0 as an arc of no size. */
function polyline({ kind, operation }: Loop | Stroke, vertices: readonly Vertex[], units: DxfUnits): string {
  const corners = sidesOf(vertices).map(
    ([corner, next]) => entity('VERTEX', operation) + place(corner.x, corner.y, units) + bulge(corner, next, units),
  );
  return (
    entity('POLYLINE', operation) +
    tag(66, '1') +
    tag(70, kind === 'loop' ? '1' : '0') +
    place(0, 0, units) +
    corners.join('') +
    entity('SEQEND', operation)
  );
}

function bulge(corner: Vertex, next: Vertex, units: DxfUnits): string {
  return swell(corner, next, units) < FLATTEST ? '' : tag(42, real(corner.bulge, FINE_DECIMALS));
}

/** How far a side stands off its chord, mm. */
function swell(from: Vertex, to: Vertex, units: DxfUnits): number {
  return UNIT_SIZE[units] * Math.abs(sagittaFromBulge(Math.hypot(to.x - from.x, to.y - from.y), from.bulge));
}

/** One side by itself, from and to the very places its neighbours end at: an arc is laid through the corners as they are written. */
function sideEntity(operation: Shape['operation'], [start, end]: readonly [Vertex, Vertex], units: DxfUnits): string {
  const written = ({ x, y, bulge }: Vertex): Vertex => ({ x: asWritten(x, units), y: asWritten(y, units), bulge });
  const [from, to] = [written(start), written(end)];
  const arc = swell(from, to, units) < FLATTEST_ARC ? null : arcBetween(from, to);
  if (!arc) return line(operation, [from.x, from.y], [to.x, to.y], units);
  // An ARC always runs counter-clockwise.
  const [low, high] = arc.sweep > 0 ? [arc.start, arc.start + arc.sweep] : [arc.start + arc.sweep, arc.start];
  return (
    entity('ARC', operation) +
    tag(10, real(arc.centreX, FINE_DECIMALS)) +
    tag(20, real(arc.centreY, FINE_DECIMALS)) +
    tag(30, '0.0') +
    tag(40, real(arc.radius, FINE_DECIMALS)) +
    tag(50, degrees(low)) +
    tag(51, degrees(high))
  );
}

/** 0 to 360. */
function degrees(angle: number): string {
  return real(((toDegrees(angle) % 360) + 360) % 360, FINE_DECIMALS);
}

function line(
  operation: Shape['operation'],
  from: readonly [number, number],
  to: readonly [number, number],
  units: DxfUnits,
): string {
  return entity('LINE', operation) + place(...from, units) + place(...to, units, 11);
}

const JUSTIFY = { middle: '1', end: '2' } as const;

function textEntity({ operation, x, y, height, angle, anchor, text }: Text, units: DxfUnits): string {
  return (
    entity('TEXT', operation) +
    place(x, y, units) +
    tag(40, coordinate(height, units)) +
    tag(1, plainText(text)) +
    tag(50, coordinate(toDegrees(angle), units)) +
    // Left on the baseline where nothing is said, vertically too (group 73).
    (anchor === 'start' ? '' : tag(72, JUSTIFY[anchor]) + place(x, y, units, 11))
  );
}
