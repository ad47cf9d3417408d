import type { Shop } from '../shop';
import { sentences } from '../../sentences';

/** Countersinks by hand, each on its own face. */
export function countersinks({ plan, say, screw }: Shop): string {
  const holes = plan.spine.screwHoles;
  const [back, front] = ['back', 'front'].map((side) => holes.filter((hole) => hole.side === side).length);
  return sentences(
    `Countersink each screw hole on the face in the hole table, ${say.tool(screw.headDiameter)} across, until the head lies flush: ${back} on the back, for the stations; ${front} on the front, for the backing stations.`,
    'Never both faces of one hole.',
  );
}

/** Pilots through the spine's own holes, once the boards stand dry in their places. */
export function pilots({ screw }: Shop): string {
  return sentences(
    'Pilots: mark each centre through its hole with a drill of the hole’s size turned by hand.',
    `Then drill with ${screw.pilotDrill} through the hole, square to the spine, to the last depth of the pilot table, counted from the face you drill into: the back for stations, the front for backing stations.`,
    'Or, where your drill is too short for that, take the board out and drill it in its own edge, to the depth before the last.',
    'Edges split without pilots: clamp the board across its faces there.',
  );
}

/** The machine draws no lines: with ears, the ends of the bend are not the ends of the board. */
export function endLines({ layout, say }: Shop): string[] {
  const { ears, length } = layout.spine;
  return ears > 0
    ? [
        `Draw line A square across the front of the spine, ${say.length(ears)} from its A end, and line B, ${say.length(length)} further: the sheet’s ends go there, the ears stand out past them.`,
      ]
    : [];
}
