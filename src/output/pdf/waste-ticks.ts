import { pointOnSide, sidesOf, sweepFromBulge } from '../../base/arc';
import { loopArea } from '../../base/area';
import { asLoop } from '../../base/as-loop';
import type { Drawing, Line, Loop, Operation, Vertex } from '../../base/drawing';
import { flattenLoop } from '../../base/flatten';
import { isInside } from '../../base/polygon';

/** Short slanted strokes that stand on the side of a cut that is thrown away: clear without colour. */

/** Length of a tick and distance from one to the next, mm. */
const LENGTH = 2;
const SPACING = 6;
/** A hole smaller than this is drilled, and its cross says all, mm. */
const SMALLEST_SAWN_HOLE = 6;
/** Slant of a tick from the cut's direction, radians. */
const SLANT = Math.PI / 4;
const CHORD_ERROR = 0.05;

/** Ticks for every closed cut of a drawing: outside its outlines, inside its holes and inside outlines that lie within another. */
export function wasteTicks(drawing: Drawing): Line[] {
  const loops = drawing.shapes.flatMap((shape): Loop[] =>
    shape.kind === 'loop' || shape.kind === 'circle' ? [asLoop(shape)] : [],
  );
  const cutsOf = (operation: Operation): Cut[] =>
    loops
      .filter((loop) => loop.operation === operation)
      .map(({ vertices }) => ({ vertices, polygon: flattenLoop(vertices, CHORD_ERROR) }));
  const outlines = cutsOf('outline');
  const holes = cutsOf('hole').filter(({ vertices }) => Math.sqrt(Math.abs(loopArea(vertices))) > SMALLEST_SAWN_HOLE);
  return [
    ...outlines.flatMap((cut) => ticksAlong(cut, liesWithin(cut, outlines))),
    ...holes.flatMap((cut) => ticksAlong(cut, true)),
  ];
}

interface Cut {
  readonly vertices: readonly Vertex[];
  /** The same with its arcs as chords. */
  readonly polygon: readonly (readonly [number, number])[];
}

/** Whether a loop lies within an odd number of others: what is inside it is then cut out. */
function liesWithin(cut: Cut, others: readonly Cut[]): boolean {
  const [start] = cut.polygon;
  return (
    others.filter((other) => other !== cut && start !== undefined && isInside(start, other.polygon)).length % 2 === 1
  );
}

function ticksAlong({ vertices, polygon }: Cut, wasteInside: boolean): Line[] {
  const sides = sidesOf(vertices);
  // Inside is to the left of a counter-clockwise loop.
  const aside = loopArea(vertices) > 0 === wasteInside ? SLANT : -SLANT;
  const ticks: Line[] = [];
  let next = SPACING / 2;
  for (const [from, to] of sides) {
    const sweep = sweepFromBulge(from.bulge);
    const chord = Math.hypot(to.x - from.x, to.y - from.y);
    const length = sweep === 0 ? chord : (chord * sweep) / 2 / Math.sin(sweep / 2);
    for (; next < length; next += SPACING) {
      const share = next / length;
      const [x, y] = pointOnSide(from, to, share);
      const heading = Math.atan2(to.y - from.y, to.x - from.x) + sweep * (share - 1 / 2) + aside;
      const tip = [x + LENGTH * Math.cos(heading), y + LENGTH * Math.sin(heading)] as const;
      // Just before a corner a tick would run across the cut: left out.
      if (isInside(tip, polygon) === wasteInside)
        ticks.push({ kind: 'line', operation: 'mark', from: [x, y], to: tip });
    }
    next -= length;
  }
  return ticks;
}
