import { at } from '../../../base/at';
import { footPast } from '../../shop-sheet/foot-short';
import type { HtmlElement } from '../../html';
import { boardRows, offcutRows, pullingRows, trialRows, type Row } from '../../shop-sheet/buy';
import { clampOpening, clampThroat, countScrews } from '../../shop-sheet/hardware';
import type { Measures } from '../../shop-sheet/measures';
import { paragraph, table } from '../../shop-sheet/pieces';
import type { Shop } from '../../shop-sheet/shop';
import type { PanelPieces } from '../boards';
import type { BuildablePanel } from '../plan-panel';
import { benchOf } from '../bench';
import type { Step } from '../../../panel';
import type { Piece } from './places';

/** What the whole panel's buying list is made of. */
export interface ToBuy {
  readonly planned: BuildablePanel;
  readonly pieces: PanelPieces;
  /** Each bend as a sheet of its own would have it, in the panel's numbering. */
  readonly shops: readonly Shop[];
  /** The piece of sheet a blank is cut from. */
  readonly piece: Piece;
  /** kg of one blank as cut. */
  readonly mass: number;
  readonly say: Measures;
}

/** Everything the panel takes, once: metal, boards, screws, what it is pulled and held with, and the bench. Drills and tools stand in the forms' own sheets. */
export function buyAll(given: ToBuy): HtmlElement[] {
  return [
    table(
      'To buy, or find in the shop, for the whole panel (drills and tools are listed in the forms’ own sheets)',
      ['What', 'Size', 'How many', 'Remark'],
      [
        ...metalRows(given),
        ...seamRows(given),
        ...woodRows(given),
        ...screwRows(given),
        ...dowelRows(given),
        ...pullRows(given),
        ...packingRows(given),
        clampRow(given),
        benchRow(given),
      ],
    ),
    paragraph(
      'Where one thing serves several bends it is listed once: they are made one after another. Measure your board before you cut: the stations’ places depend on its thickness.',
    ),
  ];
}

function metalRows({ planned, shops, piece, mass, say }: ToBuy): Row[] {
  const { finish, job } = planned;
  const shop = at(shops, 0);
  const { metal, section } = shop.bend;
  const name = `${metal.name}, ${say.thickness(section.thickness)}`;
  const each = `${say.mass(mass)} each as cut`;
  const hands = job.panel.pair ? 2 : 1;
  const tightest = shops.reduce((least, one) => (tight(one) < tight(least) ? one : least));
  const [sheet] = finish.metal?.layout.sheets ?? [];
  const blank: Row =
    finish.metal && sheet
      ? [
          name,
          `sheet ${say.length(sheet.width)} × ${say.length(sheet.length)}`,
          String(finish.metal.layout.sheets.length),
          `${hands === 2 ? 'both blanks' : 'the blank'} as laid out in blank/on-${sheet.id}; ${each}, ${(100 * finish.metal.layout.used).toFixed(0)} % of it is used`,
        ]
      : [
          name,
          `${say.atLeast(piece.width)} × ${say.atLeast(piece.height)}`,
          String(hands),
          `${hands === 2 ? 'one for each hand; ' : ''}${each}`,
        ];
  return [blank, ...trialRows(tightest)];
}

function tight({ bend: { form } }: Shop): number {
  return Math.min(form.radiusA, form.radiusB);
}

function seamRows({ planned: { finish, job }, say }: ToBuy): Row[] {
  const hands = job.panel.pair ? 2 : 1;
  const fasteners = finish.seams.map(({ seam, count, rows }): Row => [
    seam.fastener.name,
    `for two sheets of ${say.thickness(job.sheet.thickness)}`,
    String(hands * count * rows.length),
    `the seam on ${seam.on}; the panel it meets needs none of its own there`,
  ]);
  const strip = finish.edges?.capLength ?? 0;
  return [
    ...fasteners,
    ...(strip > 0
      ? [['cap strip', `${say.atLeast(hands * strip)} in all`, '', 'over the edges the job caps'] as const]
      : []),
  ];
}

function woodRows({ pieces: { boards }, shops }: ToBuy): Row[] {
  const { job, say, tables } = at(shops, 0);
  return [...boardRows({ boards, job, say, tables }), ...offcutRows({ boards, say, tables })];
}

function screwRows({ pieces: { forms } }: ToBuy): Row[] {
  const several = forms.length > 1;
  const boards = forms.flatMap(({ form: { name, planned } }) =>
    [...planned.layout.stations, ...planned.layout.backings].map(({ screws }) => ({ name: `form ${name}`, screws })),
  );
  return countScrews(boards).map(({ screw, number, boards: of }): Row => [
    `screw ${screw.kind.name}, countersunk`,
    screw.lengthName,
    String(number),
    several ? of.join(', ') : '',
  ]);
}

