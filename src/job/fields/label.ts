import { pathFromText, pathText, type Path } from '../path';
import { groups } from './groups';
import { jobFields } from './index';
import type { Block } from './field';
import { fieldsOf, kindOfEntry, listsOf, nodeAtPath, type Placed } from './look';

type Named = Placed & { readonly text: string };

const known = new Map<Block, readonly Named[]>();

/** Every field outside lists, with its path as text. */
function namedIn(root: Block): readonly Named[] {
  const held = known.get(root) ?? fieldsOf(root).map((each) => ({ ...each, text: pathText(each.path) }));
  known.set(root, held);
  return held;
}

/** More fields than this go by their group's title. */
const FEW = 2;

/**
 * What the page's form calls a place of the job: its field's label; for a block, its fields' labels or, where they are many, their
 * first group's title; for a key below a field, that field; in a list, `offcut 2: width`. A path the form does not show stays as it is.
 */
export function labelOf(path: string, root: Block = jobFields): string {
  const listed = labelInList(path, root);
  if (listed !== null) return listed;
  const placed = namedIn(root);
  const exact = placed.find(({ text }) => text === path);
  if (exact) return exact.field.label;
  const below = placed.filter(({ text }) => text.startsWith(`${path}.`));
  if (below.length > FEW) {
    const first = below.flatMap(({ group }) => (group ? [groups[group].title] : [])).at(0);
    if (first !== undefined) return first;
  }
  if (below.length > 0) return below.map(({ field }) => field.label).join(', ');
  return placed.find(({ text }) => path.startsWith(`${text}.`))?.field.label ?? path;
}

/** `offcuts[1].width` → `offcut 2: width`. */
function labelInList(path: string, root: Block): string | null {
  const steps = pathFromText(path);
  const found = listsOf(root).find((one) => one.path.every((step, index) => steps[index] === step));
  if (!found) return null;
  const [index, key, below] = steps.slice(found.path.length);
  if (typeof index !== 'number') return groups[found.list.group].title;
  const kind = kindOfEntry(found.list, (one) => one === key);
  const field = kind?.fields[String(kind.key === null ? key : below)];
  return `${kind?.one ?? found.list.one} ${index + 1}${field?.node === 'field' ? `: ${field.label}` : ''}`;
}

/**
 * The path of the field that shows what is found at a path: the field itself, the field above it, or the first field of the block or
 * of the list's entry. Null for a whole list, and where no field is near.
 */
export function homeOf(path: string, root: Block = jobFields): string | null {
  const steps = pathFromText(path);
  for (let depth = steps.length; depth > 0; depth--) {
    const node = nodeAtPath(steps.slice(0, depth), root);
    if (node?.node === 'field') return pathText(steps.slice(0, depth));
    if (node?.node === 'block' && depth === steps.length) return firstBelow(steps, root);
  }
  return null;
}

function firstBelow(path: Path, root: Block): string | null {
  const node = path.length === 0 ? root : nodeAtPath(path, root);
  if (node?.node === 'field') return pathText(path);
  const [key] = node?.node === 'block' ? Object.keys(node.fields) : [];
  return key === undefined ? null : firstBelow([...path, key], root);
}
