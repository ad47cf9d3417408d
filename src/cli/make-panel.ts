import type { WorkedPanel } from './panel';
import { readFont } from './font';
import type { ExitCode, Io } from './io';
import { makeAndStore } from './make-and-store';
import type { MakeOptions } from './make-options';
import { openFirstOfPanel } from './open-first';
import { startProgress } from './progress';

/** `make` of a panel: every file in a folder of its own, or nothing at all. */
export async function makePanel(
  io: Io,
  { planned, findings, units, tables }: WorkedPanel,
  out: string,
  options: MakeOptions,
): Promise<ExitCode> {
  return makeAndStore(io, out, {
    progress: startProgress(io, 'drawing'),
    title: planned?.job.title ?? '',
    findings,
    units,
    list: options.list === true,
    openFirst: openFirstOfPanel,
    files: planned?.buildable
      ? async () => {
          const { makePanelFiles } = await import('../output/panel/files');
          return makePanelFiles(planned, { tables, font: await readFont() }, options);
        }
      : null,
  });
}
