import font from 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed.ttf';
import { loopArea } from '../../base/area';
import { MM_PER_INCH, type LengthUnit } from '../../base/units';
import { wayAlong } from '../../base/way';
import { drawAids, drawTrial } from '../../drawing/aids';
import { templatesOf } from '../../output/files';
import { countPages } from '../../output/pdf/pdf';
import { measuresIn } from '../../output/shop-sheet/measures';
import { layOutPieces } from '../../output/pieces';
import { tablesIn } from '../../tables/tables';
import { tables, type Form } from '../work';

/** What a form takes to make: mm, mm², kg, and things counted. */
export interface Takes {
  readonly boards: number;
  /** The parts' outlines together. */
  readonly boardArea: number;
  /** Along every outline, opening and groove. */
  readonly cutLength: number;
  /** One blank, leverage included. */
  readonly metal: number;
  readonly pages: number;
}

/** Boards laid out, pages counted: a moment's work, to be asked for once the typing has paused. */
export async function takesOf({ job, planned, bend, parts }: Form): Promise<Takes> {
  const own = tablesIn(tables, job.units);
  const aids = [...drawAids(bend, job), ...drawTrial(bend, job, own)];
  const shapes = parts.flatMap(({ drawing }) => drawing.shapes);
  const cut = shapes.filter(
    ({ operation }) => operation === 'outline' || operation === 'hole' || operation === 'groove',
  );
  const outlines = shapes.flatMap((shape) => (shape.kind === 'loop' && shape.operation === 'outline' ? [shape] : []));
  return {
    boards: layOutPieces(parts, planned, tables).length,
    boardArea: outlines.reduce((sum, { vertices }) => sum + Math.abs(loopArea(vertices)), 0),
    cutLength: cut.reduce((sum, shape) => sum + wayAlong(shape), 0),
    metal: planned.plan.blank.mass,
    pages: await countPages(templatesOf(planned, { parts, aids }, own), job.paper, job, font),
  };
}

const MM_PER_FOOT = 12 * MM_PER_INCH;

/** What a form takes, in words of the job's unit: name and amount. */
export function sayTakes(takes: Takes, units: LengthUnit): readonly (readonly [string, string])[] {
  const inches = units === 'in';
  const area = inches
    ? `${(takes.boardArea / MM_PER_FOOT ** 2).toFixed(2)} sq ft`
    : `${(takes.boardArea / 1e6).toFixed(3)} m²`;
  const length = inches
    ? `${(takes.cutLength / MM_PER_FOOT).toFixed(1)} ft`
    : `${(takes.cutLength / 1000).toFixed(1)} m`;
  return [
    ['Boards cut into', String(takes.boards)],
    ['Board in the parts', area],
    ['Length to cut', length],
    ['Metal, one blank', measuresIn(units).mass(takes.metal)],
    ['Pages to print', String(takes.pages)],
  ];
}
