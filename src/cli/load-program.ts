import { existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';
import { setFlagsFromString } from 'node:v8';
import { Script } from 'node:vm';
import type * as Program from './start';

/** The program's one file, named by the build that bundles it: beside it lies what the same build kept of it compiled. */
declare const PROGRAM: string;
/** The node that built it. */
declare const BUILT_BY: string;

/**
 * A function is compiled a second time, for speed, once it has run this many bytes of its code, four times as many as V8 would wait for: of what one plan runs little
 * runs long enough to pay for that. A plan of three bends takes a fifth less time so and a third less work; what runs for seconds notices nothing.
 */
const LATER = '--interrupt-budget=500000';

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
  // Another node may not know the flag, and would say so to the user.
  if (process.version === BUILT_BY) setFlagsFromString(LATER);
  const kept = `${file}.compiled`;
  // The bundle holds ASCII only, which is quicker to read as such.
  const script = new Script(readFileSync(file, 'latin1'), {
    filename: file,
    ...(existsSync(kept) && { cachedData: readFileSync(kept) }),
  });
  const module = { exports: {} as typeof Program };
  const define = script.runInThisContext() as (...given: readonly unknown[]) => void;
  define(module, module.exports, createRequire(file), file);
  return { program: module.exports, compiled: () => script.createCachedData() };
}
