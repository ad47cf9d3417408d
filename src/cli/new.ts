import { readdir, readFile } from 'node:fs/promises';
import { basename, join, resolve } from 'node:path';
import { nearest } from '../base/suggest';
import { storeNew } from './files';
import { EXIT, Stop, type ExitCode, type Io } from './io';
import { packageFolder } from './package-folder';

/** The starter jobs. */
const TEMPLATES = join(packageFolder(), 'templates');

/** `new`: lists the starters, or copies one to a file that does not exist yet. */
export async function newJob(io: Io, starter: string | undefined, file: string | undefined): Promise<ExitCode> {
  const names = (await readdir(TEMPLATES))
    .filter((name) => name.endsWith('.yaml'))
    .map((name) => basename(name, '.yaml'))
    .sort();
  if (starter === undefined) {
    for (const name of names) io.out(`${name.padEnd(20)} ${await firstComment(name)}\n`);
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
  await storeNew(resolve(io.cwd, target), target, await readFile(join(TEMPLATES, `${starter}.yaml`)));
  io.out(`Wrote ${target}. Look it over, change it, then: bendbuck plan ${target}\n`);
  return EXIT.done;
}

async function firstComment(name: string): Promise<string> {
  const [line = ''] = (await readFile(join(TEMPLATES, `${name}.yaml`), 'utf8')).split('\n');
  return line.replace(/^#\s*/u, '');
}
