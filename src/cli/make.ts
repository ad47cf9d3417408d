import { resolve } from 'node:path';
import { EXIT, type ExitCode, type Io } from './io';
import { putInOrder } from './files';
import { readFont } from './font';
import type { MakeOptions } from './make-options';
import { work } from './plan';
import { openFirst } from './open-first';
import { startProgress } from './progress';
import { printFindings } from './report';
import { storeAndTell } from './store-and-tell';

/** `make`: every file of the job in a folder of its own, or nothing at all. */
export async function make(io: Io, path: string, out: string, options: MakeOptions = {}): Promise<ExitCode> {
  putInOrder(resolve(io.cwd, out));
  const progress = startProgress(io, 'working the form out');
  try {
    const worked = await work(io, path);
    if (worked.kind === 'panel') {
      progress.stop();
      const { makePanel } = await import('./panel');
      return await makePanel(io, worked, out, options);
    }
    if (worked.kind === 'assembly') {
      progress.stop();
      const { makeAssembly } = await import('./assembly');
      return await makeAssembly(io, worked, out, options);
    }
    const { plan, planned, tables, findings, units } = worked;
    if (!planned?.buildable) {
      progress.stop();
      io.err(printFindings(findings, units, io.errColour));
      io.err('Nothing was written.\n');
      return EXIT.wrong;
    }
    progress.say('drawing');
    const { makeFiles } = await import('../output/files');
    const files = await makeFiles(planned, { tables, font: await readFont() }, options, {
      progress: (done, total) => {
        progress.say(`laying parts out on boards, ${Math.round((100 * done) / total)} %`);
      },
    });
    progress.say('writing');
    await storeAndTell(io, files, out, {
      title: plan.title,
      findings,
      units,
      list: options.list === true,
      openFirst: (shown) => openFirst(planned.job.cut.with, shown),
      stop: () => progress.stop(),
    });
    return EXIT.done;
  } finally {
    progress.stop();
  }
}
