import { shown, type Troubles } from '../trace';

/** A group of a DXF file: its code, its value and the line the value stands on. */
export interface Tag {
  readonly code: number;
  readonly value: string;
  readonly line: number;
}

/** What begins at a group 0: its name, the line, and the groups up to the next one. */
export interface Record0 {
  readonly type: string;
  readonly line: number;
  readonly tags: readonly Tag[];
}

/** DXF text → its records in order; null, with the line named, where it is not DXF. Source: the format owner's published reference, "ASCII DXF". */
export function readRecords(text: string, troubles: Troubles): readonly Record0[] | null {
  if (text.startsWith('AutoCAD Binary DXF') || /^AC10\d\d/u.test(text)) {
    return refuse(troubles, 'the file is a binary drawing, not an ASCII DXF file');
  }
  const lines = text.replace(/^\uFEFF/u, '').split(/\r\n|\n|\r/u);
  const records: { type: string; line: number; tags: Tag[] }[] = [];
  for (let index = 0; index + 1 < lines.length; index += 2) {
    const [head = '', value = ''] = [lines[index], lines[index + 1]];
    const code = /^\s*-?\d{1,4}\s*$/u.test(head) ? Number(head) : NaN;
    if (Number.isNaN(code)) return refuse(troubles, `line ${index + 1} should be a group code: ${shown(head)}`);
    const last = records.at(-1);
    if (code === 0) {
      const type = value.trim().toUpperCase();
      records.push({ type, line: index + 2, tags: [] });
      if (type === 'EOF') return records;
    } else if (last) last.tags.push({ code, value, line: index + 2 });
    else if (code !== 999) return refuse(troubles, `line ${index + 1}: the first group should be 0, not ${code}`);
  }
  return refuse(troubles, `the DXF file ends at line ${lines.length} without its end mark (EOF)`);
}

function refuse(troubles: Troubles, message: string): null {
  troubles.say('dxf-broken', { trouble: message });
  return null;
}

/** A value of a record that is wrong, with its line: caught where the drawing is read. */
export class DxfMistake extends Error {
  override readonly name = 'DxfMistake';
}

/** The first value of a group, as text. */
export function textOf(record: Record0, code: number): string | undefined {
  return record.tags.find((tag) => tag.code === code)?.value.trim();
}

/** The first value of a group, as a number; `missing` where there is none. Throws {@link DxfMistake} where it is none. */
export function numberOf(record: Record0, code: number, missing?: number): number {
  const tag = record.tags.find((candidate) => candidate.code === code);
  if (!tag && missing !== undefined) return missing;
  if (!tag) throw new DxfMistake(`${record.type} at line ${record.line} has no group ${code}`);
  return toNumber(tag);
}

/** Every value of a group, as numbers. */
export function numbersOf(record: Record0, code: number): number[] {
  return record.tags.filter((tag) => tag.code === code).map(toNumber);
}

/** A group's value as a finite number. */
export function toNumber({ value, line }: Tag): number {
  const text = value.trim();
  const number = text === '' ? NaN : Number(text);
  if (!Number.isFinite(number) || Math.abs(number) > LARGEST)
    throw new DxfMistake(`line ${line}: not a number: ${shown(value)}`);
  return number;
}

/** Beyond this, places lose the digits that matter; 1e9 mm is a thousand kilometres. */
const LARGEST = 1e12;
