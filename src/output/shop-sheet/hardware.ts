import { at } from '../../base/at';
import { radiusAtCentre } from '../../base/cone';
import type { Backing, Station } from '../../design/fixture/fixture';
import { heldAtClamps } from '../../design/fixture/held-at-clamps';
import { plankFor } from '../../design/fixture/plank';
import { throatFor, type Throat } from '../../design/fixture/throat';
import { html, type HtmlElement } from '../html';
import { count, list, table } from './pieces';
import type { Shop } from './shop';
import { dowelsToBuy, isStacked } from './stack';

/** Screws of one size and length, how many, and the boards they hold. */
export interface ScrewCount {
  readonly screw: Station['screws'][number];
  readonly number: number;
  readonly boards: readonly string[];
}

/** Screws counted by size and length, the shortest first. */
export function countScrews(boards: readonly Pick<Station, 'name' | 'screws'>[]): ScrewCount[] {
  const driven = boards.flatMap((board) => board.screws.map((screw) => ({ screw, board: board.name })));
  const kinds = new Map<string, typeof driven>();
  for (const one of driven) {
    const key = `${one.screw.kind.id} ${one.screw.length}`;
    kinds.set(key, [...(kinds.get(key) ?? []), one]);
  }
  const rows = [...kinds.values()].sort((a, b) => at(a, 0).screw.length - at(b, 0).screw.length);
  return rows.map((row) => ({
    screw: at(row, 0).screw,
    number: row.length,
    boards: [...new Set(row.map(({ board }) => board))],
  }));
}

/** Screws to buy, counted by size and length. */
export function screwTable({ layout }: Shop): HtmlElement {
  const rows = countScrews([...layout.stations, ...layout.backings]);
  return table(
    `Screws: ${rows.reduce((sum, { number }) => sum + number, 0)} in all, countersunk`,
    ['Size', 'Length', 'Count', 'For'],
    rows.map(({ screw, number, boards }) => [screw.kind.name, screw.lengthName, String(number), boards.join(', ')]),
  );
}

/** Drills, clamps and what else is needed at hand. */
export function toolList(shop: Shop): HtmlElement {
  const { layout, say } = shop;
  const [hole] = layout.clampHoles;
  const clamps = list(
    `${count(layout.clamps, 'clamp')}, each good for ${say.force(shop.job.clamps.rating)} done up by hand`,
    `opening at least ${say.atLeast(clampOpening(shop))} plus the thickness of your bench top`,
    `throat at least ${say.atLeast(clampThroat(shop))}, ${ROUND[throatOf(shop).past]}`,
    ...(hole ? [`a jaw that goes through a hole ${say.tool(hole.diameter)} across`] : []),
  );
  return html(
    'div',
    { class: 'beside' },
    html('div', {}, html('h3', {}, 'Drills and tools'), list(...toolsFor(shop), ...blockDowels(shop), ...glue(shop))),
    html('div', {}, html('h3', {}, 'Clamps'), clamps),
  );
}

function toolsFor(shop: Shop): string[] {
  const { layout, say, screw, job, joints } = shop;
  const [hole] = layout.clampHoles;
  const countersink = `countersink for heads ${say.tool(screw.headDiameter)} across`;
  const clearance = `clearance drill ${screw.clearanceDrill}`;
  if (job.cut.with === 'router') {
    const { bit, bridges } = job.cut;
    const thickest = Math.max(...shop.parts.map(({ thickness }) => thickness));
    return [
      `straight bit ${say.exact(bit)}, cutting at least ${say.atLeast(thickest)} deep`,
      'pointed bit, for the lettering',
      'spoil board under the work, and what holds it down clear of the bit',
      ...(screw.clearance < bit ? [clearance] : []),
      ...(hole && hole.diameter < bit ? [`drill or hole saw ${say.tool(hole.diameter)}`] : []),
      countersink,
      throughPilot(shop),
      ...(bridges ? ['fine saw, and chisel or file, for the bridges'] : []),
      'straight-edge, square, rule, caliper',
    ];
  }
  if (job.cut.with === 'laser' && joints.with === 'laser') {
    return [
      'laser with extraction that works',
      countersink,
      throughPilot(shop),
      ...(layout.layers.spine > 1
        ? [
            `two bolts or drill shanks of ${screw.clearanceDrill}, at least ${say.atLeast(layout.spine.thickness)} long, to line up the layers of the spine`,
          ]
        : []),
      ...dowelsToBuy(joints).map(
        ({ diameter, length, number }) =>
          `${count(number, 'dowel')} or bolts ${say.exact(diameter)} across, ${say.length(length)} long, to line up the layers`,
      ),
      ...(isStacked(shop)
        ? ['clamps and two flat boards, to press the layers together; wax or paper against the glue']
        : []),
      'square, rule, caliper, fine file',
    ];
  }
  return [
    `pilot drill ${screw.pilotDrill}, with a stop for the depths in the pilot table`,
    clearance,
    countersink,
    ...(hole ? [`hole saw or spade bit ${say.tool(hole.diameter)}`] : []),
    'jigsaw or band saw, straight-edge, square, compass or trammel, rule',
  ];
}

