import { pathFromText, pathText } from '../job/path';
import { groups, lists } from './field-list';

/** Where each field stands and what it is called, in the order of the form. */
const named: readonly { readonly path: string; readonly label: string; readonly title: string }[] = groups.flatMap(
  ({ title, fields }) => fields.map(({ path, label }) => ({ path: pathText(path), label, title })),
);

/** More fields than this go by their group's title. */
const FEW = 2;

/**
 * What the form calls the place a finding speaks of: its field's label; for a block, its fields' labels or, where they are many,
 * their group's title; for a key below a field, that field. A path the form does not show stays as it is.
 */
export function fieldName(path: string): string {
  const listed = listName(path);
  if (listed !== null) return listed;
  const exact = named.find((field) => field.path === path);
  if (exact) return exact.label;
  const below = named.filter((field) => field.path.startsWith(`${path}.`));
  if (below.length > FEW) return [...new Set(below.map(({ title }) => title))].join(', ');
  if (below.length > 0) return below.map(({ label }) => label).join(', ');
  return named.find((field) => path.startsWith(`${field.path}.`))?.label ?? path;
}

/** `runs[1].to` → `run 2: to`, as in the form. */
function listName(path: string): string | null {
  const [key, index, name] = pathFromText(path);
  const list = lists.find((one) => one.key === key);
  if (!list) return null;
  if (typeof index !== 'number') return list.title;
  const label = list.fields.find((field) => field.name === name)?.label;
  return `${list.one} ${index + 1}${label === undefined ? '' : `: ${label}`}`;
}
