import { Clipper, FillRule, type PathD, type PathsD } from 'clipper2-ts';
import type { Vertex } from '../../base/drawing';
import { flattenLoop } from '../../base/flatten';
import type { Place } from '../../base/side';
import { CHORD_STRAY } from '../../base/tolerance';

/** Regions of the flat are polygons whose places are reckoned to a millionth of a mm. */
const DECIMALS = 6;

/** Overlaps smaller than this, mm², are rounding along a shared edge. */
export const NOTHING = 0.5;

export function regionOf(loops: readonly (readonly Vertex[])[]): PathsD {
  const paths = loops.map((loop): PathD => flattenLoop(loop, CHORD_STRAY).map(([x, y]) => ({ x, y })));
  return united(paths.map((path) => (Clipper.areaD(path) < 0 ? [...path].reverse() : path)));
}

export function united(paths: PathsD): PathsD {
  return Clipper.unionD(paths, [], FillRule.NonZero, DECIMALS);
}

export function common(a: PathsD, b: PathsD): PathsD {
  return Clipper.intersectD(a, b, FillRule.NonZero, DECIMALS);
}

export function without(a: PathsD, b: PathsD): PathsD {
  return Clipper.differenceD(a, b, FillRule.NonZero, DECIMALS);
}

/** mm², holes taken off. */
export function areaOf(paths: PathsD): number {
  return paths.reduce((sum, path) => sum + Clipper.areaD(path), 0);
}

/** The middle of the largest piece: somewhere to point at. */
export function middleOfLargest(paths: PathsD): Place {
  const [largest = []] = [...paths].sort((a, b) => Math.abs(Clipper.areaD(b)) - Math.abs(Clipper.areaD(a)));
  const sum = largest.reduce((total, { x, y }) => ({ x: total.x + x, y: total.y + y }), { x: 0, y: 0 });
  return { x: sum.x / largest.length, y: sum.y / largest.length };
}
