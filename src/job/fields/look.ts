import type { Path } from '../path';
import type { Block, EntryKind, Field, List, Node } from './field';
import { jobFields } from './index';

/** The described field, block or list at a path of the job file; null where there is none. Any index leads to a list's entry. */
export function nodeAtPath(path: Path, root: Block = jobFields): Node | null {
  return path.reduce<Node | null>((held, step) => (held ? below(held, step) : null), root);
}

/** The described field at a path; null where there is none. */
export function fieldAt(path: Path, root: Block = jobFields): Field | null {
  const found = nodeAtPath(path, root);
  return found?.node === 'field' ? found : null;
}

function below(node: Node, step: PropertyKey): Node | null {
  if (node.node === 'list') return typeof step === 'number' ? node.entry : null;
  if (node.node === 'field' || typeof step !== 'string' || !Object.hasOwn(node.fields, step)) return null;
  return node.fields[step] ?? null;
}

/** The keys known at a path of the job file, for the nearest match to a mistyped one. */
export function knownKeys(path: Path, root: Block = jobFields): string[] {
  const found = nodeAtPath(path, root);
  return found?.node === 'block' ? Object.keys(found.fields) : [];
}

/** A described field with where it stands; `group` is the part of the page's form it belongs to. */
export interface Placed {
  readonly path: readonly string[];
  readonly field: Field;
  readonly group: Field['group'];
}

/** A described list with where it stands. */
export interface PlacedList {
  readonly path: readonly string[];
  readonly list: List;
}

/** Every field outside lists, in order. */
export function fieldsOf(
  block: Pick<Block, 'fields' | 'group'> = jobFields,
  path: readonly string[] = [],
  group = block.group,
): Placed[] {
  return Object.entries(block.fields).flatMap(([key, node]): Placed[] => {
    const at = [...path, key];
    if (node.node === 'field') return [{ path: at, field: node, group: node.group ?? group ?? undefined }];
    return node.node === 'block' ? fieldsOf(node, at, node.group ?? group) : [];
  });
}

/** Every list, in order. */
export function listsOf(block: Block = jobFields, path: readonly string[] = []): PlacedList[] {
  return Object.entries(block.fields).flatMap(([key, node]): PlacedList[] => {
    if (node.node === 'list') return [{ path: [...path, key], list: node }];
    return node.node === 'block' ? listsOf(node, [...path, key]) : [];
  });
}

/** What an entry of a list is: the kind whose key it has, else the first. */
export function kindOfEntry({ kinds }: List, has: (key: string) => boolean): EntryKind | undefined {
  return kinds.find(({ key }) => key !== null && has(key)) ?? kinds[0];
}
