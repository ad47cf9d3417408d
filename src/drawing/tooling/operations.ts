import { cutOrder, type Loop, type Operation, type Shape } from '../../base/drawing';
import { InternalError } from '../../base/errors';
import type { Job, LaserCut, RouterCut } from '../../job/job';
import type { FixtureLayout } from '../../design/fixture/fixture';
import { sayFine } from '../../findings/say-value';
import type { Joints } from '../../design/joints/joints';
import type { Part } from '../parts/part';
import type { ToolRules } from '../../tables/tables';
import { placeBridges } from './bridges';

/** One step of cutting one part: what the drawings' layers mean at the machine. Lengths in mm. */
export interface OperationRow {
  readonly part: string;
  /** The layer or group of the drawing. */
  readonly operation: Operation | 'bridge';
  readonly count: number;
  /** Diameter of round openings, length of bridges; null where the drawing says all. */
  readonly size: number | null;
  /** From the drawn face; of a bridge, the wood left under the cut. Null for what is only marked or drawn with the beam. */
  readonly depth: number | null;
  readonly tool: string;
  readonly note: string;
  /** Place in the part's own drawing, for bridges. */
  readonly at: readonly [number, number] | null;
}

/** Every step for a router or a laser, part by part, inside before outside; none for a jigsaw, whose steps are the shop sheet's. */
export function operationRows(parts: readonly Part[], { job, layout, joints }: Made, tools: ToolRules): OperationRow[] {
  const { cut, units } = job;
  if (cut.with === 'jigsaw') return [];
  const grooveDepth = joints.with === 'router' ? joints.depth : 0;
  const say = (mm: number): string => (units === 'mm' ? `${Number(mm.toFixed(3))} mm` : sayFine(mm, 'in'));
  return parts.flatMap((part) => [
    ...cutOrder.flatMap((operation) => rowsOf(part, operation, { cut, grooveDepth, tools, say })),
    ...(part.id === 'spine' ? backHeads(layout, say) : []),
  ]);
}

/** The form whose parts are cut. */
interface Made {
  readonly job: Pick<Job, 'cut' | 'units'>;
  readonly layout: FixtureLayout;
  readonly joints: Joints;
}

/** What the steps of every part have in common; `say` says a length in the job's unit. */
interface Making {
  readonly cut: RouterCut | LaserCut;
  readonly grooveDepth: number;
  readonly tools: ToolRules;
  readonly say: (mm: number) => string;
}

/** Heads of the stations' screws, sunk by hand from the back of a spine of one board: its drawing shows the front. */
function backHeads({ stations }: FixtureLayout, say: Making['say']): OperationRow[] {
  const sizes = [...new Set(stations.flatMap(({ screws }) => screws.map(({ kind }) => kind.headDiameter)))];
  return sizes.map((size): OperationRow => {
    const held = stations.filter(({ screws }) => screws.some(({ kind }) => kind.headDiameter === size));
    const count = held.reduce((sum, { screws }) => sum + screws.length, 0);
    return {
      part: 'spine',
      operation: 'countersink',
      count,
      size,
      depth: null,
      tool: 'countersink, by hand',
      note: `from the back, not drawn: the holes of ${held.map(({ name }) => name).join(' ')}, until the mouth is ${say(size)} across`,
      at: null,
    };
  });
}

function rowsOf(part: Part, operation: Operation, making: Making): OperationRow[] {
  const { cut, tools } = making;
  const shapes = part.drawing.shapes.filter(
    (shape) => shape.operation === operation && !(cut.with === 'router' && operation === 'mark'),
  );
  const sizes = new Map<string, Shape[]>();
  for (const shape of shapes) {
    const size = sizeOf(shape);
    const key = size === null ? '' : size.toFixed(4);
    sizes.set(key, [...(sizes.get(key) ?? []), shape]);
  }
  const steps = [...sizes]
    .sort(([a], [b]) => Number(a) - Number(b))
    .map(([key, alike]): OperationRow => {
      const size = key === '' ? null : Number(key);
      return {
        part: part.id,
        operation,
        count: operation === 'label' ? 1 : alike.length,
        size,
        at: null,
        ...(cut.with === 'router'
          ? routed({ operation, size, part }, cut, making)
          : burnt({ operation, size, part }, cut, making)),
      };
    });
  return operation === 'outline' && cut.with === 'router' && cut.bridges
    ? [...steps, ...bridgeRows(part, tools)]
    : steps;
}

/** Diameter of a circle; null for anything else. */
function sizeOf(shape: Shape): number | null {
  return shape.kind === 'circle' ? 2 * shape.radius : null;
}

type Step = Pick<OperationRow, 'depth' | 'tool' | 'note'>;

/** Alike shapes of one part, cut in one step. */
interface Alike {
  readonly operation: Operation;
  readonly size: number | null;
  readonly part: Part;
}

function routed(
  { operation, size, part: { thickness } }: Alike,
  { bit, fit }: RouterCut,
  { grooveDepth, tools, say }: Making,
): Step {
  const straight = `straight bit ${say(bit)}`;
  switch (operation) {
    case 'label':
      return { depth: tools.engraved, tool: 'pointed bit', note: 'on the line' };
    case 'groove':
      return {
        depth: grooveDepth,
        tool: straight,
        note: `clear all of the drawn area, past the edges it runs out of; ${say(fit)} of play where wood stands on both sides`,
      };
    case 'countersink':
      return { depth: null, tool: 'countersink', note: untilWide(size, say) };
    case 'hole':
      return size !== null && size < bit
        ? { depth: thickness, tool: `drill ${say(size)}`, note: 'through' }
        : { depth: thickness, tool: straight, note: 'through, inside the line' };
    default:
      return { depth: thickness, tool: straight, note: 'through, outside the line' };
  }
}

function untilWide(size: number | null, say: Making['say']): string {
  if (size === null) throw new InternalError('a countersink that is no circle');
  return `from this face, until the mouth is ${say(size)} across`;
}

function burnt({ operation, size, part: { thickness } }: Alike, { kerf }: LaserCut, { say }: Making): Step {
  const beam = `beam ${say(kerf)} wide`;
  switch (operation) {
    case 'label':
    case 'mark':
      return { depth: null, tool: 'beam', note: 'mark only, at low power' };
    case 'countersink':
      return {
        depth: null,
        tool: 'countersink, by hand',
        note: `mark at low power; ${untilWide(size, say)}`,
      };
    case 'hole':
      return { depth: thickness, tool: beam, note: `cut on the line: drawn ${say(kerf / 2)} inside the edge wanted` };
    default:
      return { depth: thickness, tool: beam, note: `cut on the line: drawn ${say(kerf / 2)} outside the edge wanted` };
  }
}

function bridgeRows({ id, drawing }: Part, tools: ToolRules): OperationRow[] {
  return drawing.shapes
    .filter((shape): shape is Loop => shape.kind === 'loop' && shape.operation === 'outline')
    .flatMap((outline) => placeBridges(outline, tools))
    .map(({ x, y }): OperationRow => ({
      part: id,
      operation: 'bridge',
      count: 1,
      size: tools.bridgeLength,
      depth: tools.bridgeHeight,
      tool: 'none',
      note: 'left uncut at the bottom, in the box drawn under mark; saw through and dress flush by hand, above all where the edge stands in a groove',
      at: [x, y],
    }));
}
