import { hasErrors } from '../base/findings';
import type { WorkedAssembly } from './assembly';
import { readFont } from './font';
import type { ExitCode, Io } from './io';
import { makeAndStore } from './make-and-store';
import type { MakeOptions } from './make-options';
import { openFirstOfAssembly } from './open-first';
import { startProgress } from './progress';

/** `make` of an assembly: every panel's files and how they are joined, in one folder, or nothing at all. */
export async function makeAssembly(
  io: Io,
  { planned, findings, units, tables }: WorkedAssembly,
  out: string,
  options: MakeOptions,
): Promise<ExitCode> {
  return makeAndStore(io, out, {
    progress: startProgress(io, 'drawing'),
    title: planned?.job.title ?? '',
    findings,
    units,
    list: options.list === true,
    openFirst: openFirstOfAssembly,
    files:
      planned?.buildable && !hasErrors(findings)
        ? async () => {
            const { makeAssemblyFiles } = await import('../output/panel/assembly/files');
            return makeAssemblyFiles(planned, { tables, font: await readFont() }, options);
          }
        : null,
  });
}
