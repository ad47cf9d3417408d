import { readdir, readFile } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
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
  const from = places.get(starter) ?? '';
  const beside = await drawingBeside(from);
  // The drawing first: where it is there already, no job is left without the one it was drawn for.
  if (beside !== null) {
    const drawing = join(dirname(target), basename(beside));
    await storeNew(resolve(io.cwd, drawing), drawing, await readFile(beside));
    io.out(`Wrote ${drawing}.\n`);
  }
  await storeNew(resolve(io.cwd, target), target, await readFile(from));
  io.out(`Wrote ${target}. Look it over, change it, then: bendbuck plan ${target}\n`);
  return EXIT.done;
}

/** The drawing of a starter's outline, which has its name; null where it has none. */
async function drawingBeside(starter: string): Promise<string | null> {
  const drawing = starter.replace(/\.yaml$/u, '.svg');
  const names = await readdir(dirname(starter));
  return names.includes(basename(drawing)) ? drawing : null;
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
