import { tables } from './work';
import type { DraftPath } from './draft';

/** One field of the page: where it stands in a job, what it is called at the bench, and how it is entered. */
export interface Field {
  readonly path: DraftPath;
  readonly label: string;
  /** Unit shown after the field; `length` stands for the job's unit. */
  readonly unit: 'length' | 'degrees' | 'N' | 'MPa' | '';
  readonly choices?: readonly { readonly value: string; readonly text: string }[];
  /** What holds when the field is empty. */
  readonly otherwise?: string;
}

export interface FieldGroup {
  readonly title: string;
  readonly open: boolean;
  readonly fields: readonly Field[];
}

const metals = tables.metals.map(({ id, name }) => ({ value: id, text: name }));
const boards = [{ value: '', text: 'as the others' }, ...tables.boards.map(({ id, name }) => ({ value: id, text: name }))];
const screws = [{ value: '', text: 'by spine thickness' }, ...tables.screws.map(({ id, name }) => ({ value: id, text: name }))];
const { rules } = tables;

const field = (label: string, path: DraftPath, unit: Field['unit'] = 'length', extra: Partial<Field> = {}): Field => ({ label, path, unit, ...extra });

/** The fields in the order of the work. */
export const groups: readonly FieldGroup[] = [
  {
    title: 'Part and sheet',
    open: true,
    fields: [
      field('Title', ['title'], ''),
      field('Unit of bare numbers', ['units'], '', { choices: [{ value: 'mm', text: 'mm' }, { value: 'in', text: 'inch' }] }),
      field('Metal', ['sheet', 'material'], '', { choices: metals }),
      field('Thickness, or gauge', ['sheet', 'thickness']),
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
      field('The radii are', ['bend', 'radiusOf'], '', { choices: [{ value: '', text: 'the part’s, after release' }, { value: 'form', text: 'the form’s, as cut' }] }),
      field('Held leg', ['bend', 'legs', 'held']),
      field('Free leg', ['bend', 'legs', 'free']),
    ],
  },
  {
    title: 'Board',
    open: true,
    fields: [
      field('Board', ['board', 'stock'], '', { choices: [{ value: '', text: 'MDF 18 mm' }, ...boards.slice(1)] }),
      field('Thickness as measured', ['board', 'thickness'], 'length', { otherwise: 'the table’s' }),
      field('Spine', ['board', 'spine'], '', { choices: boards }),
      field('Stations', ['board', 'stations'], '', { choices: boards }),
      field('Backing stations', ['board', 'backing'], '', { choices: boards }),
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
];

/** A path as findings print it: `bend.radius.from`, `runs[1].to`. */
export function pathText(path: DraftPath): string {
  return path.reduce<string>((text, step) => (typeof step === 'number' ? `${text}[${step}]` : text === '' ? step : `${text}.${step}`), '');
}
