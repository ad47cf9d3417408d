import { join, relative, resolve } from 'node:path';
import { fileName } from '../base/file-name';
import { EXIT, type ExitCode, type Io } from './io';
import { putInOrder, storeSet } from './files';
import { readFont } from './font';
import type { MakeOptions } from './make-options';
import { work } from './plan';
import { openFirst } from './open-first';
import { startProgress } from './progress';
import { printFindings } from './report';

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
    const folder = join(resolve(io.cwd, out), fileName(plan.title));
    const kept = await storeSet(folder, files);
    progress.stop();
    io.err(printFindings(findings, units, io.errColour));
    const shown = relative(io.cwd, folder) || folder;
    io.out(`Wrote ${files.length} files to ${shown}\n`);
    if (options.list === true) for (const file of files) io.out(`  ${file.path}\n`);
    if (kept.length > 0) io.err(`Kept what was put there meanwhile:\n${kept.map((path) => `  ${path}\n`).join('')}`);
    io.out(openFirst(planned.job.cut.with, shown));
    return EXIT.done;
  } finally {
    progress.stop();
  }
}
