import { dirname, join } from 'node:path';
import { hasErrors, type Finding } from '../base/findings';
import { finding } from '../findings/finding';
import { sayFindings } from '../findings/say';
import { decodeJob } from '../job/decode';
import type { AssemblyJob, AssemblyPanel } from '../job/panel/assembly';
import { parseFile, type Parsed } from '../job/parse';
import { toAssemblyPlan } from '../output/panel/assembly/assembly-plan';
import { planAssembly, type AssemblyMember, type PlannedAssembly } from '../output/panel/assembly/plan-assembly';
import { fastenerWords, joinWords } from '../output/panel/assembly/words';
import { planPanel, type PlannedPanel } from '../output/panel/plan-panel';
import { planText } from '../output/plan/plan-text';
import { measuresIn } from '../output/shop-sheet/measures';
import { loadPanelRules } from '../tables/panel-rules';
import type { Tables } from '../tables/tables';
import { readBeside, readDrawing, type Unread } from './drawing-file';
import { EXIT, type ExitCode, type Io } from './io';
import { printFindings } from './report';

/** The longest job file of a panel, bytes. */
const MOST = 1024 * 1024;

/** An assembly's file worked out as far as its mistakes allow. */
export interface WorkedAssembly {
  readonly planned: PlannedAssembly | null;
  readonly findings: readonly Finding[];
  readonly units: Parsed<AssemblyJob>['units'];
  readonly tables: Tables;
}

interface Read {
  readonly planned: PlannedPanel | null;
  /** Of its file, told with the file's name; or what is wrong with the file. */
  readonly findings: readonly Finding[];
}

export async function workAssembly(
  io: Io,
  path: string,
  parsed: Parsed<AssemblyJob>,
  tables: Tables,
): Promise<WorkedAssembly> {
  const { job, units, locate } = parsed;
  if (!job) return { planned: null, findings: parsed.findings, units, tables };
  const files = new Map<string, { readonly file: string; readonly read: Read }>();
  for (const { name, from } of job.panels) {
    if (!('file' in from)) continue;
    const isPair = job.panels.some((other) => 'mirror' in other.from && other.from.mirror === name);
    files.set(name, { file: from.file, read: await readPanel(io, path, { name, file: from.file, isPair, tables }) });
  }
  const own = [...files.values()].flatMap(({ read }) => read.findings);
  const members = job.panels.flatMap((panel) => memberOf(panel, files));
  const unread = [...files.values()].some(({ read }) => !read.planned);
  const earlier = [...parsed.findings, ...own];
  if (unread) return { planned: null, findings: locate(earlier), units, tables };
  const planned = planAssembly(job, members, []);
  return { planned, findings: [...earlier, ...locate(planned.findings)], units, tables };
}

function memberOf(
  { name, from }: AssemblyPanel,
  files: ReadonlyMap<string, { readonly file: string; readonly read: Read }>,
): AssemblyMember[] {
  const found = files.get('file' in from ? name : from.mirror);
  if (!found?.read.planned) return [];
  const { file, read } = found;
  return read.planned ? [{ name, file, mirrors: 'mirror' in from ? from.mirror : null, planned: read.planned }] : [];
}

interface Wanted {
  readonly name: string;
  readonly file: string;
  /** Whether its mirror image is made too. */
  readonly isPair: boolean;
  readonly tables: Tables;
}

async function readPanel(io: Io, path: string, { name, file, isPair, tables }: Wanted): Promise<Read> {
  const at = `panels.${name}`;
  const read = await readBeside(io, path, { name: file, most: MOST });
  if ('unread' in read) return { planned: null, findings: [unreadPanel(at, file, read.unread)] };
  const { text } = decodeJob(read.bytes);
  const parsed = text === null ? null : parseFile(text, tables);
  if (parsed?.kind !== 'panel')
    return { planned: null, findings: [finding('panel-file-unread', at, { file, trouble: 'no-panel' })] };
  const inFile = (findings: readonly Finding[]): Finding[] =>
    findings.map((found) => ({ ...found, path: found.path === '' ? file : `${file}: ${found.path}` }));
  if (!parsed.job) return { planned: null, findings: inFile(parsed.findings) };
  const { job } = parsed;
  const drawing = await readDrawing(io, path === '-' ? join(io.cwd, file) : join(dirname(path), file), job);
  if ('refused' in drawing) return { planned: null, findings: inFile(parsed.locate([drawing.refused])) };
  const both = { ...job, panel: { ...job.panel, pair: job.panel.pair || isPair } };
  const given = { tables, rules: loadPanelRules(), drawing: drawing.text };
  const planned = planPanel(both, given, parsed.findings);
  return { planned, findings: inFile(parsed.locate(planned.findings)) };
}

function unreadPanel(path: string, file: string, unread: Unread): Finding {
  if (unread === 'outside') return finding('panel-file-outside', path, { got: file });
  return finding('panel-file-unread', path, { file, trouble: typeof unread === 'string' ? unread : 'no-panel' });
}

/** `plan` of an assembly: how its panels are joined, or everything as JSON. */
export function printAssembly(
  io: Io,
  { planned, findings, units: own }: WorkedAssembly,
  options: { json?: true; units?: 'mm' | 'in' },
): ExitCode {
  const units = options.units ?? own;
  if (options.json) {
    const said = sayFindings(findings, { units: own });
    const none = { title: '', panels: {}, joins: [], fasteners: [], findings: said };
    io.out(planText(planned ? toAssemblyPlan(planned, said) : none));
  } else {
    if (planned?.buildable) {
      const say = measuresIn(units);
      const panels = planned.members.map(
        ({ name, file, mirrors }) => `  ${name}: ${mirrors === null ? file : `mirror image of ${mirrors}`}\n`,
      );
      const joins = planned.joins.map((join, index) => `${index + 1}. ${joinWords(join, say)}\n`);
      const text = `${planned.job.title}\n\nPanels\n${panels.join('')}\n${joins.join('')}\n${fastenerWords(planned.joins)}\n\n`;
      io.out(text.replaceAll('\u00a0', ' '));
    }
    io.out(printFindings(findings, units, io.colour));
  }
  return hasErrors(findings) ? EXIT.wrong : EXIT.done;
}
