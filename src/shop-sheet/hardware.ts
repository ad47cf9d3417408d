import { radiusAtCentre } from '../base/cone';
import { html, type HtmlElement } from '../write/html';
import { count, list, table } from './pieces';
import type { Shop } from './shop';

/** Screws to buy, counted by size and length. */
export function screwTable({ layout }: Shop): HtmlElement {
  const driven = [...layout.stations, ...layout.backings].flatMap((board) => board.screws.map((screw) => ({ screw, board: board.name })));
  const kinds = new Map<string, typeof driven>();
  for (const one of driven) {
    const key = `${one.screw.kind.id} ${one.screw.length}`;
    kinds.set(key, [...(kinds.get(key) ?? []), one]);
  }
  const rows = [...kinds.values()].sort((a, b) => (a[0]?.screw.length ?? 0) - (b[0]?.screw.length ?? 0));
  return table(
    `Screws: ${driven.length} in all, countersunk`,
    ['Size', 'Length', 'Count', 'For'],
    rows.map((row) => [row[0]?.screw.kind.name ?? '', row[0]?.screw.lengthName ?? '', String(row.length), [...new Set(row.map(({ board }) => board))].join(', ')]),
  );
}

/** Drills, clamps and what else is needed at hand. */
export function toolList(shop: Shop): HtmlElement {
  const { layout, say, screw } = shop;
  const { block } = shop.plan;
  const [hole] = layout.clampHoles;
  const glued = gluedBoards(shop);
  const drills = list(
    `pilot drill ${screw.pilotDrill}, with a stop for the depths in the pilot table`,
    `clearance drill ${screw.clearanceDrill}`,
    `countersink for heads ${say.tool(screw.headDiameter)} across`,
    ...(hole ? [`hole saw or spade bit ${say.tool(hole.diameter)}`] : []),
    'jigsaw or band saw, straight-edge, square, compass or trammel, rule',
    ...(block?.holes[0] ? [`two dowels or bolts ${say.tool(block.holes[0].diameter)} across, ${say.atLeast(block.layers.reduce((sum, layer) => sum + layer.thickness, 0))} long, for the finishing block`] : []),
    ...(glued.length > 0 ? [`wood glue, for ${glued.join(', ')}`] : []),
  );
  const clamps = list(
    `${count(layout.clamps, 'clamp')}, each good for ${say.force(layout.clampForce / layout.clamps)} or more`,
    `opening at least ${say.atLeast(clampOpening(shop))} plus the thickness of your bench top`,
    `throat at least ${say.atLeast(clampThroat(shop))}, so that they reach in from the bench’s edge behind the foot`,
    ...(hole ? [`a jaw that goes through a hole ${say.tool(hole.diameter)} across`] : []),
  );
  return html(
    'div',
    { class: 'beside' },
    html('div', {}, html('h3', {}, 'Drills and tools'), drills),
    html('div', {}, html('h3', {}, 'Clamps'), clamps),
  );
}

/** Boards held by a single screw: they are glued as well. */
export function gluedBoards({ layout }: Shop): string[] {
  return [...layout.stations, ...layout.backings].filter((board) => board.screws.length === 1).map((board) => board.name);
}

/** From the bench top to where the highest jaw bears, mm: the lower edge of a clamp hole, or the top of an ear. */
export function clampOpening({ layout, bend }: Shop): number {
  const { length, ears } = layout.spine;
  const bearing = [
    ...layout.clampHoles.map((hole) => radiusAtCentre(bend.form, hole.at) - hole.diameter / 2),
    ...(ears > 0 ? [2 * Math.max(radiusAtCentre(bend.form, -ears), radiusAtCentre(bend.form, length + ears))] : []),
  ];
  return bend.section.thickness + Math.max(...bearing);
}

/** From the foot's rear edge, flush with the bench's edge, to the front of the spine, mm. */
export function clampThroat({ layout }: Shop): number {
  return layout.foot + layout.spine.thickness;
}
