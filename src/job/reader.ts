import type { Finding, Measure } from '../base/findings';
import { finding } from '../findings/finding';
import { MM_PER_INCH } from '../base/inch';
import { bareForce, NEWTONS_PER, parseAngle, parseForce, parseLength, type LengthUnit } from '../base/units';
import { gaugeThickness } from '../tables/look-up';
import { candidates, rowNamed, type Row } from '../tables/names';
import type { Metal } from '../tables/schema';
import { tablesIn, type Tables } from '../tables/tables';
import { cuttingTools, type CuttingTool } from './cutting-tool';
import { pathText, type Path } from './path';
import type { Setting } from './setting';
import { shorten, show, UNPRINTABLE } from './show';

/** What may be asked of a number; of a length, mm. Outside it the number is a slip of the pen, whatever the rest of the job says. */
export interface Range {
  readonly min: number;
  readonly max: number;
}

/** As a maker would write them, mm and N: 1-1/2 in, 45 lbf. */
const EXAMPLE = { length: 38.1, force: 200 } as const;

/** Names that are in none of a table's rows, by table. */
const UNKNOWN = {
  metal: 'unknown-metal',
  board: 'unknown-board',
  screw: 'unknown-screw',
  fastener: 'unknown-fastener',
} as const;

/** Characters that leave no mark on paper. */
const INVISIBLE = /[\p{Cf}\p{Z}]/gu;

