import { Ajv2020 } from 'ajv/dist/2020';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse as parseYaml } from 'yaml';
import { jobJsonSchema } from '../../src/job/json-schema';
import { parseFile, parseJob } from '../../src/job/parse';
import { panelStarters, starters, tables } from '../helpers/starters';

/** Ajv, a validator of its own, reads the schema by the rules of JSON Schema draft 2020-12, as an editor would. */
const validate = new Ajv2020({ strict: true, allowUnionTypes: true, allErrors: true }).compile(jobJsonSchema(tables));

const starter = (name: string): string => readFileSync(`templates/${name}.yaml`, 'utf8');

describe('the job file’s JSON Schema', () => {
  it('declares its draft, and says of every key what it is for', () => {
    const schema = JSON.parse(JSON.stringify(jobJsonSchema(tables))) as Shape & { $schema: string };
    expect(schema.$schema).toBe('https://json-schema.org/draft/2020-12/schema');
    expect(undescribed(schema)).toEqual([]);
  });

  it.each(starters)('accepts the starter %s', (name) => {
    expect(validate(parseYaml(starter(name))), JSON.stringify(validate.errors)).toBe(true);
  });

  it.each(panelStarters)('accepts the starter panel %s', (name) => {
    expect(validate(parseYaml(starter(`panels/${name}`))), JSON.stringify(validate.errors)).toBe(true);
  });

  it('accepts the assembly, and none of whose joins a half is missing', () => {
    const text = readFileSync('templates/assemblies/dust-hood.yaml', 'utf8');
    expect(validate(parseYaml(text)), JSON.stringify(validate.errors)).toBe(true);
    expect(validate(parseYaml(text.replace('inner: left.top.rim, ', '')))).toBe(false);
  });

  it.each([
    ['hood-side', 'angle: 90', 'angel: 90'],
    ['hood-side', 'edges: [long, back, top, short]', 'edges: long'],
    ['hood-side', 'treat: mitre', 'treat: weld'],
    ['hood-side', 'measured: flat', 'measured: up'],
    ['tray', 'leg: 60', 'leg: [60]'],
    ['traced-deflector', 'mockup: sharp', 'mockup: blunt'],
    ['traced-deflector', 'mockup: sharp', 'mockup: { radius: 20 }'],
    ['traced-deflector', 'free: left', 'free: up'],
    ['traced-deflector', 'is: 420', 'was: 420'],
    ['traced-deflector', '  - name: spray', '  - on: spray'],
  ])('refuses of the panel %s: %s → %s, as the program does', (name, from, to) => {
    const text = starter(`panels/${name}`).replace(from, to);
    expect(text).not.toBe(starter(`panels/${name}`));
    expect(validate(parseYaml(text))).toBe(false);
    expect(parseFile(text, tables).job).toBeNull();
  });

  it.each([
    ['angle: 90', 'angel: 90'],
    ['angle: 90', 'angle: right'],
    ['units: mm', 'units: furlong'],
    ['radius: 38.1', 'radius: { from: 38.1 }'],
    ['radius: 38.1', 'radius: [38.1]'],
    ['title: Workshop shelf front edge', 'title: 12'],
    ['title: Workshop shelf front edge', 'heading: Workshop shelf front edge'],
    ['stock: mdf-18', 'stok: mdf-18'],
    ['held: 50.8, ', ''],
    ['board:', 'runs: [{ name: a, from: 0, to: 10 }]\nboard:'],
    ['board:', 'effort:\nboard:'],
  ])('refuses %s → %s, as the program does', (from, to) => {
    const text = starter('plain-curve').replace(from, to);
    expect(text).not.toBe(starter('plain-curve'));
    expect(validate(parseYaml(text))).toBe(false);
    expect(parseJob(text, tables).job).toBeNull();
  });
});

interface Shape {
  readonly description?: string;
  readonly properties?: Readonly<Record<string, Shape>>;
  readonly items?: Shape;
  readonly anyOf?: readonly Shape[];
  readonly then?: Shape;
  readonly else?: Shape;
}

/** Paths of the keys without a description. */
function undescribed(shape: Shape, path = ''): string[] {
  const below = [shape.items, shape.then, shape.else].flatMap((one) => (one ? [one] : []));
  const inner = [...(shape.anyOf ?? []), ...below].flatMap((each) => undescribed(each, path));
  const keys = Object.entries(shape.properties ?? {}).flatMap(([key, value]) => [
    ...(value.description === undefined ? [`${path}${key}`] : []),
    ...undescribed(value, `${path}${key}.`),
  ]);
  return [...keys, ...inner];
}
