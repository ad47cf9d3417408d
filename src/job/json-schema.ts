import { z } from 'zod';
import type { Tables } from '../tables/tables';
import type { Field, Node } from './fields/field';
import { jobFields } from './fields/index';
import { allowedText, unlessSaidText } from './fields/reference';

/** What is read and written of a JSON Schema here. */
interface Shape {
  title?: string;
  description?: string;
  examples?: unknown[];
  readonly properties?: Readonly<Record<string, Shape>>;
  readonly items?: Shape;
  readonly anyOf?: readonly Shape[];
}

/** The job file’s shape as JSON Schema (draft 2020-12), for editors: each key with its label, its bounds, what holds unless said, an example. */
export function jobJsonSchema(tables: Tables): object {
  const schema = z.toJSONSchema(jobFields.shape.meta({ title: 'bendbuck job', description: jobFields.help }), {
    io: 'input',
  });
  annotate(jobFields, schema as Shape, tables);
  return schema;
}

function annotate(node: Node, shape: Shape, tables: Tables): void {
  if (node.node === 'field') return annotateField(node, shape, tables);
  const inner =
    node.node === 'list' ? shape.items : shape.properties ? shape : shape.anyOf?.find((one) => one.properties);
  const fields = node.node === 'list' ? node.entry.fields : node.fields;
  for (const [key, below] of Object.entries(fields)) {
    const at = [inner, ...(inner?.anyOf ?? [])].map((shape) => shape?.properties?.[key]).find((found) => found);
    if (at) annotate(below, at, tables);
  }
}

function annotateField(field: Field, shape: Shape, tables: Tables): void {
  const allowed = allowedText(field, tables).replaceAll('`', '');
  const rows = field.kind.name === 'row' ? (field.kind.choices?.(tables) ?? []).map(({ value }) => value) : [];
  const examples = [...rows, ...(rows.length === 0 ? exampleOf(field) : [])];
  shape.title = field.label;
  shape.description = [
    shape.description ?? field.help,
    allowed === '' ? '' : `May be ${allowed}`,
    field.required ? '' : `Unless said: ${unlessSaidText(field, tables).replaceAll('`', '')}`,
  ]
    .filter((part) => part !== '')
    .join('. ');
  if (examples.length > 0) shape.examples = examples;
}

/** The example as it would stand in the file: bare numbers as numbers. */
function exampleOf({ example, kind }: Field): readonly (string | number)[] {
  if (example === undefined) return [];
  return [kind.name !== 'text' && Number.isFinite(Number(example)) ? Number(example) : example];
}
