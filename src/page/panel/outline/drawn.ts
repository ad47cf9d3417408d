import { boundsOf } from '../../../base/bounds';
import type { Bounds } from '../../../base/bounds';
import type { Vertex } from '../../../base/drawing';
import { flattenLoop } from '../../../base/flatten';
import type { LengthUnit } from '../../../base/units';
import { sayFindings, type SaidFinding } from '../../../findings/say';
import { labelOf } from '../../../job/fields/label';
import { tracedFields } from '../../../job/panel/fields';
import { formatOf } from '../../../job/panel/outline';
import type { Outline } from '../../../panel/trace/outline';
import { outlineOfCorners, readOutline, type OutlineOptions } from '../../../panel/trace/read-outline';
import { nodeAt, textAt, type Draft, type OpenedDrawing } from '../../draft';
import { lineAt, type DrawnPlace } from './placing';

/** The outline as it is drawn, before it is scaled; or why there is none to show. */
export type Drawn =
  | { readonly kind: 'read'; readonly outline: Outline; readonly sizes: string }
  | { readonly kind: 'refused'; readonly findings: readonly SaidFinding[] }
  | { readonly kind: 'missing' };

/** What the draft's `outline` says, read as the command line reads it, unscaled. */
export function drawnOutline(
  outline: Draft | string | undefined,
  drawing: OpenedDrawing | null,
  units: LengthUnit,
): Drawn {
  if (typeof outline !== 'object') return { kind: 'missing' };
  const file = textAt(outline, ['file']);
  const read =
    nodeAt(outline, ['corners']) === undefined ? readFile(outline, file, drawing) : readCorners(outline, units);
  if (!read) return { kind: 'missing' };
  const { value, findings } = read;
  if (value) return { kind: 'read', outline: value.outline, sizes: value.sizes };
  const field = (path: string): string => labelOf(path, tracedFields);
  return { kind: 'refused', findings: sayFindings(findings, { units, field }) };
}

function readFile(outline: Draft, file: string, drawing: OpenedDrawing | null): ReturnType<typeof readOutline> | null {
  const format = formatOf(file);
  if (format === null || drawing?.name !== file) return null;
  return readOutline(drawing.text, { path: 'outline.file', format, ...optionsOf(outline) });
}

const UNITS = ['mm', 'cm', 'm', 'in', 'ft'] as const;

function optionsOf(outline: Draft): Pick<OutlineOptions, 'part' | 'layers' | 'dpi' | 'unit'> {
  const [part, dpi] = [Number(textAt(outline, ['part'])), Number(textAt(outline, ['dpi']))];
  const unit = UNITS.find((known) => known === textAt(outline, ['unit']));
  const given = nodeAt(outline, ['layers']);
  const layers = Array.isArray(given)
    ? (given as readonly unknown[]).filter((one): one is string => typeof one === 'string')
    : [];
  return {
    ...(part >= 1 ? { part } : {}),
    ...(dpi > 0 ? { dpi } : {}),
    ...(unit ? { unit } : {}),
    ...(layers.length > 0 ? { layers } : {}),
  };
}

function readCorners(outline: Draft, units: LengthUnit): ReturnType<typeof outlineOfCorners> | null {
  const given = nodeAt(outline, ['corners']);
  if (!Array.isArray(given)) return null;
  const places = given.map((_, index) => lineAt({ at: [given[index] ?? '', given[index] ?? ''] }, ['at'], units)?.[0]);
  const corners = places.flatMap((place) => (place ? [{ x: place[0], y: place[1] }] : []));
  return corners.length === given.length ? outlineOfCorners(corners, { path: 'outline.corners' }) : null;
}

/** How finely arcs are shown and touched, mm. */
const STRAY = 0.1;

/** A loop as a path of an SVG, whose y points down. */
export function pathOf(loop: readonly Vertex[]): string {
  const points = flattenLoop(loop, STRAY).map(([x, y]) => `${x.toFixed(2)} ${(-y).toFixed(2)}`);
  return `M${points.join('L')}Z`;
}

export function boundsOfLoops(loops: readonly (readonly Vertex[])[]): Bounds {
  return boundsOf({ shapes: loops.map((vertices) => ({ kind: 'loop', operation: 'outline', vertices })) });
}

/** Places to be taken exactly: corners, where a side or an arc begins. */
export function cornersOf(loops: readonly (readonly Vertex[])[]): DrawnPlace[] {
  return loops.flatMap((loop) => loop.map(({ x, y }): DrawnPlace => [x, y]));
}

/** The corner nearest to a place, where one is within `reach`; else null. */
export function nearestCorner([x, y]: DrawnPlace, corners: readonly DrawnPlace[], reach: number): DrawnPlace | null {
  const away = corners.map(([u, v]) => Math.hypot(u - x, v - y));
  const least = Math.min(...away);
  return least <= reach ? (corners[away.indexOf(least)] ?? null) : null;
}
