import { toRadians } from '../base/angle';
import type { Finding } from '../base/findings';
import type { LengthUnit } from '../base/units';
import type { Tables } from '../tables/tables';
import { show } from './explain';
import {
  paperOrientations,
  paperSizes,
  type BlockChoice,
  type BoardChoice,
  type Job,
  type Offcut,
  type PaperChoice,
  type Run,
  type Trial,
} from './job';
import { readCut } from './read-cut';
import { isBlock, Reader, type Range } from './reader';

const BEND_LENGTH: Range = { min: 20, max: 6000 };
const RADIUS: Range = { min: 1, max: 3000 };
const LEG: Range = { min: 1, max: 3000 };
const BOARD: Range = { min: 2, max: 100 };
const OFFCUT: Range = { min: 20, max: 6000 };
const ANGLE: Range = { min: 1, max: 179 };
/** Degrees: less cannot be measured well enough, more cannot be reached on a disc and read. */
const TRIAL_BENT: Range = { min: 5, max: 179 };
const TRIAL_LEFT: Range = { min: 0, max: 179 };
const TRIAL_WIDTH: Range = { min: 1, max: 500 };

/**
 * Plain data → job: every value read by its own rule, defaults filled in, lengths to mm and degrees to radians. Values the
 * schema has complained of are passed over in silence; everything else that is wrong is said. The job is worth having only
 * where neither has complained.
 */
export function readJob(data: unknown, tables: Tables): { readonly job: Job; readonly findings: readonly Finding[] } {
  const reader = new Reader(data);
  const { rules } = tables;
  const title = reader.title(['title']);
  const material = reader.text(['sheet', 'material']) ?? '';
  const metal = reader.metal(['sheet', 'material'], tables);
  const thickness = reader.thickness(['sheet', 'thickness'], metal, tables);
  const length = reader.length(['bend', 'length'], BEND_LENGTH) ?? NaN;
  const board = readBoards(reader, tables);
  const job: Job = {
    title,
    units: reader.units,
    sheet: { material, thickness, minBendRatio: reader.number(['sheet', 'minBendRatio'], { min: 0, max: 50 }) ?? null },
    bend: {
      angle: toRadians(reader.number(['bend', 'angle'], ANGLE) ?? NaN),
      length,
      radius: readRadius(reader, length),
      radiusOf: reader.at(['bend', 'radiusOf']) === 'form' ? 'form' : 'finished',
      legs: {
        held: reader.length(['bend', 'legs', 'held'], LEG) ?? NaN,
        free: reader.length(['bend', 'legs', 'free'], LEG) ?? NaN,
      },
    },
    runs: readRuns(reader, length),
    board,
    stations: {
      maxSpan: reader.length(['stations', 'maxSpan'], { min: 20, max: 1000 }) ?? rules.maxSpan,
      maxSag: reader.length(['stations', 'maxSag'], { min: 0.01, max: 5 }) ?? rules.maxSag,
    },
    screws: {
      size: reader.named(['screws', 'size'], 'screw', tables.screws) ?? null,
      cover: reader.length(['screws', 'cover'], { min: 2, max: 50 }) ?? rules.screwCover,
    },
    clamps: {
      hole: reader.length(['clamps', 'hole'], { min: rules.clampHoleMin, max: 100 }) ?? rules.clampHole,
      wood: reader.length(['clamps', 'wood'], { min: 3, max: 100 }) ?? rules.clampWood,
      rating: reader.force(['clamps', 'rating'], { min: 50, max: 20_000 }) ?? rules.clampRating,
    },
    effort: {
      handForce: reader.force(['effort', 'handForce'], { min: 10, max: 1000 }) ?? rules.handForceLimit,
      safety: reader.number(['effort', 'safety'], { min: 1, max: 10 }) ?? rules.safetyFactor,
      maxLeverage: reader.length(['effort', 'maxLeverage'], { min: 0, max: 3000 }) ?? null,
    },
    neutral: reader.number(['neutral'], { min: 0.2, max: 0.5 }) ?? null,
    trials: trialsOf(reader),
    paper: readPaper(reader),
    block: readBlock(reader, length, board.stations, tables),
    offcuts: readOffcuts(reader, tables),
    cut: readCut(reader, tables),
  };
  return { job, findings: reader.findings };
}

