import { cuttingTools } from '../cutting-tool';
import { tablesIn, type Tables } from '../../tables/tables';
import { pathText } from '../path';
import type { Setting } from '../setting';
import type { Field } from './field';
import { fieldsOf, listsOf } from './look';

/** The settings a field's words may depend on: either unit, and the tools it is for. */
function settings(tables: Tables, units: Setting['units'], tools: Field['tools']): Setting[] {
  return (tools ?? cuttingTools).map((tool) => ({ tables: tablesIn(tables, units), units, tool }));
}

/** What holds where a field is left out, in millimetres and, where that reads otherwise, in inches; by tool where they differ. */
export function unlessSaidText({ unlessSaid, tools }: Field, tables: Tables): string {
  if (!unlessSaid) return 'required';
  const said = (units: Setting['units']): string => {
    const each = settings(tables, units, tools).map((setting) => ({ tool: setting.tool, text: unlessSaid(setting) }));
    const [first] = each;
    return each.every(({ text }) => text === first?.text)
      ? (first?.text ?? '')
      : each.map(({ tool, text }) => `${tool} ${text}`).join(', ');
  };
  const [metric, inch] = [said('mm'), said('in')];
  return metric === inch ? metric : `${metric}; inch jobs ${inch}`;
}

/** What a field's value may be: `20 mm to 6000 mm`, `jigsaw, router or laser`. Empty where only a table or the maker's words bound it. */
export function allowedText({ kind }: Field, tables: Tables): string {
  if (kind.name === 'choice') return (kind.choices?.(tables) ?? []).map(({ value }) => `\`${value}\``).join(', ');
  if (kind.name === 'yes-no') return '`true`, `false`';
  const range = kind.bounds?.({ tables, units: 'mm', tool: 'jigsaw' });
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
  const fields = fieldsOf().map(({ path, field }) => ({ path: pathText(path), field }));
  const listed = listsOf().flatMap(({ path, list }) =>
    Object.entries(list.entry.fields).flatMap(([key, node]) =>
      node.node === 'field' ? [{ path: `${pathText(path)}[].${key}`, field: node }] : [],
    ),
  );
  const rows = [...fields, ...listed].map(
    ({ path, field }) =>
      `| \`${path}\` | ${field.help} | ${allowedText(field, tables)} | ${unlessSaidText(field, tables)} |`,
  );
  return ['| key | what | may be | unless said |', '|---|---|---|---|', ...rows].join('\n');
}
