import { at } from '../../base/at';
import { once } from '../../base/once';
import type { LengthUnit } from '../../base/units';
import * as z from 'zod/mini';
import type { CuttingTool } from '../cutting-tool';
import type { Path } from '../path';
import { isBlock, type Reader } from '../reader';
import { settle, type Of, type Setting } from '../setting';
import type { GroupName } from './groups';
import type { Kind, Quantity } from './quantity';

/** What is said of a field, wherever it is spoken of. */
export interface Words {
  /** What the page calls it. */
  readonly label: string;
  /** What it is, in one sentence without a full stop: for the schema, the README and the page. */
  readonly help: string;
  /** One value as a maker would write it; by the job's unit where it says one itself. */
  readonly example?: string | Readonly<Record<LengthUnit, string>>;
  /** Where the page shows it, where that is not with its block. */
  readonly group?: GroupName;
  /** The tools it is for; every one unless said. Where the job cuts with another, it is refused. */
  readonly tools?: readonly CuttingTool[];
  /** What the page puts into it when a new entry of a list is begun: text, or the path of a field to copy. `#` counts entries. */
  readonly fresh?: string | readonly string[];
}

/** A field's example in a job of these units; empty where it has none. */
export function exampleIn({ example = '' }: Pick<Words, 'example'>, units: LengthUnit): string {
  return typeof example === 'string' ? example : example[units];
}

/** A field described: one key of the job file with one value. `Value` is what the job has of it. */
export interface Field<Value = unknown> extends Words {
  readonly node: 'field';
  readonly kind: Kind;
  readonly required: boolean;
  /** What holds where it is left out, as words; null for a required field. */
  readonly unlessSaid: ((setting: Setting) => string) | null;
  /** The value that holds then, as the job has it; null where no single one does. */
  readonly standard: ((setting: Setting) => Plain) | null;
  /** Its schema, made when it is first asked for: a job without a block never pays for that block's. */
  readonly shape: () => z.ZodMiniType;
  readonly read: (reader: Reader, path: Path) => Value;
}

/** Several fields under one key. `short`: the keys a single value in place of the block stands for. */
export interface Block<Value = unknown> {
  readonly node: 'block';
  readonly help: string;
  readonly group: GroupName | null;
  readonly required: boolean;
  readonly fields: Readonly<Record<string, Node>>;
  readonly short: readonly string[];
  readonly shape: () => z.ZodMiniType;
  readonly read: (reader: Reader, path: Path) => Value;
  /** The same with each field where `placeOf` says. */
  readonly readAt: (reader: Reader, placeOf: (key: string) => Path) => Value;
}

/** A list of like blocks. */
export interface List<Value = unknown> {
  readonly node: 'list';
  readonly help: string;
  /** What one of them is called. */
  readonly one: string;
  /** What holds while the list is empty, and what it is for. */
  readonly empty: string;
  readonly group: GroupName;
  readonly required: false;
  /** All that may stand in an entry. */
  readonly entry: Block;
  /** What an entry may be; the first unless its key is there. */
  readonly kinds: readonly EntryKind[];
  readonly shape: () => z.ZodMiniType;
  readonly read: (reader: Reader, path: Path) => Value;
}

/** One of the things an entry of a list may be. */
export interface EntryKind {
  readonly one: string;
  /** The key its fields stand under; null where they stand in the entry itself. */
  readonly key: string | null;
  readonly fields: Readonly<Record<string, Node>>;
  /** Whether enough is filled in for the entry to count, asked by key; null for a list whose entries count from the start. */
  readonly whole: ((has: (key: string) => boolean) => boolean) | null;
}

export type Node<Value = unknown> = Field<Value> | Block<Value> | List<Value>;

/** What the job has of a described field, block or list. */
export type Read<Described> = Described extends { readonly read: (reader: Reader, path: Path) => infer Value }
  ? Value
  : never;

/** What the job has of several, by key. */
export type ReadEach<Fields> = { readonly [Key in keyof Fields]: Read<Fields[Key]> };

/** What a field's value may be in the job; null beside it where it may be left out. */
type Plain = string | number | boolean;

