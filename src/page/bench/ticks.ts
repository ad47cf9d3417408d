/** What is ticked off at the bench, kept by the browser for each job: pure, apart from where it is kept. */

/** Ticked lines of one job's steps, and the step it is at. */
export interface Ticking {
  readonly step: number;
  /** `set-up/2`: the step's id and the line's number. */
  readonly done: readonly string[];
}

export const NOTHING_DONE: Ticking = { step: 0, done: [] };

/** Name under which a job's ticks are kept: another job, or the same with any number changed, begins anew. FNV-1a, 32 bits. */
export function keptAs(jobText: string): string {
  let hash = 0x811c9dc5;
  for (const character of jobText) hash = Math.imul(hash ^ (character.codePointAt(0) ?? 0), 0x01000193);
  return `bendbuck.bench.${(hash >>> 0).toString(16)}.${jobText.length}`;
}

/** The name of a step's line. */
export function lineName(step: string, line: number): string {
  return `${step}/${line}`;
}

/** With a line ticked, or no longer. */
export function ticked({ step, done }: Ticking, line: string): Ticking {
  return { step, done: done.includes(line) ? done.filter((one) => one !== line) : [...done, line] };
}

/** How many of a step's lines are ticked. */
export function countDone({ done }: Ticking, step: string, lines: number): number {
  return Array.from({ length: lines }, (_, line) => lineName(step, line)).filter((name) => done.includes(name)).length;
}

/** What was kept, as a text; nothing done where the text says nothing that can be read. */
export function readTicking(text: string | null): Ticking {
  try {
    const read: unknown = JSON.parse(text ?? '');
    if (typeof read !== 'object' || read === null || !('step' in read) || !('done' in read)) return NOTHING_DONE;
    const { step, done } = read;
    if (!Number.isSafeInteger(step) || typeof step !== 'number' || step < 0 || !Array.isArray(done))
      return NOTHING_DONE;
    return { step, done: done.filter((line) => typeof line === 'string') };
  } catch {
    return NOTHING_DONE;
  }
}

export function writeTicking(ticking: Ticking): string {
  return JSON.stringify(ticking);
}
