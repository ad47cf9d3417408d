import { toDegrees } from '../base/angle';
import { hasErrors, type Finding } from '../base/findings';
import { MM_PER_INCH, type LengthUnit } from '../base/units';
import { planBend } from '../design/pull';
import type { BendPlan } from '../design/bend/bend-plan';
import { adviseTrial } from '../design/bend/trial-advice';
import type { Job, Trial } from '../job/job';
import { parseJob } from '../job/parse';
import { readTrials } from '../job/read';
import type { PlanAtFactor, PlanTrials } from '../output/plan/plan';
import { loadTables } from '../tables/bundled';
import { planTrials } from '../output/plan/to-plan';
import { EXIT, Stop, type ExitCode, type Io } from './io';
import { readJobFile } from './job-file';
import { paint, printFindings } from './report';
import { pairs, table } from './columns';
import { degrees, printLength } from './table';

/** A measurement as given on the command line, in its order there. */
export interface Given {
  readonly name: 'radius' | 'bent' | 'left' | 'width';
  readonly text: string;
}

/**
 * `trial`: fits the job's strips and those given to the sheet's flow curve and says what they change; without any, how to bend some.
 * Writes no file.
 */
export async function trial(io: Io, path: string, given: readonly Given[]): Promise<ExitCode> {
  const tables = loadTables();
  const strips = stripsOf(given);
  const { job: read, findings, locate, units } = parseJob(await readJobFile(io, path), tables);
  if (!read) return report(io, findings, units);
  const own = read.trials.length;
  const all = readTrials({ units: read.units, trials: [...read.trials.map(() => null), ...strips] }, tables);
  if (hasErrors(all.findings))
    return report(
      io,
      all.findings.map((finding) => asGiven(finding, own)),
      units,
    );
  const job: Job = { ...read, trials: [...read.trials, ...all.trials.slice(own)] };
  const bend = planBend(job, tables);
  if (bend.value) {
    io.out(
      `${paint(job.title, '1', io.colour)}\n${bend.value.metal.name}, ${printLength(job.sheet.thickness, job.units)} thick\n`,
    );
    io.out(
      bend.value.trials
        ? printFit(planTrials(bend.value.trials, bend.value), bend.value, job, io.colour)
        : printAdvice(bend.value, job.units),
    );
  }
  // The job's other doubts are for check and plan; lines are those of strips in the file.
  const ours = bend.findings.filter(({ level, path: place }) => level === 'error' || place.startsWith('trials'));
  const located = strips.length === 0 ? locate(ours) : ours.map((finding) => asGiven(finding, own));
  return report(io, [...findings, ...located], units);
}

function report(io: Io, findings: readonly Finding[], units: LengthUnit): ExitCode {
  io.out(printFindings(findings, units, io.colour));
  return hasErrors(findings) ? EXIT.wrong : EXIT.done;
}

/** Measurements gathered into strips, as the job file would have them: each `--radius` begins one. */
function stripsOf(given: readonly Given[]): Record<string, unknown>[] {
  const strips: Map<Given['name'], string>[] = [];
  for (const { name, text } of given) {
    if (name === 'radius') strips.push(new Map());
    const strip = strips.at(-1);
    if (!strip)
      throw new Stop(
        `--${name} stands before any --radius: each strip begins with the --radius of its disc`,
        EXIT.wrong,
      );
    if (strip.has(name))
      throw new Stop(
        `strip ${strips.length} has two --${name}; each strip begins with the --radius of its disc`,
        EXIT.wrong,
      );
    strip.set(name, text);
  }
  return strips.map((strip, index) => {
    for (const name of ['bent', 'left'] as const)
      if (!strip.has(name)) throw new Stop(`strip ${index + 1} lacks --${name}`, EXIT.wrong);
    return Object.fromEntries(
      [...strip].map(([name, text]) => [name, name === 'bent' || name === 'left' ? readDegrees(name, text) : text]),
    );
  });
}

function readDegrees(name: string, text: string): number {
  const [, number] = /^\s*(-?(?:\d+(?:\.\d*)?|\.\d+))\s*(?:°|deg|degrees)?\s*$/u.exec(text) ?? [];
  if (number === undefined || text.length > 32)
    throw new Stop(`--${name} should be a number of degrees, as in 95 or 84.5`, EXIT.wrong);
  return Number(number);
}

/** Findings about strips of the command line, counted on from those of the file, name its options. */
function asGiven(finding: Finding, before: number): Finding {
  const [, index, key] = /^trials\[(\d+)\]\.?(.*)$/u.exec(finding.path) ?? [];
  if (index === undefined || Number(index) < before) return finding;
  return { ...finding, path: `strip ${Number(index) + 1}${key ? `, --${key}` : ''}` };
}

