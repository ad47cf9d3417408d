import makerjs from 'makerjs';
import type { Shape } from '../../base/drawing';
import type { Backing } from '../../design/fixture/fixture';
import type { Tab } from '../../design/built/tabs';
import type { Dowel } from '../../design/joints/joints';
import { loopsOf } from './model';
import { circle, label, mark, widthBeside } from './shapes';
import { tabbedEdge } from './tabbed-edge';

/** A backing station, or one layer of it, as cut; mm. */
export interface BackingBoard extends Pick<Backing, 'name' | 'width' | 'depth' | 'screws'> {
  readonly tabs: readonly Tab[];
  readonly tabLength: number;
  readonly relief: number;
  readonly dowels: readonly Dowel[];
}

/** Length of the centre line's stroke from the edge, mm. */
const CENTRE_TICK = 6;

/** Which edge goes to the spine, between the screws: on one line, or two where it is short. */
function spineEdge(room: number, height: number): Shape[] {
  const line = label('THIS EDGE TO SPINE', {
    x: height + 2,
    y: 0,
    width: room * 0.8,
    tallest: height,
    angle: Math.PI / 2,
  });
  if (line.length > 0 || room === 0) return line;
  const low = Math.min(height, 3);
  return [
    ...label('THIS EDGE', { x: CENTRE_TICK + low + 1, y: 0, width: room * 0.9, tallest: low, angle: Math.PI / 2 }),
    ...label('TO SPINE', { x: CENTRE_TICK + 2.6 * low + 1, y: 0, width: room * 0.9, tallest: low, angle: Math.PI / 2 }),
  ];
}

/**
 * A backing station at 1:1: its edge to the spine along y at x = 0, tabs to the left of it, its two feet at the ends of its height
 * (either hand). Marks: centre line and screw lines, as deep as their pilots.
 */
export function drawBacking({ name, width, depth, screws, tabs, tabLength, relief, dowels }: BackingBoard): Shape[] {
  const half = width / 2;
  const edge = tabbedEdge(half, tabs, tabLength, relief).map(([offset, below]): [number, number] => [below, offset]);
  const model = new makerjs.models.ConnectTheDots(true, [...edge, [depth, half], [depth, -half]]);
  const deepest = Math.max(0, ...screws.map((screw) => screw.pilotDepth));
  const height = Math.min(7, half / 5);
  const right = (depth + deepest) / 2;
  const holes = dowels.map((dowel) => circle('hole', dowel.depth, dowel.offset, dowel.diameter));
  const foot = (low: number): Shape[] =>
    label('FOOT', {
      x: right,
      y: low,
      width: widthBeside(holes, { x: right, low, high: low + height, width: depth - deepest - 4 }),
      tallest: height,
    });
  return [
    ...loopsOf(model, 'outline'),
    ...holes,
    ...screws.map((screw) => mark([0, screw.offset], [screw.pilotDepth, screw.offset])),
    ...(screws.some((screw) => screw.offset === 0) ? [] : [mark([0, 0], [CENTRE_TICK, 0])]),
    ...label(name, { x: depth / 2, y: half * 0.12, width: depth - 16, tallest: 1.25 * height }),
    ...spineEdge(screws.length > 1 ? half : 0, height),
    ...foot(-half + 3),
    ...foot(half - 3 - height),
  ];
}
