import { createHash } from 'node:crypto';
import { lstatSync, readdirSync, readFileSync } from 'node:fs';
import { join, sep } from 'node:path';

/** The list of a set's files that makes a folder known as ours; no dates, no paths of the machine. */
export const MANIFEST = 'bendbuck.json';

export interface Manifest {
  readonly madeBy: 'bendbuck';
  /** SHA-256 of each file, by its path in the set. */
  readonly files: Readonly<Record<string, string>>;
}

/** The list of a folder of ours; null where the folder is none. */
export function readManifest(folder: string): Manifest | null {
  try {
    const read: unknown = JSON.parse(readFileSync(join(folder, MANIFEST), 'utf8'));
    return isManifest(read) ? read : null;
  } catch {
    return null;
  }
}

function isManifest(read: unknown): read is Manifest {
  if (typeof read !== 'object' || read === null || !('madeBy' in read) || !('files' in read)) return false;
  const { madeBy, files } = read;
  return (
    madeBy === 'bendbuck' &&
    typeof files === 'object' &&
    files !== null &&
    Object.values(files).every((sum) => typeof sum === 'string')
  );
}

/** Files of a set that are not as we left them: added, or with other content. Files taken away are no loss of ours to guard. */
export function touchedFiles(folder: string, manifest: Manifest): string[] {
  return filesIn(folder).filter((path) => path !== MANIFEST && !isAsListed(folder, manifest, path));
}

/** Files of the list that are not in the folder as listed. */
export function missingFiles(folder: string, manifest: Manifest): string[] {
  return Object.keys(manifest.files).filter((path) => !isAsListed(folder, manifest, path));
}

/** Everything below a folder that is no folder, by its path from there with `/` between, links unfollowed, sorted. */
export function filesIn(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => !entry.isDirectory())
    .map((entry) =>
      join(entry.parentPath, entry.name)
        .slice(folder.length + 1)
        .split(sep)
        .join('/'),
    )
    .sort();
}

/** Whether a file is the one the list speaks of, byte for byte. */
export function isAsListed(folder: string, manifest: Manifest, path: string): boolean {
  if (!Object.hasOwn(manifest.files, path)) return false;
  try {
    return lstatSync(join(folder, path)).isFile() && digest(readFileSync(join(folder, path))) === manifest.files[path];
  } catch {
    return false;
  }
}

/** SHA-256 in hexadecimal. */
export function digest(content: string | Uint8Array): string {
  return createHash('sha256').update(content).digest('hex');
}
