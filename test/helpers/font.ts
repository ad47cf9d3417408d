import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

/** The typeface the printed drawings are written in. */
export const font = new Uint8Array(
  readFileSync(createRequire(import.meta.url).resolve('dejavu-fonts-ttf/ttf/DejaVuSansCondensed.ttf')),
);
