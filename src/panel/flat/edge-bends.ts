import type { Finding } from '../../base/findings';
import { finding } from '../../findings/finding';
import type { Point } from '../../base/polygon';
import type { RimLine } from '../corner/end-cut';
import type { BendEnd } from '../corner/mitre';
import { baseLines, type EdgeBend } from './base-lines';
import type { Bend } from './bend';
import { plainCorner, type BendSpec, type BuiltUp, type CornerSpec } from './built-up';
import { bendSurface } from './make-bend';
import { direction, distance } from './plane';
import { rimLine } from './rim';
import { neighbours, type Standing } from './spec-findings';

/** A bend on an edge of the base, in the order of the outline: where it starts and ends, and its surface from end A to end B. */
export interface EdgeBendPlaced {
  readonly number: number;
  readonly spec: BendSpec;
  readonly surface: Pick<Bend, 'finished' | 'thickness' | 'neutral' | 'wrap' | 'frame' | 'turn'>;
  /** Whether the outline passes end A first. */
  readonly startsAtA: boolean;
  readonly rim: RimLine;
}

/** The corner between edge `index` − 1 and edge `index`. */
export function cornerSpec({ base, corners }: BuiltUp, index: number): Omit<CornerSpec, 'between'> {
  const count = base.edges.length;
  const names = [base.edges[(index - 1 + count) % count], base.edges[index]];
  return corners.find(({ between }) => between.every((name) => names.includes(name))) ?? plainCorner;
}

/** Tangent lines' polygon; corners to be dressed are rounded, which shortens the bends beside them and may shift them. */
export function settledLines(spec: BuiltUp, standing: Standing): readonly Point[] | null {
  let lines: readonly Point[] = spec.base.corners;
  for (let loop = 0; loop < 20; loop++) {
    const bends = spec.base.edges.map((_, edge) => edgeBend(spec, { edge, lines, standing }));
    const next = baseLines(spec.base.corners, bends, { measured: spec.base.measured, thickness: spec.thickness });
    if (!next) return null;
    const moved = Math.max(...next.corners.map((place, index) => distance(place, lines[index] ?? place)));
    lines = next.corners;
    if (moved < 1e-12) return lines;
  }
  return lines;
}

export interface OnEdge {
  readonly edge: number;
  readonly lines: readonly Point[];
  readonly standing: Standing;
}

function edgeBend(spec: BuiltUp, { edge, lines, standing }: OnEdge): EdgeBend | null {
  const number = standing.onEdge[edge] ?? null;
  const bend = number === null ? undefined : spec.bends[number];
  if (!bend) return null;
  const [before, next] = neighbours(spec, edge);
  const radius = (name: string): number => (typeof bend.radius === 'number' ? bend.radius : (bend.radius[name] ?? NaN));
  const inset = (name: string, index: number): number =>
    (bend.inset[name] ?? 0) + roundingAt(spec, { edge: index, lines, standing });
  return {
    angle: bend.angle,
    radius: { A: radius(before), B: radius(next) },
    inset: { A: inset(before, edge), B: inset(next, (edge + 1) % lines.length) },
  };
}

/** How far a corner's rounding shortens the base lines that meet there. */
export function roundingAt(spec: BuiltUp, { edge, lines, standing }: OnEdge): number {
  const count = lines.length;
  const both = standing.onEdge[edge] !== null && standing.onEdge[(edge - 1 + count) % count] !== null;
  const { treat, rounded } = cornerSpec(spec, edge);
  if (!both || treat !== 'dress') return 0;
  return rounded / Math.tan(insideAngle(lines, edge) / 2);
}

/** Inside angle of a polygon at a corner, radians. */
export function insideAngle(polygon: readonly Point[], index: number): number {
  const [into, out] = headings(polygon, index);
  return Math.PI - Math.atan2(into[0] * out[1] - into[1] * out[0], into[0] * out[0] + into[1] * out[1]);
}

/** Unit vectors along the outline into a corner and out of it. */
export function headings(polygon: readonly Point[], index: number): readonly [Point, Point] {
  const [before, here, next] = [-1, 0, 1].map((step) => cornerOf(polygon, index + step));
  return before && here && next ? [direction(before, here), direction(here, next)] : [noWay, noWay];
}

const noWay: Point = [NaN, NaN];

function cornerOf(polygon: readonly Point[], index: number): Point {
  return polygon[(index + polygon.length) % polygon.length] ?? noWay;
}

export function placeOnEdge(spec: BuiltUp, on: OnEdge): EdgeBendPlaced | Finding | null {
  const { edge, lines, standing } = on;
  const number = standing.onEdge[edge] ?? null;
  const bend = number === null ? undefined : spec.bends[number];
  const given = edgeBend(spec, on);
  if (number === null || !bend || !given) return null;
  const [from, to] = [cornerOf(lines, edge), cornerOf(lines, edge + 1)];
  const way = direction(from, to);
  const [start, end]: readonly [Point, Point] = [
    [from[0] + way[0] * given.inset.A, from[1] + way[1] * given.inset.A],
    [to[0] - way[0] * given.inset.B, to[1] - way[1] * given.inset.B],
  ];
  const path = `bends[${number}]`;
  if (!(distance(from, to) > given.inset.A + given.inset.B)) {
    return finding('bend-too-short', path, { edge: bend.on });
  }
  const startsAtA = bend.from === null || bend.from === neighbours(spec, edge)[0];
  const surface = bendSurface(
    {
      from: startsAtA ? start : end,
      to: startsAtA ? end : start,
      legOnLeft: !startsAtA,
      angle: bend.angle,
      radius: startsAtA ? given.radius : { A: given.radius.B, B: given.radius.A },
      thickness: spec.thickness,
      neutral: bend.neutral,
    },
    path,
  );
  if ('code' in surface) return surface;
  const rim = rimLine(surface, bend.reach, spec.base.measured, path);
  return 'code' in rim ? rim : { number, spec: bend, surface: { ...surface, turn: bend.turn }, startsAtA, rim };
}

/** The end of a bend where the outline meets it, or leaves it. */
export function endOf({ surface, startsAtA }: EdgeBendPlaced, end: 'start' | 'finish'): BendEnd {
  const isA = (end === 'start') === startsAtA;
  const { length } = surface.finished;
  return { bend: surface, x: isA ? 0 : length, past: isA ? -1 : 1, middle: length / 2 };
}
