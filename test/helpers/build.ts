import { execFileSync } from 'node:child_process';

/** Builds the program once before any test, so that the tests that start it start what the sources say. */
export default function setup(): void {
  execFileSync(process.execPath, ['src/build.mjs'], { stdio: 'inherit' });
}
