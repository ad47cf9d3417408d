import type { Beside } from '../output/files';

/** The program's edges, so that its commands can be run without a terminal. */
export interface Io {
  readonly cwd: string;
  /** What `-` reads; opened where it is read. */
  readonly input: () => NodeJS.ReadableStream;
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  /** Columns of the terminal stdout is; endless where it is none. */
  readonly width: number;
  /** Whether stdout is a terminal that shows colour. */
  readonly colour: boolean;
  /** Whether stderr is one. */
  readonly errColour: boolean;
  /** Whether stderr is a terminal that may show a line of progress. */
  readonly progress: boolean;
  /** Starts a thread for what can be done beside the rest; absent where there is none. */
  readonly beside?: () => Promise<Beside>;
}

/** 0 done · 1 our fault · 2 the job, or the command, is wrong · 3 files could not be written. */
export const EXIT = { done: 0, fault: 1, wrong: 2, unwritten: 3 } as const;
export type ExitCode = (typeof EXIT)[keyof typeof EXIT];

/** What stops a command with a plain message and an exit code; everything else that is thrown is our own fault. */
export class Stop extends Error {
  override readonly name = 'Stop';
  constructor(
    message: string,
    readonly code: ExitCode,
  ) {
    super(message);
  }
}
