import { stringify } from 'yaml';
import type { Finding } from '../base/findings';
import { sayFindings } from '../findings/say';
import { decodeJob } from '../job/decode';
import { parseJob } from '../job/parse';
import { readSource } from '../job/source';
import { loadTables } from '../tables/bundled';
import type { Block } from '../job/fields/field';
import { jobFields } from '../job/fields/index';
import { fieldAt, nodeAtPath } from '../job/fields/look';
import type { QuantityName } from '../job/fields/quantity';

/**
 * What stands in the page's fields, as typed: a job file's shape with text in every leaf. It becomes a job only through the same
 * parser that reads job files, so that the page and the command line say the same of the same job.
 */
export type Draft = { readonly [key: string]: Draft | string } | readonly (Draft | string)[];
export type Step = string | number;
export type DraftPath = readonly Step[];

const DECIMAL = /^-?\d+(?:\.\d+)?$/u;

/** The text at a path; empty where there is none. */
export function textAt(draft: Draft, path: DraftPath): string {
  const found = nodeAt(draft, path);
  return typeof found === 'string' ? found : '';
}

/** Whatever stands at a path. */
export function nodeAt(draft: Draft, path: DraftPath): Draft | string | undefined {
  return path.reduce<Draft | string | undefined>((held, step) => {
    if (held === undefined || typeof held === 'string') return undefined;
    return Array.isArray(held)
      ? (held as readonly (Draft | string)[])[Number(step)]
      : (held as Readonly<Record<string, Draft | string>>)[step];
  }, draft);
}

/** The draft with one thing changed; `undefined` takes it out. The rest is shared, not copied. */
export function changed(
  draft: Draft | undefined,
  [step, ...rest]: DraftPath,
  value: Draft | string | undefined,
): Draft {
  if (step === undefined) throw new RangeError('a change needs a path');
  const inner = (held: Draft | string | undefined): Draft | string | undefined =>
    rest.length === 0 ? value : changed(typeof held === 'string' ? undefined : held, rest, value);
  if (typeof step === 'number') {
    const list = Array.isArray(draft) ? [...(draft as readonly (Draft | string)[])] : [];
    const next = inner(list[step]);
    if (next === undefined) list.splice(step, 1);
    else list[step] = next;
    return list;
  }
  const block: Record<string, Draft | string> = { ...(draft as Readonly<Record<string, Draft | string>> | undefined) };
  const next = inner(block[step]);
  if (next === undefined) return Object.fromEntries(Object.entries(block).filter(([key]) => key !== step));
  block[step] = next;
  return block;
}

/** What a file gave: the draft of one bend, a panel's job, a drawing to make a panel of, or why it is refused, in the job reader's words. */
export type Opened =
  | { readonly draft: Draft; readonly text: string; readonly problem: null }
  | { readonly draft: null; readonly panel: string; readonly beside?: OpenedDrawing; readonly problem: null }
  | { readonly draft: null; readonly drawing: OpenedDrawing; readonly problem: null }
  | { readonly draft: null; readonly problem: string };

/** A drawing of an outline, as it stands in its file. */
export interface OpenedDrawing {
  readonly name: string;
  readonly text: string;
}

/**
 * A draft from a job file's text, read as the command line reads it: what that cannot take apart (a key written twice, a bracket left
 * open, an alias, no block at all) is refused with its line; wrong values are not, they go to their fields.
 */
export function readDraft(text: string): Opened {
  const { source, findings } = readSource(text);
  if (!source) return refuse(findings);
  if (isPanel(source.data)) return { draft: null, panel: text, problem: null };
  const read = toDraft(source.data);
  if (read === undefined && text.trim() !== '') return refuse(parseJob(text, loadTables()).findings);
  const whole = read === undefined ? {} : spread(read, [], jobFields);
  return typeof whole === 'object' && !Array.isArray(whole)
    ? { draft: whole, text, problem: null }
    : refuse(parseJob(text, loadTables()).findings);
}

/** As the job reader tells them apart: a panel has a base, or an outline of its own. */
function isPanel(data: unknown): boolean {
  return typeof data === 'object' && data !== null && (Object.hasOwn(data, 'base') || Object.hasOwn(data, 'outline'));
}

/** The same for a file's bytes. */
export function readDraftFile(bytes: Uint8Array): Opened {
  const { text, problem } = decodeJob(bytes);
  return text === null ? { draft: null, problem } : readDraft(text);
}

