import type { Plan, PlanScrew, PlanScrewHole, PlanStation } from '../output/plan/plan';
import { table } from './columns';
import { degrees, type Printing } from './printing';

/** Where each station stands, what it is cut to, and its screws; nothing without stations. */
export function stationTable(plan: Plan, { length, width }: Printing): string {
  const { cut, stations } = plan;
  if (stations.length === 0) return '';
  const byHand = cut === null || cut.with === 'jigsaw';
  const stacked = cut?.with === 'laser' && cut.layers.stations > 1;
  return table(
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
    stations.map((station) => [
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

/** The same of the backing stations. */
export function backingTable({ backings }: Plan, { length, width }: Printing): string {
  if (backings.length === 0) return '';
  return table(
    ['', 'at', 'height', 'depth (foot)', 'screws', 'pilot'],
    backings.map((backing) => [
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

/** The screw holes in the spine, those alike but for how far aside they are in one row. */
export function holeTable({ spine }: Plan, { length, drill, width }: Printing): string {
  if (!spine || spine.screwHoles.length === 0) return '';
  return table(
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
