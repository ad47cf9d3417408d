import {
  isAlias,
  isMap,
  isScalar,
  isSeq,
  LineCounter,
  parseDocument,
  type Document,
  type Node,
  type Pair,
  type YAMLError,
} from 'yaml';
import type { Finding } from '../base/findings';
import { finding } from '../findings/finding';
import { pathText, type Path } from './path';
import { shorten } from './show';

/** A job is a page of text; anything this long is something else, and is refused before it is read. Characters. */
const LONGEST = 64 * 1024;
/** Nothing in a job nests deeper than four; a title may hold brackets. */
const DEEPEST = 64;
/** Keys and values together; a job of forty offcuts has under 500. */
const MOST_VALUES = 5000;
/** One slip of the pen often upsets many lines after it. */
const MOST_UNREADABLE = 5;

/** A job file's text taken apart: plain data, and on which line each part stands. */
export interface Source {
  readonly data: unknown;
  /** Line of the key or list entry at a path, or of the nearest block around it; counted from 1. */
  readonly lineOf: (path: Path) => number | undefined;
}

interface Read {
  readonly source: Source | null;
  readonly findings: readonly Finding[];
}

/**
 * YAML 1.2 or JSON text → plain data. Anchors, aliases, tags, keys written twice and further documents are refused: a job
 * needs none. Never throws; takes time in proportion to the text.
 */
export function readSource(text: string): Read {
  if (text.length > LONGEST) {
    return stop(finding('job-too-long', '', { what: 'characters', count: text.length, most: LONGEST }));
  }
  if (nestsTooDeep(text)) return tooDeep();
  try {
    return readPlain(text);
  } catch (problem) {
    if (problem instanceof RangeError) return tooDeep();
    throw problem;
  }
}

function readPlain(text: string): Read {
  const counter = new LineCounter();
  // JSON may be indented with tabs, which YAML forbids; a tab inside a JSON string is not JSON, so none is lost.
  const plain = text.trimStart().startsWith('{') ? text.replaceAll('\t', ' ') : text;
  // uniqueKeys off: the library compares every key with every other, which takes minutes on a hostile file; the walk keeps a set.
  const document = parseDocument(plain, {
    version: '1.2',
    merge: false,
    uniqueKeys: false,
    lineCounter: counter,
    prettyErrors: false,
    stringKeys: true,
    logLevel: 'error',
  });
  const numbers = hashedNumbers(plain);
  if (numbers.length > 0) return { source: null, findings: numbers };
  const problems = [...document.errors, ...document.warnings];
  const lineAt = (offset: number): number => counter.linePos(offset).line;
  const unreadable = explainUnreadable(
    problems.filter(({ code }) => code !== 'TAG_RESOLVE_FAILED'),
    lineAt,
  );
  if (unreadable.length > 0) return { source: null, findings: unreadable };
  const { lines, findings, values } = walk(document, lineAt);
  if (values > MOST_VALUES) {
    return stop(finding('job-too-long', '', { what: 'keys and values', count: null, most: MOST_VALUES }));
  }
  if (findings.length > 0) return { source: null, findings };
  if (problems.length > 0) return { source: null, findings: explainUnreadable(problems, lineAt) };
  return {
    source: { data: document.toJS({ maxAliasCount: 0 }), lineOf: (path) => nearestLine(lines, path) },
    findings: [],
  };
}

