import { at } from '../../../base/at';
import type { LaserJoints, StackedBoard } from '../../../design/joints/joints';
import type { LaserCut } from '../../../job/job';
import { html, type HtmlNode } from '../../html';
import { gluedBoards, hasTabs } from '../hardware';
import { caution, list } from '../pieces';
import type { Shop } from '../shop';
import { isStacked, stacksOf } from '../stack';
import { fitStep } from './fit-test';
import { countersinks, endLines, pilots } from './pilots';
import type { Step } from './step';
import { sentences } from '../../sentences';

/** Layers glued to stacks, tabs in slots. */
export function laserSteps(shop: Shop, cut: LaserCut, joints: LaserJoints): Step[] {
  return [
    ...fitStep(shop),
    { id: 'cut', title: 'Cut', content: cutStep(shop, cut) },
    ...(isStacked(shop) ? [{ id: 'stack', title: 'Glue the layers', content: stackStep(shop, joints) } as const] : []),
    { id: 'drill', title: 'Countersink, stand dry, drill', content: drillStep(shop) },
    { id: 'assemble', title: 'Assemble', content: assembleStep(shop, joints) },
  ];
}

function cutStep(shop: Shop, { kerf }: LaserCut): HtmlNode[] {
  const { say, board } = shop;
  const through = [
    ...new Map(
      Object.values(board).map(({ name, thickness }) => [name, `${name}, taken as ${say.thickness(thickness)} thick`]),
    ).values(),
  ].join('; ');
  return [
    list(
      `Cut the drawings of the folder “boards”, or single parts from “parts”, on the line: the kerf of ${say.exact(kerf)} is in them, so turn off any correction for it at the machine.`,
      'The order is the files’ own, inside before outside: lettering and marks at low power, then holes and slots, outlines last. operations.csv lists them part by part.',
      `Cut through: ${through}. Countersink circles are marks only: countersinks are made by hand.`,
      ...(isStacked(shop)
        ? [
            'Keep the pieces in the order of their names as they come off: layers of one station differ by less than the eye sees.',
          ]
        : []),
    ),
    caution(
      sentences(
        'Laser: working extraction, for the smoke of glued board carries formaldehyde; never leave it while it cuts; a fire extinguisher at hand; lid shut and interlocks on.',
        'Never cut PVC or board of unknown coating.',
        'The machine’s own manual and the rules of your workplace come first.',
      ),
    ),
    caution('MDF dust harms the lungs: a dust mask rated for fine dust when you sand, file or drill.'),
  ];
}

function stackStep(shop: Shop, joints: LaserJoints): HtmlNode[] {
  const { layout, bend, screw, say } = shop;
  const { layers } = layout;
  const stacks = stacksOf(joints);
  const [stations, backings] = [
    stacks.filter(({ name }) => layout.stations.some((station) => station.name === name)),
    stacks.filter(({ name }) => layout.backings.some((backing) => backing.name === name)),
  ];
  return [
    list(
      ...(layers.spine > 1
        ? [
            [
              html('strong', {}, 'Spine. '),
              sentences(
                `spine-1 is the front, its lettering outside; spine-${layers.spine} the back.`,
                'All ends A together.',
                `Turn spine-${layers.spine} over about its length, so that its lettering and countersink marks lie outside, on the back: its shape is the same both ways.`,
                'Glue thin and even, none in the slots.',
                `Line the layers up by two bolts or drill shanks, ${screw.clearanceDrill}, through two screw holes far apart, one near each end${hasTabs(shop) ? ', and by the slots, with a dry station’s tab in one' : ''}; long edges flush.`,
                'Clamp flat between two boards, wax or paper against the glue; draw the shanks before it sets, wipe the slots clean.',
              ),
            ],
          ]
        : []),
      ...(stations.length > 0 ? [[html('strong', {}, 'Stations. '), ...stationStacks(shop, stations)]] : []),
      ...(backings.length > 0
        ? [
            [
              html('strong', {}, 'Backing stations. '),
              `Each from its ${layers.backing} layers, all alike${aligned(backings)}. Feet and tabs flush.`,
            ],
          ]
        : []),
      'Let it dry as long as the glue’s maker says, before any pilot is drilled: a wet glue line opens under the drill.',
      ...(layers.stations > 1
        ? [
            `A stack should measure ${say.length(at(layout.stations, 0).thickness)}, station for station; the glue adds little if it is thin and well clamped. Scrape off what came out at tabs and shoulders.`,
          ]
        : []),
      ...(bend.form.halfAngle !== 0 && layers.stations > 1
        ? [
            `Leave the small steps between layers on the round edge, about ${say.thickness(stepOf(stations))} each: they are the cone. Do not sand them off.`,
          ]
        : []),
    ),
    caution(
      'Glue squeezes out and layers slide while clamps are drawn tight: check that edges are flush after clamping, not before.',
    ),
  ];
}

