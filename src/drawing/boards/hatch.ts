import { Clipper, ClipperD, ClipType, EndType, FillRule, JoinType, type PathsD } from 'clipper2-ts';
import type { Line } from '../../base/drawing';
import { flattenLoop } from '../../base/flatten';
import { moveDrawing } from '../../base/transform';
import type { Part } from '../parts/part';
import { outlineOf } from './outline';
import type { LaidOut } from './laid-out';

/** What the hatching's polygons may stray from the arcs, mm. */
const STRAY = 0.05;
const DECIMALS = 4;
/** Shorter strokes are left out, mm. */
const SHORTEST = 2;

/** A board with its narrow waste hatched: slanted strokes `spacing` mm apart wherever less than `width` mm lies between two parts, so that the saw keeps to the right side of both lines. */
export function hatchNarrowWaste(board: LaidOut, parts: readonly Part[], width: number, spacing: number): LaidOut {
  const shapes = board.placements.flatMap((placement) => {
    const part = parts.find(({ id }) => id === placement.part);
    return part ? [polygonsOf(part, placement)] : [];
  });
  const grown = shapes.map((shape) =>
    Clipper.inflatePathsD(shape, width / 2, JoinType.Round, EndType.Polygon, 2, DECIMALS, STRAY),
  );
  const narrow = grown.flatMap((a, index) =>
    grown.slice(index + 1).flatMap((b) => (apart(a, b) ? [] : Clipper.intersectD(a, b, FillRule.NonZero, DECIMALS))),
  );
  const waste = Clipper.differenceD(
    Clipper.unionD(narrow, [], FillRule.NonZero, DECIMALS),
    shapes.flat(),
    FillRule.NonZero,
    DECIMALS,
  );
  return { ...board, drawing: { shapes: [...board.drawing.shapes, ...strokes(waste, spacing)] } };
}

function polygonsOf(part: Part, placement: LaidOut['placements'][number]): PathsD {
  const [moved] = moveDrawing({ shapes: [outlineOf(part)] }, placement).shapes;
  return moved?.kind === 'loop' ? [flattenLoop(moved.vertices, STRAY).map(([x, y]) => ({ x, y }))] : [];
}

function apart(a: PathsD, b: PathsD): boolean {
  const [p, q] = [Clipper.getBoundsPathsD(a), Clipper.getBoundsPathsD(b)];
  return p.right < q.left || q.right < p.left || p.bottom < q.top || q.bottom < p.top;
}

/** Lines at 45° across the waste, cut to it; one grid for the whole board. */
function strokes(waste: PathsD, spacing: number): Line[] {
  if (waste.length === 0) return [];
  const { left, right, top, bottom } = Clipper.getBoundsPathsD(waste);
  const pitch = spacing * Math.SQRT2;
  const [first, last] = [Math.floor((top - right) / pitch), Math.ceil((bottom - left) / pitch)];
  const lines: PathsD = Array.from({ length: last - first + 1 }, (_, index) => {
    const rise = (first + index) * pitch;
    return [
      { x: left, y: left + rise },
      { x: right, y: right + rise },
    ];
  });
  const clipper = new ClipperD(DECIMALS);
  clipper.addOpenSubjectPaths(lines);
  clipper.addClipPaths(waste);
  const [closed, open]: [PathsD, PathsD] = [[], []];
  clipper.execute(ClipType.Intersection, FillRule.EvenOdd, closed, open);
  return open
    .flatMap((path): Line[] => {
      const [from, to] = [path[0], path.at(-1)];
      if (!from || !to || Math.hypot(to.x - from.x, to.y - from.y) < SHORTEST) return [];
      const [start, end] = from.x <= to.x ? [from, to] : [to, from];
      return [{ kind: 'line', operation: 'mark', from: [start.x, start.y], to: [end.x, end.y] }];
    })
    .sort((a, b) => a.from[0] - b.from[0] || a.from[1] - b.from[1]);
}
