import { formatForce, type LengthUnit } from '../base/units';
import { sayParts } from '../output/plan/came-out';
import { keyFigures, sayRows, type Figure } from '../output/plan/figures';
import type { Plan, PlanWood } from '../output/plan/plan';
import { pullDetails, type Detail } from '../output/plan/pull-details';
import { measuresIn } from '../output/shop-sheet/measures';
import { backingTable, holeTable, stationTable } from './board-tables';
import { pairs } from './columns';
import { cutting } from './cut-table';
import { degrees, plainSpaces, printersFor, printLength, type Printing } from './printing';
import { paint } from './report';

/** A heading and what stands under it; nothing under it is not printed. */
type Section = readonly [heading: string, body: string];

/** The plan as tables for reading at the bench: what the maker needs first stands first. `width` is the terminal's, in columns. */
export function printPlan(plan: Plan, units: LengthUnit, colour: boolean, width = Infinity): string {
  const as: Printing = {
    units,
    width,
    length: (mm) => printLength(mm, units),
    drill: (mm) => `⌀ ${plainSpaces(measuresIn(units).tool(mm))}`,
  };
  const sections: readonly Section[] = [
    ['Bend', bendRows(plan, as)],
    ['What came out', indented(sayParts(plan, printersFor(units)))],
    ['Pull and clamps', pullRows(plan, as)],
    ['Spine', spineRows(plan, as)],
    ['Stations (at: middle of the board, along the centre line from end A)', stationTable(plan, as)],
    ['Backing stations', backingTable(plan, as)],
    [
      'Screw holes in the spine (at: along the centre line from end A; aside: from the centre line)',
      holeTable(plan, as),
    ],
    ...cutting(plan, as.length, width),
    ['Blank', blankRows(plan, as)],
    ['Mind', mind(plan)],
  ];
  const body = sections
    .filter(([, text]) => text !== '')
    .map(([heading, text]) => `\n${paint(heading, '1', colour)}\n${text}`);
  return `${paint(plan.title, '1', colour)}\n${sheetLine(plan, as)}${body.join('')}\n`;
}

function sheetLine({ sheet, bend }: Plan, { units, length }: Printing): string {
  if (!sheet || !bend) return '';
  const thickness = plainSpaces(measuresIn(units).thickness(sheet.thickness));
  return `${sheet.material}, ${thickness} thick; bent ${degrees(bend.angle)} over ${length(bend.length)}\n`;
}

function figureRows(plan: Plan, { units }: Printing, of: Figure['part']): (readonly [string, string])[] {
  const figures = keyFigures(plan).filter(({ part }) => part === of);
  return sayRows(figures, printersFor(units));
}

function detailRows(
  plan: Plan,
  { units }: Printing,
  which: (detail: Detail) => boolean,
): (readonly [string, string])[] {
  return sayRows(pullDetails(plan).filter(which), printersFor(units));
}

function bendRows(plan: Plan, as: Printing): string {
  if (!plan.sheet || !plan.bend) return '';
  return pairs([
    ...figureRows(plan, as, 'bend'),
    ...detailRows(plan, as, ({ of, id }) => of === 'leg' && id !== 'with'),
  ]);
}

function pullRows(plan: Plan, as: Printing): string {
  if (!plan.effort) return '';
  return pairs([
    ...figureRows(plan, as, 'pull'),
    ...detailRows(plan, as, ({ of, id }) => of !== 'leg' || id === 'with'),
    ...(plan.wood ? woodRows(plan.wood, as.units) : []),
  ]);
}

function spineRows({ spine }: Plan, { length, drill }: Printing): string {
  if (!spine) return '';
  const holes = spine.clampHoles.map((hole) => `${drill(hole.diameter)} at ${length(hole.at)}`);
  return pairs([
    ['Length', length(spine.length)],
    ['Width, A / B', `${length(spine.widthFrom)} / ${length(spine.widthTo)}`],
    ['Thickness', length(spine.thickness)],
    ...(spine.ears > 0 ? [['Ears past each end', length(spine.ears)] as const] : []),
    ['Clamp holes', holes.join('; ') || 'none: clamp on the ears'],
  ]);
}

function blankRows({ blank }: Plan, { length }: Printing): string {
  if (!blank) return '';
  const [xs, ys] = [blank.outline.map(([x]) => x), blank.outline.map(([, y]) => y)];
  const size = (values: readonly number[]): string => length(Math.max(...values) - Math.min(...values));
  return pairs([['Sheet needed', `${size(xs)} × ${size(ys)}`]]);
}

function mind({ effort, cut }: Plan): string {
  return effort ? `${ALWAYS}${caution[cut?.with ?? 'jigsaw']}` : '';
}

function woodRows({ frontEdge, screws, roundEdge }: PlanWood, units: LengthUnit): (readonly [string, string])[] {
  const stress = (mpa: number): string => plainSpaces(measuresIn(units).stress(mpa));
  const force = (newtons: number): string => formatForce(newtons, units);
  return [
    ['Spine’s front edge beds in over', printLength(frontEdge.beds, units)],
    [`Shear on each screw of ${screws.station}`, `${force(screws.load)}, allowed ${force(screws.bears)}`],
    [
      `Pressed on the round edge of ${roundEdge.station}`,
      `${stress(roundEdge.load)}, bears ${stress(roundEdge.bears)}`,
    ],
  ];
}

const ALWAYS = `  A bent sheet is a spring: stand clear of its end and let it back slowly. Deburr the edges and wear gloves.
  Fix every clamp before you pull. Wear a mask when you cut MDF.
`;

/** What the tool adds to mind. */
const caution = {
  jigsaw: '',
  router:
    '  Goggles and hearing protection at the router, the work held down, no gloves near the bit; the machine’s manual comes first.\n',
  laser: '  Never leave a laser while it cuts; extract its fumes; never cut PVC; the machine’s manual comes first.\n',
} as const;

/** What came out of the form, a part a paragraph. */
export function indented(parts: readonly (readonly string[])[]): string {
  return parts.flatMap((lines) => lines.map((line, index) => `  ${index > 0 ? '  ' : ''}${line}\n`)).join('');
}
