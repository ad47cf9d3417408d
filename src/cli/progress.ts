import type { Io } from './io';

/** Work shorter than this needs no word about it, ms. */
const PATIENCE = 1000;

export interface Progress {
  /** What is being done now; shown once the work has taken over a second. */
  say(what: string): void;
  /** Takes the line away; harmless twice. */
  stop(): void;
}

/** A line on the terminal that says what is being done, after a second, and goes away by itself. */
export function startProgress(io: Io, first: string): Progress {
  if (!io.progress) return { say: () => undefined, stop: () => undefined };
  const began = Date.now();
  let shown = false;
  const say = (what: string): void => {
    if (Date.now() - began < PATIENCE) return;
    shown = true;
    io.err(`\r\u001B[K${what} …`);
  };
  say(first);
  return {
    say,
    stop: () => {
      if (shown) io.err('\r\u001B[K');
      shown = false;
    },
  };
}
