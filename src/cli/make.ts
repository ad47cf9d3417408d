import { resolve } from 'node:path';
import type { ExitCode, Io } from './io';
import { putInOrder } from './files';
import { readFont } from './font';
import type { MakeOptions } from './make-options';
import { work } from './plan';
import { openFirst } from './open-first';
import { startProgress } from './progress';
import { makeAndStore } from './make-and-store';

/** `make`: every file of the job in a folder of its own, or nothing at all. */
export async function make(io: Io, path: string, out: string, options: MakeOptions = {}): Promise<ExitCode> {
  putInOrder(resolve(io.cwd, out));
  const progress = startProgress(io, 'working the form out');
  try {
    const worked = await work(io, path);
    if (worked.kind !== 'bend') {
      progress.stop();
      const { makePanels } = await import('./make-panels');
      return await makePanels(io, worked, out, options);
    }
    const { plan, planned, tables, findings, units } = worked;
    return await makeAndStore(io, out, {
      progress,
      title: plan.title,
      findings,
      units,
      list: options.list === true,
      openFirst: (shown) => (planned?.buildable ? openFirst(planned.job.cut.with, shown) : ''),
      files: planned?.buildable
        ? async () => {
            const { makeFiles } = await import('../output/files');
            return makeFiles(
              planned,
              { tables, font: await readFont(), ...(io.beside && { beside: await io.beside() }) },
              options,
              {
                progress: (done, total) => {
                  progress.say(`laying parts out on boards, ${Math.round((100 * done) / total)} %`);
                },
              },
            );
          }
        : null,
    });
  } finally {
    progress.stop();
  }
}
