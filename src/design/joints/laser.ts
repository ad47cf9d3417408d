import type { Finding, Staged } from '../../base/findings';
import { finding } from '../../findings/finding';
import type { LengthUnit } from '../../base/units';
import type { BendPlan } from '../bend/bend-plan';
import { contactOf } from '../form/contact';
import { jointDepth } from '../built/joint-depth';
import { tabsFor, type Tab } from '../built/tabs';
import type { Backing, FixtureLayout, Station } from '../fixture/fixture';
import type { LaserCut } from '../../job/job';
import type { ToolRules } from '../../tables/tables';
import { dowelsFor, halfDiscRoom, rectangleRoom, type DowelRoom } from './dowels';
import type { LaserJoints, Layer, Slot, StackedBoard } from './joints';
import { checkWalls, openingFor } from './opening';
import { ROUNDING } from '../../base/tolerance';

/** Layers, tabs, slots and dowels of every board, and what there is no room for. */
export function laserJoints(
  layout: FixtureLayout,
  bend: BendPlan,
  { cut, units }: { readonly cut: LaserCut; readonly units: LengthUnit },
  tools: ToolRules,
): Staged<LaserJoints> {
  const { layers } = layout;
  const given = { layout, bend, cut, tools, sizes: tools.dowelSizes[units] };
  const stations = layout.stations.map((station) =>
    stack(station, layers.stations, halfDiscRoom(station.radius, station.screws), given),
  );
  const backings = layout.backings.map((backing) =>
    stack(backing, layers.backing, rectangleRoom(backing.width / 2, backing.depth, backing.screws), given),
  );
  const boards = [...stations, ...backings];
  const openings = boards.flatMap(({ name, slots }) => slots.slice(0, 1).map((slot) => ({ ...slot, holds: name })));
  return {
    value: {
      with: 'laser',
      tabLength: jointDepth(cut, layout.spine.thickness, tools),
      relief: tools.tabRelief * cut.kerf,
      boards,
    },
    findings: [
      ...checkWalls(openings, tools.jointWood, 'slots'),
      ...checkBoards(boards, cut),
      ...checkMiddle(layout),
      ...checkKerf(layout, boards, cut, tools),
      ...checkFit(boards, cut),
    ],
  };
}

interface Given {
  readonly layout: FixtureLayout;
  readonly bend: BendPlan;
  readonly cut: LaserCut;
  readonly tools: ToolRules;
  /** Diameters dowels are sold in, falling. */
  readonly sizes: readonly number[];
}

function stack(
  board: Station | Backing,
  count: number,
  room: DowelRoom,
  { layout, bend, cut, tools, sizes }: Given,
): StackedBoard {
  const faces = { name: board.name, low: board.at - board.thickness / 2, high: board.at + board.thickness / 2 };
  const opening = openingFor(faces, layout.spine, cut.fit, tools.jointWood);
  const tabs = tabsFor(room.half, board.screws, tools);
  return {
    name: board.name,
    layers: layersOf(faces.low, faces.high, count, bend),
    tabs,
    slots: tabs.map((tab: Tab): Slot => ({ ...opening, offset: tab.offset, width: tab.width + cut.fit })),
    dowels: count > 1 ? dowelsFor(room, cut.dowel, sizes, tools) : [],
  };
}

/** Each layer touches the cone at its own contact face, so that the stack steps along it. */
function layersOf(low: number, high: number, count: number, bend: BendPlan): Layer[] {
  const face = (index: number): number => low + ((high - low) * index) / count;
  return Array.from({ length: count }, (_, index) => ({
    low: face(index),
    high: face(index + 1),
    ...contactOf(bend.form, face(index), face(index + 1)),
  }));
}

function checkBoards(boards: readonly StackedBoard[], { dowel }: LaserCut): Finding[] {
  const names = (lacking: readonly StackedBoard[]): string[] => lacking.map(({ name }) => name);
  const tabless = boards.filter(({ tabs }) => tabs.length === 0);
  const dowelless = boards.filter(({ layers, dowels }) => layers.length > 1 && dowels.length === 0);
  const thinner = boards.flatMap(({ name, dowels: [one] }) =>
    one && one.diameter < dowel - ROUNDING ? [{ name, mm: one.diameter }] : [],
  );
  return [
    ...(thinner.length > 0 ? [finding('dowels-thinner', 'cut.dowel', { dowel, thinner })] : []),
    ...(tabless.length > 0 ? [finding('no-room-for-tabs', 'cut', { boards: names(tabless) })] : []),
    ...(dowelless.length > 0 ? [finding('no-room-for-dowels', 'cut.dowel', { boards: names(dowelless) })] : []),
  ];
}

/** Screws go into the middle of a stack's edge: the joint between two layers, where their number is even. */
function checkMiddle({ layers, stations, backings }: FixtureLayout): Finding[] {
  const even = [
    ...(layers.stations % 2 === 0 && stations.length > 0 ? ['stations'] : []),
    ...(layers.backing % 2 === 0 && backings.length > 0 ? ['backing stations'] : []),
  ];
  if (even.length === 0) return [];
  return [finding('screws-in-glue-line', 'cut.layers', { boards: even })];
}

/**
 * A round beam leaves the slots' corners round, by half its width; a tab's square corner clears them where its play on either side is
 * more than (1 − 1/√2) of that.
 */
function checkFit(boards: readonly StackedBoard[], { kerf, fit }: LaserCut): Finding[] {
  const least = kerf * (1 - Math.SQRT1_2);
  if (fit >= least || boards.every(({ slots }) => slots.length === 0)) return [];
  return [finding('fit-tighter-than-beam', 'cut.fit', { fit, beam: kerf, least })];
}

/** Where the beam is wider than half of what it cuts out, what is left is no longer that shape. */
function checkKerf(
  layout: FixtureLayout,
  boards: readonly StackedBoard[],
  { kerf }: LaserCut,
  tools: ToolRules,
): Finding[] {
  const holes = [...layout.stations, ...layout.backings].flatMap(({ screws }) =>
    screws.map(({ kind }) => kind.clearance),
  );
  const openings = boards.flatMap(({ slots, dowels }) => [
    ...slots.flatMap(({ low, high, width }) => [high - low, width]),
    ...dowels.map(({ diameter }) => diameter),
  ]);
  const narrowest = Math.min(...holes, ...openings);
  // The notches beside the tabs must leave half the wood between a tab and its neighbours.
  const most = Math.min(narrowest / 2, tools.jointWood / 2 / tools.tabRelief);
  if (kerf <= most) return [];
  return [finding('kerf-too-wide', 'cut.kerf', { kerf, opening: narrowest, most })];
}
