import { at } from '../../../base/at';
import { boundsOf } from '../../../base/bounds';
import type { Drawing, Loop, Text } from '../../../base/drawing';
import type { Staged } from '../../../base/findings';
import { moveDrawing } from '../../../base/transform';
import type { LaidOut } from '../../../drawing/boards/laid-out';
import { layOutMetal, type Blank, type MetalLayout } from '../../../drawing/boards/lay-out-metal';
import { label } from '../../../drawing/parts/shapes';
import type { PanelJob } from '../../../job/panel/read';
import { mirrored, type Outline } from '../../../panel/trace/outline';
import type { PanelRules } from '../../../tables/panel-rules';

/** The panel's blanks on the metal sheets they are cut from. */
export interface Metal {
  readonly layout: MetalLayout;
  /** A drawing for each sheet: its edge, the blanks to cut with their names. */
  readonly drawings: readonly { readonly id: string; readonly drawing: Drawing }[];
}

/** The blanks as they are cut, both of a pair, on the sheet the job buys; null where it names none. */
export function metalOf(
  { sheet, panel }: PanelJob,
  cut: Outline,
  given: { readonly metal: { readonly id: string; readonly density: number }; readonly rules: PanelRules },
): Staged<Metal | null> {
  const { stock } = sheet;
  if (!stock) return { value: null, findings: [] };
  const blanks: Blank[] = panel.pair
    ? [
        { id: 'left', name: 'the left blank', outline: cut },
        { id: 'right', name: 'the right blank', outline: mirrored(cut) },
      ]
    : [{ id: 'blank', name: 'the blank', outline: cut }];
  const made = layOutMetal(
    blanks,
    {
      metal: given.metal.id,
      density: given.metal.density,
      thickness: sheet.thickness,
      sheet: { width: stock.width, length: stock.length },
      offcuts: [],
      grain: stock.grain,
      gap: given.rules.metalGap,
      border: given.rules.metalBorder,
    },
    'sheet.stock',
  );
  const { value: layout } = made;
  if (!layout) return { value: null, findings: made.findings };
  const drawings = layout.sheets.map((one) => ({ id: one.id, drawing: sheetDrawing(one, blanks) }));
  return { value: { layout, drawings }, findings: made.findings };
}

/** The blanks placed anew, so that each has its name in its middle, on the sheet's own edge. */
function sheetDrawing({ length, width, placements }: LaidOut, blanks: readonly Blank[]): Drawing {
  const edge: Loop = {
    kind: 'loop',
    operation: 'board',
    vertices: [
      { x: 0, y: 0, bulge: 0 },
      { x: length, y: 0, bulge: 0 },
      { x: length, y: width, bulge: 0 },
      { x: 0, y: width, bulge: 0 },
    ],
  };
  const placed = placements.flatMap((placement) => {
    const blank = blanks.find(({ id }) => id === placement.part);
    if (!blank) return [];
    const { vertices, holes } = blank.outline;
    const loops = [
      { kind: 'loop', operation: 'outline', vertices } as const,
      ...holes.map((hole) => ({ kind: 'loop', operation: 'hole', vertices: hole }) as const),
    ];
    const { shapes } = moveDrawing({ shapes: loops }, placement);
    return [...shapes, ...nameOn(blank.id, { shapes: [at(shapes, 0)] })];
  });
  return { shapes: [edge, ...placed] };
}

function nameOn(id: string, drawing: Drawing): Text[] {
  const { minX, minY, maxX, maxY } = boundsOf(drawing);
  const size = { x: (minX + maxX) / 2, y: (minY + maxY) / 2, width: 0.4 * (maxX - minX) };
  return [...label(id.toUpperCase(), { ...size, tallest: Math.min(20, (maxY - minY) / 10) })];
}
