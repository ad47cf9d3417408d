import { at } from '../../../base/at';
import type { OutputFile } from '../../../base/drawing';
import { fileName } from '../../../base/file-name';
import { sayFindings } from '../../../findings/say';
import type { Tables } from '../../../tables/tables';
import type { FileOptions } from '../../files';
import { planText } from '../../plan/plan-text';
import { makePanelFiles } from '../files';
import { unlikeNames } from '../unlike-names';
import { toAssemblyPlan } from './assembly-plan';
import { writeAssemblySheet } from './assembly-sheet';
import type { PlannedAssembly } from './plan-assembly';

type Buildable = PlannedAssembly & { readonly buildable: true };

/** Everything `make` stores for an assembly: a folder for each panel that is not another's mirror image, the assembly's sheet and plan. */
export async function makeAssemblyFiles(
  planned: Buildable,
  given: { readonly tables: Tables; readonly font: Uint8Array },
  options: FileOptions = {},
): Promise<OutputFile[]> {
  const { job, members, findings } = planned;
  const sets: OutputFile[] = [];
  const own = members.filter(({ mirrors }) => mirrors === null);
  const folders = unlikeNames(own.map(({ name }) => fileName(name)));
  for (const [index, { planned: panel }] of own.entries()) {
    const files = await makePanelFiles(panel, given, options);
    sets.push(...files.map((file) => ({ ...file, path: `${at(folders, index)}/${file.path}` })));
  }
  const plan = toAssemblyPlan(planned, sayFindings(findings, { units: job.units }));
  return [
    { path: 'assembly.html', content: writeAssemblySheet(planned), mime: 'text/html' },
    { path: 'plan.json', content: planText(plan), mime: 'application/json' },
    ...sets,
  ];
}
