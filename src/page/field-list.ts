import { cuttingTools, paperOrientations, paperSizes, type CuttingTool } from '../job/job';
import { CUT_SETTINGS } from '../job/read-cut';
import { tables } from './work';
import { nodeAt, textAt, type Draft, type DraftPath } from './draft';

/** One field of the page: where it stands in a job, what it is called at the bench, and how it is entered. */
export interface Field {
  readonly path: DraftPath;
  readonly label: string;
  /** Unit shown after the field; `length` stands for the job's unit. */
  readonly unit: 'length' | 'degrees' | 'N' | 'MPa' | '';
  readonly choices?: readonly { readonly value: string; readonly text: string }[];
  /** What holds when the field is empty. */
  readonly otherwise?: string;
  /** The tools it is for; every one unless said. */
  readonly tools?: readonly CuttingTool[];
}

export interface FieldGroup {
  readonly title: string;
  readonly open: boolean;
  readonly fields: readonly Field[];
}

const metals = tables.metals.map(({ id, name }) => ({ value: id, text: name }));
const boards = [
  { value: '', text: 'as the others' },
  ...tables.boards.map(({ id, name }) => ({ value: id, text: name })),
];
const screws = [
  { value: '', text: 'by spine thickness' },
  ...tables.screws.map(({ id, name }) => ({ value: id, text: name })),
];
const { rules, tools } = tables;

const field = (label: string, path: DraftPath, unit: Field['unit'] = 'length', extra: Partial<Field> = {}): Field => ({
  label,
  path,
  unit,
  ...extra,
});

/** A length of the `cut` block. */
const setting = (label: string, key: string, otherwise: string): Field => {
  const owners = CUT_SETTINGS[key];
  return field(label, ['cut', key], 'length', { otherwise, ...(owners ? { tools: owners } : {}) });
};

/** Whether a field is for the tool the draft cuts with. */
export function isFor(field: Field, draft: Draft): boolean {
  const tool = cuttingTools.find((known) => known === textAt(draft, ['cut', 'with'])) ?? 'jigsaw';
  return field.tools?.includes(tool) ?? true;
}

/** The `cut` block for another tool: what belongs to others is taken out. */
export function cutFor(draft: Draft, tool: string): Draft | undefined {
  const held = nodeAt(draft, ['cut']);
  const kept = Object.entries(typeof held === 'object' && !Array.isArray(held) ? held : {}).filter(
    ([key]) => key !== 'with' && (CUT_SETTINGS[key]?.some((owner) => owner === (tool || 'jigsaw')) ?? true),
  );
  const block = { ...(tool === '' ? {} : { with: tool }), ...Object.fromEntries(kept) };
  return Object.keys(block).length > 0 ? block : undefined;
}

