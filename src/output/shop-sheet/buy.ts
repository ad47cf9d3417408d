import { piecesFrom } from '../../design/fixture/bed';
import { developBlank } from '../../design/form/blank';
import { sizeBlank } from '../../design/form/blank-size';
import { adviseTrial } from '../../design/bend/trial-advice';
import type { LaidOut } from '../../drawing/boards/laid-out';
import { findBoard } from '../../tables/look-up';
import type { HtmlElement } from '../html';
import { measureFirst } from './cut-list';
import { footPast } from './foot-short';
import { count, paragraph, table } from './pieces';
import type { Shop } from './shop';
import { yokeBolts, yokeMembers } from './yoke-rows';
import { TRIAL_STRIPS } from './trial-pieces';

/** A line of a buying list. */
export type Row = readonly [what: string, size: string, howMany: string, remark: string];

/** All that is used up or stood on: metal, boards, batten, packing, bench. Screws, drills and clamps have tables of their own. */
export function buyList(shop: Shop): HtmlElement[] {
  if (shop.ofPanel)
    return [
      paragraph(
        'What to buy for all forms of the panel together, metal, boards, screws, packing and bench, stands in order-of-work.html; there too how the pieces of all forms lie on the boards, drawn full size in the panel’s folder “boards”.',
      ),
      paragraph(...measureFirst(shop)),
    ];
  return [
    table(
      'To buy, or find in the shop: material and bench (screws, tools and clamps are listed above)',
      ['What', 'Size', 'How many', 'Remark'],
      [
        ...metalRows(shop),
        ...boardRows(shop),
        ...offcutRows(shop),
        ...pullingRows(shop),
        ...packingRow(shop),
        benchRow(shop),
      ],
    ),
    paragraph(...measureFirst(shop)),
  ];
}

function metalRows({ bend, job, say }: Shop): Row[] {
  const { width, height, mass } = sizeBlank(bend, developBlank(bend));
  const { metal, section } = bend;
  const name = `${metal.name}, ${say.thickness(section.thickness)}`;
  return [
    [
      name,
      `${say.atLeast(width)} × ${say.atLeast(height)}`,
      '1 for each part',
      `${say.mass(mass)} each, leverage included`,
    ],
    ...trialRows({ bend, job, say }),
  ];
}

/** Strips to try the sheet by, until it has been. */
export function trialRows({ bend, job, say }: Pick<Shop, 'bend' | 'job' | 'say'>): Row[] {
  if (job.trials.length > 0) return [];
  const strip = adviseTrial(bend, job.units);
  return [
    [
      `${bend.metal.name}, ${say.thickness(bend.section.thickness)}`,
      `${say.atLeast(strip.width)} wide, as drawn`,
      String(TRIAL_STRIPS),
      'trial strips, cut the way of the part’s grain',
    ],
  ];
}

/** Whole boards as sold; what the machine's bed takes at once is cut from them first. */
export function boardRows(shop: Pick<Shop, 'boards' | 'say' | 'tables' | 'job'>): Row[] {
  const { boards, say, tables, job } = shop;
  const whole = boards.filter(({ offcut }) => offcut === null);
  return [...new Set(whole.map(({ stock }) => stock))].map((stock): Row => {
    const alike = whole.filter((board) => board.stock === stock);
    const [first] = alike;
    const board = findBoard(tables, stock);
    if (!first || !board) return [stock, '', String(alike.length), ''];
    const size = `${say.atLeast(board.width)} × ${say.atLeast(board.length)} as sold`;
    const thick = `${say.thickness(first.thickness)} thick as reckoned here`;
    const isPiece = first.width < board.width || first.length < board.length;
    const needed = isPiece ? Math.ceil(alike.length / piecesFrom(board, first, tables.rules.partGap)) : alike.length;
    const remark = isPiece
      ? `to be cut to ${count(alike.length, 'piece')} of ${say.atLeast(first.width)} × ${say.atLeast(first.length)} for the bed`
      : alike.length > 1
        ? ''
        : `an offcut of ${offcutOf(first, say.atLeast, job.cut.border)} will do, laid out as drawn`;
    return [board.name, size, String(needed), [thick, remark].filter((words) => words !== '').join('; ')];
  });
}

function offcutOf({ used }: LaidOut, length: (mm: number) => string, border: number): string {
  return `${length(used.length + border)} × ${length(used.width + border)}`;
}

export function offcutRows({ boards, say, tables }: Pick<Shop, 'boards' | 'say' | 'tables'>): Row[] {
  return boards.flatMap(({ offcut, stock, width, length, placements }): Row[] =>
    offcut === null
      ? []
      : [
          [
            `your offcut ${offcut + 1}, ${findBoard(tables, stock)?.name ?? stock}`,
            `${say.length(width)} × ${say.length(length)}`,
            '1',
            placements.map(({ part }) => part).join(', '),
          ],
        ],
  );
}

/** What is pulled at: the yoke, or by bare hands a batten along the edge. */
export function pullingRows(shop: Shop): Row[] {
  const { bend, say, tables } = shop;
  if (bend.pull.yoke)
    return [...yokeMembers(shop), ...yokeBolts(shop)].map(({ name, stock, length, number, remark }): Row => [
      stock,
      length,
      String(number),
      `${name}: ${remark}`,
    ]);
  if (bend.pull.with !== 'bare') return [];
  const { battenThick, battenWide } = tables.rules;
  const [, , , , freeB, freeA] = developBlank(bend).outline;
  const edge = freeA && freeB ? Math.hypot(freeB.x - freeA.x, freeB.y - freeA.y) : bend.length;
  return [
    [
      'stiff batten, straight hardwood',
      `${say.tool(battenThick)} × ${say.tool(battenWide)}, at least ${say.atLeast(edge)} long`,
      '1',
      'with two small clamps, along the edge you pull at',
    ],
  ];
}

/** Where the held leg ends before the foot does. */
function packingRow({ bend, layout, say }: Shop): Row[] {
  const reach = layout.spine.thickness + layout.foot;
  const short = bend.heldAlong
    ? Math.max(0, ...footPast(bend, layout).map(({ past }) => past))
    : reach - bend.legs.held;
  if (short <= 0 && layout.spine.ears === 0) return [];
  const { length, ears } = layout.spine;
  return [
    [
      'packing strip, as thick as the sheet',
      short > 0
        ? `${say.atLeast(length + 2 * ears)} × ${say.atLeast(short)}`
        : `${say.atLeast(ears)} × ${say.atLeast(layout.spine.thickness)}`,
      short > 0 ? '1' : '2',
      short > 0
        ? 'an offcut of the sheet: under what of the foot the held leg does not reach'
        : 'offcuts of the sheet: under the ears',
    ],
  ];
}

/** What the form and the flat sheet stand on. */
function benchRow({ bend, layout, say }: Shop): Row {
  const { length, ears } = layout.spine;
  const behind = Math.max(layout.spine.thickness + layout.foot, bend.legs.held);
  const before = sizeBlank(bend).height - bend.legs.held;
  return [
    'bench, firm and fixed',
    `at least ${say.atLeast(Math.max(length + 2 * ears, sizeBlank(bend).width))} long`,
    '1',
    `${say.atLeast(behind)} deep behind the tangent line, and ${say.atLeast(before)} before it for the sheet to lie flat: ${say.atLeast(behind + before)} in all; the free leg may hang out past the edge instead`,
  ];
}
