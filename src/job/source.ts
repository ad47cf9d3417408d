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
import { error, type Finding } from '../base/findings';
import { pathText, type Path } from './path';
import { shorten } from './show';

/** A job is a page of text; anything this long is something else, and is refused before it is read. Characters. */
const LONGEST = 64 * 1024;
/** Nothing in a job nests deeper than four; a title may hold brackets. */
const DEEPEST = 64;
/** Keys and values together; a job of forty runs has under 500. */
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
    return stop(
      'job-too-long',
      `the job is ${text.length} characters long; a job is a page of text, at most ${LONGEST}`,
      { got: `${text.length} characters`, allowed: `at most ${LONGEST}` },
    );
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
  const problems = [...document.errors, ...document.warnings];
  const lineAt = (offset: number): number => counter.linePos(offset).line;
  const unreadable = explainUnreadable(
    problems.filter(({ code }) => code !== 'TAG_RESOLVE_FAILED'),
    lineAt,
  );
  if (unreadable.length > 0) return { source: null, findings: unreadable };
  const { lines, findings, values } = walk(document, lineAt);
  if (values > MOST_VALUES) {
    return stop('job-too-long', `the job holds more than ${MOST_VALUES} keys and values; a job is a page of text`, {
      allowed: `at most ${MOST_VALUES} keys and values`,
    });
  }
  if (findings.length > 0) return { source: null, findings };
  if (problems.length > 0) return { source: null, findings: explainUnreadable(problems, lineAt) };
  return {
    source: { data: document.toJS({ maxAliasCount: 0 }), lineOf: (path) => nearestLine(lines, path) },
    findings: [],
  };
}

function nearestLine(lines: ReadonlyMap<string, number>, path: Path): number | undefined {
  for (let depth = path.length; depth >= 0; depth--) {
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
  return stop('job-too-deep', 'the job is nested deeper than any job needs');
}

function stop(code: string, message: string, extra: { got?: string; allowed?: string } = {}): Read {
  return { source: null, findings: [error(code, '', message, 'check that this is the right file', extra)] };
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

  const refuse = (code: string, path: Path, message: string, hint: string, line: number): void => {
    if (findings.length < MOST_UNREADABLE) findings.push(error(code, pathText(path), message, hint, { line }));
  };
  const mark = (path: Path, line: number): void => {
    if (!lines.has(pathText(path))) lines.set(pathText(path), line);
  };
  const plain = (node: Node, path: Path): void => {
    const line = lineAt(node.range?.[0] ?? 0);
    if (isAlias(node))
      refuse(
        'yaml-alias',
        path,
        `a job may not use YAML aliases (*${shorten(node.source)})`,
        'write the value out',
        line,
      );
    else if (node.anchor !== undefined)
      refuse('yaml-anchor', path, `a job may not use YAML anchors (&${shorten(node.anchor)})`, 'remove it', line);
    else if (node.tag !== undefined)
      refuse(
        'yaml-tag',
        path,
        `a job may not use YAML tags (${shorten(node.tag.replace('tag:yaml.org,2002:', '!!'))})`,
        'remove it; write the value alone',
        line,
      );
  };
  const visitPairs = (pairs: readonly Pair<Node, Node | null>[], path: Path): void => {
    const seen = new Set<string>();
    for (const { key, value } of pairs) {
      const name = isScalar(key) ? String(key.value) : '';
      const line = lineAt(key.range?.[0] ?? 0);
      plain(key, [...path, name]);
      if (seen.has(name))
        refuse('key-twice', [...path, name], `“${shorten(name)}” is written twice`, 'keep one of the two', line);
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

/** The commoner ways of getting YAML wrong, by the library's own codes: what is wrong, and what to do. */
const SLIPS: Readonly<Partial<Record<YAMLError['code'], readonly [string, string]>>> = {
  MULTIPLE_DOCS: ['a second job begins here, and a file holds one', 'put it in a file of its own'],
  TAB_AS_INDENT: ['a line begins with a tab', 'indent with spaces'],
  BAD_INDENT: [
    'a line is indented differently from its neighbours, or a { or [ is not closed',
    'line up the keys of one block; close every bracket',
  ],
  BLOCK_AS_IMPLICIT_KEY: [
    'there is a colon too many, or a line is indented differently from its neighbours',
    'one “key: value” to a line, the keys of one block lined up; quote text that holds a colon',
  ],
  MULTILINE_IMPLICIT_KEY: ['a key runs over two lines', 'put a colon after the key, on the same line'],
  MISSING_CHAR: ['a colon, comma or closing quote is missing', 'mend this line or the one before'],
  NON_STRING_KEY: ['a key must be a plain word', 'mend this line'],
  BAD_DIRECTIVE: ['a line may not begin with %', 'remove it'],
  BAD_SCALAR_START: ['text may not begin with @ or `', 'put it in quotes'],
  BAD_ALIAS: ['* and & have a meaning of their own in YAML', 'put the text in quotes'],
};

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
    .map(([line, { code, message }]) => {
      const [what, hint] = SLIPS[code] ?? [
        shorten(message.replace(/\.$/u, '')),
        'mend this line; the starters show how a job is written',
      ];
      return error('unreadable', '', `the job is not proper YAML or JSON: ${what}`, hint, { line });
    });
}
