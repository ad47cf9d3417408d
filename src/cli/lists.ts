import type { LengthUnit } from '../base/units';
import { formatDiameter, MM_PER_INCH, NEWTONS_PER_POUND } from '../base/units';
import { loadTables } from '../tables/bundled';
import type { Board, Metal, Screw } from '../tables/schema';
import type { Tables } from '../tables/tables';
import { table } from './columns';
import { EXIT, type ExitCode, type Io } from './io';

export type ListName = 'metals' | 'boards' | 'screws' | 'gauges';

/** `metals`, `boards`, `screws`, `gauges`: the rows a job may name, in mm or inches. */
export function list(io: Io, name: ListName, { units = 'mm' }: { units?: LengthUnit }): ExitCode {
  const { text, after } = LISTINGS[name](loadTables(), units, io.width);
  io.out(`${text}\n${after}\n`);
  return EXIT.done;
}

interface Listing {
  readonly text: string;
  /** Where it goes in a job. */
  readonly after: string;
}

const LISTINGS: Readonly<Record<ListName, (tables: Tables, units: LengthUnit, width: number) => Listing>> = {
  metals: ({ metals, metalNames }, units, width) => ({
    text: table(
      ['sheet.material', 'name', 'also called', 'yield', 'least radius', 'gauge table'],
      metals.map((metal) => [
        metal.id,
        metal.name,
        metalNames
          .filter(({ fits }) => fits[0] === metal.id)
          .flatMap(({ names }) => names)
          .slice(0, 3)
          .join(', '),
        stress(metal.yield, units),
        leastRadius(metal),
        metal.gauge ?? 'none',
      ]),
      width,
    ),
    after: 'Least radius: inside, in thicknesses; thinner sheet first. In a job: sheet: { material: …, thickness: … }',
  }),
  boards: ({ boards }, units, width) => ({
    text: table(
      ['board.stock', 'name', 'thickness', 'width', 'length', 'sold in'],
      [...boards]
        .sort(bySystem(units))
        .map((board) => [
          board.id,
          board.name,
          short(board.thickness, units),
          short(board.width, units),
          short(board.length, units),
          board.system === 'in' ? 'inches' : 'mm',
        ]),
      width,
    ),
    after: 'In a job: board: { stock: …, thickness: as you measured it }',
  }),
  screws: ({ screws }, units, width) => ({
    text: table(
      ['screws.size', 'name', 'pilot drill', 'clearance drill', 'head', 'lengths'],
      [...screws]
        .sort(bySystem(units))
        .map((screw) => [
          screw.id,
          screw.name,
          drillName(screw.pilotDrill, screw.pilot, screw, units),
          drillName(screw.clearanceDrill, screw.clearance, screw, units),
          formatDiameter(screw.headDiameter, units),
          lengthsOf(screw, units),
        ]),
      width,
    ),
    after: 'In a job: screws: { size: … }; unless said, by the thickness of the spine',
  }),
  gauges: ({ gauges }, units, width) => {
    const numbers = [...new Set(gauges.flatMap(({ inches }) => Object.keys(inches)))].sort((a, b) => +a - +b);
    const cell = (inches: number | undefined): string =>
      inches === undefined
        ? ''
        : units === 'in'
          ? `${inches.toFixed(4)} in`
          : `${(inches * MM_PER_INCH).toFixed(2)} mm`;
    return {
      text: table(
        ['gauge', ...gauges.map(({ id }) => id)],
        numbers.map((number) => [`${number} ga`, ...gauges.map(({ inches }) => cell(inches[number]))]),
        width,
      ),
      after: `${gauges.map(({ id, name }) => `${id}: ${name}`).join('\n')}\nIn a job: sheet: { thickness: 18 ga }, read from the table the metal is sold by`,
    };
  },
};

/** What is sold in the asked unit first; otherwise as in the table. */
function bySystem(units: LengthUnit): (a: Board | Screw, b: Board | Screw) => number {
  return (a, b) => Number(a.system !== units) - Number(b.system !== units);
}

/** A size as it is sold: hundredths of a mm, or thousandths of an inch, no more digits than it has. */
function short(mm: number, units: LengthUnit): string {
  return units === 'mm' ? `${Number(mm.toFixed(2))} mm` : `${Number((mm / MM_PER_INCH).toFixed(3))} in`;
}

/** A drill by its trade name where that is in the asked unit, else by its diameter. */
function drillName(name: string, diameter: number, { system }: Screw, units: LengthUnit): string {
  return system === units ? name : formatDiameter(diameter, units);
}

function lengthsOf({ system, lengthNames, lengths }: Screw, units: LengthUnit): string {
  return system === units ? lengthNames.join(', ') : lengths.map((mm) => short(mm, units)).join(', ');
}

/** MPa, or thousands of pounds to the square inch. */
function stress(mpa: number, units: LengthUnit): string {
  // 1 ksi = 1000 lbf/in²: the force in N of 1000 lbf over 25.4² mm².
  return units === 'mm' ? `${mpa.toFixed(0)} MPa` : `${((mpa * MM_PER_INCH ** 2) / N_PER_KIP).toFixed(0)} ksi`;
}

/** N in 1000 pounds-force. */
const N_PER_KIP = 1000 * NEWTONS_PER_POUND;

function leastRadius({ minBendRatio }: Metal): string {
  const ratios = [...new Set(minBendRatio.map(({ ratio }) => ratio))];
  return ratios.length > 1 ? `${ratios[0]} to ${ratios.at(-1)} × t` : `${ratios[0]} × t`;
}
