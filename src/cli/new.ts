import { readdir, readFile } from 'node:fs/promises';
import { basename, join, resolve } from 'node:path';
import { nearest } from '../base/suggest';
import { storeNew } from './files';
import { EXIT, Stop, type ExitCode, type Io } from './io';
import { packageFolder } from './package-folder';

/** The starter jobs: those of one bend, and in a folder of their own those of whole panels. */
const FOLDERS = [join(packageFolder(), 'templates'), join(packageFolder(), 'templates', 'panels')] as const;

/** `new`: lists the starters, or copies one to a file that does not exist yet. */
export async function newJob(io: Io, starter: string | undefined, file: string | undefined): Promise<ExitCode> {
  const places = new Map((await Promise.all(FOLDERS.map(startersIn))).flat());
  const names = [...places.keys()];
  const textOf = (name: string): Promise<string> => readFile(places.get(name) ?? '', 'utf8');
  if (starter === undefined) {
    for (const name of names) io.out(`${name.padEnd(20)} ${firstComment(await textOf(name))}\n`);
    io.out('\nbendbuck new STARTER [FILE] copies one to begin from.\n');
    return EXIT.done;
  }
  if (!names.includes(starter)) {
    const near = nearest(starter, names);
    throw new Stop(
      `there is no starter called ${JSON.stringify(starter)}${near === null ? '' : `; did you mean ${near}?`}\nStarters: ${names.join(', ')}`,
      EXIT.wrong,
    );
  }
  const target = file ?? `${starter}.yaml`;
  await storeNew(resolve(io.cwd, target), target, await readFile(places.get(starter) ?? ''));
  io.out(`Wrote ${target}. Look it over, change it, then: bendbuck plan ${target}\n`);
  return EXIT.done;
}

/** Names and paths of the starters in a folder. */
async function startersIn(folder: string): Promise<(readonly [string, string])[]> {
  const files = (await readdir(folder)).filter((name) => name.endsWith('.yaml')).sort();
  return files.map((name) => [basename(name, '.yaml'), join(folder, name)]);
}

function firstComment(text: string): string {
  const [line = ''] = text.split('\n');
  return line.replace(/^#\s*/u, '');
}
