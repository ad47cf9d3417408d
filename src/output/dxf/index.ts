import { boundsOf } from '../../base/bounds';
import { cutOrder, operations, type Drawing, type Operation } from '../../base/drawing';
import { InternalError } from '../../base/errors';
import { scaleDrawing } from '../../base/transform';
import { entitiesOf, type DxfKind } from './entities';
import { place, tag, UNIT_SIZE, type DxfUnits } from './tags';

export { dxfKinds, type DxfKind } from './entities';
export type { DxfUnits } from './tags';

/**
 * DXF release 11/12 (AC1009), the oldest that every reader opens: closed polylines with bulges, or lines and arcs; circles, lines,
 * single-line text or the open polylines it is engraved by; entities in the order they are cut; one layer an operation, all declared;
 * mm or inches. Source: the format owner's published group-code reference.
 */

/** Colour indexes of the layers: ours, any of which a job may change. 3 green, 4 cyan, 5 blue, 6 magenta, 7 black or white, 8 grey, 9 light grey, 30 orange. */
export const DXF_COLOURS: Readonly<Record<Operation, number>> = {
  board: 9,
  outline: 7,
  hole: 4,
  pilot: 6,
  countersink: 3,
  groove: 30,
  mark: 8,
  label: 5,
};

/** $INSUNITS and $MEASUREMENT, as the format numbers them. */
const UNITS = { mm: { insertion: 4, measurement: 1 }, in: { insertion: 1, measurement: 0 } };

export interface DxfOptions {
  /** Polylines unless said. */
  readonly kind?: DxfKind;
  /** Unit of every number in the file, mm unless said. */
  readonly units?: DxfUnits;
  /** Overrides of single layers' colours, 1 to 255. */
  readonly colours?: Readonly<Partial<Record<Operation, number>>>;
}

/**
 * A drawing, in mm, as DXF text. Nothing is merged or left out.
 * Throws InternalError on a number that cannot be drawn, a loop or stroke of fewer than two points, a colour outside 1…255, an empty drawing.
 */
export function writeDxf(
  drawing: Drawing,
  { kind = 'polylines', units = 'mm', colours = {} }: DxfOptions = {},
): string {
  const drawn = units === 'mm' ? drawing : scaleDrawing(drawing, 1 / UNIT_SIZE[units]);
  const shapes = cutOrder.flatMap((operation) => drawn.shapes.filter((shape) => shape.operation === operation));
  return (
    header(drawn, units) +
    tables({ ...DXF_COLOURS, ...colours }) +
    section('BLOCKS', '') +
    section('ENTITIES', shapes.map((shape) => entitiesOf(shape, kind, units)).join('')) +
    tag(0, 'EOF')
  );
}

function section(name: string, tags: string): string {
  return tag(0, 'SECTION') + tag(2, name) + tags + tag(0, 'ENDSEC');
}

function header(drawing: Drawing, units: DxfUnits): string {
  const { minX, minY, maxX, maxY } = boundsOf(drawing);
  return section(
    'HEADER',
    tag(9, '$ACADVER') +
      tag(1, 'AC1009') +
      tag(9, '$INSUNITS') +
      tag(70, String(UNITS[units].insertion)) +
      tag(9, '$MEASUREMENT') +
      tag(70, String(UNITS[units].measurement)) +
      tag(9, '$EXTMIN') +
      place(minX, minY, units) +
      tag(9, '$EXTMAX') +
      place(maxX, maxY, units),
  );
}

/** A layer's name comes after another of its groups: a reader that takes the first for a handle would lose it. */
function tables(colours: Readonly<Record<Operation, number>>): string {
  const layer = (name: string, colour: number): string =>
    tag(0, 'LAYER') + tag(70, '0') + tag(2, name) + tag(62, colourIndex(colour)) + tag(6, 'CONTINUOUS');
  const table = (name: string, rows: readonly string[]): string =>
    tag(0, 'TABLE') + tag(2, name) + tag(70, String(rows.length)) + rows.join('') + tag(0, 'ENDTAB');
  const solid =
    tag(0, 'LTYPE') +
    tag(2, 'CONTINUOUS') +
    tag(70, '0') +
    tag(3, 'Solid line') +
    tag(72, '65') +
    tag(73, '0') +
    tag(40, '0.0');
  const standard =
    tag(0, 'STYLE') +
    tag(2, 'STANDARD') +
    tag(70, '0') +
    tag(40, '0.0') +
    tag(41, '1.0') +
    tag(50, '0.0') +
    tag(71, '0') +
    tag(42, '2.5') +
    tag(3, 'txt') +
    tag(4, '');
  return section(
    'TABLES',
    table('LTYPE', [solid]) +
      table('LAYER', [layer('0', 7), ...operations.map((operation) => layer(operation, colours[operation]))]) +
      table('STYLE', [standard]),
  );
}

function colourIndex(colour: number): string {
  if (!(Number.isInteger(colour) && colour >= 1 && colour <= 255))
    throw new InternalError(`a DXF colour index must be 1 to 255, not ${colour}`);
  return String(colour);
}
