import { existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';
import { Script } from 'node:vm';
import type * as Program from './start';

/** The program's one file, named by the build that bundles it: beside it lies what the same build kept of it compiled. */
declare const PROGRAM: string;

interface Loaded {
  readonly program: typeof Program;
  /** What is compiled of it by now, to be kept for later starts. */
  readonly compiled: () => Buffer;
}

/**
 * Loads the program with what the build kept of it compiled, which takes half of the time of compiling it anew. What another V8 compiled is
 * refused by V8 itself: the program then starts as it would without.
 */
export function loadProgram(file = fileURLToPath(new URL(PROGRAM, import.meta.url))): Loaded {
  const kept = `${file}.compiled`;
  // The bundle holds ASCII only, which is quicker to read as such.
  const script = new Script(`(function (module, exports, require, __filename) {${readFileSync(file, 'latin1')}\n})`, {
    filename: file,
    ...(existsSync(kept) && { cachedData: readFileSync(kept) }),
  });
  const module = { exports: {} as typeof Program };
  const define = script.runInThisContext() as (...given: readonly unknown[]) => void;
  define(module, module.exports, createRequire(file), file);
  return { program: module.exports, compiled: () => script.createCachedData() };
}
