import * as z from 'zod/mini';
import type { Point } from '../../base/polygon';
import { finding } from '../../findings/finding';
import { block, field } from '../fields/field';
import { choice, count } from '../fields/quantities';
import type { Quantity } from '../fields/quantity';
import { isBlock } from '../reader';
import { pathText } from '../path';
import { show } from '../show';
import { leadsOutside } from './beside';
import { about, lengthShape, written } from './keyed';
import { entriesAt, placeAt, placesAt, placeShape } from './places';

/** A length known on the part, between two places as drawn; mm. */
export interface GivenReference {
  readonly between: readonly [Point, Point];
  readonly is: number;
}

/** What the outline was traced from: `metal-allowed`, `sharp`, or wound round a radius; mm. */
export type GivenMockup =
  | 'metal-allowed'
  | 'sharp'
  | { readonly radius: number; readonly thickness: number; readonly over: 'inside' | 'outside' };

const MOST_CORNERS = 400;
const MOST_REFERENCES = 20;
const MOST_EDGES = 40;
const MOST_LAYERS = 40;
const LENGTH = { min: 0.1, max: 10_000 };
const FACTOR = { min: 0.001, max: 1000 };
const OVER = ['inside', 'outside'] as const;

/** The name of a drawing that lies beside the job file, or in a folder below. */
const drawingName: Quantity<string> = {
  name: 'text',
  shapes: [z.string()],
  writing: '',
  choices: null,
  bounds: null,
  none: '',
  read: (reader, path) => {
    if (reader.text(path) === undefined) return undefined;
    const name = reader.name(path, 200);
    if (leadsOutside(name)) return reader.refuse(finding('drawing-outside', pathText(path), { got: show(name) }));
    if (name !== '' && formatOf(name) === null)
      return reader.refuse(finding('drawing-kind', pathText(path), { got: show(name) }));
    return name;
  },
  print: String,
};

/** What a drawing file holds, by its name; null for any other file. */
export function formatOf(name: string): 'svg' | 'dxf' | null {
  const [, ending] = /\.(svg|dxf)$/iu.exec(name) ?? [];
  return ending?.toLowerCase() === 'svg' ? 'svg' : ending ? 'dxf' : null;
}

const corners = written<readonly Point[] | null>(
  {
    label: 'Corners of the outline',
    help: 'In place of `file`: corners of the outline on the marked face, either way round',
    example: '[[0, 0], [600, 0], [560, 300], [0, 300]]',
  },
  {
    shape: z.array(placeShape).check(z.minLength(3), z.maxLength(MOST_CORNERS)),
    writing: 'A list of [x, y]',
    required: false,
    without: 'by `file`',
    read: (reader, path) => (Array.isArray(reader.at(path)) ? placesAt(reader, path) : null),
  },
);

const scale = written<number | readonly GivenReference[]>(
  {
    label: 'Scale',
    help: 'How much larger the part is than it is drawn: a factor, or lengths known on the part between two places as drawn (one scales both ways alike, two or more each way by itself; best one along x and one along y)',
    example: '[{ between: [[0, 0], [300, 0]], is: 600 }, { between: [[0, 0], [0, 150]], is: 300 }]',
  },
  {
    shape: z.union([
      z.number(),
      z
        .array(
          z.strictObject({
            between: about(z.tuple([placeShape, placeShape]), 'Two places [x, y] as drawn'),
            is: about(lengthShape, 'How far apart they are on the part'),
          }),
        )
        .check(z.minLength(1), z.maxLength(MOST_REFERENCES)),
    ]),
    writing: 'A number, or a list of { between: [[x, y], [x, y]], is: length }',
    required: false,
    without: '1',
    read: (reader, path) => {
      if (!Array.isArray(reader.at(path))) return reader.number(path, FACTOR) ?? 1;
      return entriesAt(reader, path).map((_, index): GivenReference => {
        const at = [...path, index];
        const [p, q] = [0, 1].map((end) => placeAt(reader, [...at, 'between', end]));
        return { between: [p ?? [NaN, NaN], q ?? [NaN, NaN]], is: reader.length([...at, 'is'], LENGTH) ?? NaN };
      });
    },
  },
);

