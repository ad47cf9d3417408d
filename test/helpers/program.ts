import { spawn, spawnSync } from 'node:child_process';
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { Readable } from 'node:stream';
import { run } from '../../src/cli/program';

const MAIN = resolve('dist/main.js');

export interface Result {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** Runs a command line in this process, as `dist/main.js` would, with what it prints caught. */
export async function bendbuck(cwd: string, args: readonly string[], input = ''): Promise<Result> {
  let [out, err] = ['', ''];
  const code = await run(args, {
    cwd,
    input: () => Readable.from([Buffer.from(input)]),
    out: (text) => (out += text),
    err: (text) => (err += text),
    width: Infinity,
    colour: false,
    errColour: false,
    progress: false,
  });
  return { code, out, err };
}

/** Starts the real program and waits for it. */
export function spawned(cwd: string, args: readonly string[], input?: string): Result {
  const { status, stdout, stderr } = spawnSync(process.execPath, [MAIN, ...args], {
    cwd,
    encoding: 'utf8',
    timeout: 60_000,
    maxBuffer: 64 * 1024 * 1024,
    ...(input === undefined ? {} : { input }),
  });
  return { code: status, out: stdout, err: stderr };
}

/** Starts the real program and does not wait. */
export function start(cwd: string, args: readonly string[]): ReturnType<typeof spawn> {
  return spawn(process.execPath, [MAIN, ...args], { cwd });
}

/** Every file below a folder with its bytes, by path. */
export function snapshot(folder: string): Record<string, string> {
  const paths = readdirSync(folder, { recursive: true, encoding: 'utf8' }).sort();
  return Object.fromEntries(
    paths
      .filter((path) => statSync(join(folder, path)).isFile())
      .map((path) => [path, readFileSync(join(folder, path), 'base64')]),
  );
}
