import { boundsOf, boundsOfPoints, type Bounds } from '../../base/bounds';
import type { Drawing, Line, Operation, Shape } from '../../base/drawing';
import { moveDrawing, type Move } from '../../base/transform';
import type { LengthUnit } from '../../base/units';
import { holeNotes, textBounds } from './hole-notes';
import type { Lettering } from './lettering';
import type { Rect } from './paper';
import type { Pen } from './pen';
import { wasteTicks } from './waste-ticks';

/** A drawing as it is printed: every operation in its own kind of line, with ticks, crosses and notes added. */
export interface Dressed {
  readonly layers: readonly Layer[];
  /** All that is printed, text too, with clear paper round it, mm. */
  readonly bounds: Bounds;
}

interface Layer {
  readonly width: number;
  readonly dash: readonly number[];
  readonly drawing: Drawing;
}

/** Line widths and dashes, mm: cuts wide enough to trace, everything else thinner. A groove's is dashed: not cut through. */
const LINES: Readonly<Record<Operation, Omit<Layer, 'drawing'>>> = {
  outline: { width: 0.3, dash: [] },
  hole: { width: 0.25, dash: [] },
  pilot: { width: 0.25, dash: [] },
  countersink: { width: 0.2, dash: [] },
  groove: { width: 0.25, dash: [5, 1.5] },
  mark: { width: 0.18, dash: [] },
  label: { width: 0.18, dash: [] },
  board: { width: 0.18, dash: [12, 2, 2, 2] },
};
const THIN = { width: 0.13, dash: [] };
/** How far a hole's centre cross reaches past its edge, mm. */
const CROSS_REACH = 1.5;
/** Room for ticks and half a line round a drawing, mm. */
const CLEAR = 2.5;

export function dressForPaper(drawing: Drawing, units: LengthUnit, { measure }: Lettering): Dressed {
  const notes = holeNotes(drawing, units, measure);
  const layer = (line: Omit<Layer, 'drawing'>, shapes: readonly Shape[]): Layer => ({ ...line, drawing: { shapes } });
  const of = (operation: Operation): Layer =>
    layer(
      LINES[operation],
      drawing.shapes.filter((shape) => shape.operation === operation),
    );
  const layers = [
    layer(THIN, [...wasteTicks(drawing), ...crossesOf(drawing)]),
    ...(['board', 'mark', 'countersink', 'groove', 'pilot', 'hole', 'outline', 'label'] as const).map(of),
    layer(LINES.label, notes),
  ];
  const inked = [
    boundsOf(drawing),
    ...[...drawing.shapes, ...notes].flatMap((shape) => (shape.kind === 'text' ? [textBounds(shape, measure)] : [])),
  ];
  return { layers: layers.filter(({ drawing: { shapes } }) => shapes.length > 0), bounds: grow(unite(inked), CLEAR) };
}

/** A cross through the middle of every hole and pilot. */
function crossesOf({ shapes }: Drawing): Line[] {
  return shapes.flatMap((shape): Line[] => {
    if (shape.kind !== 'circle' || (shape.operation !== 'hole' && shape.operation !== 'pilot')) return [];
    const [{ x, y }, reach] = [shape, shape.radius + CROSS_REACH];
    return [
      { kind: 'line', operation: 'mark', from: [x - reach, y], to: [x + reach, y] },
      { kind: 'line', operation: 'mark', from: [x, y - reach], to: [x, y + reach] },
    ];
  });
}

/** Prints what of a dressed drawing shows in a frame of the page. */
export function printDressed(
  pen: Pen,
  { layers }: Dressed,
  { place, frame }: { readonly place: Move; readonly frame: Rect },
  { measure, printable }: Lettering,
): void {
  pen.within(frame, () => {
    for (const { width, dash, drawing } of layers) {
      pen.style(width, dash);
      for (const shape of moveDrawing(drawing, place).shapes) {
        const bounds = shape.kind === 'text' ? textBounds(shape, measure) : boundsOf({ shapes: [shape] });
        if (shows(grow(bounds, CLEAR), frame)) printShape(pen, shape, printable);
      }
    }
  });
}

export function printShape(pen: Pen, shape: Shape, printable: (text: string) => string): void {
  switch (shape.kind) {
    case 'loop':
      return pen.loop(shape.vertices);
    case 'circle':
      return pen.circle(shape.x, shape.y, shape.radius);
    case 'line':
      return pen.line(shape.from, shape.to);
    case 'stroke':
      return pen.run(shape.points);
    case 'text':
      return pen.text(printable(shape.text), [shape.x, shape.y], shape.height, {
        angle: shape.angle,
        anchor: shape.anchor,
      });
  }
}

function shows(bounds: Bounds, { x, y, width, height }: Rect): boolean {
  return bounds.minX < x + width && bounds.maxX > x && bounds.minY < y + height && bounds.maxY > y;
}

function grow({ minX, minY, maxX, maxY }: Bounds, by: number): Bounds {
  return { minX: minX - by, minY: minY - by, maxX: maxX + by, maxY: maxY + by };
}

function unite(all: readonly Bounds[]): Bounds {
  return boundsOfPoints(all.flatMap(({ minX, minY, maxX, maxY }) => [[minX, minY] as const, [maxX, maxY] as const]));
}
