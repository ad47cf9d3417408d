import { after, stay, type Motion } from '../../base/space';
import type { Panel } from '../flat/panel';
import { foldPanel } from '../fold/fold';
import { gapBetween, leastGap } from './gap';
import { carried, faceBodies, zoneBodies, type XLimits } from './metal';
import { distance } from '../flat/plane';

/** Metal within this of a corner is left to the corner's own design, mm. */
const CORNER = 3;
/** Pieces that come nearer, mm, lie in one another. */
const TOUCH = 0.02;

/** Two pieces of the finished panel that lie in one another, by name; null where none do. Neighbours across a tangent line, and what meets in a corner, are left out. */
export function selfCrossing(panel: Panel): readonly [string, string] | null {
  const { motions } = foldPanel(panel);
  const at = (face: number): Motion => motions[face] ?? stay;
  const pieces = [
    ...panel.faces.map(({ name, bend }, face) => ({
      name,
      joins: [face],
      bend,
      bodies: carried(faceBodies(panel, face, bend === null ? null : cornerLimits(panel, bend)), at(face)),
    })),
    ...panel.bends.map((bend, index) => ({
      name: `bend ${bend.name}`,
      joins: [bend.base, bend.leg],
      bend: index,
      bodies: carried(zoneBodies(bend, cornerLimits(panel, index)), after(at(bend.base), stay)),
    })),
  ];
  for (const [index, one] of pieces.entries())
    for (const other of pieces.slice(index + 1)) {
      if (one.joins.some((face) => other.joins.includes(face))) continue;
      const crossed = one.bodies.some((a) =>
        other.bodies.some((b) => leastGap(a, b) < TOUCH && gapBetween(a, b) < TOUCH),
      );
      if (crossed) return [one.name, other.name];
    }
  return null;
}

/** A bend's metal without what lies past the corners it shares. */
function cornerLimits(panel: Panel, bend: number): XLimits | null {
  const own = panel.bends[bend];
  const shared = panel.corners.filter(({ between }) => between.includes(bend));
  if (!own || shared.length === 0) return null;
  return shared.reduce<XLimits>(
    (limits, { at }) =>
      distance(own.frame.at, at) < own.finished.length / 2
        ? { ...limits, from: CORNER }
        : { ...limits, to: own.finished.length - CORNER },
    own.run,
  );
}
