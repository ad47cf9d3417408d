/**
 * A finding is what the program says about a job: a mistake, a doubt or a remark. Findings are data; their
 * wording is made where they arise and they are printed in one place (cli/report.ts and the page).
 *
 * - `error`: the job is wrong or impossible; nothing is written.
 * - `warning`: doubtful but buildable.
 * - `note`: worth knowing.
 */
export interface Finding {
  /** Stable, lower-case words joined by hyphens, e.g. `unknown-metal`. */
  readonly code: string;
  readonly level: 'error' | 'warning' | 'note';
  /** Where in the job, e.g. `bend.radius.from` or `runs[1].to`; empty for the job as a whole. */
  readonly path: string;
  readonly message: string;
  /** What to change. */
  readonly hint: string;
  /** What was found, as text, for mistakes in a value. */
  readonly got?: string;
  /** What would do, as text. */
  readonly allowed?: string;
  /** Line in the job's text, counted from 1, where the text is known. */
  readonly line?: number;
}

type Extra = Pick<Finding, 'got' | 'allowed' | 'line'>;

/** Makes an error finding: the job is wrong or impossible. */
export function error(code: string, path: string, message: string, hint: string, extra: Extra = {}): Finding {
  return { code, level: 'error', path, message, hint, ...extra };
}

/** Makes a warning finding: doubtful but buildable. */
export function warning(code: string, path: string, message: string, hint: string, extra: Extra = {}): Finding {
  return { code, level: 'warning', path, message, hint, ...extra };
}

/** Makes a note: worth knowing, nothing to mend. */
export function note(code: string, path: string, message: string, hint: string, extra: Extra = {}): Finding {
  return { code, level: 'note', path, message, hint, ...extra };
}

/** Whether any finding forbids building the job. */
export function hasErrors(findings: readonly Finding[]): boolean {
  return findings.some((finding) => finding.level === 'error');
}

/** What a stage gives back: its value, or null where errors left nothing to give, and what it found. */
export interface Staged<Value> {
  readonly value: Value;
  readonly findings: readonly Finding[];
}
