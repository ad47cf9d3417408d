import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const made: string[] = [];

/** A fresh folder, gone after the tests of the file. */
export function freshFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'bendbuck-test-'));
  made.push(folder);
  return folder;
}

/** What `helpers/setup.ts` does after each file of tests. */
export function removeFreshFolders(): void {
  for (const folder of made.splice(0)) rmSync(folder, { recursive: true, force: true });
}
