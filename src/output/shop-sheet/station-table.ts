import { toDegrees } from '../../base/angle';
import type { Backing, DrivenScrew, Station } from '../../design/fixture/fixture';
import { html, type HtmlElement } from '../html';
import { bothSides } from './both-sides';
import { inBoth } from './in-both';
import { degrees } from './measures';
import { count, paragraph, table, theirs, type Cell } from './pieces';
import type { Shop } from './shop';
import { builtOf } from './stack';
import { sentences } from '../sentences';

/** Where each station stands, what it is cut to and which face touches the sheet.  */
export function stationTable(shop: Shop): HtmlElement[] {
  const { layout } = shop;
  const columns = stationColumns(shop);
  return [
    paragraph(
      'Distances run along the spine’s centre line from line A, the line square across the spine at end A of the bend',
      layout.spine.ears > 0
        ? ` (the board itself starts ${shop.say.length(layout.spine.ears)} before it, for the ear).`
        : ', which is the end of the board.',
    ),
    table(
      layout.layers.stations === 1
        ? `Stations, ${builtOf(shop, 'stations')} thick`
        : `Stations, ${builtOf(shop, 'stations')}`,
      columns.map(({ head }) => head),
      layout.stations.map((station) => columns.map(({ cell }) => cell(station))),
    ),
    paragraph(stationNote(shop)),
  ];
}

interface Column {
  readonly head: string;
  readonly cell: (station: Station) => Cell;
}

/** A stack that steps along the cone has a radius for each layer, in a table of their own; only by hand is a round edge bevelled. */
function stationColumns(shop: Shop): Column[] {
  const { bend, layout, job } = shop;
  const taper = bend.form.halfAngle !== 0;
  const steps = taper && layout.layers.stations > 1;
  return [
    { head: 'Station', cell: (station) => [station.name, ...endsOf(station)] },
    { head: 'A to its A-side face', cell: (station) => inBoth(shop, station.at - station.thickness / 2) },
    { head: 'A to its middle', cell: (station) => inBoth(shop, station.at) },
    {
      head: 'Contact face toward',
      cell: (station) => (taper ? `end ${station.contact}` : 'either end'),
    },
    ...(steps
      ? []
      : [
          { head: 'Radius to cut (contact face)', cell: (station: Station) => inBoth(shop, station.radius) },
          { head: 'Radius at other face', cell: (station: Station) => inBoth(shop, station.farRadius) },
        ]),
    ...(job.cut.with === 'jigsaw'
      ? [{ head: 'Bevel', cell: () => (taper ? degrees(toDegrees(Math.abs(bend.form.halfAngle))) : 'none') }]
      : []),
  ];
}

function stationNote({ bend, layout, job }: Shop): string {
  const stacked = layout.layers.stations > 1;
  if (bend.form.halfAngle === 0)
    return stacked
      ? 'The form is a cylinder: all layers of a station are alike, and all of them touch the sheet.'
      : 'The form is a cylinder: both faces of a station touch the sheet.';
  if (stacked)
    return 'Every layer is cut square to the radius at its own contact face, in the table below: a station steps along the cone, and each layer touches the sheet with its contact face.';
  if (job.cut.with !== 'jigsaw')
    return 'Each station is cut square to the contact-face radius: the other face then stands inside the cone and only the contact face touches the sheet.';
  return sentences(
    'Cut each station square to the contact-face radius: the other face then stands inside the cone and only the contact face touches the sheet.',
    'If you bevel the round edge instead, the contact face keeps its radius and the other face opens to the radius given.',
  );
}

function endsOf(station: Station): HtmlElement[] {
  return station.ends.map(({ run, end }) =>
    html('small', {}, theirs(run), end === 'from' ? ' starts here' : ' ends here'),
  );
}

