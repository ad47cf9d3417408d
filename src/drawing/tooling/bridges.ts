import { sidesOf } from '../../base/arc';
import { loopArea } from '../../base/area';
import type { Loop, Shape, Vertex } from '../../base/drawing';
import { sideBetween, startingAt } from '../../base/side';
import type { RouterCut } from '../../job/job';
import type { ToolRules } from '../../tables/tables';

/** A place where the outline is not cut through, until the part is freed by hand; mm. */
export interface Bridge {
  readonly x: number;
  readonly y: number;
  /** Direction of the outline there, radians. */
  readonly along: number;
}

/** Fewest bridges that hold a part still. */
const FEWEST = 2;

/** Where an outline's bridges are: spread along its longer straight sides, clear of its corners; on round edges, which bear the sheet, only where it has no other. */
export function placeBridges(outline: Loop, { bridgeLength, bridgeSpacing }: ToolRules): Bridge[] {
  const ccw = loopArea(outline.vertices) > 0;
  const long = sidesOf(outline.vertices)
    .map(([from, to]) => sideBetween(from, to))
    .filter(({ length }) => length >= 3 * bridgeLength);
  const straight = long.filter(({ curvature }) => curvature === 0);
  const sides = straight.length > 0 ? straight : long;
  const most = sides.length === 1 ? FEWEST : 1;
  return sides.flatMap((side) => {
    const count = Math.max(most, Math.ceil(side.length / bridgeSpacing));
    return Array.from({ length: count }, (_, index): Bridge => {
      const { x, y, headingX, headingY } = startingAt(side, (index + 0.5) / count);
      const along = Math.atan2(headingY, headingX);
      return { x, y, along: ccw ? along : along + Math.PI };
    });
  });
}

/** The bridges as closed boxes in the bit's path outside the outline, under the mark operation. */
export function bridgesFor(shapes: readonly Shape[], { bit }: RouterCut, tools: ToolRules): Loop[] {
  const outlines = shapes.filter((shape): shape is Loop => shape.kind === 'loop' && shape.operation === 'outline');
  return outlines.flatMap((outline) =>
    placeBridges(outline, tools).map((bridge) => box(bridge, tools.bridgeLength, bit)),
  );
}

/** Outside is to the right of an outline that runs counter-clockwise. */
function box({ x, y, along }: Bridge, length: number, width: number): Loop {
  const [cosine, sine] = [Math.cos(along), Math.sin(along)];
  const corner = (u: number, v: number): Vertex => ({
    x: x + u * cosine + v * sine,
    y: y + u * sine - v * cosine,
    bulge: 0,
  });
  return {
    kind: 'loop',
    operation: 'mark',
    vertices: [corner(-length / 2, 0), corner(-length / 2, width), corner(length / 2, width), corner(length / 2, 0)],
  };
}
