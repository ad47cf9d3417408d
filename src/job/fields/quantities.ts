import { finding } from '../../findings/finding';
import * as z from 'zod/mini';
import { toDegrees, toRadians } from '../../base/angle';
import { colourNames, parseColour } from '../../base/colour';
import { ANGLE_TEXT, formatDiameter, formatForce, type LengthUnit } from '../../base/units';
import { loadFasteners } from '../../tables/fasteners';
import type { Tables } from '../../tables/tables';
import { pathText, type Path } from '../path';
import type { Reader } from '../reader';
import { settle, type Of, type Setting } from '../setting';
import { show } from '../show';
import type { Quantity } from './quantity';

const numberOrText = [z.number(), z.string()];
const range = (min: Of<number>, max: Of<number>) => (setting: Setting) => ({
  min: settle(min, setting),
  max: settle(max, setting),
});
const plain = { writing: '', choices: null, bounds: null } as const;

/** A length, mm, between two lengths in mm. */
export function length(min: Of<number>, max: Of<number>): Quantity<number> {
  const bounds = range(min, max);
  return {
    name: 'length',
    shapes: numberOrText,
    writing: 'A number in the job’s unit, or text with its own: 38 mm, 1-1/2 in, 3/4", 5\' 3 1/2"',
    choices: null,
    bounds,
    none: NaN,
    read: (reader, path) => reader.length(path, bounds(reader.setting)),
    print: (mm, { units }) => formatDiameter(mm, units),
  };
}

/** The sheet’s thickness, mm: a length, or a gauge of the table the job’s metal is sold by. */
export function sheetThickness(min: number, max: number): Quantity<number> {
  const like = length(min, max);
  return {
    ...like,
    name: 'thickness',
    writing: `${like.writing}; or a gauge, 18 ga`,
    read: (reader, path) => reader.thickness(path, { min, max }),
  };
}

/** A number of degrees in the file, radians in the job. Bounds in degrees. */
export function angle(min: number, max: number): Quantity<number> {
  const bounds = range(min, max);
  return {
    name: 'angle',
    shapes: [z.number(), z.string().check(z.regex(ANGLE_TEXT))],
    writing: 'A number of degrees, 90 or 90°',
    choices: null,
    bounds,
    none: NaN,
    read: (reader, path) => {
      const degrees = reader.angle(path, bounds(reader.setting));
      return degrees === undefined ? undefined : toRadians(degrees);
    },
    print: (radians) => `${Number(toDegrees(radians).toFixed(1))}°`,
  };
}

/** A force, N; bare, in the force that goes with the job's unit. */
export function force(min: Of<number>, max: Of<number>): Quantity<number> {
  const bounds = range(min, max);
  return {
    name: 'force',
    shapes: numberOrText,
    writing: 'A number in newtons (in pounds where units is in), or text with its unit: 200 N, 45 lbf',
    choices: null,
    bounds,
    none: NaN,
    read: (reader, path) => reader.force(path, bounds(reader.setting)),
    print: (newtons, { units }) => formatForce(newtons, units),
  };
}

/** A number without a unit. */
export function ratio(min: Of<number>, max: Of<number>): Quantity<number> {
  const bounds = range(min, max);
  return {
    ...plain,
    name: 'ratio',
    shapes: [z.number()],
    bounds,
    none: NaN,
    read: (reader, path) => reader.number(path, bounds(reader.setting)),
    print: String,
  };
}

/** A whole number. */
export function count(min: Of<number>, max: Of<number>): Quantity<number> {
  const bounds = range(min, max);
  return {
    ...ratio(min, max),
    name: 'count',
    writing: 'A whole number',
    read: (reader, path) => reader.count(path, bounds(reader.setting)),
  };
}

const text = { ...plain, name: 'text', shapes: [z.string()], none: '', print: String } as const;

/** What the part is called: it names the output folder too. */
export const title: Quantity<string> = { ...text, read: (reader, path) => reader.title(path) };

/** A name the maker gives. */
export const name: Quantity<string> = { ...text, read: (reader, path) => reader.name(path) };

/** One of a few words; `texts` says them in more words where they need it, a size in either unit. */
export function choice<const Value extends string>(
  values: readonly [Value, ...Value[]],
  texts?: Readonly<Partial<Record<Value, string | Readonly<Record<LengthUnit, string>>>>>,
): Quantity<Value> {
  const say = (value: Value, { units }: Setting): string => {
    const text = texts?.[value] ?? value;
    return typeof text === 'string' ? text : text[units];
  };
  return {
    name: 'choice',
    shapes: [z.enum(values)],
    writing: '',
    choices: (setting) => values.map((value) => ({ value, text: say(value, setting) })),
    bounds: null,
    none: values[0],
    read: (reader, path) => values.find((value) => value === reader.at(path)),
    print: say,
  };
}

/** Yes or no. */
export const yesNo: Quantity<boolean> = {
  name: 'yes-no',
  shapes: [z.boolean()],
  writing: '',
  choices: () => [
    { value: 'true', text: 'yes' },
    { value: 'false', text: 'no' },
  ],
  bounds: null,
  none: false,
  read: (reader, path) => {
    const value = reader.at(path);
    return typeof value === 'boolean' ? value : undefined;
  },
  print: (value) => (value ? 'yes' : 'no'),
};

interface Row {
  readonly id: string;
  readonly name: string;
}

/** The id of a row of one of the tables; `kind` is what a row is called. */
function row(
  kind: 'metal' | 'board' | 'screw' | 'fastener',
  rows: (tables: Tables) => readonly Row[],
  shapes: readonly z.ZodMiniType[] = [z.string()],
): Quantity<string> {
  return {
    name: 'row',
    shapes,
    writing: '',
    choices: ({ tables }) => rows(tables).map((each) => ({ value: each.id, text: each.name })),
    bounds: null,
    none: '',
    read: (reader, path) => reader.named(path, kind, rows(reader.tables)),
    print: (id, { tables }) => rows(tables).find((each) => each.id === id)?.name ?? id,
  };
}

// 304 and 5052, and screws of size 8, are written without quotes.
export const metal = row('metal', ({ metals }) => metals, [z.string(), z.number()]);
export const board = row('board', ({ boards }) => boards);
export const screw = row('screw', ({ screws }) => screws, [z.string(), z.number()]);
export const fastener = row('fastener', () => loadFasteners().fasteners);

/** A colour of the drawings’ lines, as #rrggbb. */
export const colour: Quantity<string> = {
  ...plain,
  name: 'colour',
  shapes: [z.string()],
  writing: `${Object.keys(colourNames).join(', ')}, or #rrggbb`,
  none: '',
  read: readColour,
  print: String,
};

function readColour(reader: Reader, path: Path): string | undefined {
  const written = reader.text(path);
  if (written === undefined) return undefined;
  return (
    parseColour(written) ??
    reader.refuse(finding('unknown-colour', pathText(path), { got: show(written), names: Object.keys(colourNames) }))
  );
}
