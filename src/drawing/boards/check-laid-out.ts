import { boundsOf } from '../../base/bounds';
import { InternalError } from '../../base/errors';
import { moveDrawing } from '../../base/transform';
import type { Shaped } from '../parts/part';
import type { Point } from './convex';
import { outlineOf, polygonOf } from './outline';
import type { Placement, LaidOut } from './laid-out';
import { CHORD_STRAY, SAME_PLACE } from '../../base/tolerance';

/**
 * The last look: throws unless every part lies on one board and one only, inside its border, none nearer another than the gap.
 * Looks at true shapes by distances between sides, with none of the layout's own means.
 */
export function checkLaidOut(boards: readonly LaidOut[], parts: readonly Shaped[], gap: number, border: number): void {
  const placed = boards.flatMap(({ placements }) => placements.map(({ part }) => part));
  for (const { id } of parts) {
    const times = placed.filter((part) => part === id).length;
    if (times !== 1) throw new InternalError(`part ${id} is placed ${times} times`);
  }
  if (placed.length !== parts.length) throw new InternalError('a part is placed that was not asked for');
  for (const board of boards) checkOne(board, parts, gap, border);
}

function checkOne(board: LaidOut, parts: readonly Shaped[], gap: number, border: number): void {
  const shapes = board.placements.map((placement) => {
    const part = parts.find(({ id }) => id === placement.part);
    if (!part) throw new InternalError(`board ${board.id} holds an unknown part ${placement.part}`);
    return {
      id: part.id,
      bounds: boundsOf(moveDrawing({ shapes: [outlineOf(part)] }, placement)),
      sides: sidesOf(polygonOf(part, CHORD_STRAY), placement),
    };
  });
  for (const [index, a] of shapes.entries()) {
    const { minX, minY, maxX, maxY } = a.bounds;
    if (Math.min(minX, minY, board.length - maxX, board.width - maxY) < border - SAME_PLACE)
      throw new InternalError(`part ${a.id} lies over the border of board ${board.id}`);
    for (const b of shapes.slice(index + 1)) {
      if (
        b.bounds.minX > maxX + gap ||
        b.bounds.maxX < minX - gap ||
        b.bounds.minY > maxY + gap ||
        b.bounds.maxY < minY - gap
      )
        continue;
      if (
        isInside(a.sides, b.sides) ||
        isInside(b.sides, a.sides) ||
        isNearer(a.sides, b.sides, gap - 2 * CHORD_STRAY)
      ) {
        throw new InternalError(`parts ${a.id} and ${b.id} lie too near each other on board ${board.id}`);
      }
    }
  }
}

type Side = readonly [Point, Point];

function sidesOf(polygon: readonly Point[], { angle, dx, dy }: Placement): Side[] {
  const [cosine, sine] = [Math.cos(angle), Math.sin(angle)];
  const places = polygon.map(({ x, y }) => ({ x: x * cosine - y * sine + dx, y: x * sine + y * cosine + dy }));
  return places.map((place, index) => [place, places[(index + 1) % places.length] ?? place]);
}

/** Whether the first shape's first corner lies in the second: how often a level line from it crosses the sides. */
function isInside(a: readonly Side[], b: readonly Side[]): boolean {
  const corner = a[0]?.[0];
  return (
    corner !== undefined &&
    b.filter(
      ([p, q]) => p.y > corner.y !== q.y > corner.y && corner.x < p.x + ((corner.y - p.y) / (q.y - p.y)) * (q.x - p.x),
    ).length %
      2 ===
      1
  );
}

/** Whether any side of one shape lies nearer than `limit` to one of the other, or crosses it. */
function isNearer(a: readonly Side[], b: readonly Side[], limit: number): boolean {
  return a.some(([p, q]) => {
    const [minX, maxX, minY, maxY] = [
      Math.min(p.x, q.x) - limit,
      Math.max(p.x, q.x) + limit,
      Math.min(p.y, q.y) - limit,
      Math.max(p.y, q.y) + limit,
    ];
    return b.some(
      ([r, s]) =>
        !(
          (r.x < minX && s.x < minX) ||
          (r.x > maxX && s.x > maxX) ||
          (r.y < minY && s.y < minY) ||
          (r.y > maxY && s.y > maxY)
        ) &&
        (Math.min(toSide(p, r, s), toSide(q, r, s), toSide(r, p, q), toSide(s, p, q)) < limit ||
          isCrossing(p, q, r, s)),
    );
  });
}

function toSide({ x, y }: Point, from: Point, to: Point): number {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const share = Math.max(0, Math.min(1, ((x - from.x) * dx + (y - from.y) * dy) / (dx * dx + dy * dy)));
  return Math.hypot(x - from.x - share * dx, y - from.y - share * dy);
}

function isCrossing(p: Point, q: Point, r: Point, s: Point): boolean {
  const side = (a: Point, b: Point, c: Point): number =>
    Math.sign((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x));
  return side(p, q, r) !== side(p, q, s) && side(r, s, p) !== side(r, s, q);
}
