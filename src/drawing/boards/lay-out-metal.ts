import { boundsOf } from '../../base/bounds';
import type { Drawing, Loop } from '../../base/drawing';
import { InternalError } from '../../base/errors';
import type { Staged } from '../../base/findings';
import { moveDrawing } from '../../base/transform';
import { finding } from '../../findings/finding';
import { outlineArea, type Outline } from '../../panel/trace/outline';
import type { Shaped } from '../parts/part';
import { checkLaidOut } from './check-laid-out';
import type { Filled } from './fill';
import { nest, type Watch } from './nest';
import type { Placement, LaidOut } from './laid-out';
import type { Stock, Supply } from './stock';

/** A blank to cut from metal sheet; ids are safe as file names. */
export interface Blank {
  readonly id: string;
  readonly name: string;
  readonly outline: Outline;
}

/** What there is to cut from, mm. A sheet lies with its length along x, and its grain runs along that. */
export interface MetalSupply {
  /** Id of the metal. */
  readonly metal: string;
  readonly thickness: number;
  /** kg/m³. */
  readonly density: number;
  readonly sheet: { readonly width: number; readonly length: number };
  readonly offcuts: readonly { readonly width: number; readonly length: number }[];
  /** Which way of a blank's own drawing the grain is to run; any where it does not matter. */
  readonly grain: 'any' | 'x' | 'y';
  readonly gap: number;
  readonly border: number;
}

/** Blanks on metal sheets. */
export interface MetalLayout {
  readonly sheets: readonly LaidOut[];
  /** kg of each blank, by its id. */
  readonly mass: Readonly<Record<string, number>>;
  /** The blanks' share of the sheets and offcuts that are cut, 0…1. */
  readonly used: number;
}

/** Mass of a blank, kg: area·thickness·density. */
export function blankMass(
  outline: Outline,
  { thickness, density }: Pick<MetalSupply, 'thickness' | 'density'>,
): number {
  return outlineArea(outline) * thickness * density * 1e-9;
}

/**
 * Blanks laid out by their true shapes on the metal sheets they are cut from, offcuts first, the grain along each as asked; nothing overlaps,
 * checked. An error finding for each blank that fits on none. `path`: the stock in the job.
 */
export function layOutMetal(
  blanks: readonly Blank[],
  metal: MetalSupply,
  path: string,
  watch: Watch = {},
): Staged<MetalLayout | null> {
  const parts = blanks.map((blank) => partOf(blank, metal));
  const supply = supplyOf(metal);
  const homeless = blanks.filter((_, index) => !nest(parts.slice(index, index + 1), supply, metal.gap));
  if (homeless.length > 0) {
    const { length, width } = metal.sheet;
    const findings = homeless.map((blank) =>
      finding('metal-too-small', path, { blank: blank.name, size: sizeOf(blank), sheet: [length, width] }),
    );
    return { value: null, findings };
  }
  const filled = nest(parts, supply, metal.gap, watch) ?? [];
  const areas = new Map(blanks.map(({ id, outline }) => [id, outlineArea(outline)]));
  const areaOf = ({ id }: Shaped): number => {
    const area = areas.get(id);
    if (area === undefined) throw new InternalError(`blank ${id} is not among those laid out`);
    return area;
  };
  const sheets = filled.map((one, index) => sheetOf(one, metal, areaOf, index));
  // Sheets, parts and border are looked at by means of their own; throws if anything overlaps.
  checkLaidOut(sheets, parts, metal.gap, metal.border);
  const whole = sheets.reduce((sum, { width, length }) => sum + width * length, 0);
  const net = [...areas.values()].reduce((sum, area) => sum + area, 0);
  const mass = Object.fromEntries(blanks.map(({ id, outline }) => [id, blankMass(outline, metal)]));
  const turned = metal.grain === 'y' ? sheets.map(fromDrawn) : sheets;
  return { value: { sheets: turned, mass, used: whole > 0 ? net / whole : 0 }, findings: [] };
}

/** A blank as a part, turned by a quarter where the grain is to run along its y. */
function partOf({ id, outline }: Blank, { grain }: MetalSupply): Shaped {
  const loop = (operation: 'outline' | 'hole', vertices: Outline['vertices']): Loop => ({
    kind: 'loop',
    operation,
    vertices,
  });
  const drawing: Drawing = {
    shapes: [loop('outline', outline.vertices), ...outline.holes.map((hole) => loop('hole', hole))],
  };
  return { id, drawing: grain === 'y' ? moveDrawing(drawing, { dx: 0, dy: 0, angle: Math.PI / 2 }) : drawing };
}

/** Placements of blanks as they are drawn, not as they were turned for the grain. */
function fromDrawn(sheet: LaidOut): LaidOut {
  return { ...sheet, placements: sheet.placements.map((one) => ({ ...one, angle: one.angle + Math.PI / 2 })) };
}

function supplyOf({ sheet, offcuts, border, grain }: MetalSupply): Supply {
  const free = offcuts.map(({ width, length }, offcut): Stock => ({ width, length, offcut }));
  return { offcuts: free, board: { ...sheet, offcut: null }, border, grain: grain !== 'any' };
}

function sizeOf({ outline }: Blank): readonly [number, number] {
  const bounds = boundsOf({ shapes: [{ kind: 'loop', operation: 'outline', vertices: outline.vertices }] });
  return [bounds.maxX - bounds.minX, bounds.maxY - bounds.minY];
}

function sheetOf(filled: Filled, metal: MetalSupply, areaOf: (part: Shaped) => number, index: number): LaidOut {
  const { stock, members, reach, across } = filled;
  const placed = members.map(({ part, quarters, x, y }) => {
    const placement: Placement = { part: part.id, angle: (quarters * Math.PI) / 2, dx: x, dy: y };
    return { placement, shapes: moveDrawing(part.drawing, placement).shapes };
  });
  const area = members.reduce((sum, { part }) => sum + areaOf(part), 0);
  return {
    id: stock.offcut === null ? `metal-${index + 1}` : `metal-offcut-${stock.offcut + 1}`,
    stock: metal.metal,
    thickness: metal.thickness,
    width: stock.width,
    length: stock.length,
    offcut: stock.offcut,
    used: { length: reach, width: across, share: area / (reach * stock.width) },
    placements: placed.map(({ placement }) => placement),
    drawing: { shapes: placed.flatMap(({ shapes }) => shapes) },
  };
}
