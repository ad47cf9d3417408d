import { labelOf } from '../../job/fields/label';
import { pathText } from '../../job/path';
import type { Draft, DraftPath } from '../draft';

/** A field that stands otherwise in one draft than in the other; empty where it is not filled in. */
export interface Difference {
  readonly path: string;
  readonly label: string;
  readonly pinned: string;
  readonly now: string;
}

/** The fields in which two drafts differ, in the order in which they stand. */
export function differences(pinned: Draft, now: Draft): Difference[] {
  const [before, after] = [leavesOf(pinned, []), leavesOf(now, [])];
  const paths = new Set([...before.keys(), ...after.keys()]);
  return [...paths].flatMap((path): Difference[] => {
    const [was, is] = [before.get(path) ?? '', after.get(path) ?? ''];
    return was === is ? [] : [{ path, label: labelOf(path), pinned: was, now: is }];
  });
}

function leavesOf(node: Draft | string, path: DraftPath): Map<string, string> {
  if (typeof node === 'string') return new Map([[pathText(path), node.trim()]]);
  const entries: readonly (readonly [string | number, Draft | string])[] = Array.isArray(node)
    ? (node as readonly (Draft | string)[]).map((entry, index) => [index, entry])
    : Object.entries(node as Readonly<Record<string, Draft | string>>);
  return new Map(entries.flatMap(([step, entry]) => [...leavesOf(entry, [...path, step])]));
}
