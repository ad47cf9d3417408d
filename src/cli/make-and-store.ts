import { join, relative, resolve } from 'node:path';
import type { OutputFile } from '../base/drawing';
import { fileName } from '../base/file-name';
import type { Finding } from '../base/findings';
import type { LengthUnit } from '../base/units';
import { storeSet } from './files';
import { EXIT, type ExitCode, type Io } from './io';
import type { Progress } from './progress';
import { printFindings } from './report';

/** What is said of a set of files once it is stored. */
export interface Told {
  readonly title: string;
  readonly findings: readonly Finding[];
  readonly units: LengthUnit;
  /** Whether every file is named. */
  readonly list: boolean;
  /** What to open first, by the folder as shown. */
  readonly openFirst: (folder: string) => string;
}

/** A set of files to be made. */
export interface Making extends Told {
  readonly progress: Progress;
  /** Draws them; null where the job is wrong or impossible. */
  readonly files: (() => Promise<OutputFile[]>) | null;
}

/** Makes a set of files and stores it whole, or says why there is none and writes nothing. */
export async function makeAndStore(io: Io, out: string, { progress, files, ...told }: Making): Promise<ExitCode> {
  try {
    if (!files) {
      progress.stop();
      io.err(printFindings(told.findings, told.units, io.errColour));
      io.err('Nothing was written.\n');
      return EXIT.wrong;
    }
    progress.say('drawing');
    const made = await files();
    progress.say('writing');
    await storeAndTell(io, made, out, { ...told, stop: () => progress.stop() });
    return EXIT.done;
  } finally {
    progress.stop();
  }
}

/** Stores a set of files in the folder named by its title under `out`, and says so; `stop` ends the line of progress. */
async function storeAndTell(
  io: Io,
  files: readonly OutputFile[],
  out: string,
  { title, findings, units, list, openFirst, stop }: Told & { readonly stop: () => void },
): Promise<void> {
  const folder = join(resolve(io.cwd, out), fileName(title));
  const kept = await storeSet(folder, files);
  stop();
  io.err(printFindings(findings, units, io.errColour));
  const shown = relative(io.cwd, folder) || folder;
  io.out(`Wrote ${files.length} files to ${shown}\n`);
  if (list) for (const file of files) io.out(`  ${file.path}\n`);
  if (kept.length > 0) io.err(`Kept what was put there meanwhile:\n${kept.map((path) => `  ${path}\n`).join('')}`);
  io.out(openFirst(shown));
}