function readRadius(reader: Reader, length: number): Job['bend']['radius'] {
  const path = ['bend', 'radius'];
  if (!isBlock(reader.at(path))) {
    const both = reader.length(path, RADIUS) ?? NaN;
    return { from: both, to: both };
  }
  const radius = {
    from: reader.length([...path, 'from'], RADIUS) ?? NaN,
    to: reader.length([...path, 'to'], RADIUS) ?? NaN,
  };
  const growth = Math.abs(radius.to - radius.from);
  if (growth >= length) {
    reader.refuse(
      'taper-too-steep',
      path,
      `the radius grows by ${reader.print(growth)} over a length of ${reader.print(length)}: no cone is as steep as that`,
      'make the bend longer or the radii more alike',
      reader.print(growth),
      `less than ${reader.print(length)}`,
    );
  }
  return radius;
}

function readRuns(reader: Reader, length: number): Run[] {
  const entries = reader.at(['runs']);
  if (!Array.isArray(entries)) return [{ name: 'whole length', from: 0, to: length }];
  const seen = new Set<string>();
  return entries.map((_, index): Run => {
    const path = ['runs', index];
    const name = reader.name([...path, 'name']);
    if (name !== '' && seen.has(name))
      reader.refuse(
        'run-named-twice',
        [...path, 'name'],
        `two runs are called ${show(name)}`,
        'give each run a name of its own',
        show(name),
      );
    seen.add(name);
    const within = { min: 0, max: Infinity };
    const run = {
      name,
      from: reader.length([...path, 'from'], within) ?? NaN,
      to: reader.length([...path, 'to'], within) ?? NaN,
    };
    if (run.to <= run.from) {
      reader.refuse(
        'run-backward',
        path,
        `run ${show(name)} runs from ${reader.print(run.from)} to ${reader.print(run.to)}: it must end after it begins`,
        'let “from” be the smaller',
        reader.print(run.to),
        `more than ${reader.print(run.from)}`,
      );
    }
    for (const end of ['from', 'to'] as const) {
      if (run[end] > length) {
        reader.refuse(
          'run-outside-form',
          [...path, end],
          `run ${show(name)} reaches to ${reader.print(run[end])}; the form is ${reader.print(length)} long`,
          'shorten the run or lengthen the bend',
          reader.print(run[end]),
          `at most ${reader.print(length)}`,
        );
      }
    }
    return run;
  });
}

function readBoards(reader: Reader, tables: Tables): Job['board'] {
  const stock =
    reader.named(['board', 'stock'], 'board', tables.boards) ??
    (reader.at(['cut', 'with']) === 'laser' ? DEFAULT_LASER_BOARD : DEFAULT_BOARD);
  const thickness = reader.length(['board', 'thickness'], BOARD) ?? null;
  const choose = (part: string): BoardChoice => {
    const path = ['board', part];
    const value = reader.at(path);
    if (value === undefined) return { stock, thickness };
    if (!isBlock(value)) return { stock: reader.named(path, 'board', tables.boards) ?? stock, thickness: null };
    return {
      stock: reader.named([...path, 'stock'], 'board', tables.boards) ?? stock,
      thickness: reader.length([...path, 'thickness'], BOARD) ?? null,
    };
  };
  return { spine: choose('spine'), stations: choose('stations'), backing: choose('backing') };
}

/** Trial strips alone, from data shaped as a job file: `units` and `trials`. Finds what {@link readJob} would find in them. */
export function readTrials(data: { readonly units: LengthUnit; readonly trials: readonly unknown[] }): {
  readonly trials: readonly Trial[];
  readonly findings: readonly Finding[];
} {
  const reader = new Reader(data);
  return { trials: trialsOf(reader), findings: reader.findings };
}

