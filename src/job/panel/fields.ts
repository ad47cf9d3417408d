import * as z from 'zod/mini';
import { LEG, RADIUS_RANGE } from '../fields/bend';
import { choice, length, name, yesNo } from '../fields/quantities';
import { block, field, list, orNull, type Read } from '../fields/field';
import { sheetFields } from '../fields/sheet';
import { commonFields } from '../fields/index';
import { isBlock } from '../reader';
import { bendFields } from './bend-fields';
import { formChoice } from './form-choice';
import { edgeWork, seams, trim } from './finish';
import { about, lengthByName, lengthShape, written } from './keyed';
import { outline } from './outline';
import { entriesAt, placesAt, placeShape } from './places';
import { tracedBends } from './traced-bends';

const MOST_CORNERS = 40;
const MOST_BENDS = 6;

const corners = written<readonly (readonly [number, number])[]>(
  {
    label: 'Corners of the base',
    help: 'Corners of the base, counter-clockwise on the marked face',
    example: '[[0, 0], [22, 0], [22, 9], [0, 9]]',
  },
  {
    shape: z.array(placeShape).check(z.minLength(3), z.maxLength(MOST_CORNERS)),
    writing: 'A list of [x, y]',
    required: true,
    without: '',
    read: placesAt,
  },
);

const edges = written<readonly string[]>(
  {
    label: 'Edges of the base',
    help: 'Names of the edges; edge i runs from corner i to the next',
    example: '[long, back, top, short]',
  },
  {
    shape: z.array(z.string()).check(z.minLength(3), z.maxLength(MOST_CORNERS)),
    writing: 'A list of names',
    required: true,
    without: '',
    read: (reader, path) => entriesAt(reader, path).map((_, index) => reader.name([...path, index])),
  },
);

const base = block(
  { help: 'The flat part in the middle that the bends stand on', required: true },
  {
    corners,
    edges,
    measured: field({
      label: 'Corners are measured',
      help: 'What the corners are: those of the bends’ tangent lines on the flat, or where the legs’ inside or outside planes meet the base’s',
      is: choice(['flat', 'inside', 'outside']),
      unless: 'flat',
    }),
  },
);

const bends = list(
  {
    help: 'The bends, each after the one whose leg it stands on',
    one: 'bend',
    empty: 'No bend',
    group: 'bend',
    least: 1,
    most: MOST_BENDS,
  },
  {
    on: field({
      label: 'on',
      help: 'The edge of the base, or the rim of a leg (`long.rim`), that it is made along',
      example: 'long',
      is: name,
      required: true,
    }),
    ...bendFields,
    radius: written<number | Readonly<Record<string, number>>>(
      {
        label: 'inside radius',
        help: 'Inside radius after release: one length, or one toward each neighbouring edge',
        example: { mm: '{ short: 30 mm, back: 45 mm }', in: '{ short: 1-1/4 in, back: 1-3/4 in }' },
      },
      {
        shape: z.union([z.number(), z.string(), z.record(z.string(), lengthShape)]),
        writing: 'A length, or a block of lengths by the neighbouring edges’ names',
        required: true,
        without: '',
        read: (reader, path) => lengthByName(reader, path, RADIUS_RANGE),
      },
    ),
    leg: field({
      label: 'leg',
      help: 'Flat metal beyond the bend',
      example: '60',
      is: LEG,
      without: 'by `height`',
    }),
    height: field({
      label: 'height',
      help: 'In place of `leg`: how high a level rim stands over the base',
      example: '90',
      is: LEG,
      without: 'by `leg`',
    }),
    form: formChoice,
  },
);

/** What becomes of a corner, by the names of the two edges that meet there. */
export interface CornerChoice {
  readonly key: string;
  readonly treat: 'mitre' | 'open' | 'lap' | 'dress' | null;
  readonly gap: number | null;
  readonly rounded: number;
  /** Whether a block to dress it over is made. */
  readonly block: boolean;
}

const TREATS = ['mitre', 'open', 'lap', 'dress'] as const;

const cornerChoices = written<readonly CornerChoice[]>(
  {
    label: 'Corners',
    help: 'What becomes of the metal where two bends meet, by the two edges’ names',
    example: {
      mm: '{ long/short: { treat: mitre, gap: 3 mm } }',
      in: '{ long/short: { treat: mitre, gap: 1/8 in } }',
    },
  },
  {
    shape: z.record(
      z.string(),
      z.strictObject({
        treat: about(z.optional(z.enum(TREATS)), 'What becomes of the corner'),
        gap: about(z.optional(lengthShape), 'Between the edges at the rim'),
        rounded: about(z.optional(lengthShape), 'Rounding of the corner that is dressed'),
        block: about(
          z.optional(z.boolean()),
          'Whether a block of layers of board, shaped as its finished inside, is made to dress it over',
        ),
      }),
    ),
    writing:
      'A block of blocks by `edge/edge`, each with `treat` (mitre, open, lap, dress), `gap`, `rounded`, `block` (true: a block to dress it over)',
    required: false,
    without: 'a mitre, or open where metal is lacking',
    read: (reader, path) => {
      const value = reader.at(path);
      return Object.keys(isBlock(value) ? value : {}).map((key): CornerChoice => {
        const at = [...path, key];
        return {
          key,
          treat: TREATS.find((treat) => treat === reader.at([...at, 'treat'])) ?? null,
          gap: reader.length([...at, 'gap'], { min: 0, max: 100 }) ?? null,
          rounded: reader.length([...at, 'rounded'], { min: 0, max: 3000 }) ?? 0,
          block: reader.at([...at, 'block']) === true,
        };
      });
    },
  },
);

const pair = field({
  label: 'A pair',
  help: 'Whether the mirror image is made too, for the other side',
  is: yesNo,
  unless: false,
});

const finish = { trim, seams, edges: edgeWork };

/** The metal, and the sheet of it that is bought. */
const panelSheet = block(
  { help: 'The metal that is bent', required: true },
  {
    ...sheetFields,
    stock: orNull(
      block(
        { help: 'The sheet the panel is cut from: blanks are laid out on as many as it takes' },
        {
          width: field({
            label: 'Sheet as bought, width',
            help: 'Across the sheet you buy',
            example: '48',
            is: length(50, 6000),
            required: true,
          }),
          length: field({
            label: 'Sheet as bought, length',
            help: 'Along the sheet you buy; its grain runs so',
            example: '96',
            is: length(50, 12_000),
            required: true,
          }),
          grain: field({
            label: 'Sheet as bought, grain',
            help: 'Which way of the blank’s drawing the grain is to run: along x, along y, or any',
            is: choice(['any', 'x', 'y']),
            unless: 'any',
          }),
        },
      ),
    ),
  },
);

/** The job file of a panel built up from a base described: what every job may say, and the panel. */
export const panelFields = block(
  { help: 'A panel with several bends, and the forms to bend it on', required: true },
  { ...commonFields, sheet: panelSheet, base, bends, corners: cornerChoices, pair, ...finish },
);

/** The same of a panel on an outline of the maker's own. */
export const tracedFields = block(
  { help: 'A panel with several bends on your own outline, and the forms to bend it on', required: true },
  { ...commonFields, sheet: panelSheet, outline, bends: tracedBends, pair, ...finish },
);

export type GivenPanel = Read<typeof panelFields>;
export type GivenTraced = Read<typeof tracedFields>;