interface Required<Value> extends Words {
  readonly is: Quantity<Value>;
  readonly required: true;
}
interface WithStandard<Value> extends Words {
  readonly is: Quantity<Value>;
  /** The value that holds where the field is left out, in the job’s units; its words are made from it unless given. */
  readonly unless: Of<NoInfer<Value>>;
  readonly unlessWords?: Of<string>;
}
interface WithoutStandard<Value> extends Words {
  readonly is: Quantity<Value>;
  /** What holds where the field is left out, as words; the job then has null. */
  readonly without: Of<string>;
}

/** Describes a field that must be there; one with a value that holds unless said; or one that may be left out (null). */
export function field<Value extends Plain>(said: Required<Value> | WithStandard<Value>): Field<Value>;
export function field<Value extends Plain>(said: WithoutStandard<Value>): Field<Value | null>;
export function field<Value extends Plain>(
  said: Required<Value> | WithStandard<Value> | WithoutStandard<Value>,
): Field<Value> | Field<Value | null> {
  if ('required' in said) return describe(said, said.is, { read: () => said.is.none, words: null, standard: null });
  if ('without' in said)
    return describe<Value, null>(said, said.is, {
      read: () => null,
      words: (setting) => settle(said.without, setting),
      standard: null,
    });
  const standard = (setting: Setting): Value => settle<Value>(said.unless, setting);
  return describe<Value, Value>(said, said.is, {
    read: ({ setting }) => standard(setting),
    words: (setting) => settle(said.unlessWords ?? said.is.print(standard(setting), setting), setting),
    standard,
  });
}

/** What stands for a field that is left out. */
interface Absent<Value> {
  readonly read: (reader: Reader) => Value;
  readonly words: Field['unlessSaid'];
  readonly standard: Field['standard'];
}

function describe<Value, Missing>(said: Words, is: Quantity<Value>, absent: Absent<Missing>): Field<Value | Missing> {
  const { label, help, example, group, tools, fresh } = said;
  return {
    node: 'field',
    label,
    help,
    ...(example === undefined ? {} : { example }),
    ...(group === undefined ? {} : { group }),
    ...(tools === undefined ? {} : { tools }),
    ...(fresh === undefined ? {} : { fresh }),
    kind: is,
    required: absent.words === null,
    unlessSaid: absent.words,
    standard: absent.standard,
    shape: once(() => described(oneOf(is.shapes), is.writing === '' ? help : `${help}. ${is.writing}`)),
    read: (reader, path) => {
      if (tools && !tools.includes(reader.setting.tool)) reader.refuseForTool(path, tools);
      return is.read(reader, path) ?? absent.read(reader);
    },
  };
}

/** A schema of one's own with what is said of it. */
export function described<Shape extends z.ZodMiniType>(own: Shape, description: string): Shape {
  z.globalRegistry.add(own, { description });
  return own;
}

function oneOf(shapes: readonly z.ZodMiniType[]): z.ZodMiniType {
  const [only] = shapes;
  return shapes.length === 1 && only ? only.clone() : z.union(shapes);
}

interface BlockWords {
  readonly help: string;
  readonly group?: GroupName;
  readonly required?: boolean;
}

/** Describes a block of fields. */
export function block<const Fields extends Readonly<Record<string, Node>>>(
  { help, group, required = false }: BlockWords,
  fields: Fields,
): Block<ReadEach<Fields>> {
  const readAt = (reader: Reader, placeOf: (key: string) => Path): ReadEach<Fields> =>
    readEach(fields, (key, each) => each.read(reader, placeOf(key)));
  return {
    node: 'block',
    help,
    group: group ?? null,
    required,
    fields,
    short: [],
    shape: once(() => described(objectOf(fields), help)),
    read: (reader, path) => readAt(reader, (key) => [...path, key]),
    readAt,
  };
}

/** The same with one value in place of the block, which stands for each of `keys`: `38`, or `{ from, to }`. */
export function shortened<Value>(long: Block<Value>, keys: readonly string[]): Block<Value> {
  const first = long.fields[at(keys, 0)];
  const shapes = first?.node === 'field' ? first.kind.shapes : [];
  return {
    ...long,
    short: keys,
    shape: once(() => described(z.union([...shapes, objectOf(long.fields)]), long.help)),
    read: (reader, path) => {
      const value = reader.at(path);
      if (value === undefined || isBlock(value)) return long.read(reader, path);
      return long.readAt(reader, (key) => (keys.includes(key) ? path : [...path, key]));
    },
  };
}

