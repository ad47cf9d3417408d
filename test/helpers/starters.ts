import { readFileSync, readdirSync } from 'node:fs';
import { parseJob } from '../../src/job/parse';
import { planJob, type Buildable, type Planned } from '../../src/output/pipeline';
import { loadTables } from '../../src/tables/bundled';

export const tables = loadTables();

/** Names of the starter jobs. */
export const starters = namesIn('templates');

/** Names of the starter jobs of whole panels, in `templates/panels`. */
export const panelStarters = namesIn('templates/panels');

function namesIn(folder: string): string[] {
  return readdirSync(folder).flatMap((name) => (name.endsWith('.yaml') ? [name.slice(0, -'.yaml'.length)] : []));
}

/** A starter job worked out; `change` edits its text first. */
export function planStarter(name: string, change: (text: string) => string = (text) => text): Buildable {
  const planned = tryStarter(name, change);
  if (!planned.buildable) throw new Error(JSON.stringify(planned.findings, null, 2));
  return planned;
}

/** The same, whether or not the form can be built. */
export function tryStarter(name: string, change: (text: string) => string = (text) => text): Planned {
  const { job, findings } = parseJob(change(readFileSync(`templates/${name}.yaml`, 'utf8')), tables);
  if (!job) throw new Error(JSON.stringify(findings, null, 2));
  return planJob(job, tables, findings);
}
