import { MM_PER_INCH, type LengthUnit } from '../base/units';
import type { OutputFile } from '../base/drawing';
import type { OperationRow } from '../drawing/tooling/operations';

/** In what units the steps are written: sizes in the job's, places in that of the drawings' numbers. */
export interface OperationUnits {
  readonly sizes: LengthUnit;
  readonly places: LengthUnit;
}

/** The steps of cutting as a table and as data: what no drawing's layer name says. CSV by RFC 4180; numbers to a thousandth of a mm. */
export function writeOperations(rows: readonly OperationRow[], { sizes, places }: OperationUnits): OutputFile[] {
  if (rows.length === 0) return [];
  const head = [
    'part',
    'operation',
    'count',
    `size ${sizes}`,
    `depth ${sizes}`,
    'tool',
    'note',
    `x ${places}`,
    `y ${places}`,
  ];
  const size = (mm: number | null): number | null => (mm === null ? null : rounded(mm, sizes));
  const place = (mm: number): number => rounded(mm, places);
  const text = (value: number | null): string => (value === null ? '' : String(value));
  const lines = rows.map(({ at, ...row }) => [
    row.part,
    row.operation,
    String(row.count),
    text(size(row.size)),
    text(size(row.depth)),
    row.tool,
    row.note,
    ...(at ? at.map((mm) => text(place(mm))) : ['', '']),
  ]);
  const data = rows.map(({ at, ...row }) => ({
    ...row,
    size: size(row.size),
    depth: size(row.depth),
    at: at && at.map(place),
  }));
  return [
    {
      path: 'operations.csv',
      content: [head, ...lines].map((line) => `${line.map(quote).join(',')}\r\n`).join(''),
      mime: 'text/csv',
    },
    {
      path: 'operations.json',
      content: `${JSON.stringify({ unit: sizes, placeUnit: places, operations: data }, null, 2)}\n`,
      mime: 'application/json',
    },
  ];
}

function rounded(mm: number, units: LengthUnit): number {
  return units === 'mm' ? Number(mm.toFixed(3)) : Number((mm / MM_PER_INCH).toFixed(5));
}

function quote(text: string): string {
  return /[",\r\n]/u.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
