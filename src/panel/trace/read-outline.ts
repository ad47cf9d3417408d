import { at } from '../../base/at';
import type { Staged } from '../../base/findings';
import type { Place } from '../../base/side';
import { stretch } from './affine';
import type { Chain, TracedLoop } from './chain';
import { findClashes, findDoubles } from './clashes';
import { lineCurve, mapCurve, reachOf } from './curve';
import { readDxf } from './dxf/read-dxf';
import { fitCurves } from './fit';
import { joinChains, type Joined } from './join';
import { placeLoops, tidied, type PlacedLoop } from './loops';
import { outlineOf, type Outline } from './outline';
import { scaleFrom, type Reference, type Scale } from './scale';
import { readSvg } from './svg/read-svg';
import { Troubles, type ReadOptions, type Trace, type Tracing } from './trace';

/** How far lines and arcs may stray from the curves they stand for, mm at true size. */
const FIT = 0.05;
/** The widest gap between ends that is closed, mm at true size. */
export const REACH = 0.1;

/** How what was drawn becomes an outline at true size. */
export interface OutlineOptions extends ReadOptions {
  readonly format: 'svg' | 'dxf';
  /** A factor, or lengths known on the part; 1 where it is left out. */
  readonly scale?: number | readonly Reference[];
  /** The job's field with the scale, where that is not the file's: findings about it point there. */
  readonly scalePath?: string;
  /** Which of several outlines, counted from 1 by falling area. */
  readonly part?: number;
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
 * ends joined across up to 0.1 mm. Error findings name the place, as drawn: what is open, crosses itself, is drawn twice, holds several outlines.
 */
export function readOutline(text: string, options: OutlineOptions): Staged<TracedOutline | null> {
  const read = options.format === 'svg' ? readSvg(text, options) : readDxf(text, options);
  if (!read.value) return { value: null, findings: read.findings };
  const made = outlineAtSize(read.value, options);
  return { value: made.value, findings: [...read.findings, ...made.findings] };
}

/** The same of a closed line given by its corners, mm. */
export function outlineOfCorners(
  corners: readonly Place[],
  options: Omit<OutlineOptions, 'format'>,
): Staged<TracedOutline | null> {
  const curves = corners.map((from, index) => lineCurve(from, at(corners, (index + 1) % corners.length)));
  return outlineAtSize({ traces: [{ where: 'the corners', layer: '', curves }], sizes: 'the corners’ own' }, options);
}

function outlineAtSize(
  { traces, sizes }: Tracing,
  options: Omit<OutlineOptions, 'format'>,
): Staged<TracedOutline | null> {
  const scaled = scaleOf(options);
  if (!scaled.value) return { value: null, findings: scaled.findings };
  const { value: scale } = scaled;
  const traced = outlineFrom(scaledTraces(traces, scale), { ...options, drawn: scale });
  const value = traced.value && { outline: traced.value, scale, sizes };
  return { value, findings: [...scaled.findings, ...traced.findings] };
}

function scaleOf({ scale = 1, path, scalePath = path }: Omit<OutlineOptions, 'format'>): Staged<Scale | null> {
  if (typeof scale !== 'number') return scaleFrom(scale, scalePath);
  if (scale > 0 && Number.isFinite(scale))
    return { value: { x: scale, y: scale, growth: 1, residual: null }, findings: [] };
  const troubles = new Troubles(scalePath);
  troubles.say('scale-factor', { factor: scale });
  return { value: null, findings: troubles.findings };
}

function scaledTraces(traces: readonly Trace[], { x, y }: Scale): Trace[] {
  const map = stretch(x, y);
  return traces.map((trace) => ({ ...trace, curves: trace.curves.map((curve) => mapCurve(map, curve)) }));
}

/** How findings are to be said. */
export interface Telling extends Pick<OutlineOptions, 'path' | 'part'> {
  /** How many times larger the lines are than they are drawn: places are told as drawn. As drawn unless said. */
  readonly drawn?: { readonly x: number; readonly y: number };
}

/** More sides than this are no panel's. */
const MOST_SIDES = 20_000;
/** Nothing lies further from the origin than this, mm. */
const FURTHEST = 1e6;

/** Lines as drawn, at true size → outline; see {@link readOutline}. */
export function outlineFrom(traces: readonly Trace[], telling: Telling): Staged<Outline | null> {
  const troubles = new Troubles(telling.path);
  for (const { where } of traces.filter(({ curves }) => curves.some((curve) => !(reachOf(curve) < FURTHEST)))) {
    troubles.say('drawing-too-far', { where });
  }
  if (troubles.refused) return { value: null, findings: troubles.findings };
  const chains = traces
    .map(({ curves, where, layer }): Chain => ({ vertices: fitCurves(curves, FIT), where, layer }))
    .filter(({ vertices }) => vertices.length > 1);
  if (chains.reduce((sum, { vertices }) => sum + vertices.length, 0) > MOST_SIDES) {
    troubles.say('outline-too-fine', { most: MOST_SIDES });
    return { value: null, findings: troubles.findings };
  }
  const say = new Teller(troubles, telling.drawn ?? { x: 1, y: 1 });
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

/** What is wrong with the lines, with the place. */
class Teller {
  constructor(
    private readonly troubles: Troubles,
    private readonly drawn: { readonly x: number; readonly y: number },
  ) {}

  /** A place as it is drawn. */
  private place({ x, y }: Place): readonly [number, number] {
    return [x / this.drawn.x, y / this.drawn.y];
  }

  doubles(places: readonly Place[]): void {
    for (const at of places) {
      this.troubles.say('outline-double', { at: this.place(at) });
    }
  }

  joining({ loose, gaps, widest }: Joined): void {
    for (const { at, where, nearest } of loose) {
      const meets = nearest !== null && nearest.gap <= REACH;
      if (meets) this.troubles.say('outline-branch', { at: this.place(at), where });
      else
        this.troubles.say('outline-open', {
          at: this.place(at),
          where,
          gap: nearest && nearest.gap,
          nearest: nearest && this.place(nearest.at),
          reach: REACH,
        });
    }
    if (gaps > 0) this.troubles.say('outline-gaps', { gaps, widest });
  }

  missing(): void {
    this.troubles.say('outline-missing');
  }

  clashes(clashes: ReturnType<typeof findClashes>, loops: readonly TracedLoop[]): void {
    for (const {
      at: place,
      loops: [a, b],
    } of clashes) {
      const second = a === b ? null : at(loops, b).where;
      this.troubles.say('outline-crossing', { at: this.place(place), first: at(loops, a).where, second });
    }
  }

  choice(outer: readonly PlacedLoop[]): void {
    const outlines = outer.slice(0, MOST_SHOWN).map(({ bounds, where }) => ({
      name: where,
      size: [bounds.maxX - bounds.minX, bounds.maxY - bounds.minY] as const,
      at: this.place({ x: bounds.minX, y: bounds.minY }),
    }));
    this.troubles.say('outline-choice', { outlines, count: outer.length, more: outer.length - outlines.length });
  }

  island({ bounds, where }: PlacedLoop): void {
    this.troubles.say('outline-island', { at: this.place({ x: bounds.minX, y: bounds.minY }), where });
  }
}

/** So many outlines are named to choose from. */
const MOST_SHOWN = 6;
