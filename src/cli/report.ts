import type { Finding } from '../base/findings';
import type { LengthUnit } from '../base/units';
import { onOneLine } from './clean';
import { sayFindings, type SaidFinding } from '../findings/say';

/** Findings as lines of text, in words of the unit: the one place where they are printed. */
export function printFindings(findings: readonly Finding[], units: LengthUnit, colour: boolean): string {
  return sayFindings(findings, { units })
    .map((finding) => printFinding(finding, colour))
    .join('');
}

const PAINT = { error: '31;1', warning: '33;1', note: '36' } as const;

function printFinding({ level, path, line, message, got, allowed, hint, code }: SaidFinding, colour: boolean): string {
  const where = [line === undefined ? '' : `line ${line}`, onOneLine(path)].filter((part) => part !== '').join(', ');
  const lines = [
    `${paint(level, PAINT[level], colour)}${where === '' ? '' : ` at ${where}`}: ${onOneLine(message)} [${code}]`,
    ...(got === undefined ? [] : [`    got:     ${onOneLine(got)}`]),
    ...(allowed === undefined ? [] : [`    allowed: ${onOneLine(allowed)}`]),
    ...(hint === '' ? [] : [`    try:     ${onOneLine(hint)}`]),
  ];
  return `${lines.join('\n')}\n`;
}

/** Text in a terminal colour, where the terminal shows any. */
export function paint(text: string, style: string, colour: boolean): string {
  return colour ? `\u001B[${style}m${text}\u001B[0m` : text;
}
