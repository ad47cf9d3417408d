import type { Vertex } from '../../base/drawing';
import type { BendPlan } from '../bend/bend-plan';
import type { Point } from '../../base/polygon';
import { toFlat, type ParallelSurface } from './development';

/** The flat blank, mm: held tangent line along +x from A at the origin, free leg toward +y. Arcs are kept as bulges. */
export interface Blank {
  /** Closed, counter-clockwise. */
  readonly outline: readonly Vertex[];
  /** Held side first, each from A to B. */
  readonly tangents: readonly (readonly [Point, Point])[];
  /** Where the leverage is trimmed off after bending, from A to B; none without leverage. */
  readonly trims: readonly (readonly [Point, Point])[];
}

/** Where the sheet's neutral surface lies in the finished bend. */
export function neutralSurface(bend: BendPlan): ParallelSurface {
  return { cone: bend.finished, offset: bend.neutral * bend.section.thickness };
}

/** Lays the finished bend, both legs and the leverage out flat. Legs leave the tangent lines square. */
export function developBlank(bend: BendPlan): Blank {
  const surface = neutralSurface(bend);
  const { length, finishedWrap, fan, legs } = bend;
  const freeA = toFlat(surface, { x: 0, wrap: finishedWrap });
  const freeB = toFlat(surface, { x: length, wrap: finishedWrap });
  const beyond = ([x, y]: Point, distance: number): Point => [
    x - distance * Math.sin(fan),
    y + distance * Math.cos(fan),
  ];
  const bulge = Math.tan(fan / 4);
  const corner = ([x, y]: Point, arc = 0): Vertex => ({ x, y, bulge: arc });
  const lever = bend.pull.edge;
  return {
    outline: [
      corner([0, -legs.held]),
      corner([length, -legs.held]),
      corner([length, 0], bulge),
      corner(freeB),
      corner(beyond(freeB, lever)),
      corner(beyond(freeA, lever)),
      corner(freeA, -bulge),
      corner([0, 0]),
    ],
    tangents: [
      [
        [0, -bend.pull.early],
        [length, -bend.pull.early],
      ],
      [freeA, freeB],
    ],
    trims: bend.pull.leverage > 0 ? [[beyond(freeA, legs.free), beyond(freeB, legs.free)]] : [],
  };
}
