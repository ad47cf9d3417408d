import { randomUUID } from 'node:crypto';
import { lstatSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { hostname, uptime } from 'node:os';
import { basename, dirname, join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { EXIT, Stop } from './io';
import { systemCode } from './file-trouble';
import { isThere, makeFolders, removeIfEmpty } from './folders';
import { keepOrRemove } from './old-set';

/**
 * A hidden folder beside a set, `.NAME.bendbuck`, in which the set is written before it takes its place and to which the earlier one goes:
 *   writer.json  who writes     new/  the set being written     old/  the earlier one, once it is moved aside
 * There is one for a set, so that two programs never write it at once; one whose writer is gone is put in order by the next run.
 */
export interface Workplace {
  readonly folder: string;
  readonly fresh: string;
  readonly old: string;
  /** Whether it is still there, and still ours. */
  isOurs(): boolean;
  /** Takes it away; what is in `old` stays. */
  clear(): void;
}

interface Writer {
  readonly madeBy: 'bendbuck';
  readonly process: number;
  readonly host: string;
  readonly token: string;
}

const WRITER = 'writer.json';
/** What this process holds itself: a writer with our number and another token is an earlier one that had the same. */
const held = new Set<string>();
/** A writer that has not come to an end for so long is taken to be gone, ms. */
const LONG_GONE = 3_600_000;
/** How often, and how long apart (ms), one looks whether another writer is done. */
const LOOKS = 100;
const BETWEEN_LOOKS = 100;

/** Takes the workplace of a set, when another writer leaves it, and makes the folders above it, noted in `made`. Stops where that takes too long. */
export async function takeWorkplace(set: string, made: string[]): Promise<Workplace> {
  const folder = join(dirname(set), `.${basename(set)}.bendbuck`);
  const token = randomUUID();
  for (let look = 0; look < LOOKS; look += 1) {
    makeFolders(dirname(set), made);
    clearStale(dirname(set));
    if (moveIn(folder, token)) return workplace(folder, token);
    await pause(BETWEEN_LOOKS);
  }
  throw new Stop(`${whyTaken(folder, set)} Nothing was changed.`, EXIT.unwritten);
}

function whyTaken(folder: string, set: string): string {
  const writer = readWriter(folder);
  return writer
    ? `Another bendbuck (process ${writer.process} on ${writer.host}) is writing ${set}. Let it end, then make it again.`
    : `${folder} is in the way, and was not made by bendbuck. Look at what it holds and move it.`;
}

function workplace(folder: string, token: string): Workplace {
  const [fresh, old] = [join(folder, 'new'), join(folder, 'old')];
  const isOurs = (): boolean => readWriter(folder)?.token === token;
  return {
    folder,
    fresh,
    old,
    isOurs,
    clear: () => {
      if (isOurs()) {
        rmSync(fresh, { recursive: true, force: true });
        if (!isThere(old)) {
          rmSync(join(folder, WRITER), { force: true });
          removeIfEmpty(folder);
        }
      }
      held.delete(token);
    },
  };
}

/** The folder appears whole, with its writer in it, or not at all: a folder that holds something is never replaced by a rename. */
function moveIn(folder: string, token: string): boolean {
  const place = `${folder}-${token}`;
  const writer: Writer = { madeBy: 'bendbuck', process: process.pid, host: hostname(), token };
  held.add(token);
  try {
    mkdirSync(place);
    writeFileSync(join(place, WRITER), `${JSON.stringify(writer)}\n`, { flag: 'wx' });
    renameSync(place, folder);
    return true;
  } catch (problem) {
    rmSync(place, { recursive: true, force: true });
    // Another's is there; or ours, while still empty, was taken away by another that puts things in order.
    if (isThere(folder) || systemCode(problem) === 'ENOENT') return false;
    throw problem;
  }
}

/** Puts in order what writers that are gone left in a folder: a set that was moved aside comes back, what was half written goes. */
export function clearStale(parent: string): void {
  for (const entry of readdirSync(parent, { withFileTypes: true })) {
    const [, name] = /^\.(.+?)\.bendbuck(?:-[0-9a-f-]{36})?$/u.exec(entry.name) ?? [];
    if (name === undefined || !entry.isDirectory()) continue;
    try {
      clearIfStale(join(parent, entry.name), join(parent, name));
    } catch {
      // It stays for the next run, or for someone who may write there.
    }
  }
}

function clearIfStale(folder: string, set: string): void {
  if (removeIfEmpty(folder)) return;
  const writer = readWriter(folder);
  if (!writer || !isGone(writer, join(folder, WRITER))) return;
  // Under a name of its own first: of two that find it one gets it.
  const own = join(dirname(set), `.${basename(set)}.bendbuck-${randomUUID()}`);
  renameSync(folder, own);
  rmSync(join(own, 'new'), { recursive: true, force: true });
  const old = join(own, 'old');
  if (isThere(old) && isThere(set)) keepOrRemove(old, set);
  else if (isThere(old)) renameSync(old, set);
  if (isThere(old)) return;
  rmSync(join(own, WRITER), { force: true });
  removeIfEmpty(own);
}

function readWriter(folder: string): Writer | null {
  try {
    const read: unknown = JSON.parse(readFileSync(join(folder, WRITER), 'utf8'));
    return isWriter(read) ? read : null;
  } catch {
    return null;
  }
}

function isWriter(read: unknown): read is Writer {
  if (typeof read !== 'object' || read === null) return false;
  if (!('madeBy' in read && 'process' in read && 'host' in read && 'token' in read)) return false;
  return (
    read.madeBy === 'bendbuck' &&
    Number.isInteger(read.process) &&
    typeof read.host === 'string' &&
    typeof read.token === 'string'
  );
}

/** Whether a writer ended without clearing its workplace: its process is no more, or what has its number came later. */
function isGone({ process: number, host, token }: Writer, file: string): boolean {
  const since = Date.now() - (lstatSync(file, { throwIfNoEntry: false })?.mtimeMs ?? Date.now());
  if (since > LONG_GONE) return true;
  if (host !== hostname()) return false;
  if (number === process.pid) return !held.has(token);
  return since > 1000 * uptime() || !isRunning(number);
}

function isRunning(number: number): boolean {
  try {
    process.kill(number, 0);
    return true;
  } catch (problem) {
    return systemCode(problem) !== 'ESRCH';
  }
}