/** How far a pilot drill reaches, in a board's own edge and through the spine's hole. */
function throughPilot({ layout, joints, say, screw }: Shop): string {
  const deepestIn = (boards: readonly (Station | Backing)[]): number =>
    Math.max(...boards.flatMap((board) => board.screws.map(({ pilotDepth }) => pilotDepth)));
  const [stations, backings] = [deepestIn(layout.stations), deepestIn(layout.backings)];
  const groove = joints.with === 'router' ? joints.depth : 0;
  return `pilot drill ${screw.pilotDrill}, with a stop for the depths in the pilot table: ${say.atLeast(Math.max(stations + groove, backings))} out of the chuck for the edges, ${say.atLeast(layout.spine.thickness + Math.max(stations, backings))} through the spine`;
}

function blockDowels({ plan: { block }, say }: Shop): string[] {
  return block?.holes[0]
    ? [
        `two dowels or bolts ${say.tool(block.holes[0].diameter)} across, ${say.atLeast(block.layers.reduce((sum, layer) => sum + layer.thickness, 0))} long, for the finishing block`,
      ]
    : [];
}

function glue(shop: Shop): string[] {
  const glued = gluedBoards(shop);
  const uses = [...(isStacked(shop) ? ['the layers'] : []), ...(hasTabs(shop) ? ['the tabs'] : []), ...glued];
  return uses.length > 0 ? [`wood glue, for ${uses.join(', ')}`] : [];
}

export function hasTabs({ joints }: Shop): boolean {
  return joints.with === 'laser' && joints.boards.some(({ tabs }) => tabs.length > 0);
}

/** Boards held by a single screw: they are glued as well. */
export function gluedBoards({ layout }: Shop): string[] {
  return [...layout.stations, ...layout.backings]
    .filter((board) => board.screws.length === 1)
    .map((board) => board.name);
}

/** From the bench top to where the highest jaw bears, mm: the lower edge of a clamp hole, or the top of an ear. */
export function clampOpening({ layout, bend, tables }: Shop): number {
  const { length, ears } = layout.spine;
  const bearing = [
    ...layout.clampHoles.map((hole) => radiusAtCentre(bend.form, hole.at) - hole.diameter / 2),
    ...(ears > 0 ? [2 * Math.max(radiusAtCentre(bend.form, -ears), radiusAtCentre(bend.form, length + ears))] : []),
  ];
  const plank = plankFor(bend, layout, tables.rules)?.thickness ?? 0;
  return bend.section.thickness + plank + Math.max(...bearing);
}

/** How far in the clamps reach, mm. */
export function clampThroat(shop: Shop): number {
  return throatOf(shop).reach;
}

function throatOf({ layout, bend, tables }: Shop): Throat {
  return throatFor(layout, heldAtClamps(layout, bend), plankFor(bend, layout, tables.rules));
}

/** What the clamps go round on their way in. */
const ROUND = {
  foot: 'so that they reach in from the bench’s edge behind the foot',
  plank: 'so that they reach in past the rear edge of the plank',
  'held leg': 'so that they reach in past the edge of the held leg, which lies further back than the foot',
  nothing: 'over the ears, past the sheet’s ends',
} as const;
