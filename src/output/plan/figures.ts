import type { Plan, PlanBend, PlanEffort, PlanEnds, PlanHold, PlanPull, PlanTrials } from './plan';

/** What a number is, which decides how each reader prints it: mm, degrees, N; a share of 1; a plain number; things counted. */
export type AmountOf = 'length' | 'angle' | 'force' | 'share' | 'ratio' | 'count';

export interface Amount {
  readonly of: AmountOf;
  readonly value: number;
}

/** A key figure of the plan: what the maker reads first, described once for the table, the page and the shop sheet. */
export interface Figure {
  readonly id: FigureId;
  /** The part of the work it belongs to. */
  readonly part: 'bend' | 'pull' | 'form';
  /** Of use at the bench only now and then: told in the table, not on the page. */
  readonly minor?: true;
  /** What it is called, everywhere. */
  readonly name: string;
  /** Whether its amounts are those of end A and end B. */
  readonly perEnd: boolean;
  readonly amounts: readonly Amount[];
  /** The amounts, each printed, as one text; where the figure is nothing, the word for that. */
  readonly words: (...printed: readonly string[]) => string;
  /** What it is for, or how it comes about: one sentence without a full stop. */
  readonly why: string;
}

export type FigureId =
  | 'factor'
  | 'spread'
  | 'legs-keep'
  | 'form-radius'
  | 'finished-radius'
  | 'wrap'
  | 'wrap-needed'
  | 'twist'
  | 'bend-lines'
  | 'fan'
  | 'strain'
  | 'leg-angle'
  | 'tail'
  | 'departure'
  | 'pull'
  | 'held'
  | 'leverage'
  | 'clamps'
  | 'foot'
  | 'stations';

/** How a reader prints an amount of each kind. Counts are printed plainly. */
export type Printers = Readonly<Record<Exclude<AmountOf, 'count'>, (value: number) => string>>;

/** A figure’s amounts as text, the ends apart by ` / `. */
export function sayFigure({ amounts, words }: Pick<Figure, 'amounts' | 'words'>, print: Printers): string {
  return words(...amounts.map(({ of, value }) => (of === 'count' ? String(value) : print[of](value))));
}

/** The figure’s name; one with an amount an end says so. */
export function nameOf({ name, perEnd }: Pick<Figure, 'name' | 'perEnd'>): string {
  return perEnd ? `${name}, A / B` : name;
}

/** Figures as rows of a table: what each is called and what it says. */
export function sayRows(
  figures: readonly Pick<Figure, 'name' | 'perEnd' | 'amounts' | 'words'>[],
  print: Printers,
): (readonly [string, string])[] {
  return figures.map((figure) => [nameOf(figure), sayFigure(figure, print)] as const);
}

/** The key figures in the order of the work. Those of a part that errors left without meaning are not there. */
export function keyFigures(plan: Plan): readonly Figure[] {
  return [
    ...(plan.trials ? [factor(plan.trials.factor)] : []),
    ...(plan.bend ? bendFigures(plan.bend) : []),
    ...(plan.pull ? legFigures(plan.pull) : []),
    ...(plan.effort ? pullFigures(plan.effort) : []),
    ...(plan.hold ? [held(plan.hold)] : []),
    ...(plan.stations.length > 0 ? [stations(plan)] : []),
  ];
}

/** What trials come to, and how far they agree: for whoever looks at the trials themselves. */
export function trialFigures({ factor: fitted, spread, legsKeep, strips, parts }: PlanTrials): readonly Figure[] {
  const kept = legsKeep.from !== 0 || legsKeep.to !== 0;
  return [
    factor(fitted),
    spreadOf(spread, strips.length + parts.length),
    ...(kept
      ? [
          ends(
            {
              id: 'legs-keep',
              part: 'bend',
              name: 'Legs keep beyond the sums',
              why: 'what the parts’ legs were turned further than the wrap and the sums account for',
            },
            'angle',
            legsKeep,
          ),
        ]
      : []),
  ];
}

/** The figure with this id, where the plan has it. */
export function figureIn(figures: readonly Figure[], id: FigureId): Figure | undefined {
  return figures.find((figure) => figure.id === id);
}

type Said = Pick<Figure, 'id' | 'part' | 'name' | 'why' | 'minor'>;

const joined = (...printed: readonly string[]): string => printed.join(' / ');

/** Names of figures that stand in other tables too. */
export const names = {
  wrap: 'Leaves the form at a wrap of',
  form: 'Form radius',
  finished: 'After release',
  pull: 'Pull at the hands',
} as const;

function one(said: Said, of: AmountOf, value: number, words: Figure['words'] = joined): Figure {
  return { ...said, perEnd: false, amounts: [{ of, value }], words };
}

function ends(said: Said, of: AmountOf, { from, to }: PlanEnds): Figure {
  const amounts = [from, to].map((value): Amount => ({ of, value }));
  return { ...said, perEnd: true, amounts, words: joined };
}

function factor(value: number): Figure {
  return one(
    {
      id: 'factor',
      part: 'bend',
      name: 'Factor from trials',
      why: 'your strips and parts against the tables: above 1 the sheet is stronger and springs back more',
    },
    'ratio',
    value,
  );
}

