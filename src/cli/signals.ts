import { setImmediate as nextTurn } from 'node:timers/promises';

const SIGNALS = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;

/**
 * While `action` runs, Ctrl-C and its like call `tidy` and end the program as the shell expects, however often they come; one that comes
 * in the middle of what cannot be interrupted is heard right after it, and ends the program then.
 */
export async function tidiedOnSignal(tidy: () => void, action: () => Promise<void>): Promise<void> {
  const exit = (_: NodeJS.Signals, number: number): void => {
    tidy();
    process.exit(128 + number);
  };
  for (const signal of SIGNALS) process.on(signal, exit);
  try {
    await action();
  } finally {
    try {
      tidy();
      // What came meanwhile waits for the loop to turn: once to look at what is waiting, once more to have looked since.
      await nextTurn();
      await nextTurn();
    } finally {
      for (const signal of SIGNALS) process.off(signal, exit);
    }
  }
}
