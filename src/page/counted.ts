import { kindOfEntry, listsOf, type PlacedList } from '../job/fields/look';
import type { Block, EntryKind } from '../job/fields/field';
import { jobFields } from '../job/fields/index';
import { pathFromText, pathText } from '../job/path';
import { changed, nodeAt, type Draft } from './draft';

/** A draft as far as it counts. */
export interface Counted {
  readonly draft: Draft;
  /** A path of the job as a path of the draft: entries that do not count have no place in the job. */
  readonly asTyped: (path: string) => string;
}

/** Lists whose entries count only once they are whole, so that one can be filled in without the form going: of a panel, all of them. */
function waitingIn(root: Block): readonly PlacedList[] {
  return listsOf(root).filter(({ list }) => root !== jobFields || list.kinds.some(({ whole }) => whole !== null));
}

const waiting = waitingIn(jobFields);

/** What an entry of a list is, by the keys it has in the draft. */
export function kindAt({ path, list }: PlacedList, draft: Draft, index: number): EntryKind | undefined {
  return kindOfEntry(list, (key) => nodeAt(draft, [...path, index, key]) !== undefined);
}

/** Whether enough of an entry is filled in for it to count. */
export function isWhole(placed: PlacedList, draft: Draft, index: number, root: Block = jobFields): boolean {
  const kind = kindAt(placed, draft, index);
  if (!kind) return true;
  const at = [...placed.path, index, ...(kind.key === null ? [] : [kind.key])];
  const has = (key: string): boolean => isFilled(nodeAt(draft, [...at, key]));
  if (kind.whole) return kind.whole(has);
  // Entries of a panel's own lists: whatever has to be there is.
  return root === jobFields || Object.entries(kind.fields).every(([key, { required }]) => !required || has(key));
}

function isFilled(node: Draft | string | undefined): boolean {
  return typeof node === 'string' ? node.trim() !== '' : node !== undefined;
}

/** The draft without entries that are not whole, and without those at the paths in `out`, such as `trials[1]`. */
export function countedOf(draft: Draft, out: ReadonlySet<string> = new Set(), root: Block = jobFields): Counted {
  let counted = draft;
  const kept = new Map<string, readonly number[]>();
  for (const placed of root === jobFields ? waiting : waitingIn(root)) {
    const entries = nodeAt(draft, placed.path);
    if (!Array.isArray(entries)) continue;
    const places = entries.flatMap((_, index) =>
      isWhole(placed, draft, index, root) && !out.has(pathText([...placed.path, index])) ? [index] : [],
    );
    kept.set(pathText(placed.path), places);
    if (places.length === entries.length) continue;
    const left = places.flatMap((place) => nodeAt(draft, [...placed.path, place]) ?? []);
    counted = changed(counted, placed.path, places.length === 0 ? undefined : left);
  }
  return { draft: counted, asTyped: (path) => asTyped(path, kept) };
}

function asTyped(path: string, kept: ReadonlyMap<string, readonly number[]>): string {
  const steps = pathFromText(path);
  const list = steps.findIndex((step) => typeof step === 'number');
  const index = steps[list];
  const place = typeof index === 'number' ? kept.get(pathText(steps.slice(0, list)))?.[index] : undefined;
  return place === undefined ? path : pathText([...steps.slice(0, list), place, ...steps.slice(list + 1)]);
}

/** The entry of a waiting list that a path of the draft lies in, such as `trials[1]`; null elsewhere. */
export function entryIn(path: string): string | null {
  const steps = pathFromText(path);
  const found = waiting.find((placed) => placed.path.every((step, depth) => steps[depth] === step));
  const index = found && steps[found.path.length];
  return found && typeof index === 'number' ? pathText([...found.path, index]) : null;
}
