import { cuttingTools } from '../job/cutting-tool';
import { fieldsOf, listsOf, nodeAtPath, type Placed, type PlacedList } from '../job/fields/look';
import type { Block, EntryKind, Field } from '../job/fields/field';
import { jobFields } from '../job/fields/index';
import { groups, type Group, type GroupName } from '../job/fields/groups';
import type { Choice } from '../job/fields/quantity';
import type { Setting } from '../job/setting';
import { tablesIn } from '../tables/tables';
import { tables } from './work';
import { nodeAt, textAt, type Draft, type DraftPath } from './draft';

/** One row of the form: a field of the job file, where it stands in the draft, and what it is called there. */
export interface Row {
  readonly path: DraftPath;
  readonly label: string;
  readonly field: Field;
}

/** A part of the form: its rows, and the lists that are shown in it. */
export interface Section extends Group {
  readonly name: GroupName | 'panel';
  readonly rows: readonly Row[];
  readonly lists: readonly PlacedList[];
}

/** What of a panel's job belongs to no other part of the form. */
const PANEL = { name: 'panel', title: 'Panel', begins: 'always' } as const;

/** The form: every field a job file has, in the order of the work; what a panel alone has follows the sheet. */
export function sectionsOf(root: Block): readonly Section[] {
  const [placed, lists] = [fieldsOf(root), listsOf(root)];
  const rowsOf = (group: GroupName | undefined): Row[] =>
    placed.filter((each) => groupOf(each) === group).map(({ path, field }) => ({ path, field, label: field.label }));
  const panel: Section = { ...PANEL, rows: rowsOf(undefined), lists: [] };
  return Object.entries(groups)
    .flatMap(([name, group]): Section[] => {
      const own: Section = {
        ...group,
        name: name as GroupName,
        rows: rowsOf(name as GroupName),
        lists: lists.filter(({ list }) => list.group === name),
      };
      return name === 'sheet' ? [own, panel] : [own];
    })
    .filter(({ rows, lists: within }) => rows.length + within.length > 0);
}

/** What says no group belongs to that of its block's name, if there is one. */
function groupOf({ path: [first = ''], group }: Placed): GroupName | undefined {
  return group ?? (Object.hasOwn(groups, first) ? (first as GroupName) : undefined);
}

/** The form of one bend's job. */
export const sections = sectionsOf(jobFields);

/** The rows of one entry of a list, by what it is. */
export function rowsOfEntry({ path }: PlacedList, { one, key: under, fields }: EntryKind, index: number): Row[] {
  const entry = [...path, index, ...(under === null ? [] : [under])];
  const below = (inner: EntryKind['fields'], at: DraftPath): Row[] =>
    Object.entries(inner).flatMap(([key, node]): Row[] => {
      if (node.node === 'list') return [];
      if (node.node === 'block') return below(node.fields, [...at, key]);
      return [{ path: [...at, key], field: node, label: `${one} ${index + 1}: ${node.label}` }];
    });
  return below(fields, entry);
}

/** What a new entry of a kind begins with. */
export function freshEntry({ key: under, fields }: EntryKind, draft: Draft, index: number): Draft {
  const setting = settingOf(draft);
  const entry = Object.fromEntries(
    Object.entries(fields).flatMap(([key, field]): (readonly [string, string])[] => {
      if (field.node !== 'field' || field.fresh === undefined) return [];
      const { fresh } = field;
      return [
        [key, typeof fresh === 'string' ? fresh.replace('#', String(index + 1)) : valueAt(draft, fresh, setting)],
      ];
    }),
  );
  return under === null ? entry : { [under]: entry };
}

/** What stands in a field, or what holds there. */
function valueAt(draft: Draft, path: readonly string[], setting: Setting): string {
  const node = nodeAtPath(path);
  const standard = node?.node === 'field' ? node.standard?.(setting) : undefined;
  return textAt(draft, path) || String(standard ?? '');
}

/** What the draft says that bounds, defaults and their words depend on. */
export function settingOf(draft: Draft): Setting {
  const tool = cuttingTools.find((known) => known === textAt(draft, ['cut', 'with'])) ?? 'jigsaw';
  const units = textAt(draft, ['units']) === 'in' ? 'in' : 'mm';
  return { tables: tablesIn(tables, units), units, tool };
}

/** Whether a field is for the tool the draft cuts with. */
export function isFor({ tools }: Field, draft: Draft): boolean {
  return tools?.includes(settingOf(draft).tool) ?? true;
}

/** What a field may be chosen from, the first being what holds unless said; null for one that is typed. */
export function choicesOf({ kind, unlessSaid, standard }: Field, setting: Setting): readonly Choice[] | null {
  if (!kind.choices) return null;
  const all = kind.choices(setting);
  if (!unlessSaid) return all;
  const usual = standard ? String(standard(setting)) : '';
  return [{ value: '', text: unlessSaid(setting) }, ...all.filter(({ value }) => value !== usual)];
}

/** The text in a field as the form shows it: what holds anyway is not told from an empty field where one chooses. */
export function shownText({ kind, standard }: Field, text: string, setting: Setting): string {
  return kind.choices && standard && String(standard(setting)) === text ? '' : text;
}

/** The `cut` block for another tool: what belongs to others is taken out. */
export function cutFor(draft: Draft, tool: string): Draft | undefined {
  const held = nodeAt(draft, ['cut']);
  const kept = Object.entries(typeof held === 'object' && !Array.isArray(held) ? held : {}).filter(([key]) => {
    const node = nodeAtPath(['cut', key]);
    return (
      key !== 'with' && (node?.node !== 'field' || (node.tools?.some((owner) => owner === (tool || 'jigsaw')) ?? true))
    );
  });
  const block = { ...(tool === '' ? {} : { with: tool }), ...Object.fromEntries(kept) };
  return Object.keys(block).length > 0 ? block : undefined;
}
