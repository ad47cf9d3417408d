import { loopArea } from '../../base/area';
import { boundsOf, type Bounds } from '../../base/bounds';
import { moveDrawing } from '../../base/transform';
import type { Shaped } from '../parts/part';
import { convexOf, quarterTurned, turnedOver, type Convex } from './convex';
import { outlineOf, roomOf } from './outline';

/** A part made ready for laying out. */
export interface Item {
  readonly part: Shaped;
  /** Turned by none, one, two and three quarters about its origin. */
  readonly poses: readonly [Pose, Pose, Pose, Pose];
  /** Inside its outline, mm². */
  readonly area: number;
}

export interface Pose {
  readonly quarters: number;
  readonly pieces: readonly Piece[];
  /** The box round the part as drawn, without clearance, mm. */
  readonly bounds: Bounds;
}

/** A convex piece of the room a part takes up; its number is its own among all pieces laid out together. */
export interface Piece {
  readonly id: number;
  readonly shape: Convex;
  readonly over: Convex;
}

/** Parts → items; parts of one shape share their poses. `clearance` is half the gap between parts, mm. */
export function itemsOf(parts: readonly Shaped[], clearance: number): Item[] {
  const known = new Map<string, Omit<Item, 'part'>>();
  let pieces = 0;
  return parts.map((part) => {
    const outline = outlineOf(part);
    const key = JSON.stringify(outline.vertices);
    const found = known.get(key);
    if (found) return { part, ...found };
    const room = roomOf(part, clearance);
    const pose = (quarters: number): Pose => {
      const shapes = room.map((corners) => convexOf(corners.map((corner) => quarterTurned(corner, quarters))));
      const bounds = boundsOf(moveDrawing({ shapes: [outline] }, { dx: 0, dy: 0, angle: (quarters * Math.PI) / 2 }));
      return { quarters, pieces: shapes.map((shape) => ({ id: pieces++, shape, over: turnedOver(shape) })), bounds };
    };
    const made: Omit<Item, 'part'> = {
      poses: [pose(0), pose(1), pose(2), pose(3)],
      area: Math.abs(loopArea(outline.vertices)),
    };
    known.set(key, made);
    return { part, ...made };
  });
}
