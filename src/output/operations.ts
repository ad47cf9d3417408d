import type { OutputFile } from '../base/drawing';
import type { OperationRow } from '../drawing/tooling/operations';

const HEAD = ['part', 'operation', 'count', 'size mm', 'depth mm', 'tool', 'note', 'x mm', 'y mm'];

/** The steps of cutting as a table and as data: what no drawing's layer name says. CSV by RFC 4180; numbers to a thousandth of a mm. */
export function writeOperations(rows: readonly OperationRow[]): OutputFile[] {
  if (rows.length === 0) return [];
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
      content: [HEAD, ...lines].map((line) => `${line.map(quote).join(',')}\r\n`).join(''),
      mime: 'text/csv',
    },
    {
      path: 'operations.json',
      content: `${JSON.stringify({ unit: 'mm', operations: data }, null, 2)}\n`,
      mime: 'application/json',
    },
  ];
}

function rounded(value: number | null): number | null {
  return value === null ? null : Number(value.toFixed(3));
}

function number(value: number | null): string {
  return value === null ? '' : String(rounded(value));
}

function quote(text: string): string {
  return /[",\r\n]/u.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
