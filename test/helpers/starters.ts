import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { parseFile, parseJob } from '../../src/job/parse';
import { planPanel, type BuildablePanel, type PlannedPanel } from '../../src/output/panel/plan-panel';
import { planJob, type Buildable, type Planned } from '../../src/output/pipeline';
import { loadTables } from '../../src/tables/bundled';
import { loadPanelRules } from '../../src/tables/panel-rules';
import { frozen } from './frozen';

export const tables = loadTables();
export const panelRules = loadPanelRules();

/** Names of the starter jobs. */
export const starters = namesIn('templates');

/** Names of the starter jobs of whole panels, in `templates/panels`. */
export const panelStarters = namesIn('templates/panels');

/** The drawing that a starter panel's outline is read from; null where it has none. */
export function drawingOf(name: string): string | null {
  const path = `templates/panels/${name}.svg`;
  return existsSync(path) ? readFileSync(path, 'utf8') : null;
}

function namesIn(folder: string): string[] {
  return readdirSync(folder).flatMap((name) => (name.endsWith('.yaml') ? [name.slice(0, -'.yaml'.length)] : []));
}

/** A starter job worked out; `change` edits its text first. */
export function planStarter(name: string, change?: (text: string) => string): Buildable {
  const planned = tryStarter(name, change);
  if (!planned.buildable) throw new Error(JSON.stringify(planned.findings, null, 2));
  return planned;
}

const known = new Map<string, Planned>();

/** The same, whether or not the form can be built. Each text is worked out once for all who ask, hence nobody may change what comes of it: it is frozen. */
export function tryStarter(name: string, change: (text: string) => string = (text) => text): Planned {
  const text = change(readFileSync(`templates/${name}.yaml`, 'utf8'));
  const planned = known.get(text) ?? frozen(planText(text));
  known.set(text, planned);
  return planned;
}

/** Works all out anew from here on: for a process in which the sources behave otherwise now and then (test/mutants). */
export function forgetStarters(): void {
  known.clear();
  knownPanels.clear();
}

/** A job's text worked out afresh. */
export function planText(text: string): Planned {
  const { job, findings } = parseJob(text, tables);
  if (!job) throw new Error(JSON.stringify(findings, null, 2));
  return planJob(job, tables, findings);
}

/** A starter panel worked out; `change` edits its text first. */
export function planPanelStarter(name: string, change?: (text: string) => string): BuildablePanel {
  const planned = tryPanelStarter(name, change);
  if (!planned.buildable) throw new Error(JSON.stringify(planned.findings));
  return planned;
}

const knownPanels = new Map<string, PlannedPanel>();

/** The same, whether or not it can be made; each once, as the jobs are. */
export function tryPanelStarter(name: string, change: (text: string) => string = (text) => text): PlannedPanel {
  const text = change(readFileSync(`templates/panels/${name}.yaml`, 'utf8'));
  const key = `${name}\n${text}`;
  const planned = knownPanels.get(key) ?? frozen(planPanelText(name, text));
  knownPanels.set(key, planned);
  return planned;
}

function planPanelText(name: string, text: string): PlannedPanel {
  const parsed = parseFile(text, tables);
  if (parsed.kind !== 'panel') throw new Error(`${name} is no panel`);
  if (!parsed.job) throw new Error(JSON.stringify(parsed.findings));
  return planPanel(parsed.job, { tables, rules: panelRules, drawing: drawingOf(name) }, parsed.findings);
}
