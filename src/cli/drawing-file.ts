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

/** Why a file beside a job is not read. */
export type Unread = 'outside' | 'missing' | 'folder' | 'forbidden' | 'other' | { readonly bytes: number };

/** The bytes of a file that a job names beside itself or in a folder below; or why they are not read. No link leads out of the folder. */
export async function readBeside(
  io: Io,
  jobPath: string,
  { name, most }: { readonly name: string; readonly most: number },
): Promise<{ readonly bytes: Uint8Array } | { readonly unread: Unread }> {
  const folder = jobPath === '-' ? io.cwd : dirname(resolve(io.cwd, jobPath));
  try {
    const [home, file] = await Promise.all([realpath(folder), realpath(join(folder, name))]);
    if (!isWithin(home, file)) return { unread: 'outside' };
    const seen = await stat(file);
    if (!seen.isFile()) return { unread: 'folder' };
    if (seen.size > most) return { unread: { bytes: seen.size } };
    return { bytes: await readFile(file) };
  } catch (problem) {
    return { unread: TROUBLES[systemCode(problem) ?? ''] ?? 'other' };
  }
}

/** The drawing that a panel's job names: its text, or null where it names none; or what is wrong with the file. */
export async function readDrawing(
  io: Io,
  jobPath: string,
  { panel }: PanelJob,
): Promise<{ readonly text: string | null } | { readonly refused: Finding }> {
  const name = panel.kind === 'traced' ? panel.outline.file : null;
  if (name === null) return { text: null };
  const read = await readBeside(io, jobPath, { name, most: LONGEST_FILE });
  return 'bytes' in read ? { text: new TextDecoder().decode(read.bytes) } : { refused: refusal(name, read.unread) };
}

function refusal(name: string, unread: Unread): Finding {
  if (unread === 'outside') return finding('drawing-outside', PATH, { got: name });
  if (typeof unread === 'string') return finding('drawing-unread', PATH, { file: name, trouble: unread });
  const kind = formatOf(name) === 'dxf' ? 'DXF' : 'SVG';
  return finding('drawing-too-big', PATH, { kind, megabytes: Math.round(unread.bytes / 1e6) });
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
