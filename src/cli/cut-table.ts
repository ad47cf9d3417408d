import type { Plan, PlanCut, PlanOpening, PlanStack } from '../output/plan/plan';
import { pairs, table } from './columns';

type Length = (mm: number) => string;

/** How the form is cut, and the joints that come of it, as titles and what stands under them. Nothing for a jigsaw's drawn lines. */
export function cutting({ cut, stations }: Plan, length: Length, width: number): [string, string][] {
  switch (cut?.with) {
    case 'router':
      return routed(cut, length, width);
    case 'laser':
      return burnt(cut, new Set(stations.map(({ name }) => name)), length, width);
    default:
      return [];
  }
}

function routed(
  { bit, fit, grooveDepth, bridges, grooves }: Extract<PlanCut, { with: 'router' }>,
  length: Length,
  width: number,
): [string, string][] {
  return [
    [
      'Cut with a router (fit test piece first)',
      pairs([
        ['straight bit, not in the drawings', length(bit)],
        ['grooves for the stations, deep', length(grooveDepth)],
        ['grooves wider than the board by', length(fit)],
        ['bridges', bridges ? 'drawn, to saw through' : 'none'],
      ]),
    ],
    [
      'Grooves across the spine’s front (from end A)',
      table(
        ['for', 'from', 'to', 'open side'],
        grooves.map((groove) => [groove.holds, length(groove.low), length(groove.high), openSide(groove)]),
        width,
      ),
    ],
  ];
}

function burnt(
  { kerf, fit, layers, tabLength, boards }: Extract<PlanCut, { with: 'laser' }>,
  stations: ReadonlySet<string>,
  length: Length,
  width: number,
): [string, string][] {
  const stacks = boards.filter(({ name, layers: all }) => stations.has(name) && all.length > 1);
  const slotted = boards.filter(({ slots }) => slots.length > 0);
  const dowelled = boards.filter(({ dowels }) => dowels.length > 0);
  return [
    [
      'Cut with a laser (fit test pieces first)',
      pairs([
        ['kerf, in the drawings already', length(kerf)],
        ['layers: spine, station, backing station', `${layers.spine}, ${layers.stations}, ${layers.backing}`],
        ['tabs, long', length(tabLength)],
        ['slots wider than tabs by', length(fit)],
      ]),
    ],
    ...tableOf(
      'Layers (layer 1 is the nearest to end A)',
      ['', 'from', 'cut to radius', 'contact face', 'other face'],
      stacks.flatMap((stack) => layerRows(stack, length)),
      width,
    ),
    ...tableOf(
      'Slots through the spine (from end A; aside: from the centre line)',
      ['for', 'from', 'to', 'aside', 'across', 'open side'],
      slotted.flatMap(({ name, slots }) =>
        slots.map((slot) => [
          name,
          length(slot.low),
          length(slot.high),
          length(slot.offset),
          length(slot.width),
          openSide(slot),
        ]),
      ),
      width,
    ),
    ...tableOf(
      'Dowel holes through the layers (aside: from the centre line; deep: from the edge to the spine)',
      ['in', 'aside', 'deep', 'across'],
      dowelled.flatMap(({ name, dowels }) =>
        dowels.map((dowel) => [name, length(dowel.offset), length(dowel.depth), length(dowel.diameter)]),
      ),
      width,
    ),
  ];
}

function layerRows({ name, layers }: PlanStack, length: Length): string[][] {
  return layers.map(({ low, radius, farRadius, contact }, index) => [
    `${name}-${index + 1}`,
    length(low),
    length(radius),
    radius === farRadius ? 'either' : contact === 'from' ? 'to end A' : 'to end B',
    length(farRadius),
  ]);
}

function tableOf(
  title: string,
  head: readonly string[],
  rows: readonly (readonly string[])[],
  width: number,
): [string, string][] {
  return rows.length > 0 ? [[title, table(head, rows, width)]] : [];
}

function openSide({ open }: PlanOpening): string {
  return open === null ? 'none' : `end ${open === 'from' ? 'A' : 'B'}`;
}
