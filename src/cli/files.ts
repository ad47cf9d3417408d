import { createHash, randomUUID } from 'node:crypto';
import { existsSync, mkdirSync, renameSync, rmdirSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { lstat, readdir, readFile, writeFile } from 'node:fs/promises';
import { basename, dirname, join, sep } from 'node:path';
import { setImmediate as nextTurn } from 'node:timers/promises';
import type { OutputFile } from '../base/drawing';
import { InternalError } from '../base/errors';
import { EXIT, Stop } from './io';

/** The list of a set's files that makes a folder known as ours; no dates, no paths of the machine. */
const MANIFEST = 'bendbuck.json';
/** Paths our files may have inside their folder. */
const SAFE = /^[A-Za-z0-9_-][A-Za-z0-9_.-]*(?:\/[A-Za-z0-9_-][A-Za-z0-9_.-]*)*$/u;

interface Manifest {
  readonly madeBy: 'bendbuck';
  readonly files: Readonly<Record<string, string>>;
}

/**
 * Stores a whole set of files as `folder`, or leaves everything as it was: written beside it first, then renamed into place.
 * A folder that is there already is replaced only where it is one of ours in which nothing was added or changed.
 */
export async function storeSet(folder: string, files: readonly OutputFile[]): Promise<void> {
  for (const { path } of files)
    if (!SAFE.test(path)) throw new InternalError(`an output file has an unsafe path: ${path}`);
  await asStop(`cannot write to ${dirname(folder)}`, async () => {
    await refuseStranger(folder);
    const fresh = join(dirname(folder), `.${basename(folder)}-${randomUUID()}`);
    const made: string[] = [];
    const tidy = (): void => {
      rmSync(fresh, { recursive: true, force: true });
      for (const parent of made.toReversed()) removeIfEmpty(parent);
    };
    const letGo = onSignal(tidy);
    try {
      makeFolders(dirname(folder), made);
      mkdirSync(fresh);
      await writeAll(fresh, files);
      swapIn(fresh, folder);
    } finally {
      tidy();
      letGo();
    }
  });
}

/** Writes one file that is not there yet, never over another. `name` is what the user called it. */
export async function storeNew(file: string, name: string, content: Uint8Array): Promise<void> {
  await asStop(`cannot write ${name}`, async () => {
    if (await isThere(file))
      throw new Stop(`${name} exists already; it is left as it is. Name another file.`, EXIT.unwritten);
    await writeFile(file, content, { flag: 'wx' });
  });
}

/** File by file without a pause inside one, and a pause between two: a signal is heard there, when no write is under way. */
async function writeAll(folder: string, files: readonly OutputFile[]): Promise<void> {
  for (const { path, content } of files) {
    const target = join(folder, ...path.split('/'));
    mkdirSync(dirname(target), { recursive: true });
    writeFileSync(target, content, { flag: 'wx' });
    await nextTurn();
  }
  const manifest: Manifest = {
    madeBy: 'bendbuck',
    files: Object.fromEntries(files.map(({ path, content }) => [path, digest(content)])),
  };
  writeFileSync(join(folder, MANIFEST), `${JSON.stringify(manifest, null, 2)}\n`, { flag: 'wx' });
}

/** Makes a folder and those above it that are missing, and notes them in `made`; one by one: on some file systems making them in one go never comes back. */
function makeFolders(folder: string, made: string[]): void {
  if (isFolder(folder)) return;
  if (dirname(folder) !== folder) makeFolders(dirname(folder), made);
  try {
    mkdirSync(folder);
    made.push(folder);
  } catch (problem) {
    if (!isFolder(folder)) throw problem;
  }
}

function isFolder(path: string): boolean {
  try {
    return statSync(path).isDirectory();
  } catch {
    return false;
  }
}

function removeIfEmpty(folder: string): void {
  try {
    rmdirSync(folder);
  } catch {
    // It holds the set, or what someone else put there meanwhile.
  }
}

/** Puts the fresh folder in place of the old one; where that fails the old one is put back. In one go: no signal is heard half-way. */
function swapIn(fresh: string, folder: string): void {
  if (!existsSync(folder)) return renameSync(fresh, folder);
  const old = `${fresh}-old`;
  renameSync(folder, old);
  try {
    renameSync(fresh, folder);
  } catch (problem) {
    renameSync(old, folder);
    throw problem;
  }
  try {
    rmSync(old, { recursive: true, force: true });
  } catch {
    throw new Stop(
      `The new files are in ${folder}, but the earlier ones could not be taken away; what is left of them is in ${old}.`,
      EXIT.unwritten,
    );
  }
}

/** Stops unless there is nothing at `folder`, or an unchanged folder of ours. */
async function refuseStranger(folder: string): Promise<void> {
  const found = await lstat(folder).catch(() => null);
  if (!found) return;
  if (!found.isDirectory())
    throw new Stop(
      `${folder} is not a folder (a file or a link); it is left as it is. Move it, or choose another --out.`,
      EXIT.unwritten,
    );
  const manifest = await readManifest(folder);
  if (!manifest)
    throw new Stop(
      `${folder} was not made by bendbuck; it is left as it is. Move it, or choose another --out.`,
      EXIT.unwritten,
    );
  const touched = await touchedFiles(folder, manifest);
  if (touched.length > 0) {
    throw new Stop(
      `${folder} holds files you added or changed; it is left as it is. Move them elsewhere first:\n${touched
        .slice(0, 20)
        .map((path) => `  ${path}\n`)
        .join('')}`,
      EXIT.unwritten,
    );
  }
}

async function readManifest(folder: string): Promise<Manifest | null> {
  try {
    const read = JSON.parse(await readFile(join(folder, MANIFEST), 'utf8')) as {
      readonly madeBy?: unknown;
      readonly files?: unknown;
    } | null;
    return read?.madeBy === 'bendbuck' && typeof read.files === 'object' && read.files !== null
      ? (read as Manifest)
      : null;
  } catch {
    return null;
  }
}

/** Files of a set that are not as we left them: added, or with other content. Files taken away are no loss of ours to guard. */
async function touchedFiles(folder: string, manifest: Manifest): Promise<string[]> {
  const touched: string[] = [];
  for (const entry of await readdir(folder, { recursive: true, withFileTypes: true })) {
    if (entry.isDirectory()) continue;
    const path = join(entry.parentPath, entry.name)
      .slice(folder.length + 1)
      .split(sep)
      .join('/');
    if (path === MANIFEST) continue;
    const unchanged =
      entry.isFile() &&
      Object.hasOwn(manifest.files, path) &&
      digest(await readFile(join(folder, path))) === manifest.files[path];
    if (!unchanged) touched.push(path);
  }
  return touched.sort();
}

function digest(content: string | Uint8Array): string {
  return createHash('sha256').update(content).digest('hex');
}

async function isThere(path: string): Promise<boolean> {
  return (await lstat(path).catch(() => null)) !== null;
}

/**
 * Ctrl-C while writing tidies up and exits as the shell expects, however often it is pressed. Until then nothing of ours is on the
 * disk, and the signal's own effect is the quickest. Returns what undoes the watch.
 */
function onSignal(tidy: () => void): () => void {
  const signals = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;
  const exit = (_: NodeJS.Signals, number: number): void => {
    tidy();
    process.exit(128 + number);
  };
  for (const signal of signals) process.on(signal, exit);
  return () => {
    for (const signal of signals) process.off(signal, exit);
  };
}

/** How the system's own errors are coded; Node's begin with ERR_. */
const SYSTEM_ERROR = /^E[A-Z0-9]+$/u;

/** A refusal of the file system as a plain message; anything else passes through. */
async function asStop(what: string, action: () => Promise<void>): Promise<void> {
  try {
    await action();
  } catch (problem) {
    const code = (problem as NodeJS.ErrnoException).code;
    if (problem instanceof Stop || code === undefined || !SYSTEM_ERROR.test(code)) throw problem;
    throw new Stop(`${what}: ${REASONS[code] ?? code}. Nothing was changed.`, EXIT.unwritten);
  }
}

const REASONS: Readonly<Record<string, string>> = {
  EACCES: 'you may not write there',
  EPERM: 'you may not write there',
  EROFS: 'the disk is read-only',
  ENOSPC: 'the disk is full',
  ENOTDIR: 'part of that path is a file, not a folder',
  EEXIST: 'part of that path is a file, not a folder',
  ENOENT: 'there is no such place',
  ENAMETOOLONG: 'the path is too long',
  ENOTEMPTY: 'another bendbuck is writing there',
};
