import { hasErrors, type Finding } from '../base/findings';
import type { LengthUnit } from '../base/units';
import { sayFindings } from '../findings/say';
import type { Job } from '../job/job';
import { parseAssembly, parseFile } from '../job/parse';
import { planJob, type Planned } from '../output/pipeline';
import type { Plan } from '../output/plan/plan';
import { NO_PLAN } from '../output/plan/to-plan';
import { planText } from '../output/plan/plan-text';
import { loadTables } from '../tables/bundled';
import type { Tables } from '../tables/tables';
import { EXIT, type ExitCode, type Io } from './io';
import { readJobFile } from './job-file';
import type { WorkedAssembly } from './assembly';
import type { WorkedPanel } from './panel';
import { printFindings } from './report';
import { printPlan } from './table';

/** A job file read and worked out as far as its mistakes allow. */
export interface Worked {
  readonly kind: 'bend';
  readonly job: Job | null;
  readonly planned: Planned | null;
  readonly plan: Plan;
  readonly tables: Tables;
  readonly findings: readonly Finding[];
  /** Of the job file. */
  readonly units: LengthUnit;
}

/** Reads and works out a job, of one bend, of a panel or of an assembly. */
export async function work(
  io: Io,
  path: string,
): Promise<Worked | ({ readonly kind: 'panel' } & WorkedPanel) | ({ readonly kind: 'assembly' } & WorkedAssembly)> {
  const tables = loadTables();
  const text = await readJobFile(io, path);
  const assembly = parseAssembly(text, tables);
  if (assembly) {
    const { workAssembly } = await import('./assembly');
    return { kind: 'assembly', ...(await workAssembly(io, path, assembly, tables)) };
  }
  const parsed = parseFile(text, tables);
  if (parsed.kind === 'panel') {
    const { workPanel } = await import('./panel');
    return { kind: 'panel', ...(await workPanel(io, path, parsed, tables)) };
  }
  const { job, findings, locate, units } = parsed;
  if (!job)
    return {
      kind: 'bend',
      job,
      planned: null,
      plan: { ...NO_PLAN, findings: sayFindings(findings, { units }) },
      findings,
      units,
      tables,
    };
  const planned = planJob(job, tables, findings);
  const located = locate(planned.findings);
  const plan = { ...planned.plan, findings: sayFindings(located, { units }) };
  return { kind: 'bend', job, planned, plan, findings: located, units, tables };
}

/** `check`: findings only. */
export async function check(io: Io, path: string): Promise<ExitCode> {
  const { findings, units } = await work(io, path);
  io.out(findings.length > 0 ? printFindings(findings, units, io.colour) : 'Nothing wrong, nothing doubtful.\n');
  return exitCode(findings);
}

/** `plan`: the numbers, as a table to read or as JSON. */
export async function plan(io: Io, path: string, options: { json?: true; units?: 'mm' | 'in' }): Promise<ExitCode> {
  const worked = await work(io, path);
  if (worked.kind === 'panel') {
    const { printPanel } = await import('./panel');
    return printPanel(io, worked, options);
  }
  if (worked.kind === 'assembly') {
    const { printAssembly } = await import('./assembly');
    return printAssembly(io, worked, options);
  }
  const units = options.units ?? worked.units;
  if (options.json) io.out(planText(worked.plan));
  else {
    if (worked.job) io.out(printPlan(worked.plan, units, io.colour, io.width));
    io.out(printFindings(worked.findings, units, io.colour));
  }
  return exitCode(worked.findings);
}

function exitCode(findings: readonly Finding[]): ExitCode {
  return hasErrors(findings) ? EXIT.wrong : EXIT.done;
}
