import type { LengthUnit } from '../../base/units';
import { formatLength } from '../../base/units';
import type { Staged } from '../../base/findings';
import type { Place } from '../../base/side';
import { stretch } from './affine';
import type { Chain, TracedLoop } from './chain';
import { findClashes, findDoubles } from './clashes';
import { mapCurve, reachOf } from './curve';
import { readDxf } from './dxf/read-dxf';
import { fitCurves } from './fit';
import { joinChains, type Joined } from './join';
import { placeLoops, tidied, type PlacedLoop } from './loops';
import { outlineOf, type Outline } from './outline';
import { scaleFrom, type Reference, type Scale } from './scale';
import { readSvg } from './svg/read-svg';
import { Troubles, type ReadOptions, type Trace } from './trace';

/** How far lines and arcs may stray from the curves they stand for, mm at true size. */
export const FIT = 0.05;
/** The widest gap between ends that is closed, mm at true size. */
export const REACH = 0.1;

export interface OutlineOptions extends ReadOptions {
  readonly format: 'svg' | 'dxf';
  /** A factor, or lengths known on the part; 1 where it is left out. */
  readonly scale?: number | readonly Reference[];
  /** Which of several outlines, counted from 1 by falling area. */
  readonly part?: number;
  /** What findings give lengths in. */
  readonly lengths: LengthUnit;
}

/** An outline traced from a drawing. */
export interface TracedOutline {
  readonly outline: Outline;
  readonly scale: Scale;
  /** How the drawing's sizes were taken, before scaling. */
  readonly sizes: string;
}

/**
 * Drawing text → the one outline in it with its holes, lines and arcs, mm at true size, y up. Curves are covered by arcs within 0.05 mm,
 * ends joined across up to 0.1 mm. Error findings name the place: what is open, crosses itself, is drawn twice, holds several outlines.
 */
export function readOutline(text: string, options: OutlineOptions): Staged<TracedOutline | null> {
  const read = options.format === 'svg' ? readSvg(text, options) : readDxf(text, options);
  if (!read.value) return { value: null, findings: read.findings };
  const scaled = scaleOf(options);
  if (!scaled.value) return { value: null, findings: [...read.findings, ...scaled.findings] };
  const { value: scale } = scaled;
  const traced = outlineFrom(scaledTraces(read.value.traces, scale), options);
  const value = traced.value && { outline: traced.value, scale, sizes: read.value.sizes };
  return { value, findings: [...read.findings, ...scaled.findings, ...traced.findings] };
}

function scaleOf({ scale = 1, path }: OutlineOptions): Staged<Scale | null> {
  if (typeof scale !== 'number') return scaleFrom(scale, path);
  if (scale > 0 && Number.isFinite(scale))
    return { value: { x: scale, y: scale, growth: 1, residual: null }, findings: [] };
  const troubles = new Troubles(path);
  troubles.refuse(
    'scale-factor',
    `the scale must be above 0, not ${scale}`,
    'give a factor, 1 for a drawing at true size',
  );
  return { value: null, findings: troubles.findings };
}

function scaledTraces(traces: readonly Trace[], { x, y }: Scale): Trace[] {
  const map = stretch(x, y);
  return traces.map((trace) => ({ ...trace, curves: trace.curves.map((curve) => mapCurve(map, curve)) }));
}

/** How findings are to be said. */
export type Telling = Pick<OutlineOptions, 'path' | 'lengths' | 'part'>;

/** More sides than this are no panel's. */
const MOST_SIDES = 20_000;
/** Nothing lies further from the origin than this, mm. */
const FURTHEST = 1e6;

/** Lines as drawn, at true size → outline; see {@link readOutline}. */
export function outlineFrom(traces: readonly Trace[], telling: Telling): Staged<Outline | null> {
  const troubles = new Troubles(telling.path);
  for (const { where } of traces.filter(({ curves }) => curves.some((curve) => !(reachOf(curve) < FURTHEST)))) {
    troubles.refuse(
      'drawing-too-far',
      `${where}: it reaches more than a kilometre away`,
      'check the scale and the unit of the drawing',
    );
  }
  if (troubles.refused) return { value: null, findings: troubles.findings };
  const chains = traces
    .map(({ curves, where, layer }): Chain => ({ vertices: fitCurves(curves, FIT), where, layer }))
    .filter(({ vertices }) => vertices.length > 1);
  if (chains.reduce((sum, { vertices }) => sum + vertices.length, 0) > MOST_SIDES) {
    troubles.refuse(
      'drawing-too-big',
      `the outline has more than ${MOST_SIDES} sides`,
      'simplify it, or leave only the outline in the drawing',
    );
    return { value: null, findings: troubles.findings };
  }
  const say = new Teller(telling, troubles);
  say.doubles(findDoubles(chains, REACH));
  const joined = joinChains(chains, REACH);
  if (!troubles.refused) say.joining(joined);
  const loops = joined.loops
    .map((loop) => ({ ...loop, vertices: tidied(loop.vertices) }))
    .filter(({ vertices }) => vertices.length > 1);
  if (!troubles.refused && loops.length === 0) say.missing();
  const outline = troubles.refused ? null : sortLoops(loops, telling, say);
  return { value: troubles.refused ? null : outline, findings: troubles.findings };
}

