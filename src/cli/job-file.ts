import { createReadStream } from 'node:fs';
import { resolve } from 'node:path';
import { decodeJob } from '../job/decode';
import { systemCode } from './file-trouble';
import { EXIT, Stop, type Io } from './io';

/** Far more than the longest job that is read; the rest of a longer file is left alone. Bytes. */
const MOST = 1024 * 1024;

/** The text of a job file, or of standard input for `-`. A file that cannot be read stops the command: the command line is wrong. */
export async function readJobFile(io: Io, path: string): Promise<string> {
  const bytes = await readBytes(io, path);
  const { text, problem } = decodeJob(bytes, bytes.length === MOST);
  if (text === null) throw new Stop(`${path}: ${problem}`, EXIT.wrong);
  return text;
}

async function readBytes(io: Io, path: string): Promise<Uint8Array> {
  try {
    return await firstBytes(path === '-' ? io.input() : createReadStream(resolve(io.cwd, path)));
  } catch (problem) {
    throw new Stop(`${path}: ${whyUnreadable(problem)}`, EXIT.wrong);
  }
}

async function firstBytes(stream: NodeJS.ReadableStream): Promise<Uint8Array> {
  const chunks: Buffer[] = [];
  let length = 0;
  for await (const chunk of stream) {
    chunks.push(Buffer.from(chunk));
    length += chunk.length;
    if (length >= MOST) break;
  }
  return Buffer.concat(chunks).subarray(0, MOST);
}

function whyUnreadable(problem: unknown): string {
  const code = systemCode(problem);
  if (code === 'ENOENT') return 'there is no such file';
  if (code === 'EISDIR') return 'this is a folder, not a job file';
  if (code === 'EACCES') return 'this file may not be read';
  return `the file cannot be read (${code ?? String(problem)})`;
}
