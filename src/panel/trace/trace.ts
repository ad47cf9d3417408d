import type { Finding } from '../../base/findings';
import type { Code } from '../../findings/catalogue';
import { finding, type Given } from '../../findings/finding';
import type { Curve } from './curve';

/** One connected line of a drawing, mm, y up. */
export interface Trace {
  /** What it is called in its file, for the maker to find it: `path “rim” (line 12)`. */
  readonly where: string;
  readonly layer: string;
  readonly curves: readonly Curve[];
}

/** How a drawing file is to be read. */
export interface ReadOptions {
  /** The job's field that names the file; findings point to it. */
  readonly path: string;
  /** px to an inch where the file does not say its size: else 96, or 90 for files of Inkscape before 0.92. */
  readonly dpi?: number;
  /** Unit of a DXF file that states none. */
  readonly unit?: 'mm' | 'cm' | 'm' | 'in' | 'ft';
  /** Only these layers; else all but those named in {@link ASIDE}. */
  readonly layers?: readonly string[];
}

/** Layers that hold no edges unless they are asked for: marks and texts, as our own drawings name them too. */
export const ASIDE: readonly string[] = ['mark', 'marks', 'label', 'labels', 'text', 'dimensions'];

/** A larger file is refused unread, characters: a traced outline takes some kB, with a photograph in it some MB. */
export const LONGEST_FILE = 20_000_000;
/** More lines than this in one drawing are no panel. */
export const MOST_TRACES = 20_000;

/** A drawing as read: what is drawn and how its sizes were taken, for the maker to check. */
export interface Tracing {
  readonly traces: readonly Trace[];
  /** E.g. `width and viewBox of the file, mm` or `96 px to the inch`. */
  readonly sizes: string;
}

/** What is found while reading; everything that can be told at once is told at once. */
export class Troubles {
  readonly findings: Finding[] = [];
  private readonly seen = new Set<string>();

  constructor(private readonly path: string) {}

  /** The same thing is said once, and no more than a page of things; what refuses the drawing still after a page of remarks. */
  say<C extends Code>(code: C, ...given: Given<C>): void {
    const found = finding(code, this.path, ...given);
    const key = JSON.stringify(found);
    const most = found.level === 'error' ? 2 * MOST_FINDINGS : MOST_FINDINGS;
    if (this.seen.has(key) || this.findings.length >= most) return;
    this.seen.add(key);
    this.findings.push(found);
  }

  get refused(): boolean {
    return this.findings.some(({ level }) => level === 'error');
  }
}

const MOST_FINDINGS = 40;

/** Whether a layer is to be read. */
export function isTaken(layer: string, { layers }: ReadOptions): boolean {
  const name = layer.toLowerCase();
  return layers ? layers.some((wanted) => wanted.toLowerCase() === name) : !ASIDE.includes(name);
}

/** A name out of a file as it may be printed: short, in one line. */
export function shown(name: string): string {
  const plain = name.replaceAll(/[\p{Cc}\p{Cf}\s]+/gu, ' ').trim();
  return plain.length > 40 ? `${plain.slice(0, 39)}…` : plain;
}
