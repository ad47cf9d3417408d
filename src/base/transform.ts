import { boundsOf } from './bounds';
import type { Drawing, Shape } from './drawing';

/** A turn by `angle` (radians, counter-clockwise) about the origin, then a shift, mm. */
export interface Move {
  readonly dx: number;
  readonly dy: number;
  readonly angle: number;
}

/** The drawing moved; shapes, bulges and text alike. */
export function moveDrawing(drawing: Drawing, move: Move): Drawing {
  const [cosine, sine] = quarterTurn(move.angle) ?? [Math.cos(move.angle), Math.sin(move.angle)];
  const place = (x: number, y: number): readonly [number, number] => [
    x * cosine - y * sine + move.dx,
    x * sine + y * cosine + move.dy,
  ];
  const moved = <Placed extends { readonly x: number; readonly y: number }>(thing: Placed): Placed => {
    const [x, y] = place(thing.x, thing.y);
    return { ...thing, x, y };
  };
  return {
    shapes: drawing.shapes.map((shape): Shape => {
      switch (shape.kind) {
        case 'loop':
          return { ...shape, vertices: shape.vertices.map(moved) };
        case 'circle':
          return moved(shape);
        case 'line':
          return { ...shape, from: place(...shape.from), to: place(...shape.to) };
        case 'stroke':
          return { ...shape, points: shape.points.map((point) => place(...point)) };
        case 'text':
          return { ...moved(shape), angle: shape.angle + move.angle };
      }
    }),
  };
}

/** The drawing moved so that nothing of it lies left of or below the origin, and something at either: as a machine's table is measured from its corner. */
export function inCorner(drawing: Drawing): Drawing {
  const { minX, minY } = boundsOf(drawing);
  return moveDrawing(drawing, { dx: -minX, dy: -minY, angle: 0 });
}

/** The drawing with every length multiplied by `factor`: places, radii and heights of text; bulges and angles stay. */
export function scaleDrawing(drawing: Drawing, factor: number): Drawing {
  const at = ([x, y]: readonly [number, number]): readonly [number, number] => [x * factor, y * factor];
  return {
    shapes: drawing.shapes.map((shape): Shape => {
      switch (shape.kind) {
        case 'loop':
          return {
            ...shape,
            vertices: shape.vertices.map(({ x, y, bulge }) => ({ x: x * factor, y: y * factor, bulge })),
          };
        case 'circle':
          return { ...shape, x: shape.x * factor, y: shape.y * factor, radius: shape.radius * factor };
        case 'line':
          return { ...shape, from: at(shape.from), to: at(shape.to) };
        case 'stroke':
          return { ...shape, points: shape.points.map(at) };
        case 'text':
          return { ...shape, x: shape.x * factor, y: shape.y * factor, height: shape.height * factor };
      }
    }),
  };
}

/** Exact cosine and sine of whole quarter turns, so that a turned board stays square. */
function quarterTurn(angle: number): readonly [number, number] | null {
  const quarters = angle / (Math.PI / 2);
  if (!Number.isInteger(quarters)) return null;
  const turns: readonly (readonly [number, number])[] = [
    [1, 0],
    [0, 1],
    [-1, 0],
    [0, -1],
  ];
  return turns[((quarters % 4) + 4) % 4] ?? null;
}