function dowelRows({ planned: { blocks, job }, say }: ToBuy): Row[] {
  const hands = job.panel.pair ? 2 : 1;
  return blocks.map(({ name, block, dowel }): Row => [
    'dowel, or bolt',
    `${say.tool(dowel)} across, ${say.atLeast(block.height)} long`,
    String(2 * hands),
    `through the layers of the block for corner ${name}${hands === 2 ? ', one block for each hand' : ''}; glue`,
  ]);
}

/** What each bend is pulled with, and the packing under its form. */
function pullRows({ planned, shops }: ToBuy): Row[] {
  return onceForAll(planned, shops.map(pullingRows));
}

/** Rows for each bend, in the panel's numbering; what several bends use alike stands once, as many as the most of them need. */
function onceForAll({ panel }: BuildablePanel, rows: readonly (readonly Row[])[]): Row[] {
  const uses = rows.flatMap((ofBend, index) => ofBend.map((row) => ({ row, bend: at(panel.bends, index).name })));
  const alike = new Map<string, typeof uses>();
  for (const one of uses) {
    const [what, size, , remark] = one.row;
    const key = JSON.stringify([what, size, remark.split(':')[0]]);
    alike.set(key, [...(alike.get(key) ?? []), one]);
  }
  return [...alike.values()].map((same): Row => {
    const [what, size, , remark] = at(same, 0).row;
    const needed = new Map<string, number>();
    for (const { row, bend } of same) needed.set(bend, (needed.get(bend) ?? 0) + Number(row[2]));
    const bends = [...needed.keys()].join(', ');
    const number = Math.max(...needed.values());
    return [what, size, String(number), panel.bends.length > 1 ? `${remark} (bend ${bends})` : remark];
  });
}

function packingRows({ planned, shops, say }: ToBuy): Row[] {
  return onceForAll(
    planned,
    shops.map((shop, index) => packingOf(shop, at(planned.bends, index).step, say)),
  );
}

function packingOf({ bend, layout }: Shop, { overhang }: Pick<Step, 'overhang'>, say: Measures): Row[] {
  const past = footPast(bend, layout);
  const strip = Math.max(0, ...past.map((one) => one.past));
  const over = [overhang.from, overhang.to].filter((mm) => mm > 1);
  const ears = layout.spine.ears > 0 ? [layout.spine.ears, layout.spine.ears] : [];
  const what = 'packing as thick as the sheet, offcuts of it';
  return [
    ...(strip > 0
      ? [
          [
            what,
            `${say.atLeast(layout.backings.reduce((most, one) => Math.max(most, one.thickness), 0))} × ${say.atLeast(strip)}`,
            String(past.length),
            `under ${past.map(({ name }) => name).join(', ')}, where the held side ends before the foot`,
          ] as const,
        ]
      : []),
    ...[...over, ...ears].map((mm): Row => [
      what,
      `${say.atLeast(mm)} × ${say.atLeast(layout.spine.thickness)}`,
      '1',
      'under the form past the bend’s end',
    ]),
  ];
}

function clampRow({ shops, say }: ToBuy): Row {
  const most = (of: (shop: Shop) => number): number => Math.max(...shops.map(of));
  const { rating } = at(shops, 0).job.clamps;
  const hole = shops.flatMap(({ layout }) => layout.clampHoles.map(({ diameter }) => diameter));
  return [
    'clamps',
    `opening ${say.atLeast(most(clampOpening))} plus the bench top, throat ${say.atLeast(most(clampThroat))}`,
    String(most(({ layout }) => layout.clamps)),
    `each good for ${say.force(rating)} done up by hand${hole.length > 0 ? `, a jaw through a hole ${say.tool(Math.min(...hole))} across` : ''}`,
  ];
}

function benchRow({ planned, say }: ToBuy): Row {
  const rooms = benchOf(planned);
  const deepest = rooms.reduce((most, one) => (one.behind + one.ahead > most.behind + most.ahead ? one : most));
  const edges = planned.bends.filter(({ step }) => step.bench.length > 0).map(({ bend }) => bend.name);
  return [
    'bench, firm and fixed',
    `at least ${say.atLeast(Math.max(...rooms.map(({ along }) => along)))} long, ${say.atLeast(deepest.behind + deepest.ahead)} deep`,
    '1',
    `${say.atLeast(deepest.behind)} behind the form’s front, ${say.atLeast(deepest.ahead)} before it for the sheet to lie flat; the pulled side may hang out past the edge instead${
      edges.length > 0
        ? `. A free edge beside the form for bend ${edges.join(', ')}: a leg bent before hangs there`
        : ''
    }`,
  ];
}
