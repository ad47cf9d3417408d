import { InternalError } from '../base/errors';
import type { Finding, Words } from '../base/findings';
import { entryOf } from './catalogue';
import type { Listener } from './say-value';

/** A finding with its words, as `plan.json` holds it and every reader prints it. */
export interface SaidFinding extends Words, Pick<Finding, 'code' | 'level' | 'path' | 'line'> {}

/** The words of a finding in the listener's unit: what was found and what to do, and where a value is wrong what it is and what would do. */
export function sayFinding(finding: Finding, to: Listener): Words {
  const entry = entryOf(finding.code);
  if (!entry) throw new InternalError(`no such finding in the catalogue: ${finding.code}`);
  const said = entry.say(finding, to);
  return finding.bends ? { ...said, message: `${finding.bends.join(', ')}: ${said.message}` } : said;
}

/** Findings with their words, in the order they came. */
export function sayFindings(findings: readonly Finding[], to: Listener): SaidFinding[] {
  return findings.map((finding): SaidFinding => {
    const { code, level, path, line } = finding;
    return { code, level, path, ...sayFinding(finding, to), ...(line === undefined ? {} : { line }) };
  });
}
