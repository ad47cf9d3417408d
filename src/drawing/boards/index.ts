import { loopArea } from '../../base/area';
import type { Loop } from '../../base/drawing';
import { InternalError } from '../../base/errors';
import { moveDrawing } from '../../base/transform';
import { pieceOn, type Area } from '../../design/fixture/bed';
import { isCutFrom, offcutPlay } from '../../design/fixture/board-fit';
import type { FixtureLayout } from '../../design/fixture/fixture';
import type { Job, Offcut } from '../../job/job';
import type { Part } from '../parts/part';
import { findBoard } from '../../tables/look-up';
import type { Tables } from '../../tables/tables';
import { checkLaidOut } from './check-laid-out';
import type { Filled } from './fill';
import { nest, type Watch } from './nest';
import { outlineOf } from './outline';
import type { Placement, LaidOut } from './laid-out';
import type { Stock } from './stock';

export type { Watch } from './nest';

/** What a job asks of the layout: a jigsaw's usual spacing, and no offcuts, where it does not say. */
export interface Spacing {
  readonly offcuts: readonly Offcut[];
  /** Between parts, mm. */
  readonly gap: number;
  /** Left uncut along every edge of a board, mm. */
  readonly border: number;
  /** How far an offcut's thickness may be off the board's it stands in for, mm. */
  readonly play: number;
  /** The largest piece laid out at once; null for whole boards. */
  readonly bed: Area | null;
}

/** The job's own spacing. */
export function spacingFor(
  { offcuts, cut, machine: { bed } }: Job,
  { layers }: FixtureLayout,
  { tools }: Tables,
): Spacing {
  return { offcuts, gap: cut.gap, border: cut.border, play: offcutPlay(cut, layers, tools), bed };
}

/**
 * Parts → boards, one kind and thickness of board at a time, by their true shapes: offcuts first, then whole boards; nothing overlaps,
 * checked. The order of the parts makes no difference. Every part must fit (fixture/board-fit.ts sees to it).
 */
export function layOutBoards(
  parts: readonly Part[],
  tables: Tables,
  asked: Partial<Spacing> = {},
  watch: Watch = {},
): LaidOut[] {
  const spacing: Spacing = {
    offcuts: asked.offcuts ?? [],
    gap: asked.gap ?? tables.rules.partGap,
    border: asked.border ?? tables.rules.boardBorder,
    play: asked.play ?? tables.tools.sameThickness,
    bed: asked.bed ?? null,
  };
  const taken = new Set<number>();
  const numbers = new Map<string, number>();
  const boards: LaidOut[] = [];
  for (const group of groupByBoard(parts)) {
    for (const filled of layOutGroup(group, tables, spacing, { taken, watch })) {
      const number = (numbers.get(group.stock) ?? 0) + 1;
      if (filled.stock.offcut === null) numbers.set(group.stock, number);
      else taken.add(filled.stock.offcut);
      boards.push(laidOutOn(filled, group, number));
    }
  }
  checkLaidOut(boards, parts, spacing.gap, spacing.border);
  return boards;
}

/** Parts cut from the same board. */
interface Group {
  readonly stock: string;
  readonly thickness: number;
  readonly parts: readonly Part[];
}

function groupByBoard(parts: readonly Part[]): Group[] {
  const groups = new Map<string, Group>();
  for (const part of parts) {
    const { stock, thickness } = part;
    const key = `${stock} ${thickness}`;
    groups.set(key, { stock, thickness, parts: [...(groups.get(key)?.parts ?? []), part] });
  }
  return [...groups.values()].sort((a, b) =>
    a.stock < b.stock ? -1 : a.stock > b.stock ? 1 : a.thickness - b.thickness,
  );
}

function layOutGroup(
  group: Group,
  tables: Tables,
  { offcuts, gap, border, play, bed }: Spacing,
  { taken, watch }: { readonly taken: ReadonlySet<number>; readonly watch: Watch },
): readonly Filled[] {
  const whole = findBoard(tables, group.stock);
  if (!whole) throw new InternalError(`parts of a board that is not in the tables: ${group.stock}`);
  const board = pieceOn(whole, bed);
  const free = offcuts.flatMap((offcut, index) =>
    isCutFrom(offcut, { id: group.stock, thickness: group.thickness }, play) && !taken.has(index)
      ? [{ ...sizeOf(pieceOn(offcut, bed)), offcut: index }]
      : [],
  );
  const supply = { offcuts: free, board: { ...sizeOf(board), offcut: null }, border };
  const filled = nest(group.parts, supply, gap, watch);
  if (!filled) {
    const homeless = group.parts.filter((part) => !nest([part], supply, gap)).map(({ id }) => id);
    throw new InternalError(
      `no room for ${homeless.join(', ')} on a board of ${group.stock}, ${board.width} × ${board.length} mm, nor on any of ${free.length} offcuts of it`,
    );
  }
  return filled;
}

function sizeOf({ width, length }: Area): Area {
  return { width, length };
}

function laidOutOn({ stock, members, reach, across }: Filled, group: Group, number: number): LaidOut {
  const placed = members.map(({ part, quarters, x, y }) => ({
    part,
    placement: { part: part.id, angle: (quarters * Math.PI) / 2, dx: x, dy: y } satisfies Placement,
  }));
  const area = members.reduce((sum, { part }) => sum + Math.abs(loopArea(outlineOf(part).vertices)), 0);
  return {
    id:
      stock.offcut === null
        ? `board-${group.stock.replaceAll(/[^a-z0-9-]/gu, '_')}-${number}`
        : `offcut-${stock.offcut + 1}`,
    stock: group.stock,
    thickness: group.thickness,
    width: stock.width,
    length: stock.length,
    offcut: stock.offcut,
    used: { length: reach, width: across, share: area / (reach * stock.width) },
    placements: placed.map(({ placement }) => placement),
    drawing: {
      shapes: [edgeOf(stock), ...placed.flatMap(({ part, placement }) => moveDrawing(part.drawing, placement).shapes)],
    },
  };
}

/** A board's own edge, its length along x, a corner at the origin: all that lies on it has places from 0 up. */
function edgeOf({ length, width }: Stock): Loop {
  const corners = [
    [0, 0],
    [length, 0],
    [length, width],
    [0, width],
  ] as const;
  return { kind: 'loop', operation: 'board', vertices: corners.map(([x, y]) => ({ x, y, bulge: 0 })) };
}
