import { isCollection, isNode, parseDocument, type Document } from 'yaml';
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
  if (isNode(old)) {
    fresh.comment = old.comment ?? null;
    fresh.commentBefore = old.commentBefore ?? null;
  }
  document.setIn(path, fresh);
}

function isBlock(data: Data): data is Readonly<Record<string, Data>> {
  return typeof data === 'object' && data !== null && !Array.isArray(data);
}

function same(a: Data, b: Data): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}
