import { arcBetween, sidesOf } from '../../base/arc';
import { loopArea } from '../../base/area';
import type { Line, Loop, Shape, Vertex } from '../../base/drawing';
import { sideBetween, startingAt, type Side } from '../../base/side';
import type { JigsawCut } from '../../job/job';
import type { ToolRules } from '../../tables/tables';

/** A corner that turns less than this, radians, the blade goes round. */
const GENTLE = Math.PI / 9;

/**
 * Relief cuts, drawn in the waste: to be sawn first, so that the waste falls away piece by piece where the blade cannot follow the
 * line. They stand square to arcs tighter than the blade turns, and run into inside corners. They are as long as half the
 * gap between parts allows, and stop short of the line.
 */
export function reliefCuts(shapes: readonly Shape[], { turn, gap }: JigsawCut, tools: ToolRules): Line[] {
  const reach = Math.max(gap / 2, 2 * tools.reliefShort);
  const cut = (x: number, y: number, direction: number): Line => {
    const [cosine, sine] = [Math.cos(direction), Math.sin(direction)];
    return {
      kind: 'line',
      operation: 'mark',
      from: [x + tools.reliefShort * cosine, y + tools.reliefShort * sine],
      to: [x + reach * cosine, y + reach * sine],
    };
  };
  const outlines = shapes.filter((shape): shape is Loop => shape.kind === 'loop' && shape.operation === 'outline');
  return outlines.flatMap(({ vertices }) => {
    const ccw = loopArea(vertices) > 0 ? 1 : -1;
    return sidesOf(vertices).flatMap(([at, next], index): Line[] => [
      ...alongArc([at, next], ccw, { turn, spacing: tools.reliefSpacing }, cut),
      ...intoCorner([vertices.at(index - 1) ?? at, at, next], ccw, cut),
    ]);
  });
}

type Cut = (x: number, y: number, direction: number) => Line;

function alongArc(
  [from, to]: readonly [Vertex, Vertex],
  ccw: number,
  { turn, spacing }: { readonly turn: number; readonly spacing: number },
  cut: Cut,
): Line[] {
  const arc = arcBetween(from, to);
  if (!arc || arc.radius >= turn) return [];
  const outward = Math.sign(arc.sweep) === ccw;
  const count = Math.max(1, Math.ceil((arc.radius * Math.abs(arc.sweep)) / spacing) - 1);
  return Array.from({ length: count }, (_, index) => {
    const angle = arc.start + (arc.sweep * (index + 1)) / (count + 1);
    return cut(
      arc.centreX + arc.radius * Math.cos(angle),
      arc.centreY + arc.radius * Math.sin(angle),
      outward ? angle : angle + Math.PI,
    );
  });
}

function intoCorner([before, at, next]: readonly [Vertex, Vertex, Vertex], ccw: number, cut: Cut): Line[] {
  const [arriving, leaving] = [headingOf(startingAt(sideBetween(before, at), 1)), headingOf(sideBetween(at, next))];
  const turn = Math.atan2(Math.sin(leaving - arriving), Math.cos(leaving - arriving));
  if (turn * ccw > -GENTLE) return [];
  // Between the two sides, on the side of the waste.
  return [cut(at.x, at.y, arriving + turn / 2 - (ccw * Math.PI) / 2)];
}

function headingOf({ headingX, headingY }: Side): number {
  return Math.atan2(headingY, headingX);
}
