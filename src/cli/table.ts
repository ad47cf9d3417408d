import { formatForce, type LengthUnit } from '../base/units';
import { sayParts } from '../output/plan/came-out';
import { keyFigures, nameOf, sayFigure, type Figure, type Printers } from '../output/plan/figures';
import type { Plan, PlanScrew, PlanScrewHole, PlanStation, PlanWood } from '../output/plan/plan';
import { pullDetails, type Detail } from '../output/plan/pull-details';
import { inches, measuresIn } from '../output/shop-sheet/measures';
import { cutting } from './cut-table';
import { pairs, table } from './columns';
import { paint } from './report';

/** The plan as tables for reading at the bench: what the maker needs first stands first. `width` is the terminal's, in columns. */
export function printPlan(plan: Plan, units: LengthUnit, colour: boolean, width = Infinity): string {
  const length = (mm: number): string => printLength(mm, units);
  const drill = (mm: number): string => `⌀ ${plainSpaces(measuresIn(units).tool(mm))}`;
  const heading = (text: string): string => `\n${paint(text, '1', colour)}\n`;
  const { sheet, bend, effort, spine, blank, cut } = plan;
  const byHand = cut === null || cut.with === 'jigsaw';
  const stacked = cut?.with === 'laser' && cut.layers.stations > 1;
  const figures = keyFigures(plan);
  const said = (part: Figure['part']): (readonly [string, string])[] =>
    figures
      .filter((figure) => figure.part === part)
      .map((figure) => [nameOf(figure), sayFigure(figure, printersFor(units))] as const);
  const details = (which: (detail: Detail) => boolean): (readonly [string, string])[] =>
    pullDetails(plan)
      .filter(which)
      .map((detail) => [nameOf(detail), sayFigure(detail, printersFor(units))] as const);
  let text = `${paint(plan.title, '1', colour)}\n`;
  if (sheet && bend) {
    text += `${sheet.material}, ${plainSpaces(measuresIn(units).thickness(sheet.thickness))} thick; bent ${degrees(bend.angle)} over ${length(bend.length)}\n`;
    text += heading('Bend');
    text += pairs([...said('bend'), ...details(({ of, id }) => of === 'leg' && id !== 'with')]);
  }
  const parts = sayParts(plan, printersFor(units));
  if (parts.length > 0) text += heading('What came out') + indented(parts);
  if (effort) {
    text += heading('Pull and clamps');
    text += pairs([
      ...said('pull'),
      ...details(({ of, id }) => of !== 'leg' || id === 'with'),
      ...(plan.wood ? woodRows(plan.wood, units) : []),
    ]);
  }
  if (spine) {
    text += heading('Spine');
    text += pairs([
      ['Length', length(spine.length)],
      ['Width, A / B', `${length(spine.widthFrom)} / ${length(spine.widthTo)}`],
      ['Thickness', length(spine.thickness)],
      ...(spine.ears > 0 ? [['Ears past each end', length(spine.ears)] as const] : []),
      [
        'Clamp holes',
        spine.clampHoles.map((hole) => `${drill(hole.diameter)} at ${length(hole.at)}`).join('; ') ||
          'none: clamp on the ears',
      ],
    ]);
  }
  if (plan.stations.length > 0) {
    text += heading('Stations (at: middle of the board, along the centre line from end A)');
    text += table(
      [
        '',
        'at',
        stacked ? 'smallest radius' : 'cut to radius',
        'contact face',
        'other face',
        ...(byHand ? ['bevel'] : []),
        'screws',
        'pilot',
        'ends',
      ],
      plan.stations.map((station) => [
        station.name,
        length(station.at),
        length(station.radius),
        station.radius === station.farRadius ? 'either' : station.contact === 'from' ? 'to end A' : 'to end B',
        length(station.farRadius),
        ...(byHand ? [degrees(station.bevel)] : []),
        screws(station.screws, length),
        pilots(station.screws, length, grooveDepth(plan)),
        endsOf(station),
      ]),
      width,
    );
  }
  if (plan.backings.length > 0) {
    text += heading('Backing stations');
    text += table(
      ['', 'at', 'height', 'depth (foot)', 'screws', 'pilot'],
      plan.backings.map((backing) => [
        backing.name,
        length(backing.at),
        length(backing.width),
        length(backing.depth),
        screws(backing.screws, length),
        pilots(backing.screws, length),
      ]),
      width,
    );
  }
  if (spine && spine.screwHoles.length > 0) {
    text += heading('Screw holes in the spine (at: along the centre line from end A; aside: from the centre line)');
    text += table(
      ['for', 'at', 'aside', 'drill through', 'countersink', 'head in'],
      holeRows(spine.screwHoles).map(([hole, asides]) => [
        hole.holds,
        length(hole.at),
        offsets(asides, length),
        drill(hole.diameter),
        drill(hole.countersink),
        hole.side,
      ]),
      width,
    );
  }
  for (const [title, body] of cutting(plan, length, width)) text += `${heading(title)}${body}`;
  if (blank) {
    const [xs, ys] = [blank.outline.map(([x]) => x), blank.outline.map(([, y]) => y)];
    const size = (values: readonly number[]): string => length(Math.max(...values) - Math.min(...values));
    text += heading('Blank');
    text += pairs([['Sheet needed', `${size(xs)} × ${size(ys)}`]]);
  }
  if (effort) {
    text += heading('Mind');
    text +=
      '  A bent sheet is a spring: stand clear of its end and let it back slowly. Deburr the edges and wear gloves.\n  Fix every clamp before you pull. Wear a mask when you cut MDF.\n';
    text += caution[cut?.with ?? 'jigsaw'];
  }
  return `${text}\n`;
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

/** Numbers as the table prints them. */
export function printersFor(units: LengthUnit): Printers {
  return {
    length: (mm) => printLength(mm, units),
    angle: degrees,
    force: (newtons) => formatForce(newtons, units),
    share: percent,
    ratio: (ratio) => ratio.toFixed(3),
  };
}

/** Whoever searches the text types plain spaces. */
function plainSpaces(text: string): string {
  return text.replaceAll('\u00a0', ' ');
}

/** mm to a hundredth; or thousandths of an inch with the nearest 1/32 in brackets. */
export function printLength(mm: number, units: LengthUnit): string {
  return units === 'mm' ? `${mm.toFixed(2)} mm` : plainSpaces(inches(mm));
}

/** Degrees to a tenth. */
export function degrees(value: number): string {
  return `${value.toFixed(1).replace(/^-0\.0$/u, '0.0')}°`;
}

function percent(value: number): string {
  return `${(100 * value).toFixed(1)} %`;
}

function screws(list: readonly PlanScrew[], length: (mm: number) => string): string {
  const [first] = list;
  return first
    ? `${list.length} × ${first.size} × ${first.lengthName} at ${offsets(
        list.map(({ offset }) => offset),
        length,
      )}`
    : 'none';
}

/** Distances from the centre line: holes lie on both sides of it, so each is said once. */
function offsets(list: readonly number[], length: (mm: number) => string): string {
  const sizes = [...new Set(list.map((offset) => Number(Math.abs(offset).toFixed(6))))];
  return sizes.map((size) => (size === 0 ? '0' : `±${length(size)}`)).join(', ');
}

/** The holes that differ only in how far aside they are, together. */
function holeRows(holes: readonly PlanScrewHole[]): [PlanScrewHole, number[]][] {
  const rows = new Map<string, [PlanScrewHole, number[]]>();
  for (const hole of holes) {
    const key = [hole.holds, hole.at, hole.diameter, hole.countersink, hole.side].join('|');
    const row = rows.get(key);
    if (row) row[1].push(hole.offset);
    else rows.set(key, [hole, [hole.offset]]);
  }
  return [...rows.values()];
}

/** `deeper`: how much of the board lies behind the plane the plan counts from, mm. */
function pilots(list: readonly PlanScrew[], length: (mm: number) => string, deeper = 0): string {
  const depths = [
    ...new Set(list.map(({ pilotDrill, pilotDepth }) => `${pilotDrill}, ${length(pilotDepth + deeper)} deep`)),
  ];
  return depths.join('; ');
}

/** A station in a groove has that much more wood for its pilots. */
function grooveDepth({ cut }: Plan): number {
  return cut?.with === 'router' ? cut.grooveDepth : 0;
}

function endsOf(station: PlanStation): string {
  return station.ends.length > 0
    ? station.ends.map(({ run, end }) => `${run} ${end === 'from' ? 'start' : 'end'}`).join('; ')
    : 'infill';
}