/** The fields in the order of the work. */
export const groups: readonly FieldGroup[] = [
  {
    title: 'Part and sheet',
    open: true,
    fields: [
      field('Title', ['title'], ''),
      field('Units', ['units'], '', {
        choices: [
          { value: 'mm', text: 'mm' },
          { value: 'in', text: 'inch' },
        ],
      }),
      field('Metal', ['sheet', 'material'], '', { choices: metals }),
      field('Thickness, or gauge as 18 ga', ['sheet', 'thickness']),
    ],
  },
  {
    title: 'Bend',
    open: true,
    fields: [
      field('Angle turned from flat', ['bend', 'angle'], 'degrees'),
      field('Length along the tangent line', ['bend', 'length']),
      field('Inside radius at end A', ['bend', 'radius', 'from']),
      field('Inside radius at end B', ['bend', 'radius', 'to']),
      field('The radii are', ['bend', 'radiusOf'], '', {
        choices: [
          { value: '', text: 'the part’s, after release' },
          { value: 'form', text: 'the form’s, as cut' },
        ],
      }),
      field('Held leg', ['bend', 'legs', 'held']),
      field('Free leg', ['bend', 'legs', 'free']),
    ],
  },
  {
    title: 'Board',
    open: true,
    fields: [
      field('Board', ['board', 'stock'], '', {
        choices: [{ value: '', text: 'MDF 18 mm; 6 mm for a laser' }, ...boards.slice(1)],
      }),
      field('Thickness as measured', ['board', 'thickness'], 'length', { otherwise: 'the table’s' }),
      field('Spine', ['board', 'spine'], '', { choices: boards }),
      field('Stations', ['board', 'stations'], '', { choices: boards }),
      field('Backing stations', ['board', 'backing'], '', { choices: boards }),
    ],
  },
  {
    title: 'How the boards are cut',
    open: true,
    fields: [
      field('Cut with', ['cut', 'with'], '', {
        choices: [{ value: '', text: 'jigsaw' }, ...cuttingTools.slice(1).map((value) => ({ value, text: value }))],
      }),
      setting('Smallest radius the blade turns', 'turn', `${tools.bladeTurn} mm`),
      setting('Diameter of the bit', 'bit', `${tools.bit} mm`),
      setting('Depth of the grooves', 'groove', 'a third of the spine'),
      field('Hold-down bridges', ['cut', 'bridges'], '', {
        choices: [
          { value: '', text: 'none' },
          { value: 'true', text: 'leave them' },
        ],
        tools: ['router'],
      }),
      setting('Kerf', 'kerf', `${tools.kerf} mm`),
      field('Layers to each board', ['cut', 'layers'], '', {
        otherwise: `up to ${tools.stackTo} mm`,
        tools: ['laser'],
      }),
      setting('Dowels or bolts through the layers', 'dowel', `${tools.dowel} mm`),
      setting('Fit: groove or slot wider by', 'fit', 'usual'),
      setting('Between parts on a board', 'gap', 'usual'),
      setting('Uncut edge of a board', 'border', 'usual'),
      ...(['outline', 'hole', 'mark', 'label'] as const).map((operation) =>
        field(`Colour of ${operation}s in the files`, ['cut', 'colours', operation], '', { otherwise: 'ours' }),
      ),
    ],
  },
  {
    title: 'Pull, clamps, screws',
    open: false,
    fields: [
      field('Hand-force limit', ['effort', 'handForce'], 'N', { otherwise: `${rules.handForceLimit}` }),
      field('Safety against tipping', ['effort', 'safety'], '', { otherwise: `${rules.safetyFactor}` }),
      field('Most extra metal to leave', ['effort', 'maxLeverage'], 'length', { otherwise: 'no limit' }),
      field('Clamp hole', ['clamps', 'hole'], 'length', { otherwise: `${rules.clampHole} mm` }),
      field('Wood round a clamp hole', ['clamps', 'wood'], 'length', { otherwise: `${rules.clampWood} mm` }),
      field('Force of one clamp', ['clamps', 'rating'], 'N', { otherwise: `${rules.clampRating}` }),
      field('Screw', ['screws', 'size'], '', { choices: screws }),
      field('Wood over a screw’s tip', ['screws', 'cover'], 'length', { otherwise: `${rules.screwCover} mm` }),
      field('Longest clear span', ['stations', 'maxSpan'], 'length', { otherwise: `${rules.maxSpan} mm` }),
      field('Most sag of the sheet', ['stations', 'maxSag'], 'length', { otherwise: `${rules.maxSag} mm` }),
    ],
  },
  {
    title: 'Sheet data of your own',
    open: false,
    fields: [
      field('Smallest bend radius over thickness', ['sheet', 'minBendRatio'], '', { otherwise: 'the metal’s' }),
      field('Neutral-line factor K', ['neutral'], '', { otherwise: 'DIN 6935' }),
    ],
  },
  {
    title: 'Finishing block',
    open: false,
    fields: [
      field('Middle of the block, from end A', ['block', 'at'], 'length', { otherwise: 'no block' }),
      field('Its length', ['block', 'length'], 'length', { otherwise: 'no block' }),
      field('Its board', ['block', 'stock'], '', {
        choices: [{ value: '', text: 'the stations’' }, ...boards.slice(1)],
      }),
    ],
  },
  {
    title: 'Paper for full-size drawings',
    open: false,
    fields: [
      field('Size', ['paper', 'size'], '', {
        choices: [
          { value: '', text: 'A4, or letter for inch jobs' },
          ...paperSizes.map((value) => ({ value, text: value })),
        ],
      }),
      field('Orientation', ['paper', 'orientation'], '', {
        choices: [
          { value: '', text: 'whichever needs fewer pages' },
          ...paperOrientations.slice(1).map((value) => ({ value, text: value })),
        ],
      }),
      field('Width of a roll', ['paper', 'width'], 'length', { otherwise: 'for rolls' }),
      field('Edge the printer leaves blank', ['paper', 'margin'], 'length', { otherwise: 'usual' }),
      field('Overlap of pages', ['paper', 'overlap'], 'length', { otherwise: 'usual' }),
    ],
  },
];

/** A list of like things: shown one under another, each with its fields. */
export interface FieldList {
  readonly key: string;
  readonly title: string;
  /** What one of them is called. */
  readonly one: string;
  /** What holds while the list is empty, and what it is for. */
  readonly empty: string;
  readonly open: boolean;
  readonly fields: readonly (Omit<Field, 'path'> & { readonly name: string })[];
  /** What a new one begins with. */
  readonly fresh: (draft: Draft, index: number) => Draft;
}

export const lists: readonly FieldList[] = [
  {
    key: 'runs',
    title: 'Runs',
    one: 'run',
    empty: 'One run over the whole length. Add runs where shorter edges share the form.',
    open: true,
    fields: [
      { name: 'name', label: 'name', unit: '' },
      { name: 'from', label: 'from', unit: 'length' },
      { name: 'to', label: 'to', unit: 'length' },
    ],
    fresh: (draft, index) => ({ name: `edge ${index + 1}`, from: '0', to: textAt(draft, ['bend', 'length']) }),
  },
  {
    key: 'trials',
    title: 'Trial strips',
    one: 'strip',
    empty:
      'None: springback by the tables. Bend a strip at least 8 thicknesses wide round a disc, let go, and enter what you measured.',
    open: false,
    fields: [
      { name: 'radius', label: 'radius of the disc', unit: 'length' },
      { name: 'bent', label: 'angle bent', unit: 'degrees' },
      { name: 'left', label: 'angle left', unit: 'degrees' },
      { name: 'width', label: 'width of the strip', unit: 'length', otherwise: 'not said' },
    ],
    fresh: (draft) => ({ radius: textAt(draft, ['bend', 'radius', 'from']), bent: '', left: '' }),
  },
  {
    key: 'offcuts',
    title: 'Offcuts to use first',
    one: 'offcut',
    empty: 'None: whole boards.',
    open: false,
    fields: [
      { name: 'stock', label: 'board', unit: '', choices: boards.slice(1) },
      { name: 'width', label: 'width', unit: 'length' },
      { name: 'length', label: 'length', unit: 'length' },
      { name: 'thickness', label: 'thickness as measured', unit: 'length', otherwise: 'as the job’s boards' },
    ],
    fresh: (draft) => ({ stock: textAt(draft, ['board', 'stock']) || 'mdf-18', width: '', length: '' }),
  },
];
