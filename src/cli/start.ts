import { EXIT, type ExitCode } from './io';
import { run } from './program';

/** Runs one command line in this process's terminal and gives back its exit code. */
export function start(args: readonly string[]): Promise<ExitCode> {
  for (const stream of [process.stdout, process.stderr]) {
    stream.on('error', ({ code }: NodeJS.ErrnoException) => {
      // A reader that goes away (`bendbuck plan job | head`) is no fault of ours.
      if (code === 'EPIPE') return;
      process.stderr.write(`cannot write what was to be printed (${code ?? 'unknown'})\n`);
      process.exit(EXIT.unwritten);
    });
  }

  const colour = !process.env['NO_COLOR'] && process.env['TERM'] !== 'dumb';

  return run(args, {
    cwd: process.cwd(),
    input: () => process.stdin,
    out: (text) => process.stdout.write(text),
    err: (text) => process.stderr.write(text),
    width: process.stdout.isTTY ? process.stdout.columns : Infinity,
    colour: process.stdout.isTTY && colour,
    errColour: process.stderr.isTTY && colour,
    progress: process.stderr.isTTY && process.env['TERM'] !== 'dumb',
    beside: async () => (await import('./beside')).startBeside(),
  });
}

/** What the thread beside runs. */
export async function answer(): Promise<void> {
  (await import('./answer')).answer();
}

/** What the build runs a few jobs through. */
export { run };
