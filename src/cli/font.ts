import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { packageFolder } from './package-folder';

/** The typeface of the printed drawings, which the build puts beside the program. */
export async function readFont(): Promise<Uint8Array> {
  return readFile(join(packageFolder(), 'dist/DejaVuSansCondensed.ttf'));
}