export function isBlock(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** Reads values by path and gathers what is wrong with them. A value that is absent, or not of the schema's kind, reads as undefined. */
export class Reader {
  readonly findings: Finding[] = [];
  readonly setting: Setting;
  /** Whether bare numbers can be judged: not where the job's unit is a word nobody knows. */
  private readonly unitsKnown: boolean;

  constructor(
    private readonly data: unknown,
    tables: Tables,
  ) {
    const written = this.at(['units']);
    const meant = written === undefined ? 'mm' : unitsMeant(written);
    this.unitsKnown = meant !== null;
    const units = meant ?? 'mm';
    const tool = cuttingTools.find((known) => known === this.at(['cut', 'with'])) ?? 'jigsaw';
    this.setting = { tables: tablesIn(tables, units), units, tool };
  }

  get tables(): Tables {
    return this.setting.tables;
  }

  get units(): LengthUnit {
    return this.setting.units;
  }

  at(path: Path): unknown {
    return path.reduce<unknown>((held, step) => {
      if (Array.isArray(held)) return typeof step === 'number' ? (held[step] as unknown) : undefined;
      return isBlock(held) && Object.hasOwn(held, step) ? held[String(step)] : undefined;
    }, this.data);
  }

  /** One finding of a kind a place: a value that stands for two keys is complained of once. */
  refuse(found: Finding): undefined {
    if (!this.findings.some(({ code, path }) => code === found.code && path === found.path)) this.findings.push(found);
  }

  /** A setting that belongs to other tools than the job's is a slip. */
  refuseForTool(path: Path, owners: readonly CuttingTool[]): void {
    if (this.at(path) === undefined) return;
    this.refuse(finding('not-for-this-tool', pathText(path), { tool: this.setting.tool, owners }));
  }

  text(path: Path): string | undefined {
    const value = this.at(path);
    return typeof value === 'string' ? value : undefined;
  }

  title(path: Path): string {
    const title = this.name(path, 200);
    if (/[/\\]/u.test(title)) this.refuse(finding('title-with-slash', pathText(path), { got: show(title) }));
    else if (/^\.+$/u.test(title)) this.refuse(finding('title-of-dots', pathText(path), { got: show(title) }));
    return title;
  }

  name(path: Path, longest = 60): string {
    const name = this.text(path)?.trim();
    if (name === undefined) return '';
    if (name.replaceAll(INVISIBLE, '') === '') this.refuse(finding('empty-name', pathText(path)));
    else if ([...name].length > longest)
      this.refuse(finding('name-too-long', pathText(path), { length: [...name].length, most: longest }));
    if (UNPRINTABLE.test(name)) this.refuse(finding('control-characters', pathText(path), { got: show(name) }));
    return name;
  }

  number(path: Path, range: Range): number | undefined {
    const value = this.at(path);
    return typeof value === 'number' ? this.inBounds(path, value, range, 'number') : undefined;
  }

  private inBounds(path: Path, value: number, range: Range, of: 'number' | 'degrees'): number | undefined {
    if (!Number.isFinite(value)) return undefined;
    if (value >= range.min && value <= range.max) return value;
    return this.refuse(outOfRange(path, { is: value, got: of === 'degrees' ? `${value}°` : String(value) }, range, of));
  }

  /** A whole number. */
  count(path: Path, range: Range): number | undefined {
    const value = this.number(path, range);
    if (value === undefined || Number.isInteger(value)) return value;
    return this.refuse(finding('not-whole', pathText(path), { is: value, least: range.min, most: range.max }));
  }

  /** Degrees. */
  angle(path: Path, range: Range): number | undefined {
    const value = this.at(path);
    const degrees = typeof value === 'string' ? parseAngle(value) : value;
    return typeof degrees === 'number' ? this.inBounds(path, degrees, range, 'degrees') : undefined;
  }

  force(path: Path, range: Range): number | undefined {
    const value = this.at(path);
    if (typeof value !== 'number' && typeof value !== 'string') return undefined;
    if (typeof value === 'number' && !Number.isFinite(value)) return undefined;
    // What it is in is not known: one finding says so.
    if (typeof value === 'number' && !this.unitsKnown) return undefined;
    const force =
      typeof value === 'number' ? value * NEWTONS_PER[bareForce[this.units]] : parseForce(value, this.units);
    if (force === null || !Number.isFinite(force))
      return this.refuse(finding('bad-force', pathText(path), { got: show(value), example: EXAMPLE.force }));
    if (!(force >= range.min && force <= range.max)) {
      return this.refuse(outOfRange(path, { is: force, got: show(value) }, range, 'force'));
    }
    return force;
  }

  length(path: Path, range: Range): number | undefined {
    const read = this.lengthOrGauge(path);
    if (read === undefined) return undefined;
    if ('gauge' in read) return this.refuse(finding('gauge-for-length', pathText(path), { got: show(this.at(path)) }));
    return this.inRange(path, read.mm, range);
  }

  /** The sheet's thickness, mm: a length, or a gauge of the table its metal is sold by. */
  thickness(path: Path, range: Range): number | undefined {
    const read = this.lengthOrGauge(path);
    if (read === undefined) return undefined;
    const metal = rowNamed(this.text(['sheet', 'material']) ?? '', this.tables.metals);
    if ('mm' in read) return this.inRange(path, read.mm, range, this.gaugeMeant(path, metal));
    if (!metal) return undefined;
    return gaugeThickness(this.tables, metal, read.gauge) ?? this.refuseGauge(path, metal, read.gauge);
  }

  /** The gauge a bare number may be meant as; null where it is none. */
  private gaugeMeant(path: Path, metal: Metal | undefined): number | null {
    // Bare or in quotes; with a unit it is no gauge.
    const written = String(this.at(path)).trim();
    const table = this.tables.gauges.find(({ id }) => id === (metal?.gauge ?? 'steel'));
    return table && Object.hasOwn(table.inches, written) ? Number(written) : null;
  }

  private refuseGauge(path: Path, metal: Metal, gauge: number): undefined {
    const table = this.tables.gauges.find(({ id }) => id === metal.gauge);
    const ends = table ? Object.keys(table.inches).map(Number) : [];
    return this.refuse(
      finding('unknown-gauge', pathText(path), {
        gauge,
        metal: metal.name,
        least: ends.at(0) ?? null,
        most: ends.at(-1) ?? null,
      }),
    );
  }

  /** The id of the row that the text names; a finding with the rows that come near, nearest first, where it names none. */
  named(path: Path, kind: keyof typeof UNKNOWN, rows: readonly Row[]): string | undefined {
    const written = this.at(path);
    const value = typeof written === 'number' ? String(written) : this.text(path);
    if (value === undefined) return undefined;
    const found = rowNamed(value, rows);
    if (found) return found.id;
    const near = candidates(value, rows, kind === 'metal' ? this.tables.metalNames : []).map(({ id }) => id);
    const rest = rows.map(({ id }) => id).filter((id) => !near.includes(id));
    return this.refuse(
      finding(UNKNOWN[kind], pathText(path), { got: shorten(value), near, known: [...near, ...rest] }),
    );
  }

  private lengthOrGauge(path: Path): { mm: number } | { gauge: number } | undefined {
    const value = this.at(path);
    if (typeof value === 'number') {
      if (!Number.isFinite(value)) return undefined;
      // By way of its decimal digits, so that 38.1 mm and 1.5 in are the same length to the last bit.
      const read = parseLength(String(value), this.units);
      return read.ok ? read : { mm: value * (this.units === 'in' ? MM_PER_INCH : 1) };
    }
    if (typeof value !== 'string') return undefined;
    const read = parseLength(value, this.units);
    return read.ok
      ? read
      : this.refuse(
          finding('bad-length', pathText(path), { got: show(value), reason: read.reason, example: EXAMPLE.length }),
        );
  }

  private inRange(path: Path, mm: number, range: Range, gauge: number | null = null): number | undefined {
    if (mm >= range.min && mm <= range.max) return mm;
    if (!this.unitsKnown && typeof this.at(path) === 'number') return undefined;
    return this.refuse(outOfRange(path, { is: mm, got: show(this.at(path)), gauge }, range, 'length'));
  }
}

/** A value outside what is possible; `got` as it was written. A range without an upper end has none to say. */
function outOfRange(
  path: Path,
  { is, got, gauge = null }: { readonly is: number; readonly got: string; readonly gauge?: number | null },
  { min, max }: Range,
  of: 'length' | 'force' | 'degrees' | 'number',
): Finding {
  const end = (value: number): Measure => ({ of: of === 'length' ? 'bound' : of, value });
  return finding('out-of-range', pathText(path), {
    is: { of: of === 'length' ? 'given' : of, value: is },
    least: end(min),
    most: max === Infinity ? null : end(max),
    got,
    gauge,
  });
}

/** The unit that is meant by a word for it, so that one wrong word does not make every length wrong. */
function unitsMeant(written: unknown): LengthUnit | null {
  const word = typeof written === 'string' ? written.trim().toLowerCase() : '';
  if (/^(?:in(?:ch(?:es)?)?|imperial|["″])$/u.test(word)) return 'in';
  return /^(?:mm|millimet(?:er|re)s?|metric)$/u.test(word) ? 'mm' : null;
}