function printFit({ strips, factor, spread, effect }: PlanTrials, bend: BendPlan, job: Job, colour: boolean): string {
  const length = (mm: number): string => printLength(mm, job.units);
  const heading = (text: string): string => `\n${paint(text, '1', colour)}\n`;
  const now: PlanAtFactor = {
    form: { from: bend.form.radiusA, to: bend.form.radiusB },
    finished: { from: bend.finished.radiusA, to: bend.finished.radiusB },
    wrap: toDegrees(bend.wrap.chosen),
  };
  const side = job.bend.radiusOf === 'finished' ? 'form' : 'finished';
  const columns = [
    { head: 'by the tables', at: effect.tables },
    ...(strips.length > 1 ? [{ head: `lowest, ${spread.low.toFixed(3)}`, at: effect.low }] : []),
    { head: `fitted, ${factor.toFixed(3)}`, at: now },
    ...(strips.length > 1 ? [{ head: `highest, ${spread.high.toFixed(3)}`, at: effect.high }] : []),
  ];
  const row = (name: string, value: (at: PlanAtFactor) => string): string[] => [
    name,
    ...columns.map(({ at }) => (at ? value(at) : 'impossible')),
  ];
  return [
    heading('Trial strips'),
    table(
      ['', 'disc radius', 'bent', 'left', 'width', 'factor'],
      strips.map((strip, index) => [
        String(index + 1),
        length(strip.radius),
        degrees(strip.bent),
        degrees(strip.left),
        strip.width === null ? 'not said' : length(strip.width),
        strip.factor.toFixed(3),
      ]),
    ),
    heading('Fit'),
    pairs([
      ['factor on the flow curve', `${factor.toFixed(3)}  (1 by the tables)`],
      [
        'spread of the strips',
        strips.length > 1 ? `${spread.low.toFixed(3)} to ${spread.high.toFixed(3)}` : 'one strip shows none',
      ],
    ]),
    heading('What it does'),
    table(
      ['', ...columns.map(({ head }) => head)],
      [
        row(`${side} radius, end A`, (at) => length(at[side].from)),
        row(`${side} radius, end B`, (at) => length(at[side].to)),
        row('wrap to pull to', ({ wrap }) => degrees(wrap)),
      ],
    ),
    heading('For the job file, in place of any trials there'),
    trialsBlock(job.trials, job.units),
    '\n',
  ].join('');
}

/** The `trials` block of a job file, lengths in the job's unit. */
function trialsBlock(trials: readonly Trial[], units: LengthUnit): string {
  const lines = trials.map(({ radius, bent, left, width }) => {
    const values = [
      `radius: ${plain(radius, units)}`,
      `bent: ${tidy(toDegrees(bent))}`,
      `left: ${tidy(toDegrees(left))}`,
      ...(width === null ? [] : [`width: ${plain(width, units)}`]),
    ];
    return `  - { ${values.join(', ')} }\n`;
  });
  return `trials:\n${lines.join('')}`;
}

/** A length as a bare number of the job's unit. */
function plain(mm: number, units: LengthUnit): number {
  return tidy(units === 'in' ? mm / MM_PER_INCH : mm);
}

function tidy(value: number): number {
  return Number(value.toPrecision(9));
}

function printAdvice(bend: BendPlan, units: LengthUnit): string {
  const { radius, width, length, held, bent, left } = adviseTrial(bend);
  const round = (mm: number): string => printLength(mm, units);
  const [unit, digits] = units === 'in' ? [MM_PER_INCH, 1000] : [1, 100];
  // Up, so that a width stays wide enough.
  const shop = (mm: number): number => Math.ceil((mm / unit) * digits - 1e-6) / digits;
  const given = (turn: number): number => Math.round(toDegrees(turn));
  return `
No strips measured yet. To measure your own sheet:

  1. Cut three strips from it, ${round(width)} wide (at least 8 times the thickness) and ${round(length)} long, from different
     places, all the same way of the grain as the part. Mark a line square across each, ${round(held)} from one end.
  2. Cut a disc of radius ${round(radius)} from board, at least as thick as the strip is wide, with a straight side that leaves the
     round edge at a tangent. “make” draws strip and disc full size. Screw it flat to the bench.
  3. Clamp the short end of a strip to the straight side, on edge, its line where the round edge begins.
  4. Pull it round to about ${given(bent)}° and, while you hold it there, measure how far its legs are turned from flat: that is “bent”.
  5. Let it back slowly and measure again: that is “left”. By the tables it should be about ${degrees(toDegrees(left))}.
  6. Give what you measured, a --radius, --bent and --left for each strip:

     bendbuck trial JOB --radius ${shop(radius)} --bent ${given(bent)} --left ${given(left)} --width ${shop(width)}

  A bent strip is a spring: wear gloves, keep your face out of its swing.

`;
}