function spreadOf({ low, high }: PlanTrials['spread'], count: number): Figure {
  return {
    id: 'spread',
    part: 'bend',
    name: 'Spread of the trials',
    why: 'the least and the greatest factor that one of them alone shows',
    perEnd: false,
    amounts: [low, high].map((value): Amount => ({ of: 'ratio', value })),
    words: (least = '', greatest = '') => (count > 1 ? `${least} to ${greatest}` : 'one trial shows none'),
  };
}

function bendFigures(bend: PlanBend): Figure[] {
  const part = 'bend';
  return [
    one(
      {
        id: 'wrap',
        part,
        name: names.wrap,
        why: 'where the sheet should leave the marks on the stations at the end of the pull',
      },
      'angle',
      bend.wrap.chosen,
    ),
    ends(
      {
        id: 'form-radius',
        part,
        name: names.form,
        why: 'smaller than the finished one, because the sheet springs back',
      },
      'length',
      bend.form,
    ),
    ends(
      {
        id: 'finished-radius',
        part,
        name: names.finished,
        why: 'inside radius the sheet is expected to spring back to',
      },
      'length',
      bend.finished,
    ),
    ends(
      { id: 'wrap-needed', part, name: 'Wrap needed', why: 'what each end alone would need; one wrap serves both' },
      'angle',
      bend.wrap,
    ),
    ends(
      {
        id: 'twist',
        part,
        name: 'Twist remaining',
        why: 'how much too far each end comes out, since one wrap serves both',
      },
      'angle',
      bend.twist,
    ),
    ends(
      { id: 'bend-lines', part, name: 'Bend lines apart', why: 'between the tangent lines on the flat blank' },
      'length',
      bend.allowance,
    ),
    one(
      {
        id: 'fan',
        minor: true,
        part,
        name: 'Fan of the bend lines',
        why: 'angle between the tangent lines on the flat blank',
      },
      'angle',
      bend.fan,
    ),
    ends(
      {
        id: 'strain',
        minor: true,
        part,
        name: 'Outside strain',
        why: 'how far the outside of the sheet is stretched on the form',
      },
      'share',
      bend.strain,
    ),
  ];
}

/** The leg beyond the form: where to stop, what it keeps, how round the bend comes out. */
function legFigures(pull: PlanPull): Figure[] {
  const part = 'pull';
  const gripped = { bare: 'at your hands', yoke: 'at the yoke', press: 'at the batten' }[pull.with];
  return [
    ends(
      {
        id: 'leg-angle',
        part,
        name: `Pull until the leg ${gripped} stands at`,
        why: 'the leg bends beyond the form too and leads; let go from there, the bend opens to the angle asked for',
      },
      'angle',
      pull.legAngle,
    ),
    ends(
      { id: 'tail', part, name: 'Leg’s own bend that stays', why: 'beyond the form; the wrap is that much less' },
      'angle',
      pull.tail.stays,
    ),
    ends(
      {
        id: 'departure',
        part,
        name: 'Off one round bend by',
        why: 'greatest distance of what comes out from one arc between the same legs',
      },
      'length',
      pull.departure,
    ),
  ];
}

function held(hold: PlanHold): Figure {
  return {
    id: 'held',
    part: 'pull',
    name: 'Held leg’s own bend that stays',
    perEnd: true,
    amounts: [
      { of: 'angle', value: hold.tail.from },
      { of: 'angle', value: hold.tail.to },
    ],
    words: joined,
    why: 'it bends up behind the form, more or less as the clamps are done up; the wrap is that much less',
  };
}

function pullFigures(effort: PlanEffort): Figure[] {
  const part = 'pull';
  return [
    {
      id: 'pull',
      part,
      name: names.pull,
      perEnd: false,
      amounts: [
        { of: 'force', value: effort.handForce },
        { of: 'length', value: effort.lever },
      ],
      words: (force = '', lever = '') => `${force} at ${lever}`,
      why: 'the force that pulls the leg round, and how far from where the sheet leaves the form it is applied',
    },
    one(
      {
        id: 'leverage',
        part,
        name: 'Extra metal on the free leg',
        why: 'left on as a lever so that the pull stays within your hand force, and trimmed after',
      },
      'length',
      effort.leverage,
      (text = '') => (effort.leverage > 0 ? `${text}, trimmed after` : 'none'),
    ),
    {
      id: 'clamps',
      part,
      name: 'Clamps',
      perEnd: false,
      amounts: [
        { of: 'count', value: effort.clamps },
        { of: 'force', value: effort.clampForce },
      ],
      words: (count = '', force = '') => `${count}, ${force} together`,
      why: 'what keeps the form from tipping towards you',
    },
    one(
      { id: 'foot', part, name: 'Foot behind the spine', why: 'the deeper it is, the less the clamps have to hold' },
      'length',
      effort.foot,
    ),
  ];
}

function stations({ stations: list, backings }: Plan): Figure {
  return {
    id: 'stations',
    part: 'form',
    name: 'Stations',
    perEnd: false,
    amounts: [
      { of: 'count', value: list.length },
      { of: 'count', value: backings.length },
    ],
    words: (front = '', back = '') => `${front} and ${back} backing`,
    why: 'half-discs in front of the spine, and blocks behind it',
  };
}
