import { hasErrors } from '../base/findings';
import type { Job } from '../job/job';
import { parseJob } from '../job/parse';
import { planJob, type Planned } from '../output/pipeline';
import type { Plan } from '../output/plan/plan';
import { planText } from '../output/plan/plan-text';
import { loadTables } from '../tables/bundled';
import type { Tables } from '../tables/tables';
import { EXIT, type ExitCode, type Io } from './io';
import { readJobFile } from './job-file';
import { printFindings } from './report';
import { printPlan } from './table';

/** A job file read and worked out as far as its mistakes allow. */
export interface Worked {
  readonly job: Job | null;
  readonly planned: Planned | null;
  readonly plan: Plan;
  readonly tables: Tables;
}

/** Reads and works out a job. */
export async function work(io: Io, path: string): Promise<Worked> {
  const tables = loadTables();
  const { job, findings, locate } = parseJob(await readJobFile(io, path), tables);
  if (!job) return { job, planned: null, plan: { ...NOTHING, findings }, tables };
  const planned = planJob(job, tables, findings);
  return { job, planned, plan: { ...planned.plan, findings: locate(planned.plan.findings) }, tables };
}

const NOTHING: Plan = {
  title: '',
  sheet: null,
  trials: null,
  bend: null,
  runs: [],
  effort: null,
  stations: [],
  spine: null,
  backings: [],
  blank: null,
  block: null,
  cut: null,
  findings: [],
};

/** `check`: findings only. */
export async function check(io: Io, path: string): Promise<ExitCode> {
  const { plan } = await work(io, path);
  io.out(plan.findings.length > 0 ? printFindings(plan.findings, io.colour) : 'Nothing wrong, nothing doubtful.\n');
  return exitCode(plan);
}

/** `plan`: the numbers, as a table to read or as JSON. */
export async function plan(io: Io, path: string, options: { json?: true; units?: 'mm' | 'in' }): Promise<ExitCode> {
  const worked = await work(io, path);
  if (options.json) io.out(planText(worked.plan));
  else {
    if (worked.job) io.out(printPlan(worked.plan, options.units ?? worked.job.units, io.colour, io.width));
    io.out(printFindings(worked.plan.findings, io.colour));
  }
  return exitCode(worked.plan);
}

function exitCode(plan: Plan): ExitCode {
  return hasErrors(plan.findings) ? EXIT.wrong : EXIT.done;
}
