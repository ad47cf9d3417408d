import { asLoop } from '../../base/as-loop';
import type { Operation } from '../../base/drawing';
import { InternalError } from '../../base/errors';
import { flattenLoop } from '../../base/flatten';
import type { Point } from '../../base/polygon';
import type { BendPlan } from '../../design/bend/bend-plan';
import type { Backing, FixtureLayout, Station } from '../../design/fixture/fixture';
import type { Joints, Layer } from '../../design/joints/joints';
import type { Part } from '../../drawing/parts/part';
import { onBench } from '../picture/frame';
import { MESH_CHORD_ERROR } from './chords';
import { Extruder, type Board } from './extrude';
import type { Mesh } from './mesh';

/** Colours of the boards: ours. */
export const BOARD_COLOURS = { spine: '#c8a26a', station: '#dcc394', backing: '#a67c48' } as const;

/** What the drawings of the form's boards, as they come out, are put together by. */
export interface Form {
  /** As `drawParts` gives them, before they are fitted to a tool. */
  readonly parts: readonly Part[];
  readonly layout: FixtureLayout;
  readonly bend: BendPlan;
  readonly joints: Joints;
}

/**
 * Every board of the form, where it stands on the bench: x along the tangent line from end A, y ahead of the spine, z up from the
 * sheet's inside face, mm. Made of the boards' own drawings: outlines, holes through, grooves; countersinks, and pilots in edges, are not.
 */
export function formMeshes(form: Form): Mesh[] {
  const extruder = new Extruder();
  return form.parts.flatMap((part) => {
    switch (part.kind) {
      case 'spine':
        return [spineMesh(part, form, extruder)];
      case 'station':
        return [stationMesh(part, form, extruder)];
      case 'backing':
        return [backingMesh(part, form, extruder)];
      case 'block':
      case 'test':
        return [];
    }
  });
}

function loopsOf(part: Part, wanted: readonly Operation[]): Point[][] {
  return part.drawing.shapes.flatMap((shape) =>
    (shape.kind === 'loop' || shape.kind === 'circle') && wanted.includes(shape.operation)
      ? [flattenLoop(asLoop(shape).vertices, MESH_CHORD_ERROR)]
      : [],
  );
}

/** Front face at 0, or behind the layers before it. */
function spineMesh(part: Part, { bend, joints }: Form, extruder: Extruder): Mesh {
  const high = -layerOf(part) * part.thickness;
  const pockets = loopsOf(part, ['groove']);
  return extruder.extrude(
    {
      name: part.id,
      colour: BOARD_COLOURS.spine,
      loops: loopsOf(part, ['outline', 'hole']),
      low: high - part.thickness,
      high,
      pockets,
      floor: joints.with === 'router' ? -joints.depth : high - part.thickness,
    },
    ([along, up, ahead]) => onBench(bend.form, { along, ahead, up }),
  );
}

/** Seen on its contact face: from end A the bench's up is to the right, from end B to the left. */
function stationMesh(part: Part, form: Form, extruder: Extruder): Mesh {
  const station = named(form.layout.stations, part);
  const layer = layersOf(station, form.joints)[layerOf(part)];
  if (!layer) throw new InternalError(`part ${part.id} is a layer its board has not`);
  const { low, high, contact } = layer;
  const side = contact === 'A' ? 1 : -1;
  return extruder.extrude(plainBoard(part, BOARD_COLOURS.station, low, high), ([across, ahead, along]) =>
    onBench(form.bend.form, { along, ahead, up: side * across }),
  );
}

/** From the spine's back: what stands out of the edge to it goes into the spine. */
function backingMesh(part: Part, { layout, bend }: Form, extruder: Extruder): Mesh {
  const { at, thickness } = named(layout.backings, part);
  const low = at - thickness / 2 + layerOf(part) * part.thickness;
  return extruder.extrude(plainBoard(part, BOARD_COLOURS.backing, low, low + part.thickness), ([behind, up, along]) =>
    onBench(bend.form, { along, ahead: -layout.spine.thickness - behind, up }),
  );
}

function plainBoard(part: Part, colour: string, low: number, high: number): Board {
  return { name: part.id, colour, loops: loopsOf(part, ['outline', 'hole']), low, high, pockets: [], floor: low };
}

/** A station's layers; itself as its only one. */
function layersOf(station: Station, joints: Joints): Pick<Layer, 'low' | 'high' | 'contact'>[] {
  const stack = joints.with === 'laser' ? joints.boards.find(({ name }) => name === station.name) : undefined;
  const { at, thickness, contact } = station;
  return stack ? [...stack.layers] : [{ low: at - thickness / 2, high: at + thickness / 2, contact }];
}

/** Which layer of its board a part is, counted from 0: `S1-3` is the third of S1. */
function layerOf({ id }: Part): number {
  const layer = /-(\d+)$/u.exec(id)?.[1];
  return layer === undefined ? 0 : Number(layer) - 1;
}

function named<Named extends Station | Backing>(boards: readonly Named[], { id }: Part): Named {
  const board = boards.find(({ name }) => name === id.replace(/-\d+$/u, ''));
  if (!board) throw new InternalError(`part ${id} stands nowhere`);
  return board;
}
