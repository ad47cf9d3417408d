import type { Io } from './io';

export interface Progress {
  /** What is being done now. */
  say(what: string): void;
  /** Takes the line away; harmless twice. */
  stop(): void;
}

/**
 * A line on the terminal that says what is being done, and goes away by itself. It stands there from the start: once the sums run, nothing can
 * print it, so a line that waited to see whether the work is long would come too late.
 */
export function startProgress(io: Io, first: string): Progress {
  if (!io.progress) return { say: () => undefined, stop: () => undefined };
  let shown = false;
  const say = (what: string): void => {
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
