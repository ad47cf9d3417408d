import * as z from 'zod/mini';
import { InternalError } from '../base/errors';
import type { Tables } from '../tables/tables';
import { exampleIn, type Block, type Field, type Node } from './fields/field';
import { jobFields } from './fields/index';
import { assemblyFields } from './panel/assembly';
import { panelFields, tracedFields } from './panel/fields';
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

/**
 * The job file’s shape as JSON Schema (draft 2020-12), for editors: each key with its label, its bounds, what holds unless said, an example. Which of its
 * four kinds a file is its `base`, `outline` or `panels` says; a file with none is of one bend.
 */
export function jobJsonSchema(tables: Tables): object {
  const has = (key: string): object => ({ required: [key], properties: { [key]: true } });
  return {
    $schema: DRAFT,
    title: 'bendbuck job',
    description: 'A sheet-metal part, and the forms to bend it on',
    type: 'object',
    if: has('base'),
    then: schemaOf(panelFields, 'bendbuck job of a panel', tables),
    else: {
      if: has('outline'),
      then: schemaOf(tracedFields, 'bendbuck job of a panel on an outline of your own', tables),
      else: {
        if: has('panels'),
        then: schemaOf(assemblyFields, 'bendbuck assembly of panels', tables),
        else: schemaOf(jobFields, 'bendbuck job of one bend', tables),
      },
    },
  };
}

const DRAFT = 'https://json-schema.org/draft/2020-12/schema';

function schemaOf(fields: Block, title: string, tables: Tables): object {
  const shape = z.clone(fields.shape()).register(z.globalRegistry, { title, description: fields.help });
  const { $schema, ...schema } = z.toJSONSchema(shape, { io: 'input' }) as Shape & { readonly $schema?: string };
  if ($schema !== DRAFT) throw new InternalError('the schema is of another draft');
  annotate(fields, schema, tables);
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
  const known = field.kind.name === 'row' ? field.kind.choices?.({ tables, units: 'mm', tool: 'jigsaw' }) : null;
  const rows = (known ?? []).map(({ value }) => value);
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
function exampleOf(field: Field): readonly (string | number)[] {
  const example = exampleIn(field, 'mm');
  if (example === '') return [];
  return [field.kind.name !== 'text' && Number.isFinite(Number(example)) ? Number(example) : example];
}
