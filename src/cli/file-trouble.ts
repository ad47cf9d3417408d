import { EXIT, Stop } from './io';

/** How the system's own errors are coded; Node's begin with ERR_. */
const SYSTEM_ERROR = /^E[A-Z0-9]+$/u;

/** The system's code of an error; null for errors of another kind. */
export function systemCode(problem: unknown): string | null {
  if (!(problem instanceof Error) || !('code' in problem)) return null;
  return typeof problem.code === 'string' && SYSTEM_ERROR.test(problem.code) ? problem.code : null;
}

/** A refusal of the file system as a plain message; anything else passes through. */
export async function asStop<Value>(what: string, action: () => Promise<Value>): Promise<Value> {
  try {
    return await action();
  } catch (problem) {
    const code = systemCode(problem);
    if (problem instanceof Stop || code === null) throw problem;
    throw new Stop(`${what}: ${REASONS[code] ?? code}. Nothing was changed.`, EXIT.unwritten);
  }
}

const REASONS: Readonly<Record<string, string>> = {
  EACCES: 'you may not write there',
  EPERM: 'you may not write there',
  EROFS: 'the disk is read-only',
  ENOSPC: 'the disk is full',
  EDQUOT: 'your share of the disk is full',
  ENOTDIR: 'part of that path is a file, not a folder',
  EEXIST: 'part of that path is a file, not a folder',
  ENOENT: 'there is no such place',
  ENAMETOOLONG: 'the path is too long',
};