const mockup = written<GivenMockup>(
  {
    label: 'Traced from',
    help: 'What the outline was traced from: `metal-allowed` (it is the flat already, and its lines are where the metal begins to curve), `sharp` (card folded on the lines), or `{ radius, thickness, over }`: card wound round something of that radius, its lines where the winding begins; `over` says whether it is the radius of the part’s inside or outside',
    example: 'sharp',
  },
  {
    shape: z.union([
      z.enum(['metal-allowed', 'sharp']),
      z.strictObject({
        radius: about(lengthShape, 'Radius the card was wound round'),
        thickness: about(lengthShape, 'Thickness of the card'),
        over: about(z.enum(OVER), 'Whether that is the radius of the part’s inside or outside'),
      }),
    ]),
    writing: '`metal-allowed`, `sharp`, or a block with `radius`, `thickness`, `over` (inside, outside)',
    required: true,
    without: '',
    read: (reader, path) => {
      const value = reader.at(path);
      if (!isBlock(value)) return value === 'sharp' ? 'sharp' : 'metal-allowed';
      return {
        radius: reader.length([...path, 'radius'], { min: 0.5, max: 3000 }) ?? NaN,
        thickness: reader.length([...path, 'thickness'], { min: 0, max: 20 }) ?? NaN,
        over: OVER.find((side) => side === reader.at([...path, 'over'])) ?? 'inside',
      };
    },
  },
);

const layers = written<readonly string[] | null>(
  { label: 'Layers read', help: 'Only these layers of the drawing are read', example: '[outline, holes]' },
  {
    shape: z.array(z.string()).check(z.minLength(1), z.maxLength(MOST_LAYERS)),
    writing: 'A list of names',
    required: false,
    without: 'all but marks, labels, text and dimensions',
    read: (reader, path) =>
      Array.isArray(reader.at(path)) ? entriesAt(reader, path).map((_, index) => reader.name([...path, index])) : null,
  },
);

/** An edge of the outline, named by a place near it. */
export interface NamedPlace {
  readonly name: string;
  readonly near: Point;
}

const edges = written<readonly NamedPlace[]>(
  {
    label: 'Edges of the outline',
    help: 'Names of edges, each by a place near it as drawn, for seams, caps and joins',
    example: '{ rim: [300, 0], nose: [600, 150] }',
  },
  {
    shape: z.record(z.string(), placeShape).check(z.refine((named) => Object.keys(named).length <= MOST_EDGES)),
    writing: 'A block of places [x, y] by name',
    required: false,
    without: 'none is named',
    read: (reader, path) => {
      const value = reader.at(path);
      return Object.keys(isBlock(value) ? value : {}).map((name) => ({ name, near: placeAt(reader, [...path, name]) }));
    },
  },
);

/** The maker's own outline, from a drawing or by its corners. */
export const outline = block(
  { help: 'Your own outline of the part laid flat, traced from a mock-up or drawn', required: true },
  {
    file: field({
      label: 'Drawing',
      help: 'An SVG or DXF file beside the job file, or in a folder below it. Places on it are counted from the page’s lower left corner (SVG) or the drawing’s origin (DXF), y up',
      example: 'wing.svg',
      is: drawingName,
      without: 'by `corners`',
    }),
    corners,
    scale,
    mockup,
    part: field({
      label: 'Which outline',
      help: 'Which of several outlines in the drawing, counted from the largest',
      example: '1',
      is: count(1, 1000),
      without: 'there is only one',
    }),
    layers,
    dpi: field({
      label: 'Pixels to the inch',
      help: 'Px to the inch, for an SVG file that does not say its true size',
      example: '96',
      is: count(10, 5000),
      without: '96, or 90 for old files',
    }),
    unit: field({
      label: 'Unit of the drawing',
      help: 'Unit of a DXF file that states none',
      is: choice(['mm', 'cm', 'm', 'in', 'ft']),
      without: 'mm, with a warning',
    }),
    edges,
  },
);
