import { error, type Finding } from '../base/findings';
import { MM_PER_INCH } from '../base/inch';
import { nearest } from '../base/suggest';
import { parseAngle, parseForce, parseLength, type LengthUnit } from '../base/units';
import { findMetal, gaugeThickness } from '../tables/look-up';
import type { Metal } from '../tables/schema';
import type { Tables } from '../tables/tables';
import { cuttingTools, type CuttingTool } from './cutting-tool';
import { pathText, type Path } from './path';
import type { Setting } from './setting';
import { show, shorten, UNPRINTABLE } from './show';

/** What may be asked of a number; of a length, mm. Outside it the number is a slip of the pen, whatever the rest of the job says. */
export interface Range {
  readonly min: number;
  readonly max: number;
}

/** Characters that leave no mark on paper. */
const INVISIBLE = /[\p{Cf}\p{Z}]/gu;

export function isBlock(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** Reads values by path and gathers what is wrong with them. A value that is absent, or not of the schema's kind, reads as undefined. */
export class Reader {
  readonly findings: Finding[] = [];
  readonly setting: Setting;

  constructor(
    private readonly data: unknown,
    tables: Tables,
  ) {
    const units = this.at(['units']) === 'in' ? 'in' : 'mm';
    const tool = cuttingTools.find((known) => known === this.at(['cut', 'with'])) ?? 'jigsaw';
    this.setting = { tables, units, tool };
  }

  get tables(): Tables {
    return this.setting.tables;
  }

  get units(): LengthUnit {
    return this.setting.units;
  }

  /** What a message calls a place. */
  place(path: Path): string {
    return pathText(path);
  }

  at(path: Path): unknown {
    return path.reduce<unknown>((held, step) => {
      if (Array.isArray(held)) return typeof step === 'number' ? (held[step] as unknown) : undefined;
      return isBlock(held) && Object.hasOwn(held, step) ? held[String(step)] : undefined;
    }, this.data);
  }

  /** One finding of a kind a place: a value that stands for two keys is complained of once. */
  refuse(code: string, path: Path, message: string, hint: string, got?: string, allowed?: string): undefined {
    if (this.findings.some((found) => found.code === code && found.path === pathText(path))) return;
    this.findings.push(
      error(code, pathText(path), message, hint, {
        ...(got === undefined ? {} : { got }),
        ...(allowed === undefined ? {} : { allowed }),
      }),
    );
  }

  /** A setting that belongs to other tools than the job's is a slip. */
  refuseForTool(path: Path, owners: readonly CuttingTool[]): void {
    if (this.at(path) === undefined) return;
    const { tool } = this.setting;
    this.refuse(
      'not-for-this-tool',
      path,
      `${pathText(path)} belongs to a ${owners.join(' or ')}; this job cuts with a ${tool}`,
      `leave it out, or let cut.with be ${owners.join(' or ')}`,
      tool,
      owners.join(', '),
    );
  }

  /** A length in the job’s unit, with digits enough to tell it from its neighbours. */
  print(mm: number): string {
    return this.units === 'mm' ? `${Number(mm.toPrecision(8))} mm` : `${Number((mm / MM_PER_INCH).toPrecision(8))} in`;
  }

  text(path: Path): string | undefined {
    const value = this.at(path);
    return typeof value === 'string' ? value : undefined;
  }

  title(path: Path): string {
    const title = this.name(path, 200);
    if (/[/\\]/u.test(title))
      this.refuse(
        'title-with-slash',
        path,
        'a title may not hold slashes: it names the output folder',
        'write “and” or a dash',
        show(title),
      );
    else if (/^\.+$/u.test(title))
      this.refuse(
        'title-of-dots',
        path,
        'a title needs letters: it names the output folder',
        'say what the part is',
        show(title),
      );
    return title;
  }

  name(path: Path, longest = 60): string {
    const name = this.text(path)?.trim();
    if (name === undefined) return '';
    const what = pathText(path);
    if (name.replaceAll(INVISIBLE, '') === '') this.refuse('empty-name', path, `${what} is empty`, 'say what it is');
    else if ([...name].length > longest)
      this.refuse(
        'name-too-long',
        path,
        `${what} is ${[...name].length} characters long`,
        'shorten it',
        `${[...name].length} characters`,
        `at most ${longest}`,
      );
    if (UNPRINTABLE.test(name))
      this.refuse(
        'control-characters',
        path,
        `${what} holds characters that cannot be printed`,
        'type it again on one line',
        show(name),
      );
    return name;
  }

  number(path: Path, range: Range): number | undefined {
    const value = this.at(path);
    return typeof value === 'number' ? this.inBounds(path, value, range, '') : undefined;
  }

  private inBounds(path: Path, value: number, { min, max }: Range, unit: string): number | undefined {
    if (!Number.isFinite(value)) return undefined;
    if (value >= min && value <= max) return value;
    return this.refuse(
      'out-of-range',
      path,
      `${pathText(path)} is ${value}${unit}; it must lie between ${min}${unit} and ${max}${unit}`,
      'check the number',
      `${value}${unit}`,
      `${min}${unit} to ${max}${unit}`,
    );
  }

  /** A whole number. */
  count(path: Path, range: Range): number | undefined {
    const value = this.number(path, range);
    if (value === undefined || Number.isInteger(value)) return value;
    return this.refuse(
      'not-whole',
      path,
      `${pathText(path)} is ${value}: they are counted in whole ones`,
      'write a whole number',
      String(value),
      `${range.min} to ${range.max}`,
    );
  }

  /** Degrees. */
  angle(path: Path, range: Range): number | undefined {
    const value = this.at(path);
    const degrees = typeof value === 'string' ? parseAngle(value) : value;
    return typeof degrees === 'number' ? this.inBounds(path, degrees, range, '°') : undefined;
  }

  force(path: Path, range: Range): number | undefined {
    const value = this.at(path);
    if (typeof value !== 'number' && typeof value !== 'string') return undefined;
    if (typeof value === 'number' && !Number.isFinite(value)) return undefined;
    const force = typeof value === 'number' ? value : parseForce(value);
    if (force === null || !Number.isFinite(force))
      return this.refuse(
        'bad-force',
        path,
        `${pathText(path)} is no force: ${show(value)}`,
        'write newtons, as in 200 N, or pounds, as in 45 lbf',
        show(value),
      );
    if (!(force >= range.min && force <= range.max)) {
      return this.refuse(
        'out-of-range',
        path,
        `${pathText(path)} is ${force.toFixed(0)} N; it must lie between ${range.min} and ${range.max} N`,
        'check the number',
        show(value),
        `${range.min} to ${range.max} N`,
      );
    }
    return force;
  }

  length(path: Path, range: Range): number | undefined {
    const read = this.lengthOrGauge(path);
    if (read === undefined) return undefined;
    if ('gauge' in read)
      return this.refuse(
        'gauge-for-length',
        path,
        `${pathText(path)} cannot be a gauge`,
        'write a length; gauges are for the sheet’s thickness',
        show(this.at(path)),
      );
    return this.inRange(path, read.mm, range);
  }

  /** The sheet's thickness, mm: a length, or a gauge of the table its metal is sold by. */
  thickness(path: Path, range: Range): number | undefined {
    const read = this.lengthOrGauge(path);
    if (read === undefined) return undefined;
    if ('mm' in read) return this.inRange(path, read.mm, range);
    const metal = findMetal(this.tables, this.text(['sheet', 'material']) ?? '');
    if (!metal) return undefined;
    return gaugeThickness(this.tables, metal, read.gauge) ?? this.refuseGauge(path, metal, read.gauge);
  }

  private refuseGauge(path: Path, metal: Metal, gauge: number): undefined {
    const table = this.tables.gauges.find(({ id }) => id === metal.gauge);
    const gauges = table ? Object.keys(table.inches) : [];
    return this.refuse(
      'unknown-gauge',
      path,
      table ? `${gauge} ga is not in the gauge table of ${metal.name}` : `${metal.name} is not sold by gauge`,
      'write the thickness as a length',
      `${gauge} ga`,
      gauges.length > 0 ? `${gauges[0]} to ${gauges.at(-1)} ga` : 'a length',
    );
  }

  /** The id of a row, where the text is one; a finding with the nearest match where it is not. */
  named(path: Path, kind: string, rows: readonly { readonly id: string }[]): string | undefined {
    const value = this.text(path);
    if (value === undefined) return undefined;
    const ids = rows.map(({ id }) => id);
    if (ids.includes(value)) return value;
    const near = nearest(value, ids);
    return this.refuse(
      `unknown-${kind}`,
      path,
      `there is no ${kind} called ${show(value)} in the tables`,
      near === null ? `see the table in shared/` : `did you mean “${near}”?`,
      shorten(value),
      ids.join(', '),
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
          'bad-length',
          path,
          `${pathText(path)} is ${show(value)}: ${read.reason}`,
          'write it as in 38 mm, 1-1/2 in or 3/4"',
          show(value),
        );
  }

  private inRange(path: Path, mm: number, range: Range): number | undefined {
    if (mm >= range.min && mm <= range.max) return mm;
    const allowed =
      range.max === Infinity
        ? `at least ${this.print(range.min)}`
        : `${this.bound(range.min)} to ${this.bound(range.max)}`;
    return this.refuse(
      'out-of-range',
      path,
      `${pathText(path)} is ${this.print(mm)}; it must be ${allowed}`,
      'check the number and its unit',
      show(this.at(path)),
      allowed,
    );
  }

  /** An end of a range, as a round number. */
  private bound(mm: number): string {
    return this.units === 'mm' ? `${Number(mm.toFixed(3))} mm` : `${Number((mm / MM_PER_INCH).toFixed(3))} in`;
  }
}
