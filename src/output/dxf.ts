import {
  cutOrder,
  operations,
  type Drawing,
  type Loop,
  type Operation,
  type Shape,
  type Stroke,
  type Text,
  type Vertex,
} from '../base/drawing';
import { boundsOf } from '../base/bounds';
import { toDegrees } from '../base/angle';
import { InternalError } from '../base/errors';
import { fixed } from './number';

/**
 * DXF release 11/12 (AC1009), the oldest that every reader opens: closed polylines with bulges, circles, lines, single-line
 * text or the open polylines it is engraved by; entities in the order they are cut; one layer an operation, all declared; millimetres. Source: the format owner's published group-code reference.
 */

/** Colour indexes of the layers: ours, any of which a job may change. 3 green, 4 cyan, 5 blue, 6 magenta, 7 black or white, 8 grey, 9 light grey, 30 orange. */
export const DXF_COLOURS: Readonly<Record<Operation, number>> = {
  outline: 7,
  hole: 4,
  pilot: 6,
  countersink: 3,
  groove: 30,
  mark: 8,
  label: 5,
  board: 9,
};

/** A hundredth of 10⁻⁴ mm, to which drawings are checked against the plan. */
const COORDINATE_DECIMALS = 6;
/** A bulge is a tangent of a quarter angle: at radii of metres it needs more digits than a coordinate to say as much. */
const BULGE_DECIMALS = 12;
/** Longer strings make the format's own program refuse the file: "the maximum DXF file string length is 256 characters". */
const LONGEST_STRING = 255;
/** Ends a text that was cut. */
const DOTS = '...';

type Tag = readonly [code: number, value: string];

/**
 * A drawing as DXF text; `colours` (1…255) overrides single layers. Nothing is merged or left out.
 * Throws InternalError on a number that cannot be drawn, a loop or stroke of fewer than two points, a colour outside 1…255, an empty drawing.
 */
export function writeDxf(drawing: Drawing, colours: Readonly<Partial<Record<Operation, number>>> = {}): string {
  const tags: Tag[] = [
    ...header(drawing),
    ...tables({ ...DXF_COLOURS, ...colours }),
    ...section('BLOCKS', []),
    ...section('ENTITIES', entities(drawing)),
    [0, 'EOF'],
  ];
  return tags.map(([code, value]) => `${code}\r\n${value}\r\n`).join('');
}

function section(name: string, tags: readonly Tag[]): Tag[] {
  return [[0, 'SECTION'], [2, name], ...tags, [0, 'ENDSEC']];
}

function point(x: number, y: number, first = 10): Tag[] {
  return [
    [first, fixed(x, COORDINATE_DECIMALS)],
    [first + 10, fixed(y, COORDINATE_DECIMALS)],
    [first + 20, '0'],
  ];
}

function header(drawing: Drawing): Tag[] {
  const { minX, minY, maxX, maxY } = boundsOf(drawing);
  return section('HEADER', [
    [9, '$ACADVER'],
    [1, 'AC1009'],
    [9, '$INSUNITS'],
    [70, '4'],
    [9, '$MEASUREMENT'],
    [70, '1'],
    [9, '$EXTMIN'],
    ...point(minX, minY),
    [9, '$EXTMAX'],
    ...point(maxX, maxY),
  ]);
}

function tables(colours: Readonly<Record<Operation, number>>): Tag[] {
  const layer = (name: string, colour: number): Tag[] => [
    [0, 'LAYER'],
    [2, name],
    [70, '0'],
    [62, colourIndex(colour)],
    [6, 'CONTINUOUS'],
  ];
  const table = (name: string, count: number, tags: readonly Tag[]): Tag[] => [
    [0, 'TABLE'],
    [2, name],
    [70, String(count)],
    ...tags,
    [0, 'ENDTAB'],
  ];
  return section('TABLES', [
    ...table('LTYPE', 1, [
      [0, 'LTYPE'],
      [2, 'CONTINUOUS'],
      [70, '0'],
      [3, 'Solid line'],
      [72, '65'],
      [73, '0'],
      [40, '0'],
    ]),
    ...table('LAYER', operations.length + 1, [
      ...layer('0', 7),
      ...operations.flatMap((operation) => layer(operation, colours[operation])),
    ]),
    ...table('STYLE', 1, [
      [0, 'STYLE'],
      [2, 'STANDARD'],
      [70, '0'],
      [40, '0'],
      [41, '1'],
      [50, '0'],
      [71, '0'],
      [42, '2.5'],
      [3, 'txt'],
      [4, ''],
    ]),
  ]);
}

