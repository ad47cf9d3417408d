import { mkdirSync, readdirSync, renameSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { isThere, removeIfEmpty } from './folders';
import { filesIn, isAsListed, MANIFEST, readManifest } from './manifest';

/**
 * Takes an earlier set away file by file, each looked at once more; what is not as we left it is the maker's and goes on to the set that
 * took its place, under a name that is free there. Gives the paths of what was kept, as they are in that set.
 */
export function keepOrRemove(old: string, set: string): string[] {
  const manifest = readManifest(old);
  const kept: string[] = [];
  const move = (path: string): void => {
    const to = freeName(set, path);
    mkdirSync(dirname(join(set, to)), { recursive: true });
    renameSync(join(old, path), join(set, to));
    kept.push(to);
  };
  for (const path of filesIn(old)) {
    if (manifest && path === MANIFEST) continue;
    if (manifest && isAsListed(old, manifest, path)) rmSync(join(old, path), { force: true });
    else move(path);
  }
  // The list goes last: as long as it is there, an interrupted clearing can be gone on with.
  if (manifest) rmSync(join(old, MANIFEST), { force: true });
  removeEmptyFolders(old);
  return kept;
}

/** `notes.txt`, or `notes.txt.kept`, `notes.txt.kept-2` … where there is one already. */
function freeName(set: string, path: string): string {
  let name = path;
  for (let count = 1; isThere(join(set, name)); count += 1) name = `${path}.kept${count === 1 ? '' : `-${count}`}`;
  return name;
}

/** Folders that hold nothing, from the innermost; others stay. An empty one the maker added is no loss. */
function removeEmptyFolders(folder: string): void {
  for (const entry of readdirSync(folder, { withFileTypes: true }))
    if (entry.isDirectory()) removeEmptyFolders(join(folder, entry.name));
  removeIfEmpty(folder);
}