/** Where each backing station stands and its size. */
export function backingTable(shop: Shop): HtmlElement {
  const { layout, say } = shop;
  return table(
    `Backing stations, on the back of the spine${layout.layers.backing > 1 ? `: ${builtOf(shop, 'backing')}` : ''}`,
    ['Backing station', 'A to its A-side face', 'A to its middle', 'Height', 'Depth (the foot)'],
    layout.backings.map((backing) => [
      backing.name,
      say.length(backing.at - backing.thickness / 2),
      say.length(backing.at),
      say.length(backing.width),
      say.length(backing.depth),
    ]),
  );
}

/** What is drilled into the straight edges of the boards, and the screw that goes there; where that is done through the spine, how deep from its other face. */
export function pilotTable({ layout, job, joints, say }: Shop): HtmlElement {
  const through = job.cut.with !== 'jigsaw';
  const groove = joints.with === 'router' ? joints.depth : 0;
  const rows = (boards: readonly (Station | Backing)[], deeper: number): string[][] =>
    boards.flatMap((board) =>
      groupScrews(board).map(({ offsets, screw }) => [
        board.name,
        String(offsets.length),
        bothSides(offsets, say.length),
        `${screw.kind.name} × ${screw.lengthName}`,
        screw.kind.pilotDrill,
        say.length(screw.pilotDepth + deeper),
        ...(through ? [say.length(layout.spine.thickness + screw.pilotDepth)] : []),
      ]),
    );
  return table(
    'Screws and pilot holes: into the straight edge, in the middle of its thickness',
    [
      'Board',
      'Screws',
      'Off the centre line',
      'Screw',
      'Pilot drill',
      through ? 'Pilot depth, in its own edge' : 'Pilot depth',
      ...(through ? ['Stop at, through the spine'] : []),
    ],
    [...rows(layout.stations, groove), ...rows(layout.backings, 0)],
  );
}

/** Screws of one board that are alike but for where they go. */
function groupScrews(board: Station | Backing): { readonly offsets: readonly number[]; readonly screw: DrivenScrew }[] {
  const groups = new Map<string, DrivenScrew[]>();
  for (const screw of board.screws) {
    const key = `${screw.kind.id} ${screw.length} ${screw.pilotDepth}`;
    groups.set(key, [...(groups.get(key) ?? []), screw]);
  }
  return [...groups.values()].flatMap((screws) =>
    screws[0] ? [{ offsets: screws.map((screw) => screw.offset), screw: screws[0] }] : [],
  );
}

/** All holes through the spine: clamp holes, and clearance holes with their countersinks. */
export function holeTable(shop: Shop): HtmlElement {
  const { layout, plan, say, screw, job } = shop;
  const held = [...new Set(plan.spine.screwHoles.map((hole) => hole.holds))];
  const screwRows = held.flatMap((name) => {
    const holes = plan.spine.screwHoles.filter((hole) => hole.holds === name);
    const [first] = holes;
    if (!first) return [];
    return [
      [
        `for ${name}`,
        say.length(first.at),
        bothSides(
          holes.map((hole) => hole.offset),
          say.length,
        ),
        count(holes.length, 'clearance hole'),
        `${screw.clearanceDrill}${madeBy(shop, screw.clearance)}`,
        `${first.side}, ${say.tool(first.countersink)} across`,
      ],
    ];
  });
  const clampRows = layout.clampHoles.map((hole, index) => [
    `C${index + 1}`,
    say.length(hole.at),
    bothSides([0], say.length),
    '1 clamp hole',
    `${say.tool(hole.diameter)}${madeBy(shop, hole.diameter)}`,
    'none',
  ]);
  return table(
    'Holes through the spine',
    [
      'Hole',
      'A to hole',
      'Off the centre line',
      'What',
      job.cut.with === 'jigsaw' ? 'Drill' : 'Diameter',
      'Countersink: face, size',
    ],
    [...clampRows, ...screwRows],
  );
}

/** Who makes a round hole, where it is not simply drilled by hand. */
function madeBy({ job: { cut } }: Shop, diameter: number): string {
  if (cut.with === 'jigsaw') return '';
  if (cut.with === 'laser') return ', cut by the beam';
  return diameter < cut.bit ? ', drilled' : ', cut by the bit';
}
