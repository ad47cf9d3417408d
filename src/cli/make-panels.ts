import type { OutputFile } from '../base/drawing';
import { hasErrors } from '../base/findings';
import type { WorkedAssembly } from './assembly';
import { readFont } from './font';
import type { ExitCode, Io } from './io';
import { makeAndStore } from './make-and-store';
import type { MakeOptions } from './make-options';
import { openFirstOfAssembly, openFirstOfPanel } from './open-first';
import type { WorkedPanel } from './panel';
import { startProgress } from './progress';

type Worked = ({ readonly kind: 'panel' } & WorkedPanel) | ({ readonly kind: 'assembly' } & WorkedAssembly);

/** `make` of a panel, or of an assembly: every file in a folder of its own, or nothing at all. */
export async function makePanels(io: Io, worked: Worked, out: string, options: MakeOptions): Promise<ExitCode> {
  const { planned, findings, units } = worked;
  return makeAndStore(io, out, {
    progress: startProgress(io, 'drawing'),
    title: planned?.job.title ?? '',
    findings,
    units,
    list: options.list === true,
    openFirst: worked.kind === 'panel' ? openFirstOfPanel : openFirstOfAssembly,
    files: filesOf(worked, options),
  });
}

/** Draws the files; null where what was asked for is wrong or impossible. */
function filesOf(worked: Worked, options: MakeOptions): (() => Promise<OutputFile[]>) | null {
  const { tables, findings } = worked;
  if (hasErrors(findings)) return null;
  if (worked.kind === 'panel') {
    const { planned } = worked;
    if (!planned?.buildable) return null;
    return async () => {
      const { makePanelFiles } = await import('../output/panel/files');
      return makePanelFiles(planned, { tables, font: await readFont() }, options);
    };
  }
  const { planned } = worked;
  if (!planned?.buildable) return null;
  return async () => {
    const { makeAssemblyFiles } = await import('../output/panel/assembly/files');
    return makeAssemblyFiles(planned, { tables, font: await readFont() }, options);
  };
}
