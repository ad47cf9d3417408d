import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';

/** The typeface of the printed drawings, from its package. */
export async function readFont(): Promise<Uint8Array> {
  return readFile(createRequire(import.meta.url).resolve('dejavu-fonts-ttf/ttf/DejaVuSansCondensed.ttf'));
}
