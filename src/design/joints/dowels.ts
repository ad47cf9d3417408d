import type { DrivenScrew } from '../fixture/fixture';
import type { ToolRules } from '../../tables/tables';
import type { Dowel } from './joints';

/** Holes are tried this far apart, mm: no saw or drill asks for finer. */
const STEP = 0.5;

/** A board that holes are to go through, seen square to its layers, its edge to the spine at depth 0; mm. */
export interface DowelRoom {
  readonly half: number;
  readonly deep: number;
  /** Whether a disc of that radius lies on the board, at that place. */
  readonly holds: (offset: number, depth: number, radius: number) => boolean;
  readonly screws: readonly DrivenScrew[];
}

/** On a half-disc of this radius. */
export function halfDiscRoom(radius: number, screws: readonly DrivenScrew[]): DowelRoom {
  return {
    half: radius,
    deep: radius,
    screws,
    holds: (offset, depth, disc) => depth >= disc && Math.hypot(offset, depth) + disc <= radius,
  };
}

/** On a rectangle. */
export function rectangleRoom(half: number, deep: number, screws: readonly DrivenScrew[]): DowelRoom {
  return {
    half,
    deep,
    screws,
    holds: (offset, depth, disc) => depth >= disc && depth + disc <= deep && Math.abs(offset) + disc <= half,
  };
}

/**
 * Two holes for dowels or bolts through all layers, one each side of the centre line and as far apart as there is room, with wood
 * to every edge, screw and to each other; thinner ones of the `sizes` sold (falling) where the wanted do not fit; none where none do. Outside the screws
 * where they can be, rather than between them.
 */
export function dowelsFor(room: DowelRoom, wanted: number, sizes: readonly number[], tools: ToolRules): Dowel[] {
  const outermost = Math.max(0, ...room.screws.map(({ offset }) => offset));
  for (const least of [outermost, 0]) {
    for (const diameter of [wanted, ...sizes.filter((size) => size < wanted && size >= tools.dowelLeast)]) {
      const place = widest(room, diameter / 2, tools.jointWood, least);
      if (place) return [-1, 1].map((side) => ({ offset: side * place.offset, depth: place.depth, diameter }));
    }
  }
  return [];
}

function widest(
  { half, deep, holds, screws }: DowelRoom,
  radius: number,
  wood: number,
  least: number,
): { offset: number; depth: number } | null {
  for (let offset = Math.floor(half / STEP) * STEP; offset >= Math.max(least, radius + wood / 2); offset -= STEP) {
    for (let depth = STEP; depth <= deep; depth += STEP) {
      if (holds(offset, depth, radius + wood) && screws.every((screw) => clearOf(screw, offset, depth, radius + wood)))
        return { offset, depth };
    }
  }
  return null;
}

/** Beside the screw's pilot, or beyond its end. Screws stand alike on both sides, so one side speaks for both. */
function clearOf({ offset, kind, pilotDepth }: DrivenScrew, x: number, depth: number, clear: number): boolean {
  return Math.abs(x - offset) >= kind.diameter / 2 + clear || depth - clear >= pilotDepth;
}