function colourIndex(colour: number): string {
  if (!(Number.isInteger(colour) && colour >= 1 && colour <= 255))
    throw new InternalError(`a DXF colour index must be 1 to 255, not ${colour}`);
  return String(colour);
}

function entities({ shapes }: Drawing): Tag[] {
  return cutOrder.flatMap((operation) => shapes.filter((shape) => shape.operation === operation).flatMap(entity));
}

function entity(shape: Shape): Tag[] {
  switch (shape.kind) {
    case 'loop':
      return polyline(shape, shape.vertices);
    case 'circle':
      return [
        [0, 'CIRCLE'],
        [8, shape.operation],
        ...point(shape.x, shape.y),
        [40, fixed(shape.radius, COORDINATE_DECIMALS)],
      ];
    case 'line':
      return [[0, 'LINE'], [8, shape.operation], ...point(...shape.from), ...point(...shape.to, 11)];
    case 'stroke':
      return polyline(
        shape,
        shape.points.map(([x, y]) => ({ x, y, bulge: 0 })),
      );
    case 'text':
      return textEntity(shape);
  }
}

/** Closed for a loop (bit 1 of group 70), open for a stroke. */
function polyline({ kind, operation }: Loop | Stroke, vertices: readonly Vertex[]): Tag[] {
  if (vertices.length < 2) throw new InternalError(`a ${kind} needs two points at least`);
  return [
    [0, 'POLYLINE'],
    [8, operation],
    [66, '1'],
    [70, kind === 'loop' ? '1' : '0'],
    ...point(0, 0),
    ...vertices.flatMap(({ x, y, bulge }): Tag[] => [
      [0, 'VERTEX'],
      [8, operation],
      ...point(x, y),
      [42, fixed(bulge, BULGE_DECIMALS)],
    ]),
    [0, 'SEQEND'],
    [8, operation],
  ];
}

const JUSTIFY = { start: 0, middle: 1, end: 2 } as const;

function textEntity({ operation, x, y, height, angle, anchor, text }: Text): Tag[] {
  return [
    [0, 'TEXT'],
    [8, operation],
    ...point(x, y),
    [40, fixed(height, COORDINATE_DECIMALS)],
    [1, plainText(text)],
    [50, fixed(toDegrees(angle), COORDINATE_DECIMALS)],
    [72, String(JUSTIFY[anchor])],
    [73, '0'],
    ...(anchor === 'start' ? [] : point(x, y, 11)),
  ];
}

/**
 * Text as a DXF string that shows it literally. Control characters become spaces, so that none can end the string; a caret is
 * written caret, space; beyond ASCII and a backslash as \U+XXXX; what lies beyond the first plane as `?`, since readers decode code
 * by code and would be left with half characters. Percent signs are parted (`% %`): a pair begins a code, and readers
 * disagree on how to write a literal pair. Cut, with `...`, where the format allows no more.
 * Source: the format owner's reference, "ASCII control characters in DXF files" and "control codes and special characters".
 */
function plainText(text: string): string {
  const shown = text.replaceAll(/[\p{Cc}\p{Zl}\p{Zp}]/gu, ' ').replaceAll(/%(?=%)/gu, '% ');
  let [whole, cut] = ['', ''];
  for (const character of shown) {
    whole += characterCode(character);
    if (whole.length <= LONGEST_STRING - DOTS.length) cut = whole;
    if (whole.length > LONGEST_STRING) return cut + DOTS;
  }
  return whole;
}

function characterCode(character: string): string {
  const code = character.codePointAt(0) ?? 0;
  if (character === '^') return '^ ';
  if (character !== '\\' && code < 0x7f) return character;
  if (code > 0xffff || (code >= 0xd800 && code <= 0xdfff)) return '?';
  return `\\U+${code.toString(16).toUpperCase().padStart(4, '0')}`;
}
