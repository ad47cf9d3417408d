import makerjs from 'makerjs';
import type { Shape } from '../base/drawing';
import type { Backing } from '../fixture/fixture';
import { loopsOf } from './model';
import { label, mark } from './shapes';

/**
 * A backing station at 1:1: its edge to the spine along y at x = 0, its two feet at the ends of its height (either hand).
 * Marks: centre line and screw lines, as deep as their pilots.
 */
export function drawBacking(backing: Backing): Shape[] {
  const { width, depth, screws } = backing;
  const half = width / 2;
  const model = new makerjs.models.ConnectTheDots(true, [
    [0, -half],
    [depth, -half],
    [depth, half],
    [0, half],
  ]);
  const deepest = Math.max(0, ...screws.map((screw) => screw.pilotDepth));
  const height = Math.min(7, half / 5);
  const right = (depth + deepest) / 2;
  return [
    ...loopsOf(model, 'outline'),
    ...screws.map((screw) => mark([0, screw.offset], [screw.pilotDepth, screw.offset])),
    ...(screws.some((screw) => screw.offset === 0) ? [] : [mark([0, 0], [6, 0])]),
    ...label(backing.name, depth / 2, half * 0.12, depth - 16, 1.25 * height),
    ...label('THIS EDGE TO SPINE', height + 2, 0, half * 0.8, height, Math.PI / 2).filter(() => screws.length > 1),
    ...label('FOOT', right, -half + 3, depth - deepest - 4, height),
    ...label('FOOT', right, half - 3 - height, depth - deepest - 4, height),
  ];
}