/** The same for a block that means nothing where it is left out. */
export function orNull<Value>(inner: Block<Value>): Block<Value | null> {
  return { ...inner, read: (reader, path) => (isBlock(reader.at(path)) ? inner.read(reader, path) : null) };
}

interface ListWords {
  readonly help: string;
  readonly one: string;
  readonly empty: string;
  readonly group: GroupName;
  readonly least?: number;
  readonly most: number;
}

/** Describes a list of like blocks; left out, the job has an empty one. */
export function list<const Fields extends Readonly<Record<string, Node>>>(
  { least = 0, most, ...words }: ListWords,
  fields: Fields,
): List<readonly ReadEach<Fields>[]> {
  const entry = block({ help: words.help }, fields);
  return {
    node: 'list',
    ...words,
    required: false,
    entry,
    kinds: [{ one: words.one, key: null, fields, whole: null }],
    shape: once(() => described(z.array(objectOf(fields)).check(z.minLength(least), z.maxLength(most)), words.help)),
    read: (reader, path) => {
      const entries = reader.at(path);
      return Array.isArray(entries) ? entries.map((_, index) => entry.read(reader, [...path, index])) : [];
    },
  };
}

/** The first kind of entry of a list of two, its fields in the entry itself. */
interface FirstKind<Value> {
  readonly one: string;
  readonly block: Block<Value>;
}

/** The other kind, under a key of its own. */
interface OtherKind<Key, Value> extends FirstKind<Value> {
  readonly key: Key;
  readonly whole: NonNullable<EntryKind['whole']>;
}

/** Describes a list whose entries are of two kinds; on the page each counts once it is whole. */
export function either<First, const Key extends string, Other>(
  { least = 0, most, ...words }: Omit<ListWords, 'one'>,
  first: FirstKind<First>,
  other: OtherKind<Key, Other>,
): List<readonly (First | { readonly [K in Key]: Other })[]> {
  const { key } = other;
  const fields = { ...first.block.fields, [key]: other.block };
  const needed = Object.entries(first.block.fields).flatMap(([name, { required }]) => (required ? [name] : []));
  const entries = (): z.ZodMiniType =>
    z.union([objectOf(first.block.fields), z.strictObject({ [key]: other.block.shape() })]);
  return {
    node: 'list',
    ...words,
    one: first.one,
    required: false,
    entry: block({ help: words.help }, fields),
    kinds: [
      { one: first.one, key: null, fields: first.block.fields, whole: (has) => needed.every(has) },
      { one: other.one, key, fields: other.block.fields, whole: other.whole },
    ],
    shape: once(() => described(z.array(entries()).check(z.minLength(least), z.maxLength(most)), words.help)),
    read: (reader, path) => {
      const listed = reader.at(path);
      if (!Array.isArray(listed)) return [];
      return listed.map((_, index) => {
        const at = [...path, index];
        if (reader.at([...at, key]) === undefined) return first.block.read(reader, at);
        // The one key is the type's own; TypeScript widens a computed key to text.
        return { [key]: other.block.read(reader, [...at, key]) } as { readonly [K in Key]: Other };
      });
    },
  };
}

function objectOf(fields: Readonly<Record<string, Node>>): z.ZodMiniType {
  return z.strictObject(
    Object.fromEntries(
      Object.entries(fields).map(([key, { required, shape }]) => [key, required ? shape() : z.optional(shape())]),
    ),
  );
}

/** Every field read, under its key. */
function readEach<Fields extends Readonly<Record<string, Node>>>(
  fields: Fields,
  read: (key: string, each: Node) => unknown,
): ReadEach<Fields> {
  // TypeScript does not follow a type from key to key through Object.entries; each value here is what its own field reads.
  return Object.fromEntries(Object.entries(fields).map(([key, each]) => [key, read(key, each)])) as ReadEach<Fields>;
}