function trialsOf(reader: Reader): Trial[] {
  const entries = reader.at(['trials']);
  if (!Array.isArray(entries)) return [];
  return entries.map((_, index): Trial => {
    const path = ['trials', index];
    return {
      radius: reader.length([...path, 'radius'], RADIUS) ?? NaN,
      bent: toRadians(reader.number([...path, 'bent'], TRIAL_BENT) ?? NaN),
      left: toRadians(reader.number([...path, 'left'], TRIAL_LEFT) ?? NaN),
      width: reader.length([...path, 'width'], TRIAL_WIDTH) ?? null,
    };
  });
}

/** Blank edge of desk and office printers: 6 mm, 1/4 in, and a little over (common practice). */
const PAPER_MARGIN = 7;
/** Wide enough for a glue stick or tape (common practice), mm. */
const PAPER_OVERLAP = 10;

function readPaper(reader: Reader): PaperChoice {
  const size =
    paperSizes.find((known) => known === reader.at(['paper', 'size'])) ?? (reader.units === 'in' ? 'letter' : 'A4');
  const width = reader.length(['paper', 'width'], { min: 200, max: 1600 });
  if (size === 'roll' && reader.at(['paper', 'width']) === undefined) {
    reader.refuse(
      'roll-without-width',
      ['paper', 'width'],
      'a roll of paper needs its width',
      'add paper.width, as in 24 in or 610 mm',
    );
  }
  if (size !== 'roll' && width !== undefined) {
    reader.refuse(
      'width-without-roll',
      ['paper', 'width'],
      `${size} paper has a width of its own`,
      'leave paper.width out, or let paper.size be roll',
      reader.print(width),
    );
  }
  return {
    size,
    orientation: paperOrientations.find((known) => known === reader.at(['paper', 'orientation'])) ?? 'auto',
    width: width ?? null,
    margin: reader.length(['paper', 'margin'], { min: 3, max: 25 }) ?? PAPER_MARGIN,
    overlap: reader.length(['paper', 'overlap'], { min: 6, max: 40 }) ?? PAPER_OVERLAP,
  };
}

function readBlock(reader: Reader, bendLength: number, stations: BoardChoice, tables: Tables): BlockChoice | null {
  if (!isBlock(reader.at(['block']))) return null;
  const at = reader.length(['block', 'at'], { min: 0, max: BEND_LENGTH.max }) ?? NaN;
  const length = reader.length(['block', 'length'], { min: BOARD.min, max: BEND_LENGTH.max }) ?? NaN;
  const [low, high] = [at - length / 2, at + length / 2];
  if (low < -ROUNDING || high > bendLength + ROUNDING) {
    reader.refuse(
      'block-outside-bend',
      ['block'],
      `the finishing block reaches from ${reader.print(low)} to ${reader.print(high)}; the bend from 0 to ${reader.print(bendLength)}`,
      'move it with `at` or make it shorter',
      `${reader.print(low)} to ${reader.print(high)}`,
      `0 to ${reader.print(bendLength)}`,
    );
  }
  const stock = reader.named(['block', 'stock'], 'board', tables.boards);
  const measured = reader.length(['block', 'thickness'], BOARD) ?? null;
  return {
    at,
    length,
    board:
      stock === undefined
        ? { stock: stations.stock, thickness: measured ?? stations.thickness }
        : { stock, thickness: measured },
  };
}

function readOffcuts(reader: Reader, tables: Tables): Offcut[] {
  const entries = reader.at(['offcuts']);
  if (!Array.isArray(entries)) return [];
  return entries.map((_, index): Offcut => {
    const path = ['offcuts', index];
    return {
      stock: reader.named([...path, 'stock'], 'board', tables.boards) ?? '',
      width: reader.length([...path, 'width'], OFFCUT) ?? NaN,
      length: reader.length([...path, 'length'], OFFCUT) ?? NaN,
      thickness: reader.length([...path, 'thickness'], BOARD) ?? null,
    };
  });
}

/** Sums of lengths written in fractions may miss one another by this, mm. */
const ROUNDING = 1e-9;

/** The board a form is made of unless the job says otherwise. */
const DEFAULT_BOARD = 'mdf-18';
/** The same for a laser, which stacks thin boards. */
const DEFAULT_LASER_BOARD = 'mdf-6';
