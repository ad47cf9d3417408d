import { bulgeFromSweep } from '../../base/arc';
import type { Vertex } from '../../base/drawing';
import { movedRight, sideBetween, startingAt, sweepOf, type Place, type Side } from '../../base/side';

/** The sides of an open run. */
export function runSides(run: readonly Vertex[]): Side[] {
  return run.slice(0, -1).flatMap((from, index) => {
    const to = run[index + 1];
    return to ? [sideBetween(from, to)] : [];
  });
}

/** The sharpest turn between the sides of a run, radians. */
export function sharpestTurn(sides: readonly Side[]): number {
  return sides.slice(1).reduce((most, next, index) => {
    const before = sides[index];
    if (!before) return most;
    const end = startingAt(before, 1);
    const across = end.headingX * next.headingY - end.headingY * next.headingX;
    const along = end.headingX * next.headingX + end.headingY * next.headingY;
    return Math.max(most, Math.abs(Math.atan2(across, along)));
  }, 0);
}

/** The sides `inward` mm to the left of a run; null where an arc has no radius left. */
export function movedInward(sides: readonly Side[], inward: number): Side[] | null {
  const moved = sides.map((side) => movedRight(side, -inward));
  return moved.every((side) => side !== null) ? moved : null;
}

export function lengthOf(sides: readonly Side[]): number {
  return sides.reduce((sum, { length }) => sum + length, 0);
}

/** The place so far along a run of sides, mm; beyond its ends on the first or last side's own line. */
export function placeAlong(sides: readonly Side[], along: number): Place {
  let before = 0;
  for (const [index, side] of sides.entries()) {
    if (along <= before + side.length || index === sides.length - 1) {
      const { x, y } = startingAt(side, (along - before) / side.length);
      return { x, y };
    }
    before += side.length;
  }
  return { x: NaN, y: NaN };
}

/** Sides as an open run of corners, their end included. */
export function asRun(sides: readonly Side[]): Vertex[] {
  const corners = sides.map((side): Vertex => ({ x: side.x, y: side.y, bulge: bulgeFromSweep(sweepOf(side)) }));
  const last = sides.at(-1);
  if (!last) return corners;
  const end = startingAt(last, 1);
  return [...corners, { x: end.x, y: end.y, bulge: 0 }];
}
