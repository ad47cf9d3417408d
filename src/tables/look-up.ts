import { MM_PER_INCH } from '../base/inch';
import type { Board, ClampKind, HandForce, Metal, Screw } from './schema';
import type { Tables } from './tables';

/** The metal with this id. */
export function findMetal(tables: Tables, id: string): Metal | undefined {
  return tables.metals.find((metal) => metal.id === id);
}

/** The board with this id. */
export function findBoard(tables: Tables, id: string): Board | undefined {
  return tables.boards.find((board) => board.id === id);
}

/** The screw size with this id. */
export function findScrew(tables: Tables, id: string): Screw | undefined {
  return tables.screws.find((screw) => screw.id === id);
}

/** Smallest published inside bend radius as multiples of the thickness (mm); null beyond the thickest row. */
export function minBendRatioFor(metal: Metal, thickness: number): number | null {
  return metal.minBendRatio.find((row) => thickness <= row.upTo)?.ratio ?? null;
}

/** Thickness, mm, of a gauge number in the table this metal is sold by; null where there is no table or no such number. */
export function gaugeThickness(tables: Tables, metal: Metal, gauge: number): number | null {
  const inches = tables.gauges.find((table) => table.id === metal.gauge)?.inches[String(gauge)];
  return inches === undefined ? null : inches * MM_PER_INCH;
}

/** The screw size chosen for a spine of this thickness (mm), inch or metric. */
export function screwFor(tables: Tables, system: Screw['system'], spineThickness: number): Screw | undefined {
  return tables.screws.find(
    (screw) => screw.system === system && (screw.spineUpTo === null || spineThickness <= screw.spineUpTo),
  );
}

/** The kind of clamp with this id. */
export function findClamp(tables: Tables, id: string): ClampKind | undefined {
  return tables.clamps.find((kind) => kind.id === id);
}

/** What one person pulls in the posture with this id. */
export function findHandForce(tables: Tables, id: string): HandForce | undefined {
  return tables.handForces.find((posture) => posture.id === id);
}
