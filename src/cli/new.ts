import { readdir, readFile } from 'node:fs/promises';
import { basename, dirname, join, relative, resolve } from 'node:path';
import { nearest } from '../base/suggest';
import { makeFolder, storeNew } from './files';
import { EXIT, Stop, type ExitCode, type Io } from './io';
import { packageFolder } from './package-folder';

const TEMPLATES = join(packageFolder(), 'templates');
/** The starter jobs: those of one bend, and in folders of their own those of whole panels and of several panels together. */
const FOLDERS = [TEMPLATES, join(TEMPLATES, 'panels'), join(TEMPLATES, 'assemblies')] as const;

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
  // What it names first: where one of those is there already, no job is left without it.
  for (const beside of await filesBeside(from)) {
    const copy = join(dirname(target), relative(dirname(from), beside));
    await makeFolder(resolve(io.cwd, dirname(copy)), dirname(copy));
    await storeNew(resolve(io.cwd, copy), copy, await readFile(beside));
    io.out(`Wrote ${copy}.\n`);
  }
  await storeNew(resolve(io.cwd, target), target, await readFile(from));
  io.out(`Wrote ${target}. Look it over, change it, then: bendbuck plan ${target}\n`);
  return EXIT.done;
}

/** What a starter names, which has its name: the drawing of its outline, or its panels in a folder. */
async function filesBeside(starter: string): Promise<string[]> {
  const own = starter.replace(/\.yaml$/u, '');
  const names = await readdir(dirname(starter));
  const drawing = names.includes(`${basename(own)}.svg`) ? [`${own}.svg`] : [];
  const panels = names.includes(basename(own)) ? (await readdir(own)).sort().map((name) => join(own, name)) : [];
  return [...drawing, ...panels];
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
