import { toDegrees } from '../base/angle';
import { InternalError } from '../base/errors';
import { hasErrors, type Finding } from '../base/findings';
import { MM_PER_INCH, type LengthUnit } from '../base/units';
import { planHeld } from '../design/came-out';
import type { BendPlan } from '../design/bend/bend-plan';
import { adviseTrial } from '../design/bend/trial-advice';
import type { Job, Trial } from '../job/job';
import { parseJob } from '../job/parse';
import type { Field } from '../job/fields/field';
import { strip as stripFields } from '../job/fields/trials';
import { readTrials } from '../job/read';
import { names, sayRows, trialFigures } from '../output/plan/figures';
import { newPull, sayPart } from '../output/plan/came-out';
import type { PlanAtFactor, PlanTrials } from '../output/plan/plan';
import { loadTables } from '../tables/bundled';
import { tablesIn } from '../tables/tables';
import { planTrials } from '../output/plan/to-plan';
import { EXIT, type ExitCode, type Io } from './io';
import { readJobFile } from './job-file';
import { paint, printFindings } from './report';
import { trialsOf, type Given } from './trial-given';
import { pairs, table } from './columns';
import { degrees, printersFor, printLength } from './printing';
import { indented } from './table';

/**
 * `trial`: fits the job's strips and finished parts and those given to the sheet's flow curve and says what they change; without any, how to
 * bend some strips.
 * Writes no file.
 */
export async function trial(io: Io, path: string, given: readonly Given[]): Promise<ExitCode> {
  const tables = loadTables();
  const strips = trialsOf(given);
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
  const { bend, bends, effect, findings: held } = planHeld(job, tablesIn(tables, job.units));
  if (bend) {
    io.out(
      `${paint(job.title, '1', io.colour)}\n${bend.metal.name}, ${printLength(job.sheet.thickness, job.units)} thick\n`,
    );
    const fit = planTrials(bend, effect, job);
    io.out(fit ? printFit(fit, bend, job, io.colour) : printAdvice(bend, job.units));
  }
  // The job's other doubts, and what stands in the way of its fixture, are for check and plan; lines are those of trials in the file.
  const ours = held.filter(({ level, path: place }) => (level === 'error' && !bends) || place.startsWith('trials'));
  const located = strips.length === 0 ? locate(ours) : ours.map((finding) => asGiven(finding, own));
  return report(io, [...findings, ...located], units);
}

function report(io: Io, findings: readonly Finding[], units: LengthUnit): ExitCode {
  io.out(printFindings(findings, units, io.colour));
  return hasErrors(findings) ? EXIT.wrong : EXIT.done;
}

/** Findings about trials of the command line, counted on from those of the file, name its options. */
function asGiven(finding: Finding, before: number): Finding {
  const [, index, key] = /^trials\[(\d+)\]\.?(.*)$/u.exec(finding.path) ?? [];
  if (index === undefined || Number(index) < before) return finding;
  const [, kind, below] = /^(part)?\.?(.*)$/u.exec(key ?? '') ?? [];
  const option = kind ? `part-${below ?? ''}` : (below ?? '');
  return { ...finding, path: `${kind ?? 'strip'} ${Number(index) + 1}${below ? `, --${option}` : ''}` };
}

function printFit(plan: PlanTrials, bend: BendPlan, job: Job, colour: boolean): string {
  const heading = (text: string): string => `\n${paint(text, '1', colour)}\n`;
  return [
    ...(plan.strips.length > 0 ? [heading('Trial strips'), stripTable(plan, job.units)] : []),
    ...(plan.parts.length > 0 ? [heading('What came out'), partLines(plan, bend, job.units)] : []),
    heading('Fit'),
    pairs(sayRows(trialFigures(plan), printersFor(job.units))),
    heading('What it does'),
    effectTable(plan, bend, job),
    heading('For the job file, in place of any trials there'),
    trialsBlock(withForms(job.trials, plan), job.units),
    '\n',
  ].join('');
}

/** What is said of a strip's field, on the page and in the job file's reference too. */
function stripField(key: string): Field<unknown> {
  const field = stripFields.fields[key];
  if (field?.node !== 'field') throw new InternalError(`a strip has no field ${key}`);
  return field;
}