/** A gauge or a screw written as in the shop, `#18`, whose value YAML takes for a comment. */
const HASHED = /^[^#"']*\b(thickness|size):\s+#(\d+)\b/u;

function hashedNumbers(text: string): Finding[] {
  return text.split('\n').flatMap((line, index): Finding[] => {
    const [, key, number] = HASHED.exec(line) ?? [];
    if (key === undefined || number === undefined) return [];
    const means = key === 'thickness' ? 'gauge' : 'screw';
    return [{ ...finding('hash-comment', key, { key, number, means }), line: index + 1 }];
  });
}

/** Where a place of the job stands, or what it would stand in; none where the job says nothing of it. */
function nearestLine(lines: ReadonlyMap<string, number>, path: Path): number | undefined {
  if (path.length === 0) return lines.get(pathText(path));
  for (let depth = path.length; depth > 0; depth--) {
    const line = lines.get(pathText(path.slice(0, depth)));
    if (line !== undefined) return line;
  }
  return undefined;
}

/** Nesting by brackets and by `- - -` on one line, roughly and cheaply, before anything recursive reads the text. */
function nestsTooDeep(text: string): boolean {
  let [depth, most] = [0, 0];
  for (const character of text) {
    if (character === '[' || character === '{') most = Math.max(most, ++depth);
    else if (character === ']' || character === '}') depth--;
  }
  // A row of dashes in a comment is a line ruled across the page, not nesting.
  return (
    most > DEEPEST ||
    text.split('\n').some((line) => !line.trimStart().startsWith('#') && /(?:[-?]\s+){17}/u.test(line))
  );
}

function tooDeep(): Read {
  return stop(finding('job-too-deep', ''));
}

function stop(why: Finding): Read {
  return { source: null, findings: [why] };
}

interface Walked {
  /** Line of each path there is, by `pathText`. */
  readonly lines: Map<string, number>;
  readonly findings: Finding[];
  readonly values: number;
}

/** Once through the whole document: where everything stands, and what a job may not hold. Stops soon after there is too much. */
function walk(document: Document.Parsed, lineAt: (offset: number) => number): Walked {
  const lines = new Map<string, number>();
  const findings: Finding[] = [];
  let values = 0;

  const refuse = (found: Finding, line: number): void => {
    if (findings.length < MOST_UNREADABLE) findings.push({ ...found, line });
  };
  const mark = (path: Path, line: number): void => {
    if (!lines.has(pathText(path))) lines.set(pathText(path), line);
  };
  const plain = (node: Node, path: Path): void => {
    const line = lineAt(node.range?.[0] ?? 0);
    if (isAlias(node)) refuse(finding('yaml-alias', pathText(path), { name: shorten(node.source) }), line);
    else if (node.anchor !== undefined)
      refuse(finding('yaml-anchor', pathText(path), { name: shorten(node.anchor) }), line);
    else if (node.tag !== undefined)
      refuse(finding('yaml-tag', pathText(path), { tag: shorten(node.tag.replace('tag:yaml.org,2002:', '!!')) }), line);
  };
  const visitPairs = (pairs: readonly Pair<Node, Node | null>[], path: Path): void => {
    const seen = new Set<string>();
    for (const { key, value } of pairs) {
      const name = isScalar(key) ? String(key.value) : '';
      const line = lineAt(key.range?.[0] ?? 0);
      plain(key, [...path, name]);
      if (seen.has(name)) refuse(finding('key-twice', pathText([...path, name]), { key: shorten(name) }), line);
      seen.add(name);
      mark([...path, name], line);
      if (value) visit(value, [...path, name]);
    }
  };
  const visit = (node: Node, path: Path): void => {
    if (++values > MOST_VALUES) return;
    plain(node, path);
    mark(path, lineAt(node.range?.[0] ?? 0));
    if (isMap<Node, Node | null>(node)) visitPairs(node.items, path);
    else if (isSeq<Node>(node)) node.items.forEach((item, index) => visit(item, [...path, index]));
  };

  if (document.contents) visit(document.contents, []);
  return { lines, findings, values };
}

/** The first few mistakes of spelling, one a line. */
function explainUnreadable(problems: readonly YAMLError[], lineAt: (offset: number) => number): Finding[] {
  const byLine = new Map<number, YAMLError>();
  for (const problem of problems) {
    const line = lineAt(problem.pos[0]);
    if (!byLine.has(line)) byLine.set(line, problem);
  }
  return [...byLine]
    .sort(([a], [b]) => a - b)
    .slice(0, MOST_UNREADABLE)
    .map(([line, { code, message }]) => ({
      ...finding('unreadable', '', { slip: code, library: shorten(message.replace(/\.$/u, '')) }),
      line,
    }));
}