function stationStacks({ bend, layout }: Shop, stacks: readonly StackedBoard[]): string[] {
  const first = at(stacks, 0);
  const { contact } = at(first.layers, 0);
  const order = `Stack each in the order of its numbers, ${first.name}-1 nearest end A, then ${first.name}-2${layout.layers.stations > 2 ? `, up to ${first.name}-${layout.layers.stations}` : ''}`;
  const facing = bend.form.halfAngle === 0 ? '' : `, every lettered face (the contact face) toward end ${contact}`;
  return [
    `${order}${facing}${aligned(stacks)}. Straight edges, shoulders and tabs flush: press them on a flat surface before you clamp.`,
  ];
}

/** What lines the layers up, for those with dowels and for those without. */
function aligned(stacks: readonly StackedBoard[]): string {
  const without = stacks.filter(({ dowels }) => dowels.length === 0).map(({ name }) => name);
  if (without.length === stacks.length) return ', lined up by their edges and by their tabs in a dry slot';
  return `, on two dowels or bolts through all layers (sizes in the dowel table; flush with both faces, glued in, or bolts that are drawn out once the glue holds)${without.length > 0 ? `; ${without.join(', ')} without, lined up by edges and by their tabs in a dry slot` : ''}`;
}

/** From one layer's radius to the next, mm. */
function stepOf(stacks: readonly StackedBoard[]): number {
  const [a, b] = at(stacks, 0).layers;
  return a && b ? Math.abs(a.radius - b.radius) : 0;
}

function drillStep(shop: Shop): HtmlNode[] {
  const { layout } = shop;
  const even = layout.layers.stations % 2 === 0;
  return [
    list(
      'Screw and clamp holes come from the laser: nothing to drill through the spine.',
      countersinks(shop),
      `Stand every station dry in the front of the spine${hasTabs(shop) ? ', tabs through their slots, shoulders tight against the front face' : ''}, and every backing station in the back${hasTabs(shop) ? ', its tabs from behind' : ''}; clamp them.`,
      pilots(shop),
      ...(layout.layers.stations > 1
        ? [
            `The pilots run ${even ? 'along the glue line between the two middle layers' : 'in the middle layer'}: clamp the stack across its faces while you drill and while you drive the screws.`,
          ]
        : []),
    ),
    caution('Clamp what you drill. No gloves near a turning spindle. Eye protection on.'),
  ];
}

function assembleStep(shop: Shop, { boards }: LaserJoints): HtmlNode[] {
  const { bend, layout } = shop;
  const taper = bend.form.halfAngle !== 0;
  const glued = gluedBoards(shop);
  const contact = taper ? `contact faces toward end ${at(layout.stations, 0).contact}` : 'either face toward A';
  const facing = taper && layout.layers.stations > 1 ? `${contact}, layer 1 nearest end A` : contact;
  const notched = boards.filter(({ slots }) => slots.some(({ open }) => open !== null)).map(({ name }) => name);
  const tabless = boards.filter(({ tabs }) => tabs.length === 0).map(({ name }) => name);
  return [
    list(
      hasTabs(shop)
        ? sentences(
            `Stations into the front of the spine, ${facing}: glue on tabs and shoulders, tabs through the slots until the shoulders are tight against the front face.`,
            'Screws from the back, by hand at the end; too tight strips the edge.',
          )
        : `Stations on the front of the spine, ${facing}, their middle on the screw holes. Screws from the back, by hand at the end; too tight strips the edge.`,
      ...(notched.length > 0
        ? [
            `${notched.join(' and ')} stand${notched.length === 1 ? 's' : ''} in a notch at the spine’s end: push against its closed side; the outer face is then flush with the spine’s end.`,
          ]
        : []),
      ...(tabless.length > 0
        ? [
            `${tabless.join(', ')}: no tabs; stood by the table of positions, the screw holes in the middle of the edge.`,
          ]
        : []),
      `Backing stations into the back, ${hasTabs(shop) ? 'tabs from behind, glued, shoulders tight against the back; ' : ''}screws from the front.`,
      ...(hasTabs(shop)
        ? ['The tabs end just short of the other face: nothing may stand proud of it. Wipe off the glue.']
        : []),
      ...(glued.length > 0 ? [`Glue the whole edge of ${glued.join(', ')}: room for one screw only.`] : []),
      hasTabs(shop) || glued.length > 0
        ? 'The screws hold the form, the tabs place it: leave no screw out. Let the glue cure before pulling.'
        : 'The screws hold the form: leave none out.',
      ...endLines(shop),
      `Check with a straight-edge laid along the round edges: it touches every station${taper ? `, ${layout.layers.stations > 1 ? 'each layer ' : ''}at its contact face` : ''}.`,
    ),
  ];
}
