import { MM_PER_INCH, type LengthUnit } from '../base/units';
import type { OutputFile } from '../base/drawing';
import type { OperationRow } from '../drawing/tooling/operations';

/** The steps of cutting as a table and as data: what no drawing's layer name says. CSV by RFC 4180; numbers in the job's unit, to a thousandth of a mm. */
export function writeOperations(rows: readonly OperationRow[], units: LengthUnit): OutputFile[] {
  if (rows.length === 0) return [];
  const head = [
    'part',
    'operation',
    'count',
    `size ${units}`,
    `depth ${units}`,
    'tool',
    'note',
    `x ${units}`,
    `y ${units}`,
  ];
  const rounded = (mm: number | null): number | null =>
    mm === null ? null : units === 'mm' ? Number(mm.toFixed(3)) : Number((mm / MM_PER_INCH).toFixed(5));
  const number = (mm: number | null): string => (mm === null ? '' : String(rounded(mm)));
  const lines = rows.map(({ part, operation, count, size, depth, tool, note, at }) => [
    part,
    operation,
    String(count),
    number(size),
    number(depth),
    tool,
    note,
    number(at?.[0] ?? null),
    number(at?.[1] ?? null),
  ]);
  const data = rows.map(({ at, ...row }) => ({
    ...row,
    size: rounded(row.size),
    depth: rounded(row.depth),
    at: at && at.map(rounded),
  }));
  return [
    {
      path: 'operations.csv',
      content: [head, ...lines].map((line) => `${line.map(quote).join(',')}\r\n`).join(''),
      mime: 'text/csv',
    },
    {
      path: 'operations.json',
      content: `${JSON.stringify({ unit: units, operations: data }, null, 2)}\n`,
      mime: 'application/json',
    },
  ];
}

function quote(text: string): string {
  return /[",\r\n]/u.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
