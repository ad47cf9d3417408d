import { isCollection, isNode, isScalar, isSeq, parse, parseDocument, visit, type Document, type YAMLSeq } from 'yaml';
import { dataFrom, readDraft, type Draft } from '../draft';

type Data = unknown;
type Path = readonly (string | number)[];

/**
 * A job file's own text with only that changed in which the draft differs from it: comments, order and the way of writing stay. What cannot be taken apart, or says
 * nothing, is written anew, as `fresh`.
 */
export function keptText(original: string, draft: Draft, fresh: string): string {
  const read = readDraft(original);
  const document = parseDocument(original);
  if (!read.draft || document.errors.length > 0 || !isCollection(document.contents)) return fresh;
  patch(document, [], dataFrom(read.draft), dataFrom(draft));
  return document.toString({ lineWidth: 0 });
}

/**
 * A job file's text with what differs between `was`, which it says, and `is` brought into it. Where single values alone differ, nothing but their own letters
 * is touched; else comments and order stay, not the spaces. Null where the text cannot be taken apart.
 */
export function patched(text: string, was: Data, is: Data): string | null {
  const document = parseDocument(text);
  if (document.errors.length > 0 || !isCollection(document.contents)) return null;
  const edits = scalarEdits(document, [], was, is);
  if (edits) return edits.sort((a, b) => b.from - a.from).reduce((held, one) => spliced(held, one), text);
  patch(document, [], was, is);
  return document.toString({ lineWidth: 0 });
}

/** Letters of a text to be replaced. */
interface Edit {
  readonly from: number;
  readonly to: number;
  readonly words: string;
}

function spliced(text: string, { from, to, words }: Edit): string {
  return text.slice(0, from) + words + text.slice(to);
}

/** The single values that differ, as edits of the text; null where anything else does. */
function scalarEdits(document: Document, path: Path, was: Data, is: Data): Edit[] | null {
  if (same(was, is)) return [];
  const keys = keysOf(was, is);
  if (keys) {
    const below = keys.map((key) => scalarEdits(document, [...path, key], entryAt(was, key), entryAt(is, key)));
    return below.every((edits) => edits !== null) ? below.flat() : null;
  }
  const old = document.getIn(path, true);
  const [from, to] = isScalar(old) ? (old.range ?? []) : [];
  const words = isPlain(is) ? plainWords(is) : null;
  return from !== undefined && to !== undefined && to > from && words !== null ? [{ from, to, words }] : null;
}

/** The keys of two blocks, or places of two lists, that have the same; null for any others. */
function keysOf(was: Data, is: Data): readonly (string | number)[] | null {
  if (Array.isArray(was) && Array.isArray(is)) return was.length === is.length ? was.map((_, index) => index) : null;
  if (!isBlock(was) || !isBlock(is)) return null;
  const keys = Object.keys(was);
  return keys.length === Object.keys(is).length && keys.every((key) => Object.hasOwn(is, key)) ? keys : null;
}

function entryAt(data: Data, key: string | number): Data {
  return Array.isArray(data) ? (data as readonly Data[])[Number(key)] : isBlock(data) ? data[String(key)] : undefined;
}

function isPlain(data: Data): data is string | number | boolean {
  return typeof data === 'string' || typeof data === 'number' || typeof data === 'boolean';
}

/** A single value as it may stand anywhere in a file, in a list of one line too. */
function plainWords(value: string | number | boolean): string {
  const words = String(value);
  const safe = typeof value !== 'string' || (/^[\w][\w ./%-]*$/u.test(words) && parse(words) === value);
  return safe ? words : JSON.stringify(value);
}

/** Brings what stands at a path of the document from `was` to `is`, going no deeper than the file writes it. */
function patch(document: Document, path: Path, was: Data, is: Data): void {
  if (same(was, is)) return;
  if (is === undefined) document.deleteIn(path);
  else if (isBlock(was) && isBlock(is) && (path.length === 0 || isCollection(document.getIn(path, true))))
    for (const key of new Set([...Object.keys(was), ...Object.keys(is)]))
      patch(document, [...path, key], was[key], is[key]);
  else if (
    Array.isArray(was) &&
    Array.isArray(is) &&
    was.length === is.length &&
    isCollection(document.getIn(path, true))
  )
    is.forEach((entry, index) => patch(document, [...path, index], was[index], entry));
  else put(document, path, is);
}

/** A new value where another stood: what was remarked beside the old one stays beside the new. */
function put(document: Document, path: Path, value: Data): void {
  const [old, fresh] = [document.getIn(path, true), document.createNode(value)];
  visit(fresh, { Seq: (_, list) => void (list.flow = isShort(list)) });
  if (isNode(old)) {
    fresh.comment = old.comment ?? null;
    fresh.commentBefore = old.commentBefore ?? null;
  }
  document.setIn(path, fresh);
}

/** A list of single values, or of such lists, goes in one line: `[[0, 0], [22, 9]]`. */
function isShort({ items }: YAMLSeq): boolean {
  return items.every((item) => isScalar(item) || (isSeq(item) && isShort(item)));
}

function isBlock(data: Data): data is Readonly<Record<string, Data>> {
  return typeof data === 'object' && data !== null && !Array.isArray(data);
}

function same(a: Data, b: Data): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}
