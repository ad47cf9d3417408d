import { cuttingTools } from '../cutting-tool';
import { tablesIn, type Tables } from '../../tables/tables';
import { pathText } from '../path';
import type { Setting } from '../setting';
import type { Block, Field } from './field';
import { fieldsOf, listsOf } from './look';

/** The settings a field's words may depend on: either unit, and the tools it is for. */
function settings(tables: Tables, units: Setting['units'], tools: Field['tools']): Setting[] {
  return (tools ?? cuttingTools).map((tool) => ({ tables: tablesIn(tables, units), units, tool }));
}

/** What holds where a field is left out, in millimetres and, where that reads otherwise, in inches; by tool where they differ. */
export function unlessSaidText(field: Field, tables: Tables): string {
  if (field.required) return 'required';
  const [metric, inch] = [unlessSaidIn(field, tables, 'mm'), unlessSaidIn(field, tables, 'in')];
  return metric === inch ? metric : `${metric}; inch jobs ${inch}`;
}

/** The same in one unit: what holds for the first tool, and for others where it is another. */
function unlessSaidIn(field: Field, tables: Tables, units: Setting['units']): string {
  const [first, ...others] = settings(tables, units, field.tools).map((setting) => ({
    tool: setting.tool,
    text: wordsOf(field, setting),
  }));
  const different = others.filter(({ text }) => text !== first?.text);
  return [first?.text ?? '', ...different.map(({ tool, text }) => `${tool} ${text}`)].join(', ');
}

/** A value that is chosen, as it would be written; anything else in words. */
function wordsOf({ kind, standard, unlessSaid }: Field, setting: Setting): string {
  return kind.choices && standard ? `\`${String(standard(setting))}\`` : (unlessSaid?.(setting) ?? '');
}

/** What a field's value may be: `20 mm to 6000 mm`, `jigsaw, router or laser`. Empty where only a table or the maker's words bound it. */
export function allowedText({ kind }: Field, tables: Tables): string {
  const setting = { tables, units: 'mm', tool: 'jigsaw' } as const;
  if (kind.name === 'choice') return (kind.choices?.(setting) ?? []).map(({ value }) => `\`${value}\``).join(', ');
  if (kind.name === 'yes-no') return '`true`, `false`';
  const range = kind.bounds?.(setting);
  if (!range) return '';
  const unit = UNITS[kind.name] ?? '';
  return range.max === Infinity ? `from ${range.min}${unit}` : `${range.min} to ${range.max}${unit}`;
}

const UNITS: Readonly<Partial<Record<Field['kind']['name'], string>>> = {
  length: ' mm',
  thickness: ' mm, or a gauge',
  force: ' N',
  angle: '°',
};

/** The README's table of every key of a job file, in Markdown. */
export function referenceTable(tables: Tables): string {
  return tableOf(rowsOf(), tables);
}

/** The same of what a panel's job has beside the keys of every job: those under `known` are left out. */
export function panelReferenceTable(panel: Block, known: readonly Block[], tables: Tables): string {
  const before = new Set(known.flatMap((block) => rowsOf(block).map(({ path }) => path)));
  return tableOf(
    rowsOf(panel).filter(({ path }) => !before.has(path)),
    tables,
  );
}

interface Row {
  readonly path: string;
  readonly field: Field;
}

/** Every field with its path, those of lists last. */
function rowsOf(block?: Block): Row[] {
  const fields = fieldsOf(block).map(({ path, field }) => ({ path: pathText(path), field }));
  const inLists = listsOf(block).flatMap(({ path, list }) =>
    list.kinds.flatMap(({ key: under, fields }) =>
      fieldsOf({ fields, group: null }).map(({ path: below, field }) => ({
        path: `${pathText(path)}[].${under === null ? '' : `${under}.`}${pathText(below)}`,
        field,
      })),
    ),
  );
  return [...fields, ...inLists];
}

/** How a value is written that is made of several: `a list of names`; null for any other. */
function writtenText({ kind: { name, writing } }: Field): string | null {
  return name === 'structure' ? writing.charAt(0).toLowerCase() + writing.slice(1) : null;
}

function tableOf(rows: readonly Row[], tables: Tables): string {
  const lines = rows.map(
    ({ path, field }) =>
      `| \`${path}\` | ${field.help} | ${writtenText(field) ?? allowedText(field, tables)} | ${unlessSaidText(field, tables)} |`,
  );
  return ['| key | what | may be | unless said |', '|---|---|---|---|', ...lines].join('\n');
}
