import { at } from './at';
import type { Shape, Text, Vertex } from './drawing';
import { InternalError } from './errors';
import type { Point } from './polygon';
import { ROUNDING } from './tolerance';

/** Shapes mirrored left for right within the same box: x → `sum` − x. Text stays readable: its middle and slant are mirrored, its letters not. */
export function mirrorShapes(shapes: readonly Shape[], sum: number): Shape[] {
  return shapes.map((shape) => mirrored(shape, sum));
}

function mirrored(shape: Shape, sum: number): Shape {
  const flip = ([x, y]: Point): Point => [sum - x, y];
  switch (shape.kind) {
    case 'loop':
      return { ...shape, vertices: mirroredLoop(shape.vertices, sum) };
    case 'circle':
      return { ...shape, x: sum - shape.x };
    case 'line':
      return { ...shape, from: flip(shape.from), to: flip(shape.to) };
    case 'text':
      return mirroredText(shape, sum);
    case 'stroke':
      throw new InternalError('strokes cannot be mirrored and still be read: mirror the text, then engrave it');
  }
}

/** The way round is kept: corners in reverse, each with the bulge of the side that came before it. */
function mirroredLoop(vertices: readonly Vertex[], sum: number): Vertex[] {
  return vertices.map(({ x, y }, index): Vertex => ({ x: sum - x, y, bulge: at(vertices, index - 1).bulge })).reverse();
}

/** The middle of the letters' height goes where it belongs; upright text keeps reading upward. */
function mirroredText(text: Text, sum: number): Text {
  const anchors = { start: 'end', middle: 'middle', end: 'start' } as const;
  const { angle, height } = text;
  const [x, y] = [text.x - (height / 2) * Math.sin(angle), text.y + (height / 2) * Math.cos(angle)];
  const isUpright = Math.abs(Math.cos(angle)) < ROUNDING;
  const turned = isUpright ? angle : -angle;
  return {
    ...text,
    x: sum - x + (height / 2) * Math.sin(turned),
    y: y - (height / 2) * Math.cos(turned),
    angle: turned,
    anchor: isUpright ? text.anchor : anchors[text.anchor],
  };
}
