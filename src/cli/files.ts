import { lstatSync, mkdirSync, renameSync, writeFileSync } from 'node:fs';
import { mkdir, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { setImmediate as nextTurn } from 'node:timers/promises';
import type { OutputFile } from '../base/drawing';
import { InternalError } from '../base/errors';
import { asStop, systemCode } from './file-trouble';
import { isThere, removeIfEmpty } from './folders';
import { EXIT, Stop } from './io';
import { digest, MANIFEST, missingFiles, readManifest, touchedFiles, type Manifest } from './manifest';
import { keepOrRemove } from './old-set';
import { tidiedOnSignal } from './signals';
import { clearStale, takeWorkplace, type Workplace } from './workplace';

/** Paths our files may have inside their folder. */
const SAFE = /^[A-Za-z0-9_-][A-Za-z0-9_.-]*(?:\/[A-Za-z0-9_-][A-Za-z0-9_.-]*)*$/u;

/**
 * Stores a whole set of files as `folder`, or leaves everything as it was: written beside it first, then renamed into place.
 * A folder that is there already is replaced only where it is one of ours in which nothing was added or changed. Gives the paths of
 * files the maker put there meanwhile: they are in the new set.
 */
export async function storeSet(folder: string, files: readonly OutputFile[]): Promise<readonly string[]> {
  for (const { path } of files)
    if (!SAFE.test(path)) throw new InternalError(`an output file has an unsafe path: ${path}`);
  return asStop(`cannot write to ${dirname(folder)}`, async () => {
    refuseStranger(folder);
    const made: string[] = [];
    let place: Workplace | null = null;
    let kept: readonly string[] = [];
    const tidy = (): void => {
      place?.clear();
      for (const parent of made.toReversed()) removeIfEmpty(parent);
    };
    await tidiedOnSignal(tidy, async () => {
      place = await takeWorkplace(folder, made);
      refuseStranger(folder);
      const manifest = await writeAll(place, files);
      kept = swapIn(place, folder, manifest);
    });
    return kept;
  });
}

/** Puts in order what runs that were killed left below `parent`, where there is such a folder. */
export function putInOrder(parent: string): void {
  try {
    clearStale(parent);
  } catch {
    // No folder, or one that may not be read: there is nothing to put in order.
  }
}

/** Writes one file that is not there yet, never over another. `name` is what the user called it. */
export async function storeNew(file: string, name: string, content: Uint8Array): Promise<void> {
  await asStop(`cannot write ${name}`, async () => {
    if (isThere(file))
      throw new Stop(`${name} exists already; it is left as it is. Name another file.`, EXIT.unwritten);
    await writeFile(file, content, { flag: 'wx' });
  });
}

/** A folder that is to hold files, unless it is there. */
export async function makeFolder(folder: string, name: string): Promise<void> {
  if (name === '.' || isThere(folder)) return;
  await asStop(`cannot make the folder ${name}`, async () => {
    await mkdir(folder);
  });
}

/** File by file without a pause inside one, and a pause between two: a signal is heard there, when no write is under way. */
async function writeAll(place: Workplace, files: readonly OutputFile[]): Promise<Manifest> {
  const sums: Record<string, string> = {};
  const folders = new Set<string>();
  try {
    mkdirSync(place.fresh);
    for (const { path, content } of files) {
      for (const above of foldersOf(path)) if (!folders.has(above)) mkdirSync(join(place.fresh, above));
      for (const above of foldersOf(path)) folders.add(above);
      writeFileSync(join(place.fresh, path), content, { flag: 'wx' });
      sums[path] = digest(content);
      await nextTurn();
    }
    const manifest: Manifest = { madeBy: 'bendbuck', files: sums };
    writeFileSync(join(place.fresh, MANIFEST), `${JSON.stringify(manifest, null, 2)}\n`, { flag: 'wx' });
    return manifest;
  } catch (problem) {
    if (systemCode(problem) === 'ENOENT') throw takenAway(place);
    throw problem;
  }
}

/** `a/b/c.txt` → `a`, `a/b`. */
function foldersOf(path: string): string[] {
  const steps = path.split('/').slice(0, -1);
  return steps.map((_, index) => steps.slice(0, index + 1).join('/'));
}

function takenAway({ folder }: Workplace): Stop {
  return new Stop(
    `${folder}, where the files were being written, was taken away meanwhile, or something in it. Nothing was changed; make it again.`,
    EXIT.unwritten,
  );
}

/** Puts the fresh folder in place of the old one; where that fails, or it is not whole, the old one is put back. In one go: no signal is heard half-way. */
function swapIn(place: Workplace, folder: string, manifest: Manifest): readonly string[] {
  const { fresh, old } = place;
  if (!place.isOurs() || missingFiles(fresh, manifest).length > 0) throw takenAway(place);
  if (!isThere(folder)) {
    renameSync(fresh, folder);
    return [];
  }
  renameSync(folder, old);
  try {
    renameSync(fresh, folder);
  } catch (problem) {
    renameSync(old, folder);
    throw problem;
  }
  try {
    return keepOrRemove(old, folder);
  } catch {
    throw new Stop(
      `The new files are in ${folder}, but the earlier ones could not be taken away; what is left of them is in ${old}.`,
      EXIT.unwritten,
    );
  }
}

/** Stops unless there is nothing at `folder`, or an unchanged folder of ours. */
function refuseStranger(folder: string): void {
  const refuse = (why: string): Stop => new Stop(`${folder} ${why}`, EXIT.unwritten);
  const found = lstatSync(folder, { throwIfNoEntry: false });
  if (!found) return;
  if (!found.isDirectory())
    throw refuse('is not a folder (a file or a link); it is left as it is. Move it, or choose another --out.');
  const manifest = readManifest(folder);
  if (!manifest) throw refuse('was not made by bendbuck; it is left as it is. Move it, or choose another --out.');
  const touched = touchedFiles(folder, manifest);
  if (touched.length > 0)
    throw refuse(
      `holds files you added or changed; it is left as it is. Move them elsewhere first:\n${touched
        .slice(0, 20)
        .map((path) => `  ${path}\n`)
        .join('')}`,
    );
}
