import { toDegrees } from '../base/angle';
import type { Backing, DrivenScrew, Station } from '../fixture/fixture';
import { html, type HtmlElement } from '../write/html';
import { degrees, inches, metric } from './measures';
import { count, paragraph, table, theirs, type Cell } from './pieces';
import type { Shop } from './shop';

/** Where each station stands, what it is cut to and which face touches the sheet. Always in mm and inches: it is what is cut to. */
export function stationTable(shop: Shop): HtmlElement[] {
  const { layout, bend } = shop;
  const taper = bend.form.halfAngle !== 0;
  return [
    paragraph(
      'Distances run along the spine’s centre line from line A, the line square across the spine at end A of the bend',
      layout.spine.ears > 0 ? ` (the board itself starts ${shop.say.length(layout.spine.ears)} before it, for the ear). ` : ', which is the end of the board. ',
      'In brackets: thousandths of an inch left over after the nearest 1/32.',
    ),
    table(
      `Stations, ${shop.say.thickness(layout.stations[0]?.thickness ?? 0)} thick`,
      ['Station', 'A to its A-side face', 'A to its middle', 'Contact face toward', 'Radius to cut (contact face)', 'Radius at other face', 'Bevel'],
      layout.stations.map((station) => [
        [station.name, ...endsOf(station)],
        both(shop, station.at - station.thickness / 2),
        both(shop, station.at),
        taper ? `end ${station.contact === 'from' ? 'A' : 'B'}` : 'either end',
        both(shop, station.radius),
        both(shop, station.farRadius),
        taper ? degrees(toDegrees(Math.abs(bend.form.halfAngle))) : 'none',
      ]),
    ),
    paragraph(
      taper
        ? 'Cut each station square to the contact-face radius: the other face then stands inside the cone and only the contact face touches the sheet. If you bevel the round edge instead, the contact face keeps its radius and the other face opens to the radius given.'
        : 'The form is a cylinder: both faces of a station touch the sheet.',
    ),
  ];
}

function endsOf(station: Station): HtmlElement[] {
  return station.ends.map(({ run, end }) => html('small', {}, theirs(run), end === 'from' ? ' starts here' : ' ends here'));
}

function both({ say }: Shop, mm: number): Cell {
  const lines = say.units === 'in' ? [inches(mm), metric(mm)] : [metric(mm), inches(mm)];
  return [lines[0] ?? '', html('small', {}, lines[1] ?? '')];
}

/** Where each backing station stands and its size. */
export function backingTable({ layout, say }: Shop): HtmlElement {
  return table(
    'Backing stations, on the back of the spine',
    ['Backing station', 'A to its A-side face', 'A to its middle', 'Height', 'Depth (the foot)'],
    layout.backings.map((backing) => [backing.name, say.length(backing.at - backing.thickness / 2), say.length(backing.at), say.length(backing.width), say.length(backing.depth)]),
  );
}

/** What is drilled into the straight edges of the boards, and the screw that goes there. */
export function pilotTable({ layout, say }: Shop): HtmlElement {
  return table(
    'Screws and pilot holes: into the straight edge, in the middle of its thickness',
    ['Board', 'Screws', 'Off the centre line', 'Screw', 'Pilot drill', 'Pilot depth'],
    [...layout.stations, ...layout.backings].flatMap((board) => groupScrews(board).map(({ offsets, screw }) => [
      board.name,
      String(offsets.length),
      bothSides(offsets, say.length),
      `${screw.kind.name} × ${screw.lengthName}`,
      screw.kind.pilotDrill,
      say.length(screw.pilotDepth),
    ])),
  );
}

/** Screws of one board that are alike but for where they go. */
export function groupScrews(board: Station | Backing): { readonly offsets: readonly number[]; readonly screw: DrivenScrew }[] {
  const groups = new Map<string, DrivenScrew[]>();
  for (const screw of board.screws) {
    const key = `${screw.kind.id} ${screw.length} ${screw.pilotDepth}`;
    groups.set(key, [...(groups.get(key) ?? []), screw]);
  }
  return [...groups.values()].flatMap((screws) => (screws[0] ? [{ offsets: screws.map((screw) => screw.offset), screw: screws[0] }] : []));
}

/** All holes through the spine: clamp holes, and clearance holes with their countersinks. */
export function holeTable(shop: Shop): HtmlElement {
  const { layout, plan, say, screw } = shop;
  const held = [...new Set(plan.spine?.screwHoles.map((hole) => hole.holds))];
  const screwRows = held.flatMap((name) => {
    const holes = plan.spine?.screwHoles.filter((hole) => hole.holds === name) ?? [];
    const [first] = holes;
    if (!first) return [];
    return [
      [
        `for ${name}`,
        say.length(first.at),
        bothSides(holes.map((hole) => hole.offset), say.length),
        count(holes.length, 'clearance hole'),
        screw.clearanceDrill,
        `${first.side}, ${say.tool(first.countersink)} across`,
      ],
    ];
  });
  const clampRows = layout.clampHoles.map((hole, index) => [`C${index + 1}`, say.length(hole.at), bothSides([0], say.length), '1 clamp hole', say.tool(hole.diameter), 'none']);
  return table('Holes through the spine', ['Hole', 'A to hole', 'Off the centre line', 'What', 'Drill', 'Countersink: face, size'], [...clampRows, ...screwRows]);
}

/** Offsets from the centre line as one says them: `±17.1 mm`, `0 and ±45.0 mm`. */
function bothSides(offsets: readonly number[], length: (mm: number) => string): string {
  const sizes = [...new Set(offsets.map((offset) => Number(Math.abs(offset).toFixed(6))))].sort((a, b) => a - b);
  return sizes.map((size) => (size === 0 ? '0 (on it)' : `±${length(size)}`)).join(' and ');
}
