import type { BendPlan } from '../../design/bend/bend-plan';
import type { Backing, FixtureLayout, Station } from '../../design/fixture/fixture';
import { grooveOverrun } from '../../design/joints/overrun';
import type { Tab } from '../../design/built/tabs';
import type { Dowel, Joints, Layer, StackedBoard } from '../../design/joints/joints';
import type { Job } from '../../job/job';
import type { Tables } from '../../tables/tables';
import { drawBacking } from './backing-part';
import { drawFitTest } from './fit-test';
import type { Part } from './part';
import { drawSpine } from './spine-part';
import { drawHalfDisc, type HalfDisc } from './station-part';

/** A form as the design stages leave it. */
export interface FormToDraw {
  readonly layout: FixtureLayout;
  readonly bend: BendPlan;
  readonly job: Job;
  readonly joints: Joints;
}

/**
 * Layout and joints → every piece of board to cut, drawn at 1:1 as it is to come out (`tooling/` checks it). Order: spine, stations from A to B,
 * backing stations, each from its front or from end A where it is layers, and the pieces that try the joints' fit.
 */
export function drawParts({ layout, bend, job, joints }: FormToDraw, tables: Tables): Part[] {
  const overrun = grooveOverrun(job.cut, tables.tools);
  const { layers, boardThickness: sheet } = layout;
  const spine = copies('spine', layers.spine).map(({ id, index, ordinal }): Part => ({
    id,
    kind: 'spine',
    name: `Spine${ordinal}`,
    stock: job.board.spine.stock,
    thickness: sheet.spine,
    drawing: { shapes: drawSpine(layout, bend, joints, { index, of: layers.spine, overrun }) },
  }));
  const notes = { units: job.units, wrap: bend.wrap.chosen };
  const stations = layout.stations.flatMap((station) =>
    copies(station.name, layers.stations).map(({ id, index, ordinal }): Part => ({
      id,
      kind: 'station',
      name: `Station ${station.name}${ordinal}`,
      stock: job.board.stations.stock,
      thickness: sheet.stations,
      drawing: { shapes: drawHalfDisc(halfDisc(station, joints, index, id), notes) },
    })),
  );
  const backings = layout.backings.flatMap((backing) =>
    copies(backing.name, layers.backing).map(({ id, ordinal }): Part => ({
      id,
      kind: 'backing',
      name: `Backing station ${backing.name}${ordinal}`,
      stock: job.board.backing.stock,
      thickness: sheet.backing,
      drawing: { shapes: drawBacking({ ...backing, name: id, ...tabsOf(backing, joints) }) },
    })),
  );
  return [...spine, ...stations, ...backings, ...drawFitTest(layout, job, joints, tables.tools)];
}

/** One piece, or one for each layer, numbered from 1. */
function copies(id: string, layers: number): { id: string; index: number; ordinal: string }[] {
  if (layers === 1) return [{ id, index: 0, ordinal: '' }];
  return Array.from({ length: layers }, (_, index) => ({
    id: `${id}-${index + 1}`,
    index,
    ordinal: `, layer ${index + 1}`,
  }));
}

function halfDisc(station: Station, joints: Joints, index: number, name: string): HalfDisc {
  const { contact, radius }: Pick<Layer, 'contact' | 'radius'> =
    stacked(station.name, joints)?.layers[index] ?? station;
  const { tabs, tabLength, relief, dowels } = tabsOf(station, joints);
  const behind =
    joints.with === 'router'
      ? { depth: joints.depth, relief, tabs: 'whole' as const }
      : { depth: tabLength, relief, tabs };
  return { name, contact, radius, screws: station.screws, behind, dowels };
}

function tabsOf(
  { name }: Station | Backing,
  joints: Joints,
): { tabs: readonly Tab[]; tabLength: number; relief: number; dowels: readonly Dowel[] } {
  const board = stacked(name, joints);
  const { tabLength, relief } = joints.with === 'laser' ? joints : { tabLength: 0, relief: 0 };
  return { tabs: board?.tabs ?? [], tabLength, relief, dowels: board?.dowels ?? [] };
}

function stacked(name: string, joints: Joints): StackedBoard | undefined {
  return joints.with === 'laser' ? joints.boards.find((board) => board.name === name) : undefined;
}