function refuse(findings: readonly Finding[]): Opened {
  const said = sayFindings(findings, { units: 'mm' })
    .filter(({ level }) => level === 'error')
    .map(({ line, message }) => (line === undefined ? message : `line ${line}: ${message}`));
  return { draft: null, problem: said.join('; ') };
}

/** A draft from a job file's text that is known to be one; an empty one where it is none. */
export function draftFrom(text: string): Draft {
  return readDraft(text).draft ?? {};
}

/** Plain data with every leaf as text. */
export function toDraft(value: unknown): Draft | string | undefined {
  if (Array.isArray(value))
    return value.map((entry) => toDraft(entry)).filter((entry): entry is Draft | string => entry !== undefined);
  if (typeof value === 'object' && value !== null) {
    const read = Object.entries(value).map(([key, entry]) => [key, toDraft(entry)] as const);
    return Object.fromEntries(read.flatMap(([key, entry]) => (entry === undefined ? [] : [[key, entry]])));
  }
  return typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean'
    ? String(value)
    : undefined;
}

/** One value in place of a block is shown in each of the fields it stands for: one radius as both ends of it. */
export function spread(node: Draft | string, path: DraftPath, root: Block): Draft | string {
  const described = nodeAtPath(path, root);
  if (typeof node === 'string')
    return described?.node === 'block' && described.short.length > 0
      ? Object.fromEntries(described.short.map((key) => [key, node]))
      : node;
  if (Array.isArray(node))
    return (node as readonly (Draft | string)[]).map((entry, index) => spread(entry, [...path, index], root));
  return Object.fromEntries(
    Object.entries(node as Readonly<Record<string, Draft | string>>).map(([key, entry]) => [
      key,
      spread(entry, [...path, key], root),
    ]),
  );
}

/** The draft as a job file: bare numbers as numbers, empty fields left out, one value for a block where it says the same. */
export function jobFileFrom(draft: Draft): string {
  return stringify(dataFrom(draft), { lineWidth: 0 });
}

/** The same as plain data. */
export function dataFrom(draft: Draft, root: Block = jobFields): unknown {
  return toData(draft, [], root) ?? {};
}

function toData(node: Draft | string, path: DraftPath, root: Block): unknown {
  if (typeof node === 'string') {
    const text = node.trim();
    if (text === '') return undefined;
    const kind = fieldAt(path, root)?.kind.name;
    if (kind === 'yes-no') return text === 'true' ? true : text === 'false' ? false : text;
    return DECIMAL.test(text) && !(kind && NAMES.includes(kind)) ? Number(text) : text;
  }
  if (Array.isArray(node))
    return (node as readonly (Draft | string)[]).map((entry, index) => toData(entry, [...path, index], root) ?? {});
  const block = Object.entries(node as Readonly<Record<string, Draft | string>>).flatMap(([key, entry]) => {
    const value = toData(entry, [...path, key], root);
    return value === undefined ? [] : [[key, value] as const];
  });
  if (block.length === 0) return undefined;
  return inShort(Object.fromEntries(block), path, root);
}

/** One value in place of a block that says no more than it. */
function inShort(data: Readonly<Record<string, unknown>>, path: DraftPath, root: Block): unknown {
  const node = nodeAtPath(path, root);
  const short = node?.node === 'block' ? node.short : [];
  const values = Object.values(data);
  const alike = values.length === short.length && short.every((key) => key in data && data[key] === values[0]);
  return short.length > 0 && alike ? values[0] : data;
}

/** Kinds that stay text even where they look like numbers. */
const NAMES: readonly QuantityName[] = ['text', 'choice', 'row', 'colour'];

/** The part of the address that carries a draft, and back. */
export function toAddress(draft: Draft): string {
  return textToAddress(jobFileFrom(draft));
}

/** The same for a job file's text. */
export function textToAddress(text: string): string {
  return `#job=${encodeURIComponent(text)}`;
}

/** What an address carries; null where it carries no job. */
export function fromAddress(hash: string): Opened | null {
  const match = /^#job=(.*)$/su.exec(hash);
  if (!match) return null;
  const text = decoded(match[1] ?? '');
  if (text === null) return { draft: null, problem: 'the address was cut off or changed on its way' };
  return readDraft(text);
}

function decoded(text: string): string | null {
  try {
    return decodeURIComponent(text);
  } catch {
    return null;
  }
}
