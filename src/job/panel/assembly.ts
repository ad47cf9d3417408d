import * as z from 'zod/mini';
import type { Finding } from '../../base/findings';
import type { LengthUnit } from '../../base/units';
import { finding } from '../../findings/finding';
import type { Tables } from '../../tables/tables';
import { block, field, list, type Read } from '../fields/field';
import { commonFields } from '../fields/index';
import { choice, name } from '../fields/quantities';
import { pathText } from '../path';
import { isBlock, Reader } from '../reader';
import { show } from '../show';
import { leadsOutside } from './beside';
import { about, written } from './keyed';

/** A panel of an assembly: of a job file of its own, or the mirror image of another. */
export interface AssemblyPanel {
  readonly name: string;
  readonly from: { readonly file: string } | { readonly mirror: string };
}

/** A panel's name: it names a folder, and stands before the full stop in `middle.left`. */
const NAME = /^[\p{L}\p{N}][\p{L}\p{N} _-]{0,39}$/u;
const MOST_PANELS = 12;
const MOST_JOINS = 40;

const panels = written<readonly AssemblyPanel[]>(
  {
    label: 'panels',
    help: 'The panels by name: each the job file of one, beside this file or in a folder below it, or `{ mirror: NAME }` for the mirror image of another',
    example: '{ left: side.yaml, middle: middle.yaml, right: { mirror: left } }',
  },
  {
    shape: z
      .record(z.string(), z.union([z.string(), z.strictObject({ mirror: about(z.string(), 'The panel it mirrors') })]))
      .check(z.refine((named) => Object.keys(named).length <= MOST_PANELS)),
    writing: 'A block of file names, or blocks with `mirror`, by the panel’s name',
    required: true,
    without: '',
    read: (reader, path) => {
      const value = reader.at(path);
      return Object.entries(isBlock(value) ? value : {}).map(([called, given]): AssemblyPanel => {
        const at = [...path, called];
        if (!NAME.test(called)) reader.refuse(finding('panel-name', pathText(path), { got: show(called) }));
        if (isBlock(given)) return { name: called, from: { mirror: reader.name([...at, 'mirror']) } };
        const file = reader.name(at, 200);
        if (leadsOutside(file)) reader.refuse(finding('panel-file-outside', pathText(at), { got: show(file) }));
        return { name: called, from: { file } };
      });
    },
  },
);

const joins = list(
  {
    help: 'Where one panel laps another: a seam of each',
    one: 'join',
    empty: 'No join',
    group: 'bend',
    least: 1,
    most: MOST_JOINS,
  },
  {
    outer: field({
      label: 'outer',
      help: 'The seam that lies outside, by its panel and its edge',
      example: 'middle.left',
      is: name,
      required: true,
    }),
    inner: field({
      label: 'inner',
      help: 'The seam it lies on, by its panel and its edge',
      example: 'left.top.rim',
      is: name,
      required: true,
    }),
    drill: field({
      label: 'drill',
      help: 'Which of the two is drilled on the bench, the other through it; or both apart',
      is: choice(['inner', 'outer', 'both']),
      unless: 'inner',
    }),
  },
);

/** An assembly's file described: the panels, and which seam of one meets which of another. */
export const assemblyFields = block(
  { help: 'Several panels and the seams they are joined by', required: true },
  { title: commonFields.title, units: commonFields.units, panels, joins },
);

/** An assembly's file after reading. */
export interface AssemblyJob extends Read<typeof assemblyFields> {
  readonly units: LengthUnit;
}

/** Plain data with `panels` → an assembly. */
export function readAssembly(
  data: unknown,
  tables: Tables,
): { readonly job: AssemblyJob; readonly findings: readonly Finding[] } {
  const reader = new Reader(data, tables);
  const given = assemblyFields.read(reader, []);
  const files = given.panels.flatMap(({ name: called, from }) => ('file' in from ? [called] : []));
  for (const { name: called, from } of given.panels)
    if ('mirror' in from && !files.includes(from.mirror))
      reader.refuse(finding('mirror-of-none', `panels.${called}`, { name: from.mirror, known: files }));
  return { job: { ...given, units: reader.units }, findings: reader.findings };
}