function sortLoops(loops: readonly TracedLoop[], { part }: Telling, say: Teller): Outline | null {
  const clashes = findClashes(loops.map(({ vertices }) => vertices));
  if (clashes.length > 0) {
    say.clashes(clashes, loops);
    return null;
  }
  const placed = placeLoops(loops);
  const outer = placed.filter(({ depth }) => depth === 0).sort((a, b) => b.area - a.area);
  const chosen = outer.length === 1 && part === undefined ? outer[0] : outer[(part ?? 0) - 1];
  if (!chosen) {
    say.choice(outer);
    return null;
  }
  const root = placed.indexOf(chosen);
  const inside = placed.filter((loop) => rootOf(loop, placed) === root && loop !== chosen);
  for (const island of inside.filter(({ depth }) => depth > 1)) say.island(island);
  return outlineOf(
    chosen.vertices,
    inside.filter(({ depth }) => depth === 1).map(({ vertices }) => vertices),
  );
}

/** The outermost loop that a loop lies in. */
function rootOf(loop: PlacedLoop, placed: readonly PlacedLoop[]): number {
  let [at, within] = [placed.indexOf(loop), loop.within];
  while (within !== null) [at, within] = [within, placed[within]?.within ?? null];
  return at;
}

/** What is wrong with the lines, in the maker's units, with the place. */
class Teller {
  constructor(
    private readonly telling: Telling,
    private readonly troubles: Troubles,
  ) {}

  doubles(places: readonly Place[]): void {
    for (const at of places) {
      this.troubles.refuse(
        'outline-double',
        `the same line is drawn twice at ${this.place(at)}`,
        'delete one of the two',
      );
    }
  }

  joining({ loose, gaps, widest }: Joined): void {
    for (const { at, where, nearest } of loose) {
      const meets = nearest !== null && nearest.gap <= REACH;
      if (meets)
        this.troubles.refuse(
          'outline-branch',
          `more than two lines meet at ${this.place(at)}: ${where}`,
          'delete the one that does not belong to the outline',
        );
      else
        this.troubles.refuse(
          'outline-open',
          `the line ends at ${this.place(at)} and meets no other: ${where}${this.gapTo(nearest)}`,
          `close it: ends within ${this.length(REACH, 2)} are joined`,
        );
    }
    if (gaps > 0) {
      const message =
        gaps === 1
          ? `a gap of ${this.length(widest, 3)} was closed`
          : `${gaps} gaps of up to ${this.length(widest, 3)} were closed`;
      this.troubles.note('outline-gaps', message, 'both ends were moved to the middle');
    }
  }

  missing(): void {
    const hint = 'draw the outline as lines, arcs or paths, on a layer that is read';
    this.troubles.refuse('outline-missing', 'the drawing holds no closed line', hint);
  }

  clashes(clashes: ReturnType<typeof findClashes>, loops: readonly TracedLoop[]): void {
    for (const {
      at,
      loops: [a, b],
    } of clashes) {
      const [first, second] = [loops[a]?.where ?? '', loops[b]?.where ?? ''];
      const what =
        a === b
          ? `the line crosses or touches itself at ${this.place(at)}: ${first}`
          : `two lines cross or touch at ${this.place(at)}: ${first} and ${second}`;
      this.troubles.refuse('outline-crossing', what, 'move them apart');
    }
  }

  choice(outer: readonly PlacedLoop[]): void {
    const shown = outer.slice(0, 6).map(({ bounds, where }, index) => {
      const size = `${this.length(bounds.maxX - bounds.minX)} × ${this.length(bounds.maxY - bounds.minY)}`;
      return `${index + 1}: ${size} at ${this.place({ x: bounds.minX, y: bounds.minY })}, ${where}`;
    });
    const more = outer.length > shown.length ? ` and ${outer.length - shown.length} more` : '';
    const message = `the drawing holds ${outer.length} outline${outer.length === 1 ? '' : 's'}: ${shown.join('; ')}${more}`;
    this.troubles.refuse(
      'outline-choice',
      message,
      `say which one: part: 1${outer.length > 1 ? ` to ${outer.length}` : ''}`,
    );
  }

  island({ bounds, where }: PlacedLoop): void {
    const at = this.place({ x: bounds.minX, y: bounds.minY });
    this.troubles.refuse(
      'outline-island',
      `something is drawn inside a hole at ${at}: ${where}`,
      'a hole is empty: delete it',
    );
  }

  private gapTo(nearest: Joined['loose'][number]['nearest']): string {
    return nearest ? `; the nearest end is ${this.length(nearest.gap, 2)} away at ${this.place(nearest.at)}` : '';
  }

  private place({ x, y }: Place): string {
    return `(${this.length(x)}, ${this.length(y)})`;
  }

  private length(mm: number, decimals = 1): string {
    return this.telling.lengths === 'mm' ? formatLength(mm, 'mm', decimals) : `${(mm / 25.4).toFixed(decimals + 1)} in`;
  }
}
