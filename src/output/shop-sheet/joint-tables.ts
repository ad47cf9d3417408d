import { at } from '../../base/at';
import type { LaserJoints, Opening, RouterJoints } from '../../design/joints/joints';
import { html, type HtmlElement } from '../html';
import { bothSides } from './both-sides';
import { inBoth } from './in-both';
import { paragraph, table } from './pieces';
import type { Shop } from './shop';
import { stacksOf, thicknessOf } from './stack';

/** What the boards find one another by, all sizes as they come out of the machine; nothing for a jigsaw's drawn lines. */
export function jointTables(shop: Shop): HtmlElement[] {
  const { joints } = shop;
  switch (joints.with) {
    case 'jigsaw':
      return [];
    case 'router':
      return grooveTable(shop, joints);
    case 'laser':
      return [...layerTable(shop, joints), ...slotTable(shop, joints), ...dowelTable(shop, joints)];
  }
}

function grooveTable(shop: Shop, { grooves, depth }: RouterJoints): HtmlElement[] {
  return [
    table(
      'Grooves across the front of the spine, from long edge to long edge',
      ['Groove for', 'A to its A-side edge', 'A to its B-side edge', 'Width', 'Depth', 'Open side'],
      grooves.map(({ holds, low, high, open }) => [
        holds,
        inBoth(shop, low),
        inBoth(shop, high),
        inBoth(shop, high - low),
        inBoth(shop, depth),
        openAt(open),
      ]),
    ),
    paragraph(
      'A groove with an open side is a rebate at the end of the spine: its station stands against the closed side, its outer face flush with the spine’s end.',
    ),
  ];
}

function openAt(open: Opening['open']): string {
  return open === null ? 'none' : `end ${open}`;
}

/** On a cylinder all layers of a station are alike: the station table has their radius. */
function layerTable(shop: Shop, joints: LaserJoints): HtmlElement[] {
  const stations = stacksOf(joints).filter(({ name }) => shop.layout.stations.some((station) => station.name === name));
  if (shop.bend.form.halfAngle === 0 || stations.length === 0) return [];
  return [
    table(
      `Layers of the stations, ${shop.say.thickness(shop.board.stations.thickness)} each; layer 1 is the nearest to end A`,
      [
        'Layer',
        'A to its A-side face',
        'Contact face toward',
        'Radius to cut (contact face)',
        'Radius of the cone at its other face',
      ],
      stations.flatMap(({ name, layers }) =>
        layers.map((layer, index) => [
          `${name}-${index + 1}`,
          inBoth(shop, layer.low),
          `end ${layer.contact}`,
          inBoth(shop, layer.radius),
          inBoth(shop, layer.farRadius),
        ]),
      ),
    ),
  ];
}

function slotTable({ say, layout }: Shop, { boards, tabLength }: LaserJoints): HtmlElement[] {
  const rows = boards.flatMap(({ name, slots, tabs }) => {
    const [slot] = slots;
    const [tab] = tabs;
    if (!slot || !tab) return [];
    return [
      [
        name,
        say.length(slot.low),
        say.length(slot.high),
        bothSides(
          slots.map(({ offset }) => offset),
          say.length,
        ),
        say.thickness(slot.width),
        say.thickness(tab.width),
        openAt(slot.open),
      ],
    ];
  });
  if (rows.length === 0) return [];
  return [
    table(
      `Slots through ${layout.layers.spine > 1 ? 'every layer of the spine' : 'the spine'}, and the tabs that go into them`,
      [
        'Slot for',
        'A to its A-side edge',
        'A to its B-side edge',
        'Off the centre line (its middle)',
        'Slot, across the spine',
        'Tab, along its edge',
        'Open side',
      ],
      rows,
    ),
    paragraph(
      `Tabs reach ${say.length(tabLength)} into the spine. A slot with an open side is a notch in the end of the spine: its station stands against the closed side, its outer face flush with the spine’s end.`,
    ),
  ];
}

function dowelTable({ say }: Shop, joints: LaserJoints): HtmlElement[] {
  const stacks = stacksOf(joints).filter(({ dowels }) => dowels.length > 0);
  if (stacks.length === 0) return [];
  return [
    table(
      'Dowel holes through all layers of a board',
      ['Board', 'Off the centre line', 'From its edge to the spine', 'Diameter', 'Dowel length'],
      stacks.map((stack) => {
        const { depth, diameter } = at(stack.dowels, 0);
        return [
          stack.name,
          bothSides(
            stack.dowels.map(({ offset }) => offset),
            say.length,
          ),
          say.length(depth),
          say.exact(diameter),
          say.length(thicknessOf(stack)),
        ];
      }),
    ),
    html('p', {}, 'The laser cuts these holes; the dowels or bolts only hold the layers in line while the glue sets.'),
  ];
}
