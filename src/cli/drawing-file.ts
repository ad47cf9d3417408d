import { readFile, realpath, stat } from 'node:fs/promises';
import { dirname, join, relative, isAbsolute, resolve } from 'node:path';
import type { Finding } from '../base/findings';
import { finding } from '../findings/finding';
import { formatOf } from '../job/panel/outline';
import type { PanelJob } from '../job/panel/read';
import { LONGEST_FILE } from '../panel/trace/trace';
import { systemCode } from './file-trouble';
import type { Io } from './io';

const PATH = 'outline.file';

/** The drawing that a panel's job names: its text, or null where it names none; or what is wrong with the file. */
export async function readDrawing(
  io: Io,
  jobPath: string,
  { panel }: PanelJob,
): Promise<{ readonly text: string | null } | { readonly refused: Finding }> {
  const name = panel.kind === 'traced' ? panel.outline.file : null;
  if (name === null) return { text: null };
  const folder = jobPath === '-' ? io.cwd : dirname(resolve(io.cwd, jobPath));
  try {
    const [home, file] = await Promise.all([realpath(folder), realpath(join(folder, name))]);
    // A link may lead out of the folder where its name does not.
    if (!isWithin(home, file)) return { refused: finding('drawing-outside', PATH, { got: name }) };
    const seen = await stat(file);
    if (!seen.isFile()) return { refused: unread(name, 'folder') };
    if (seen.size > LONGEST_FILE) return { refused: tooBig(name, seen.size) };
    return { text: new TextDecoder().decode(await readFile(file)) };
  } catch (problem) {
    return { refused: unread(name, TROUBLES[systemCode(problem) ?? ''] ?? 'other') };
  }
}

function isWithin(folder: string, file: string): boolean {
  const way = relative(folder, file);
  return way !== '' && !isAbsolute(way) && way.split(/[/\\]/u)[0] !== '..';
}

const TROUBLES: Readonly<Record<string, 'missing' | 'folder' | 'forbidden'>> = {
  ENOENT: 'missing',
  ENOTDIR: 'missing',
  EISDIR: 'folder',
  EACCES: 'forbidden',
  EPERM: 'forbidden',
};

function unread(file: string, trouble: 'missing' | 'folder' | 'forbidden' | 'other'): Finding {
  return finding('drawing-unread', PATH, { file, trouble });
}

function tooBig(name: string, bytes: number): Finding {
  const kind = formatOf(name) === 'dxf' ? 'DXF' : 'SVG';
  return finding('drawing-too-big', PATH, { kind, megabytes: Math.round(bytes / 1e6) });
}
