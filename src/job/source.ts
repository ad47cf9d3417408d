import { isAlias, isCollection, isMap, isNode, isPair, LineCounter, parseDocument, visit, type Document } from 'yaml';
import { error, type Finding } from '../base/findings';
import type { Path } from './path';

/** A job is a page of text; anything this long is something else, and is refused before it is read. Characters. */
const LONGEST = 256 * 1024;
/** Nothing in a job nests deeper than four; a title may hold brackets. */
const DEEPEST = 64;

/** A job file's text taken apart: plain data, and on which line each part stands. */
export interface Source {
  readonly data: unknown;
  /** Line of the value or key at a path, or of the nearest block around it; counted from 1. */
  readonly lineOf: (path: Path) => number | undefined;
}

/** YAML 1.2 or JSON text → plain data. Anchors, aliases, tags and further documents are refused: a job needs none. Never throws. */
export function readSource(text: string): { readonly source: Source | null; readonly findings: readonly Finding[] } {
  if (text.length > LONGEST) {
    return stop('job-too-long', `the job is ${text.length} characters long; a job is a page of text, at most ${LONGEST}`, 'check that this is the right file', { got: `${text.length} characters`, allowed: `at most ${LONGEST}` });
  }
  if (deepest(text) > DEEPEST) return tooDeep();
  const lines = new LineCounter();
  // JSON may be indented with tabs, which YAML forbids; a tab inside a JSON string is not JSON, so none is lost.
  const plain = text.trimStart().startsWith('{') ? text.replaceAll('\t', ' ') : text;
  let document: Document.Parsed;
  try {
    document = parseDocument(plain, { version: '1.2', merge: false, uniqueKeys: true, lineCounter: lines, prettyErrors: false, stringKeys: true, logLevel: 'error' });
  } catch (problem) {
    if (problem instanceof RangeError) return tooDeep();
    throw problem;
  }
  const findings = [...[...document.errors, ...document.warnings].map((problem) => unreadable(problem.message, lines.linePos(problem.pos[0]).line)), ...forbidden(document, lines)];
  if (findings.length > 0) return { source: null, findings };
  return { source: { data: document.toJS({ maxAliasCount: 0 }), lineOf: (path) => lineOf(document, lines, path) }, findings: [] };
}

/** Nesting by brackets and by `- - -` on one line, roughly and cheaply, before anything recursive reads the text. */
function deepest(text: string): number {
  let [depth, most] = [0, 0];
  for (const character of text) {
    if (character === '[' || character === '{') most = Math.max(most, ++depth);
    else if (character === ']' || character === '}') depth--;
  }
  const dashes = text.match(/(?:[-?]\s+){17}/u);
  return dashes ? Infinity : most;
}

function tooDeep(): ReturnType<typeof readSource> {
  return stop('job-too-deep', 'the job is nested deeper than any job needs', 'check that this is the right file');
}

function stop(code: string, message: string, hint: string, extra: { got?: string; allowed?: string } = {}): ReturnType<typeof readSource> {
  return { source: null, findings: [error(code, '', message, hint, extra)] };
}

function unreadable(message: string, line: number): Finding {
  const [first = ''] = message.split('\n');
  return error('unreadable', '', `the job is not proper YAML or JSON: ${first.replace(/\.?$/u, '')}`, 'mend this line; the starters show how a job is written', { line });
}

function forbidden(document: Document.Parsed, lines: LineCounter): Finding[] {
  const findings: Finding[] = [];
  const refuse = (what: string, offset: number): void => {
    findings.push(error('unreadable', '', `a job may not use YAML ${what}`, 'write the value out', { line: lines.linePos(offset).line }));
  };
  visit(document, {
    Node: (_, node) => {
      const offset = node.range?.[0] ?? 0;
      if (isAlias(node)) refuse('aliases (*name)', offset);
      else if (node.anchor !== undefined) refuse('anchors (&name)', offset);
      else if (node.tag !== undefined && !isCollection(node)) refuse('tags (!name)', offset);
      return findings.length > 5 ? visit.BREAK : undefined;
    },
  });
  return findings;
}

function lineOf(document: Document.Parsed, lines: LineCounter, path: Path): number | undefined {
  for (let depth = path.length; depth >= 0; depth--) {
    const found = depth === 0 ? document.contents : keyNode(document, path.slice(0, depth));
    if (isNode(found) && found.range) return lines.linePos(found.range[0]).line;
  }
  return undefined;
}

/** The key's own node where the path ends in a map, else the list entry's. */
function keyNode(document: Document.Parsed, path: Path): unknown {
  const parent: unknown = path.length > 1 ? document.getIn(path.slice(0, -1), true) : document.contents;
  const last = path.at(-1);
  if (isMap(parent)) return parent.items.find((pair) => isPair(pair) && isNode(pair.key) && String(pair.key) === String(last))?.key;
  return isCollection(parent) ? parent.get(last, true) : undefined;
}
