import { join, relative, resolve } from 'node:path';
import type { OutputFile } from '../base/drawing';
import { fileName } from '../base/file-name';
import type { Finding } from '../base/findings';
import type { LengthUnit } from '../base/units';
import { storeSet } from './files';
import type { Io } from './io';
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
  /** Ends the line of progress. */
  readonly stop: () => void;
}

/** Stores a set of files in the folder named by its title under `out`, and says so. */
export async function storeAndTell(io: Io, files: readonly OutputFile[], out: string, told: Told): Promise<void> {
  const { title, findings, units, list, openFirst, stop } = told;
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
