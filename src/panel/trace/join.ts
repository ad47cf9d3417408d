import { at } from '../../base/at';
import type { Vertex } from '../../base/drawing';
import type { Place } from '../../base/side';
import { distance, type Chain, type TracedLoop } from './chain';
import { walkedBack } from '../../base/outline';

/** An end that no other end meets. */
export interface LooseEnd {
  readonly at: Place;
  readonly where: string;
  /** The nearest end of another line, and how far away it is, mm; null where there is none. */
  readonly nearest: { readonly at: Place; readonly gap: number } | null;
}

export interface Joined {
  readonly loops: readonly TracedLoop[];
  readonly loose: readonly LooseEnd[];
  /** The widest gap that was closed, mm, and how many there were. */
  readonly widest: number;
  readonly gaps: number;
}

/** Gaps below this are the drawing program’s own rounding, mm. */
const AS_DRAWN = 1e-4;

interface End {
  readonly chain: number;
  readonly last: boolean;
  readonly at: Place;
}

interface Pair {
  readonly a: number;
  readonly b: number;
  readonly gap: number;
}

/**
 * Chains joined end to end into loops, nearest ends first, across gaps of at most `reach` mm; both ends of a gap go to its middle. What
 * stays open is named. The order of the chains decides only between ends equally near.
 */
export function joinChains(chains: readonly Chain[], reach: number): Joined {
  const ends = chains.flatMap(({ vertices }, chain): End[] => {
    const [first, last] = [vertices[0], vertices.at(-1)];
    return first && last
      ? [
          { chain, last: false, at: first },
          { chain, last: true, at: last },
        ]
      : [];
  });
  const mates = pairEnds(ends, reach, (chain) => lengthAcross(at(chains, chain).vertices));
  const loops = walk(chains, ends, mates);
  const gaps = mates.flatMap((mate, index) => (mate !== undefined && mate > index ? [gapOf(ends, index, mate)] : []));
  const loose = ends.flatMap((end, index) => (mates[index] === undefined ? [looseEnd(end, ends, chains)] : []));
  const open = gaps.filter((gap) => gap > AS_DRAWN);
  return { loops, loose, widest: Math.max(0, ...gaps), gaps: open.length };
}

function gapOf(ends: readonly End[], a: number, b: number): number {
  const [first, second] = [ends[a], ends[b]];
  return first && second ? distance(first.at, second.at) : Infinity;
}

/** A rough size of a chain, mm: how far its corners lie from its first one, arcs included. */
function lengthAcross(vertices: readonly Vertex[]): number {
  const [first] = vertices;
  return first ? Math.max(...vertices.map((vertex) => distance(first, vertex) + Math.abs(vertex.bulge))) : 0;
}

/** For every end its mate's number. Ends of one chain meet only where the chain is longer than the gap could be. */
function pairEnds(ends: readonly End[], reach: number, sizeOf: (chain: number) => number): (number | undefined)[] {
  const pairs = nearPairs(ends, reach).filter(({ a, b, gap }) => {
    const [first, second] = [ends[a], ends[b]];
    return first && second && (first.chain !== second.chain || gap < AS_DRAWN || sizeOf(first.chain) > 4 * reach);
  });
  pairs.sort((p, q) => p.gap - q.gap || p.a - q.a || p.b - q.b);
  const mates: (number | undefined)[] = ends.map(() => undefined);
  for (const { a, b } of pairs) {
    if (mates[a] !== undefined || mates[b] !== undefined) continue;
    mates[a] = b;
    mates[b] = a;
  }
  return mates;
}

/** Pairs of ends no further apart than `reach`, found through a grid of cells that wide. */
function nearPairs(ends: readonly End[], reach: number): Pair[] {
  const cells = new Map<string, number[]>();
  const pairs: Pair[] = [];
  for (const [index, { at }] of ends.entries()) {
    const [column, row] = [Math.floor(at.x / reach), Math.floor(at.y / reach)];
    for (const dx of [-1, 0, 1]) {
      for (const dy of [-1, 0, 1]) {
        for (const other of cells.get(`${column + dx} ${row + dy}`) ?? []) {
          const gap = gapOf(ends, other, index);
          if (gap <= reach) pairs.push({ a: other, b: index, gap });
        }
      }
    }
    const key = `${column} ${row}`;
    const cell = cells.get(key);
    if (cell) cell.push(index);
    else cells.set(key, [index]);
  }
  return pairs;
}

/** Follows chain after chain from mate to mate until it comes back to the start. Chains with a loose end on the way are left. */
function walk(chains: readonly Chain[], ends: readonly End[], mates: readonly (number | undefined)[]): TracedLoop[] {
  const taken = new Set<number>();
  const loops: TracedLoop[] = [];
  for (const start of chains.keys()) {
    if (taken.has(start)) continue;
    const run: { readonly chain: number; readonly forward: boolean }[] = [];
    let entry: number | undefined = 2 * start;
    while (entry !== undefined) {
      const end: End | undefined = ends[entry];
      if (!end || taken.has(end.chain)) break;
      taken.add(end.chain);
      run.push({ chain: end.chain, forward: !end.last });
      // The other end of the same chain: ends stand in pairs.
      entry = mates[entry ^ 1];
    }
    if (entry === 2 * start) loops.push(loopOf(run, chains));
  }
  return loops;
}

function loopOf(
  run: readonly { readonly chain: number; readonly forward: boolean }[],
  chains: readonly Chain[],
): TracedLoop {
  const pieces = run.flatMap(({ chain, forward }) => {
    const vertices = at(chains, chain).vertices;
    return [forward ? vertices : walkedBack(vertices)];
  });
  const vertices = pieces.flatMap((piece, index) => {
    const before = pieces.at(index - 1)?.at(-1);
    const [first, ...rest] = piece.slice(0, -1);
    return first && before ? [{ ...first, x: (first.x + before.x) / 2, y: (first.y + before.y) / 2 }, ...rest] : [];
  });
  const leader = at(chains, at(run, 0).chain);
  const more = run.length > 1 ? ` and ${run.length - 1} more` : '';
  return { vertices, where: `${leader.where}${more}`, layer: leader.layer };
}

function looseEnd(end: End, ends: readonly End[], chains: readonly Chain[]): LooseEnd {
  const others = ends.filter((other) => other !== end && (other.chain !== end.chain || ends.length === 2));
  const nearest = others.reduce<LooseEnd['nearest']>((best, { at }) => {
    const gap = distance(at, end.at);
    return best && best.gap <= gap ? best : { at, gap };
  }, null);
  return { at: end.at, where: at(chains, end.chain).where, nearest };
}