function stripTable({ strips }: PlanTrials, units: LengthUnit): string {
  const length = (mm: number): string => printLength(mm, units);
  return table(
    ['', ...['radius', 'bent', 'left', 'width'].map((key) => stripField(key).label), 'factor'],
    strips.map((strip, index) => [
      String(index + 1),
      length(strip.radius),
      degrees(strip.bent),
      degrees(strip.left),
      strip.width === null ? 'not said' : length(strip.width),
      strip.factor.toFixed(3),
    ]),
  );
}

function partLines({ parts }: PlanTrials, bend: BendPlan, units: LengthUnit): string {
  const to = newPull(bend);
  return indented(parts.map((part) => sayPart(part, to, printersFor(units))));
}

function effectTable({ effect, spread, factor }: PlanTrials, bend: BendPlan, job: Job): string {
  const length = (mm: number): string => printLength(mm, job.units);
  const now: PlanAtFactor = {
    form: { from: bend.form.radiusA, to: bend.form.radiusB },
    finished: { from: bend.finished.radiusA, to: bend.finished.radiusB },
    wrap: toDegrees(bend.wrap.chosen),
  };
  const side = job.bend.radiusOf === 'finished' ? 'form' : 'finished';
  const apart = job.trials.length > 1;
  const columns = [
    { head: 'by the tables', at: effect.tables },
    ...(apart ? [{ head: `lowest, ${spread.low.toFixed(3)}`, at: effect.low }] : []),
    { head: `fitted, ${factor.toFixed(3)}`, at: now },
    ...(apart ? [{ head: `highest, ${spread.high.toFixed(3)}`, at: effect.high }] : []),
  ];
  const row = (name: string, value: (at: PlanAtFactor) => string): string[] => [
    name,
    ...columns.map(({ at }) => (at ? value(at) : 'impossible')),
  ];
  return table(
    ['', ...columns.map(({ head }) => head)],
    [
      row(`${names[side]}, end A`, (at) => length(at[side].from)),
      row(`${names[side]}, end B`, (at) => length(at[side].to)),
      row(names.wrap, ({ wrap }) => degrees(wrap)),
    ],
  );
}

/** Parts with the radius of the form they came off said, so that they keep it when the form is planned anew. */
function withForms(trials: readonly Trial[], { parts }: PlanTrials): Trial[] {
  return trials.map((trial, index) => {
    const fitted = parts.find((part) => part.trial === index + 1);
    return 'part' in trial && fitted ? { part: { ...trial.part, form: fitted.form } } : trial;
  });
}

/** The `trials` block of a job file, lengths in the job's unit. */
function trialsBlock(trials: readonly Trial[], units: LengthUnit): string {
  return `trials:\n${trials.map((trial) => `  - ${inFile(trial, units)}\n`).join('')}`;
}

function inFile(trial: Trial, units: LengthUnit): string {
  const length = (mm: number): number => plain(mm, units);
  const turn = (radians: number): number => tidy(toDegrees(radians));
  if (!('part' in trial)) {
    const { radius, bent, left, width } = trial;
    return inBraces({ radius: length(radius), bent: turn(bent), left: turn(left), width: width && length(width) });
  }
  const { at, radius, angle, wrap, form } = trial.part;
  const part = { radius: radius && length(radius), angle: angle && turn(angle), wrap: wrap && turn(wrap) };
  return `{ part: ${inBraces({ at: length(at), ...part, form: form && length(form) })} }`;
}

/** `{ radius: 40, bent: 95 }`, without what was not said. */
function inBraces(values: Readonly<Record<string, number | null>>): string {
  const said = Object.entries(values).flatMap(([key, value]) => (value === null ? [] : [`${key}: ${value}`]));
  return `{ ${said.join(', ')} }`;
}

/** A length as a bare number of the job's unit. */
function plain(mm: number, units: LengthUnit): number {
  return tidy(units === 'in' ? mm / MM_PER_INCH : mm);
}

function tidy(value: number): number {
  return Number(value.toPrecision(9));
}

function printAdvice(bend: BendPlan, units: LengthUnit): string {
  const { radius, width, length, held, bent, left } = adviseTrial(bend, units);
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
