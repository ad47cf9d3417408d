import type { HtmlNode } from '../../write/html';
import type { Shop } from '../shop';

/** Countersinks by hand, each on its own face. */
export function countersinks({ plan, say, screw }: Shop): string {
  const holes = plan.spine?.screwHoles ?? [];
  const [back, front] = ['back', 'front'].map((side) => holes.filter((hole) => hole.side === side).length);
  return `Countersink each screw hole on the face in the hole table, ${say.tool(screw.headDiameter)} across, until the head lies flush: ${back} on the back, for the stations; ${front} on the front, for the backing stations. Never both faces of one hole.`;
}

/** Pilots through the spine's own holes, with the boards standing dry in their joints. */
export function pilots({ screw }: Shop, held: string): HtmlNode[] {
  return [
    `${held} Mark each pilot’s centre through its hole with a drill of the hole’s size turned by hand, then drill with ${screw.pilotDrill} through the hole, square to the spine, until the stop in the last column of the pilot table, measured from the spine’s face, is reached. Edges split without pilots: clamp the board across its faces there.`,
  ];
}

/** The machine draws no lines: with ears, the ends of the bend are not the ends of the board. */
export function endLines({ layout, say }: Shop): string[] {
  const { ears, length } = layout.spine;
  return ears > 0 ? [`Draw line A square across the front of the spine, ${say.length(ears)} from its A end, and line B, ${say.length(length)} further: the sheet’s ends go there, the ears stand out past them.`] : [];
}
